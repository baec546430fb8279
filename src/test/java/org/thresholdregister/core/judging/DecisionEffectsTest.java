package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.judging.Case.judged;
import static org.thresholdregister.core.judging.Case.owed;
import static org.thresholdregister.core.judging.Case.row;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.RecordingReference;
import org.thresholdregister.core.regulation.Answer;

/** What each decision changes, and what it leaves alone. */
class DecisionEffectsTest {

    private static final String ANNUAL = "2024-04-01";
    private static final String RETEST = "2024-04-11";
    private static final String NEXT = "2025-04-01";
    private static final String TODAY = "2026-06-30";

    @Test
    void aLossFoundNotWorkRelatedIsNoCaseButStaysAShift() {
        // 29 CFR 1904.10(b)(6); the notice of 1910.95(g)(8)(i) does not ask for the cause.
        WorkerJudgement judgement = confirmedInBothEars()
                .decided(ANNUAL, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2024-04-20")
                .asOf(TODAY);
        assertThat(judged(judgement, ANNUAL, Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, ANNUAL, Ear.LEFT).recording().answer()).isEqualTo(Recordability.NO);
        assertThat(judged(judgement, ANNUAL, Ear.LEFT).dueDates().recordBy()).isEmpty();
        assertThat(judged(judgement, ANNUAL, Ear.LEFT).dueDates().notifyBy()).isPresent();
        assertThat(judged(judgement, ANNUAL, Ear.RIGHT).recording().answer()).isEqualTo(Recordability.YES);
    }

    @Test
    void aLossFoundNotWorkRelatedIsNoReference() {
        WorkerJudgement judgement = confirmedInBothEars()
                .decided(ANNUAL, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2024-04-20")
                .test(NEXT, TestPurpose.ANNUAL, 30, 30)
                .asOf(TODAY);
        assertThat(judged(judgement, NEXT, Ear.LEFT).recording().answer()).isEqualTo(Recordability.YES);
        assertThat(referenceKind(judgement, NEXT, Ear.LEFT)).isEqualTo(RecordingReference.Kind.FIRST_BASELINE);
        assertThat(judged(judgement, NEXT, Ear.RIGHT).recording().answer()).isEqualTo(Recordability.ALREADY_RECORDED);
        assertThat(referenceKind(judgement, NEXT, Ear.RIGHT)).isEqualTo(RecordingReference.Kind.RECORDABLE_CASE);
    }

    @Test
    void theLatestFindingOnTheCauseCounts() {
        Case found = confirmedInBothEars().decided(ANNUAL, Ears.BOTH, DecisionKind.NOT_WORK_RELATED, "2024-04-20");
        assertThat(answer(found, Ear.LEFT)).isEqualTo(Recordability.NO);
        found.decided(ANNUAL, Ears.LEFT, DecisionKind.WORK_RELATED, "2024-05-20");
        assertThat(answer(found, Ear.LEFT)).isEqualTo(Recordability.YES);
        assertThat(answer(found, Ear.RIGHT)).isEqualTo(Recordability.NO);
    }

    @Test
    void ofTwoFindingsOfOneDayTheOneThatPresumesTheCauseCounts() {
        Case found = confirmedInBothEars()
                .decided(ANNUAL, Ears.LEFT, DecisionKind.WORK_RELATED, "2024-04-20")
                .decided(ANNUAL, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2024-04-20");
        assertThat(answer(found, Ear.LEFT)).isEqualTo(Recordability.YES);
    }

    @Test
    void aDecisionIsNotSeenBeforeItsDay() {
        Case found = confirmedInBothEars().decided(ANNUAL, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2024-06-20");
        assertThat(judged(found.asOf("2024-06-19"), ANNUAL, Ear.LEFT)
                        .recording()
                        .answer())
                .isEqualTo(Recordability.YES);
        assertThat(judged(found.asOf("2024-06-20"), ANNUAL, Ear.LEFT)
                        .recording()
                        .answer())
                .isEqualTo(Recordability.NO);
    }

    @Test
    void aRecordedCaseIsOwedNoEntry() {
        Case confirmed = confirmedInBothEars();
        assertThat(owed(confirmed.asOf(TODAY), FollowUpKind.RECORD)
                        .orElseThrow()
                        .ears())
                .isEqualTo(Ears.BOTH);
        confirmed.decided(ANNUAL, Ears.LEFT, DecisionKind.RECORDED, "2024-04-18");
        assertThat(owed(confirmed.asOf(TODAY), FollowUpKind.RECORD)
                        .orElseThrow()
                        .ears())
                .isEqualTo(Ears.RIGHT);
        confirmed.decided(ANNUAL, Ears.RIGHT, DecisionKind.RECORDED, "2024-04-18");
        assertThat(owed(confirmed.asOf(TODAY), FollowUpKind.RECORD)).isEmpty();
        assertThat(answer(confirmed, Ear.LEFT)).isEqualTo(Recordability.YES);
    }

    @Test
    void aCaseLinedOutIsNoReferenceAndTheSameLossFoundAgainIsACase() {
        // 29 CFR 1904.10(b)(4), last sentence; vector H05 rests on the same reading.
        Case confirmed = confirmedInBothEars()
                .decided(ANNUAL, Ears.LEFT, DecisionKind.RECORDED, "2024-04-18")
                .test(NEXT, TestPurpose.ANNUAL, 30, 30)
                .test("2026-04-01", TestPurpose.ANNUAL, 30, 30)
                .decided(ANNUAL, Ears.LEFT, DecisionKind.LINED_OUT, "2025-06-01");
        WorkerJudgement judgement = confirmed.asOf(TODAY);
        assertThat(judged(judgement, NEXT, Ear.LEFT).recording().answer()).isEqualTo(Recordability.YES);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).recording().answer())
                .isEqualTo(Recordability.ALREADY_RECORDED);
        assertThat(judged(judgement, NEXT, Ear.RIGHT).recording().answer()).isEqualTo(Recordability.ALREADY_RECORDED);
        assertThat(judged(judgement, "2026-04-01", Ear.RIGHT).recording().answer())
                .isEqualTo(Recordability.ALREADY_RECORDED);
    }

    @Test
    void anEntryLinedOutIsOwedNoEntry() {
        Case confirmed = confirmedInBothEars().decided(ANNUAL, Ears.BOTH, DecisionKind.LINED_OUT, "2024-06-01");
        assertThat(owed(confirmed.asOf(TODAY), FollowUpKind.RECORD)).isEmpty();
    }

    @Test
    void noticeGivenClosesTheNoticeOfTheNamedEarOnly() {
        Case confirmed = confirmedInBothEars().decided(ANNUAL, Ears.LEFT, DecisionKind.NOTICE_GIVEN, "2024-04-12");
        assertThat(owed(confirmed.asOf(TODAY), FollowUpKind.NOTICE)
                        .orElseThrow()
                        .ears())
                .isEqualTo(Ears.RIGHT);
        confirmed.decided(ANNUAL, Ears.RIGHT, DecisionKind.NOTICE_GIVEN, "2024-04-12");
        assertThat(owed(confirmed.asOf(TODAY), FollowUpKind.NOTICE)).isEmpty();
    }

    @Test
    void noticeIsOwedAgainForTheNextYearsShift() {
        // Letter of 27 September 1983: until the baseline is revised, each year's shift is notified.
        Case confirmed = confirmedInBothEars()
                .decided(ANNUAL, Ears.BOTH, DecisionKind.NOTICE_GIVEN, "2024-04-12")
                .test(NEXT, TestPurpose.ANNUAL, 30, 30);
        assertThat(owed(confirmed.asOf(TODAY), FollowUpKind.NOTICE)
                        .orElseThrow()
                        .testDate())
                .contains(LocalDate.parse(NEXT));
    }

    @ParameterizedTest
    @EnumSource(
            value = DecisionKind.class,
            names = {"NOT_WORK_RELATED", "RECORDED", "NOTICE_GIVEN", "LINED_OUT"})
    void aDecisionMayNameTheRetestInsteadOfTheTest(DecisionKind kind) {
        WorkerJudgement byTest = confirmedInBothEars()
                .test(NEXT, TestPurpose.ANNUAL, 30, 30)
                .decided(ANNUAL, Ears.LEFT, kind, "2024-04-20")
                .asOf(TODAY);
        WorkerJudgement byRetest = confirmedInBothEars()
                .test(NEXT, TestPurpose.ANNUAL, 30, 30)
                .decided(RETEST, Ears.LEFT, kind, "2024-04-20")
                .asOf(TODAY);
        WorkerJudgement undecided =
                confirmedInBothEars().test(NEXT, TestPurpose.ANNUAL, 30, 30).asOf(TODAY);

        assertThat(byRetest.followUps()).isEqualTo(byTest.followUps()).isNotEqualTo(undecided.followUps());
        for (Ear ear : Ear.values()) {
            for (String date : new String[] {ANNUAL, NEXT}) {
                assertThat(judged(byRetest, date, ear).recording().answer())
                        .isEqualTo(judged(byTest, date, ear).recording().answer());
            }
        }
    }

    @Test
    void anInvalidTestIsNotJudgedForTheNamedEarOnly() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test(ANNUAL, TestPurpose.ANNUAL, 30, 30)
                .decided(ANNUAL, Ears.LEFT, DecisionKind.INVALID_TEST, "2024-04-03")
                .asOf(TODAY);
        assertThat(judgement.determinations())
                .noneMatch(row -> row.ear() == Ear.LEFT && row.test().date().equals(LocalDate.parse(ANNUAL)));
        assertThat(judged(judgement, ANNUAL, Ear.RIGHT).outcome()).isEqualTo(Outcome.CONFIRMED);
    }

    @Test
    void anInvalidBaselineGivesWayToTheFirstValidTest() {
        // Memorandum of 19 July 1989: the first valid audiogram becomes the baseline.
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2021-04-01", TestPurpose.ANNUAL, 25, 25)
                .test(ANNUAL, TestPurpose.ANNUAL, 30, 30)
                .decided("2020-04-01", Ears.LEFT, DecisionKind.INVALID_TEST, "2024-06-01")
                .asOf(TODAY);
        assertThat(row(judgement, "2021-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.BASELINE);
        assertThat(judged(judgement, ANNUAL, Ear.LEFT).outcome()).isEqualTo(Outcome.NO_SHIFT);
        assertThat(judged(judgement, ANNUAL, Ear.RIGHT).outcome()).isEqualTo(Outcome.CONFIRMED);
    }

    @Test
    void anInvalidRetestAnswersNothing() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test(ANNUAL, TestPurpose.ANNUAL, 30, 30)
                .test(RETEST, TestPurpose.RETEST, 10, 10)
                .decided(RETEST, Ears.LEFT, DecisionKind.INVALID_TEST, "2024-04-12")
                .asOf(TODAY);
        assertThat(judged(judgement, ANNUAL, Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, ANNUAL, Ear.RIGHT).outcome()).isEqualTo(Outcome.NOT_CONFIRMED);
    }

    @Test
    void anInvalidRetestDoesNotStandInTheWayOfAnEarlierOne() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test(ANNUAL, TestPurpose.ANNUAL, 30, 30)
                .test(RETEST, TestPurpose.RETEST, 10, 10)
                .test("2024-04-20", TestPurpose.RETEST, 30, 30)
                .decided("2024-04-20", Ears.LEFT, DecisionKind.INVALID_TEST, "2024-04-21")
                .asOf(TODAY);
        assertThat(judged(judgement, ANNUAL, Ear.LEFT).outcome()).isEqualTo(Outcome.NOT_CONFIRMED);
        assertThat(judged(judgement, ANNUAL, Ear.LEFT).settledBy().date()).isEqualTo(LocalDate.parse(RETEST));
        assertThat(judged(judgement, ANNUAL, Ear.RIGHT).outcome()).isEqualTo(Outcome.CONFIRMED);
    }

    @Test
    void anInvalidRetestOfAHiddenCaseDoesNotStandInTheWayOfAnEarlierOne() {
        WorkerJudgement judgement = vectorF06()
                .decided(ANNUAL, Ears.LEFT, DecisionKind.BASELINE, "2024-05-01")
                .test("2026-04-15", TestPurpose.RETEST, "20 25 30", "10 10 10")
                .test("2026-04-20", TestPurpose.RETEST, "5 5 10", "10 10 10")
                .decided("2026-04-20", Ears.LEFT, DecisionKind.INVALID_TEST, "2026-04-21")
                .asOf(TODAY);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).recording().answer())
                .isEqualTo(Recordability.YES);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).dueDates().recordBy())
                .contains(LocalDate.parse("2026-04-22"));
    }

    @Test
    void anInvalidTestOwesNoNextTest() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test(ANNUAL, TestPurpose.ANNUAL, 30, 30)
                .decided(ANNUAL, Ears.BOTH, DecisionKind.INVALID_TEST, "2024-04-03")
                .asOf(TODAY);
        assertThat(owed(judgement, FollowUpKind.ANNUAL_TEST).orElseThrow().testDate())
                .contains(LocalDate.parse("2020-04-01"));
    }

    @Test
    void aChosenBaselineCountsForTestsAfterTheDayOfTheDecision() {
        Case chosen = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test(ANNUAL, TestPurpose.ANNUAL, 20, 20)
                .test("2025-03-01", TestPurpose.ANNUAL, 21, 21)
                .test(NEXT, TestPurpose.ANNUAL, 22, 22)
                .test("2025-04-02", TestPurpose.ANNUAL, 23, 23)
                .decided(ANNUAL, Ears.LEFT, DecisionKind.BASELINE, NEXT);
        WorkerJudgement judgement = chosen.asOf(TODAY);
        assertThat(baselineDate(judgement, "2025-03-01", Ear.LEFT)).isEqualTo("2020-04-01");
        assertThat(baselineDate(judgement, NEXT, Ear.LEFT)).isEqualTo("2020-04-01");
        assertThat(baselineDate(judgement, "2025-04-02", Ear.LEFT)).isEqualTo(ANNUAL);
        // FAQ 380 and the letters of 8 May 2003 and 9 September 2005: only that ear's baseline moves.
        assertThat(baselineDate(judgement, "2025-04-02", Ear.RIGHT)).isEqualTo("2020-04-01");
    }

    @Test
    void ofTwoChosenBaselinesTheLaterDecisionCounts() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2022-04-01", TestPurpose.ANNUAL, 12, 12)
                .test("2023-04-01", TestPurpose.ANNUAL, 14, 14)
                .test(NEXT, TestPurpose.ANNUAL, 16, 16)
                .decided("2023-04-01", Ears.BOTH, DecisionKind.BASELINE, "2023-05-01")
                .decided("2022-04-01", Ears.BOTH, DecisionKind.BASELINE, "2023-06-01")
                .asOf(TODAY);
        assertThat(baselineDate(judgement, NEXT, Ear.LEFT)).isEqualTo("2022-04-01");
    }

    @ParameterizedTest
    @EnumSource
    void aBaselineChosenForALastingShiftHidesNoCase(BaselineRevision revision) {
        // Vector F06 (1904.10(b)(2)(i)) with the revision that its note speaks of: 18.33 from the first baseline, level
        // 25.00; from the revised one only 6.67.
        WorkerJudgement judgement = vectorF06()
                .with(revision)
                .decided(ANNUAL, Ears.LEFT, DecisionKind.BASELINE, "2024-05-01")
                .asOf(TODAY);
        Determination.Judged row = judged(judgement, "2026-04-01", Ear.LEFT);
        assertThat(baselineDate(judgement, "2026-04-01", Ear.LEFT)).isEqualTo(ANNUAL);
        assertThat(row.comparison().sum().exact()).hasValue(20);
        assertThat(row.comparison().isShift()).isEqualTo(Answer.NO);
        assertThat(row.outcome()).isEqualTo(Outcome.NO_SHIFT);
        assertThat(row.recording().answer()).isEqualTo(Recordability.YES);
        assertThat(row.recording().comparison().orElseThrow().shift().sum().exact())
                .hasValue(55);
        assertThat(row.recording().comparison().orElseThrow().levelSum().exact())
                .hasValue(75);
        assertThat(referenceKind(judgement, "2026-04-01", Ear.LEFT)).isEqualTo(RecordingReference.Kind.FIRST_BASELINE);
        assertThat(row.dueDates().recordBy()).contains(LocalDate.parse("2026-05-01"));
        assertThat(judged(judgement, "2026-04-01", Ear.RIGHT).recording().answer())
                .isEqualTo(Recordability.NO);
    }

    @Test
    void theHiddenCaseWaitsForItsRetestToo() {
        Case f06 = vectorF06().decided(ANNUAL, Ears.LEFT, DecisionKind.BASELINE, "2024-05-01");
        Determination.Judged row = judged(f06.asOf("2026-04-20"), "2026-04-01", Ear.LEFT);
        assertThat(row.outcome()).isEqualTo(Outcome.NO_SHIFT);
        assertThat(row.recording().answer()).isEqualTo(Recordability.AWAITING_RETEST);
        assertThat(row.dueDates().retestBy()).contains(LocalDate.parse("2026-05-01"));

        f06.test("2026-04-15", TestPurpose.RETEST, "20 24 30", "10 10 10");
        assertThat(judged(f06.asOf(TODAY), "2026-04-01", Ear.LEFT).recording().answer())
                .isEqualTo(Recordability.NO);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-04-01", "2026-04-15"})
    void theEntryOfTheHiddenCaseIsClosedByNamingTheTestOrItsRetest(String named) {
        Case f06 = vectorF06()
                .decided(ANNUAL, Ears.LEFT, DecisionKind.BASELINE, "2024-05-01")
                .test("2026-04-15", TestPurpose.RETEST, "20 25 30", "10 10 10");
        assertThat(judged(f06.asOf(TODAY), "2026-04-01", Ear.LEFT).dueDates().recordBy())
                .contains(LocalDate.parse("2026-04-22"));
        assertThat(owed(f06.asOf(TODAY), FollowUpKind.RECORD)).isPresent();

        f06.decided(named, Ears.LEFT, DecisionKind.RECORDED, "2026-04-20");
        assertThat(owed(f06.asOf(TODAY), FollowUpKind.RECORD)).isEmpty();
    }

    @Test
    void aBaselineChosenForBetterHearingIsTheReference() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 20, 20)
                .test("2021-04-01", TestPurpose.ANNUAL, 15, 20)
                .test(NEXT, TestPurpose.ANNUAL, 25, 25)
                .decided("2021-04-01", Ears.LEFT, DecisionKind.BASELINE, "2021-05-01")
                .asOf(TODAY);
        assertThat(judged(judgement, NEXT, Ear.LEFT).recording().answer()).isEqualTo(Recordability.YES);
        assertThat(referenceKind(judgement, NEXT, Ear.LEFT)).isEqualTo(RecordingReference.Kind.IMPROVED_BASELINE);
        assertThat(judged(judgement, NEXT, Ear.RIGHT).recording().answer()).isEqualTo(Recordability.NO);
    }

    private static Case vectorF06() {
        return new Case()
                .test("2021-04-01", TestPurpose.BASELINE, "5 5 10", "10 10 10")
                .test(ANNUAL, TestPurpose.ANNUAL, "15 20 20", "10 10 10")
                .test("2026-04-01", TestPurpose.ANNUAL, "20 25 30", "10 10 10");
    }

    /** A shift of 20 dB to a level of 30 dB HL in both ears, confirmed by a retest on day 10. */
    private static Case confirmedInBothEars() {
        return new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test(ANNUAL, TestPurpose.ANNUAL, 30, 30)
                .test(RETEST, TestPurpose.RETEST, 30, 30);
    }

    private static Recordability answer(Case found, Ear ear) {
        return judged(found.asOf(TODAY), ANNUAL, ear).recording().answer();
    }

    private static String baselineDate(WorkerJudgement judgement, String date, Ear ear) {
        return judged(judgement, date, ear).comparison().earlier().date().toString();
    }

    private static RecordingReference.Kind referenceKind(WorkerJudgement judgement, String date, Ear ear) {
        Optional<RecordingReference.Kind> kind = judged(judgement, date, ear)
                .recording()
                .comparison()
                .map(comparison -> comparison.reference().kind());
        return kind.orElseThrow();
    }
}
