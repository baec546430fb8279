package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RuleSets;

/**
 * One thing owed to one worker. Texts that are not given are empty.
 *
 * @param daysLeft days from today to the due date; negative once it is overdue
 * @param testDate the test that it follows; none for a first test
 * @param ruleSet the word of the rule set that makes it due
 */
public record FollowUpRow(
        String workerId,
        String familyName,
        String givenName,
        String site,
        String department,
        FollowUpKind kind,
        LocalDate dueDate,
        long daysLeft,
        Optional<LocalDate> testDate,
        Ears ears,
        String ruleSet) {

    /** The paragraph that makes it due. */
    public Citation basis() {
        return RuleSets.find(ruleSet).orElse(RuleSets.OSHA).paragraph(kind.step());
    }

    public FollowUpState state() {
        return FollowUpState.withDaysLeft(daysLeft);
    }
}
