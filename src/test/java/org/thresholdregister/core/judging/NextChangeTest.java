package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.DecisionKind;

/** The days on which time alone changes a judgement, by example. */
class NextChangeTest {

    @Test
    void aShiftWithoutARetestChangesOnTheThirtyFirstDay() {
        Case shift = new Case()
                .test("2024-01-10", TestPurpose.BASELINE, 10, 10)
                .test("2025-01-01", TestPurpose.ANNUAL, 60, 10);
        assertNextChange(shift, "2025-01-01", "2025-02-01");
        assertNextChange(shift, "2025-01-31", "2025-02-01");
        assertNoChange(shift, "2025-02-01");
    }

    @Test
    void aTestWithoutAShiftChangesNoMore() {
        Case noShift = new Case()
                .test("2024-01-10", TestPurpose.BASELINE, 10, 10)
                .test("2025-01-01", TestPurpose.ANNUAL, 15, 10);
        assertNoChange(noShift, "2025-01-01");
    }

    /** The baseline was moved to a lasting shift, which hides the case: the test asks for a retest all the same. */
    @Test
    void aHiddenCaseChangesOnTheThirtyFirstDayToo() {
        Case hidden = new Case()
                .test("2021-04-01", TestPurpose.BASELINE, "5 5 10", "10 10 10")
                .test("2024-04-01", TestPurpose.ANNUAL, "15 20 20", "10 10 10")
                .decided("2024-04-01", Ears.LEFT, DecisionKind.BASELINE, "2024-05-01")
                .test("2026-04-01", TestPurpose.ANNUAL, "20 25 30", "10 10 10")
                .with(BaselineRevision.OFF);
        assertNextChange(hidden, "2026-04-20", "2026-05-02");
    }

    @Test
    void aTestAndADecisionAreSeenFromTheirDays() {
        Case planned = new Case()
                .test("2024-01-10", TestPurpose.BASELINE, 10, 10)
                .test("2025-01-01", TestPurpose.ANNUAL, 15, 10)
                .decided("2025-01-01", Ears.LEFT, DecisionKind.INVALID_TEST, "2025-01-20");
        assertNextChange(planned, "2024-06-01", "2025-01-01");
        assertNextChange(planned, "2025-01-01", "2025-01-20");
        assertNoChange(planned, "2025-01-20");
    }

    @Test
    void nextTestIsNoLongerOwedOnTheDayAfterTheLast() {
        Case leaver =
                new Case().test("2024-01-10", TestPurpose.BASELINE, 10, 10).left("2025-03-31");
        assertNextChange(leaver, "2025-03-01", "2025-04-01");
        assertNextChange(leaver, "2025-03-31", "2025-04-01");
        assertNoChange(leaver, "2025-04-01");
    }

    private static void assertNextChange(Case record, String asOf, String change) {
        assertThat(NextChange.after(LocalDate.parse(asOf), record.history(), record.asOf(asOf)))
                .contains(LocalDate.parse(change));
    }

    private static void assertNoChange(Case record, String asOf) {
        assertThat(NextChange.after(LocalDate.parse(asOf), record.history(), record.asOf(asOf)))
                .isEmpty();
    }
}
