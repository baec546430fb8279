package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;

/** Dates by 29 CFR 1910.95(g)(5)(i), (6), (7)(ii), (8)(i) and 1904.10(b)(4), counted by hand. */
class OpeningSentenceTest {

    private static String sentence(WorkerRecord record) {
        return OpeningSentence.of(record).text();
    }

    private static Records baseline() {
        return new Records().test("2025-03-02", TestPurpose.BASELINE, 10, 10);
    }

    private static Records shiftOnTheLeft() {
        return baseline().test("2026-04-20", TestPurpose.ANNUAL, 40, 10);
    }

    private static Decision decision(DecisionKind kind) {
        return new Decision(
                Ears.LEFT, LocalDate.of(2026, 4, 20), kind, LocalDate.of(2026, 6, 1), "Dr. Vale", "illness");
    }

    @Test
    void withoutATestTheBaselineIsOwed() {
        assertThat(sentence(new Records().asOf("2020-03-01")))
                .isEqualTo("No hearing test is on record; next is the baseline test by 1 Jul 2020.");
        assertThat(sentence(new Records().asOf("2020-07-02")))
                .isEqualTo("No hearing test is on record; baseline test is 1 day overdue.");
    }

    @Test
    void aBaselineAloneHasNothingToBeComparedWith() {
        assertThat(sentence(baseline().asOf("2025-06-01")))
                .isEqualTo(
                        "Both ears: baseline of 2 Mar 2025, nothing to compare with it yet; next is the annual test by"
                                + " 2 Mar 2026.");
    }

    @Test
    void aShiftThatARetestConfirmsIsSaidWithWhatIsOverdue() {
        Records confirmed = shiftOnTheLeft().test("2026-05-12", TestPurpose.RETEST, 40, 10);
        assertThat(sentence(confirmed.asOf("2026-06-07")))
                .isEqualTo("Left ear: shift confirmed on 12 May 2026, recordable; entry on the injury log is 19 days"
                        + " overdue; written notice is 5 days overdue.");
        assertThat(sentence(confirmed.decision(decision(DecisionKind.RECORDED)).asOf("2026-06-02")))
                .isEqualTo("Left ear: shift confirmed on 12 May 2026, recordable; written notice is due today.");
    }

    @Test
    void aShiftThatWaitsForItsRetestSaysUntilWhen() {
        assertThat(sentence(shiftOnTheLeft().asOf("2026-05-01")))
                .isEqualTo("Left ear: shift found on 20 Apr 2026, awaiting retest; written notice is due in 10 days; a"
                        + " retest may take its place until 20 May 2026.");
    }

    @Test
    void aShiftWithoutARetestStands() {
        assertThat(sentence(shiftOnTheLeft()
                        .decision(decision(DecisionKind.NOT_WORK_RELATED))
                        .decision(decision(DecisionKind.NOTICE_GIVEN))
                        .asOf("2026-06-07")))
                .isEqualTo("Left ear: shift of 20 Apr 2026 stands without a retest, not recordable, found not"
                        + " work-related on 1 Jun 2026; next is the annual test by 20 Apr 2027.");
    }

    @Test
    void aShiftThatTheRetestDoesNotShowIsOver() {
        assertThat(sentence(shiftOnTheLeft()
                        .test("2026-05-12", TestPurpose.RETEST, 10, 10)
                        .asOf("2026-06-07")))
                .isEqualTo(
                        "Left ear: shift of 20 Apr 2026 not confirmed by the retest of 12 May 2026; next is the annual"
                                + " test by 12 May 2027.");
    }

    @Test
    void earsThatDifferAreSaidOneByOne() {
        assertThat(sentence(baseline()
                        .test("2026-04-20", TestPurpose.ANNUAL, Threshold.measured(40), Threshold.notGiven())
                        .asOf("2026-05-15")))
                .isEqualTo("Right ear: undecided on 20 Apr 2026; left ear: shift found on 20 Apr 2026, awaiting retest;"
                        + " written notice is 4 days overdue; a retest may take its place until 20 May 2026.");
    }

    @Test
    void severalOfAKindAreCounted() {
        assertThat(sentence(shiftOnTheLeft()
                        .test("2027-04-20", TestPurpose.ANNUAL, 40, 10)
                        .decision(decision(DecisionKind.RECORDED))
                        .asOf("2027-05-12")))
                .isEqualTo(
                        "Left ear: shift found on 20 Apr 2027, awaiting retest; 2 written notices are owed, the first"
                                + " 366 days overdue; a retest may take its place until 20 May 2027.");
    }

    @Test
    void whoHasLeftIsSaidFirst() {
        assertThat(sentence(baseline()
                        .test("2026-03-01", TestPurpose.ANNUAL, 10, 10)
                        .leftOn("2026-03-31")
                        .asOf("2026-04-01")))
                .isEqualTo("Left employment on 31 Mar 2026; both ears: no shift on 1 Mar 2026; nothing is owed.");
    }

    @Test
    void testsThatAreNeverJudgedAreNoFinding() {
        assertThat(sentence(new Records()
                        .test("2020-02-01", TestPurpose.OTHER, 10, 10)
                        .asOf("2020-03-01")))
                .isEqualTo("No test on record is judged; next is the baseline test by 1 Jul 2020.");
    }
}
