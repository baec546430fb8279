package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * A determination on record that something would make another one.
 *
 * @param after empty where the test would not be judged any more
 */
public record DeterminationChange(
        String workerId,
        LocalDate testDate,
        TestPurpose purpose,
        Ear ear,
        EarFinding before,
        Optional<EarFinding> after,
        SentAndRecorded sent) {}
