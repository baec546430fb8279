package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUpKind;

/**
 * A test that is owed to a worker.
 *
 * @param kind a retest, a baseline test or the next periodic one
 * @param afterTest the test that it follows; none for a first test
 * @param enrolledFrom first day at or above the action level, where it is on record
 * @param ruleSet the word of the rule set that makes it due
 */
public record OwedTest(
        long workerKey,
        FollowUpKind kind,
        LocalDate dueDate,
        Optional<LocalDate> afterTest,
        Ears ears,
        Optional<LocalDate> enrolledFrom,
        String ruleSet) {}
