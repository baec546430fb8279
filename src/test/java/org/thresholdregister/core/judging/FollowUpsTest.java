package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.judging.Case.owed;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;

class FollowUpsTest {

    /** 29 CFR 1910.95(g)(6): at least annually. */
    @ParameterizedTest
    @CsvSource({"2025-04-01, 2026-04-01", "2024-02-29, 2025-02-28", "2023-02-28, 2024-02-28"})
    void anAnnualTestIsOwedTwelveMonthsAfterTheLast(String last, LocalDate due) {
        WorkerJudgement judgement =
                new Case().test(last, TestPurpose.BASELINE, 10, 10).asOf("2025-12-31");
        assertThat(judgement.followUps())
                .containsExactly(
                        new FollowUp(FollowUpKind.ANNUAL_TEST, due, Optional.of(LocalDate.parse(last)), Ears.BOTH));
    }

    @Test
    void aRetestIsAJudgedTestFromWhichTheYearRuns() {
        WorkerJudgement judgement = new Case()
                .test("2024-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-04-01", TestPurpose.ANNUAL, 30, 10)
                .test("2025-04-20", TestPurpose.RETEST, 10, 10)
                .asOf("2025-12-31");
        assertThat(owed(judgement, FollowUpKind.ANNUAL_TEST).orElseThrow().dueDate())
                .isEqualTo(LocalDate.parse("2026-04-20"));
    }

    @Test
    void aTestThatIsOnlyShownPostponesNothing() {
        WorkerJudgement judgement = new Case()
                .test("2024-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-03-01", TestPurpose.OTHER, 10, 10)
                .asOf("2025-12-31");
        assertThat(owed(judgement, FollowUpKind.ANNUAL_TEST).orElseThrow().dueDate())
                .isEqualTo(LocalDate.parse("2025-04-01"));
    }

    /** 29 CFR 1910.95(g)(5)(i): within 6 months of the first exposure. */
    @ParameterizedTest
    @CsvSource({"2025-04-01, 2025-10-01", "2025-08-31, 2026-02-28", "2023-08-31, 2024-02-29", "2025-03-31, 2025-09-30"})
    void aFirstTestIsOwedSixMonthsAfterEnrolment(String enrolled, LocalDate due) {
        WorkerJudgement judgement = new Case().enrolledFrom(enrolled).asOf("2025-12-31");
        assertThat(judgement.followUps())
                .containsExactly(new FollowUp(FollowUpKind.BASELINE_TEST, due, Optional.empty(), Ears.BOTH));
    }

    @Test
    void whoIsNotEnrolledAndNeverTestedIsOwedNothing() {
        assertThat(new Case().asOf("2025-12-31").followUps()).isEmpty();
    }

    @Test
    void aTestThatIsOnlyShownIsNoFirstTest() {
        WorkerJudgement judgement = new Case()
                .enrolledFrom("2025-04-01")
                .test("2025-05-01", TestPurpose.OTHER, 10, 10)
                .asOf("2025-12-31");
        assertThat(judgement.followUps()).extracting(FollowUp::kind).containsExactly(FollowUpKind.BASELINE_TEST);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2025-06-30", "2026-03-31"})
    void noTestIsOwedToLeavers(String endDate) {
        // Both those who have left by the as-of date and those who leave before the test falls due.
        assertThat(new Case()
                        .test("2025-04-01", TestPurpose.BASELINE, 10, 10)
                        .left(endDate)
                        .asOf("2025-12-31")
                        .followUps())
                .isEmpty();
        assertThat(new Case()
                        .enrolledFrom("2025-10-01")
                        .left(endDate)
                        .asOf("2025-12-31")
                        .followUps())
                .isEmpty();
    }

    @Test
    void aTestThatFellDueBeforeTheEndIsNotOwedAfterIt() {
        Case missed =
                new Case().test("2024-01-09", TestPurpose.BASELINE, 10, 10).left("2025-06-30");
        assertThat(owed(missed.asOf("2025-06-30"), FollowUpKind.ANNUAL_TEST)).isPresent();
        assertThat(owed(missed.asOf("2025-07-01"), FollowUpKind.ANNUAL_TEST)).isEmpty();
    }

    @Test
    void aTestDueOnTheLastDayIsOwed() {
        assertThat(new Case()
                        .test("2025-04-01", TestPurpose.BASELINE, 10, 10)
                        .left("2026-04-01")
                        .asOf("2026-04-01")
                        .followUps())
                .extracting(FollowUp::kind)
                .containsExactly(FollowUpKind.ANNUAL_TEST);
    }

    @Test
    void leaversAreStillOwedNoticeAndEntry() {
        WorkerJudgement judgement = new Case()
                .test("2024-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-04-01", TestPurpose.EXIT, 30, 10)
                .left("2025-04-01")
                .asOf("2025-12-31");
        assertThat(judgement.followUps())
                .extracting(FollowUp::kind)
                .containsExactly(FollowUpKind.NOTICE, FollowUpKind.RECORD);
    }

    @Test
    void oneRowStandsForBothEarsWithTheEarlierDate() {
        // The left ear is settled by the retest of day 10; the right one, which the retest leaves open, by the test.
        WorkerJudgement judgement = new Case()
                .test("2024-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-04-01", TestPurpose.ANNUAL, 30, 30)
                .test("2025-04-11", TestPurpose.RETEST, "30 30 30", "30 30 DNT")
                .asOf("2025-12-31");
        assertThat(owed(judgement, FollowUpKind.NOTICE))
                .contains(new FollowUp(
                        FollowUpKind.NOTICE,
                        LocalDate.parse("2025-04-22"),
                        Optional.of(LocalDate.parse("2025-04-01")),
                        Ears.BOTH));
        assertThat(owed(judgement, FollowUpKind.RECORD).orElseThrow().dueDate())
                .isEqualTo(LocalDate.parse("2025-04-18"));
    }

    @Test
    void theRetestIsOfferedUntilItIsMadeOrItsTimeHasPassed() {
        Case shifted = new Case()
                .test("2024-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-04-01", TestPurpose.ANNUAL, 30, 10);
        assertThat(owed(shifted.asOf("2025-05-01"), FollowUpKind.RETEST))
                .contains(new FollowUp(
                        FollowUpKind.RETEST,
                        LocalDate.parse("2025-05-01"),
                        Optional.of(LocalDate.parse("2025-04-01")),
                        Ears.LEFT));
        assertThat(owed(shifted.asOf("2025-05-02"), FollowUpKind.RETEST)).isEmpty();
        shifted.test("2025-04-20", TestPurpose.RETEST, 10, 10);
        assertThat(owed(shifted.asOf("2025-04-20"), FollowUpKind.RETEST)).isEmpty();
    }

    @Test
    void aDutyIsOverdueFromTheDayAfterItsDate() {
        FollowUp owed = new FollowUp(FollowUpKind.NOTICE, LocalDate.parse("2025-04-22"), Optional.empty(), Ears.LEFT);
        assertThat(owed.isOverdue(LocalDate.parse("2025-04-22"))).isFalse();
        assertThat(owed.isOverdue(LocalDate.parse("2025-04-23"))).isTrue();
    }
}
