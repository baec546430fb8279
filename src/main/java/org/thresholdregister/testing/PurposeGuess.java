package org.thresholdregister.testing;

import java.time.LocalDate;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.review.WorkerRecord;

/** What a test of today is probably for; the tester says what it is. */
final class PurposeGuess {

    /** How long before the last day of employment a test is taken for the exit test (our choice). */
    private static final int EXIT_WITHIN_DAYS = 30;

    private PurposeGuess() {}

    static TestPurpose of(WorkerRecord record) {
        LocalDate today = record.asOf();
        boolean isLeaving = record.details()
                .endDate()
                .filter(last -> !last.isAfter(today.plusDays(EXIT_WITHIN_DAYS)))
                .isPresent();
        boolean mayBeRetested = record.judgement().followUps().stream()
                .anyMatch(owed -> owed.kind() == FollowUpKind.RETEST && !owed.isOverdue(today));
        if (record.judgement().determinations().isEmpty()) {
            return TestPurpose.BASELINE;
        }
        if (mayBeRetested) {
            return TestPurpose.RETEST;
        }
        return isLeaving ? TestPurpose.EXIT : TestPurpose.ANNUAL;
    }
}
