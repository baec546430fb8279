package org.thresholdregister.core.caselife;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.thresholdregister.core.caselife.CaseMove.CLEARED;
import static org.thresholdregister.core.caselife.CaseMove.CLOSED;
import static org.thresholdregister.core.caselife.CaseMove.CONFIRMED;
import static org.thresholdregister.core.caselife.CaseMove.FOUND_HELD_BY_EARLIER_CASE;
import static org.thresholdregister.core.caselife.CaseMove.FOUND_NOT_RECORDABLE;
import static org.thresholdregister.core.caselife.CaseMove.FOUND_NOT_WORK_RELATED;
import static org.thresholdregister.core.caselife.CaseMove.FOUND_RECORDABLE;
import static org.thresholdregister.core.caselife.CaseMove.FOUND_WORK_RELATED;
import static org.thresholdregister.core.caselife.CaseMove.LEFT_UNDECIDED;
import static org.thresholdregister.core.caselife.CaseMove.LINED_OUT;
import static org.thresholdregister.core.caselife.CaseMove.NOTICE_SENT;
import static org.thresholdregister.core.caselife.CaseMove.PROTECTOR_REFITTED;
import static org.thresholdregister.core.caselife.CaseMove.RECORDED;
import static org.thresholdregister.core.caselife.CaseMove.RETEST_BOOKED;
import static org.thresholdregister.core.caselife.CaseMove.RETEST_SET_ASIDE;
import static org.thresholdregister.core.caselife.CaseMove.RE_ENTERED;
import static org.thresholdregister.core.caselife.CaseMove.SHIFT_FOUND;
import static org.thresholdregister.core.caselife.CaseMove.TEST_SET_ASIDE;
import static org.thresholdregister.core.caselife.CaseMove.TRAINED;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.caselife.CaseState.Entry;
import org.thresholdregister.core.caselife.CaseState.ForTheLog;
import org.thresholdregister.core.caselife.CaseState.Shift;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Case;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

class CaseLifeTest {

    private static final String T0 = "2026-04-01";
    private static final String RETEST = "2026-04-11";
    private static final String WINDOW_PASSED = "2026-05-02";
    private static final String LATER = "2026-06-30";
    private static final Citation PROTECTORS = new Citation("29 CFR 1910.95(g)(8)(ii)(A) and (B)");

    /** Levels of 15 at the baseline, so that 30 is a shift of 15 dB at a level of 30 dB HL. */
    private static Case baseline() {
        return new Case().test("2023-04-03", TestPurpose.BASELINE, 15, 10);
    }

    private static WorkerCases cases(Case of, String asOf) {
        JudgingOptions options = JudgingOptions.asOf(LocalDate.parse(asOf));
        WorkerHistory history = of.history();
        return WorkerCases.of(history, Judge.judge(history, options), options);
    }

    private static CaseLife only(Case of, String asOf) {
        List<CaseLife> cases = cases(of, asOf).cases();
        assertThat(cases).hasSize(1);
        return cases.getFirst();
    }

    private static List<CaseMove> moves(CaseLife life) {
        return life.history().stream().map(CaseEvent::move).toList();
    }

    private static CaseState left(CaseLife life) {
        return life.state(Ear.LEFT).orElseThrow();
    }

    private static Optional<String> owedBy(CaseLife life, CaseDuty duty) {
        return life.owed().stream()
                .filter(owed -> owed.duty() == duty)
                .findFirst()
                .map(owed -> owed.by().map(LocalDate::toString).orElse("no date"));
    }

    // The rows of the decision table for one ear under 29 CFR 1904.10: first test, retest, work-relatedness, result.

    @Test
    void row1NoShiftIsNoCase() {
        assertThat(cases(baseline().test(T0, TestPurpose.ANNUAL, 20, 10), LATER).cases())
                .isEmpty();
    }

    @Test
    void row2AShiftUnder25IsNotRecordableAndLeavesTheDutiesOfAShift() {
        CaseLife life = only(
                new Case().test("2023-04-03", TestPurpose.BASELINE, 0, 0).test(T0, TestPurpose.ANNUAL, 15, 0), LATER);
        assertThat(moves(life)).containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_NOT_RECORDABLE);
        assertThat(left(life).owed()).containsExactly(CaseDuty.NOTICE, CaseDuty.REFIT, CaseDuty.TRAINING);
    }

    @Test
    void row3ARetestThatReaches25IsRecordedWithinSevenDaysOfIt() {
        CaseLife life = only(
                new Case()
                        .test("2023-04-03", TestPurpose.BASELINE, 10, 0)
                        .test(T0, TestPurpose.ANNUAL, 20, 0)
                        .test(RETEST, TestPurpose.RETEST, 25, 0),
                LATER);
        assertThat(moves(life)).containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_RECORDABLE);
        assertThat(owedBy(life, CaseDuty.RECORD)).hasValue("2026-04-18");
    }

    @Test
    void row4And9ARetestWithoutAShiftClearsTheCaseAndClosesIt() {
        CaseLife life =
                only(baseline().test(T0, TestPurpose.ANNUAL, 30, 10).test(RETEST, TestPurpose.RETEST, 15, 10), LATER);
        assertThat(life.history())
                .extracting(event -> event.day().toString(), CaseEvent::move)
                .containsExactly(tuple(T0, SHIFT_FOUND), tuple(RETEST, CLEARED), tuple(RETEST, CLOSED));
        assertThat(life.owed()).isEmpty();
        assertThat(life.closedOn()).hasValue(LocalDate.parse(RETEST));
    }

    @Test
    void row5WhileARetestIsPlannedTheCaseIsPending() {
        CaseLife life = only(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .decided(T0, Ears.LEFT, DecisionKind.RETEST_BOOKED, "2026-04-03"),
                "2026-05-01");
        assertThat(moves(life)).containsExactly(SHIFT_FOUND, RETEST_BOOKED);
        assertThat(left(life).shift()).isEqualTo(Shift.RETEST_BOOKED);
        assertThat(life.retestBy()).hasValue(LocalDate.parse("2026-05-01"));
        assertThat(owedBy(life, CaseDuty.RECORD)).isEmpty();
        assertThat(owedBy(life, CaseDuty.NOTICE)).hasValue("2026-04-22");
    }

    @Test
    void row6WhereNoRetestIsWantedTheEntryNeedNotWait() {
        CaseLife life = only(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .decided(T0, Ears.LEFT, DecisionKind.RECORDED, "2026-04-08"),
                "2026-04-10");
        assertThat(moves(life)).containsExactly(SHIFT_FOUND, RECORDED);
        assertThat(life.history()).allMatch(event -> event.note().isEmpty());
        assertThat(left(life).entry()).isEqualTo(Entry.RECORDED);
    }

    @Test
    void row7And11WithTheWindowPassedTheFirstTestStandsWhateverALaterOneShows() {
        CaseLife late = cases(
                        baseline().test(T0, TestPurpose.ANNUAL, 30, 10).test(WINDOW_PASSED, TestPurpose.RETEST, 15, 10),
                        LATER)
                .cases()
                .getFirst();
        assertThat(late.history())
                .extracting(event -> event.day().toString(), CaseEvent::move)
                .containsExactly(
                        tuple(T0, SHIFT_FOUND),
                        tuple(WINDOW_PASSED, CONFIRMED),
                        tuple(WINDOW_PASSED, FOUND_RECORDABLE));
        assertThat(late.history().get(1).origin()).isEqualTo(new CaseEvent.Origin.ByTime());
        assertThat(owedBy(late, CaseDuty.RECORD)).hasValue("2026-05-01");
    }

    @Test
    void row8ARetestThatShowsBothTestsIsRecordedWithinSevenDaysOfIt() {
        CaseLife life =
                only(baseline().test(T0, TestPurpose.ANNUAL, 30, 10).test(RETEST, TestPurpose.RETEST, 30, 10), LATER);
        assertThat(life.history())
                .extracting(event -> event.day().toString(), CaseEvent::move)
                .containsExactly(tuple(T0, SHIFT_FOUND), tuple(RETEST, CONFIRMED), tuple(RETEST, FOUND_RECORDABLE));
        assertThat(owedBy(life, CaseDuty.RECORD)).hasValue("2026-04-18");
    }

    @Test
    void row10AShiftThatTheRetestConfirmsUnder25IsNotRecordable() {
        CaseLife life = only(
                new Case()
                        .test("2023-04-03", TestPurpose.BASELINE, 10, 0)
                        .test(T0, TestPurpose.ANNUAL, 25, 0)
                        .test(RETEST, TestPurpose.RETEST, 20, 0),
                LATER);
        assertThat(moves(life)).containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_NOT_RECORDABLE);
        assertThat(owedBy(life, CaseDuty.NOTICE)).hasValue("2026-05-02");
    }

    @Test
    void row12ARetestThatCouldNotTestTheEarSettlesNothing() {
        Case of = baseline()
                .test(T0, TestPurpose.ANNUAL, 30, 10)
                .test(RETEST, TestPurpose.RETEST, "CNT CNT CNT", "10 10 10");
        assertThat(left(only(of, "2026-05-01")).shift()).isEqualTo(Shift.FOUND);
        assertThat(moves(only(of, LATER))).containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_RECORDABLE);
    }

    @Test
    void row13ARetestThatShowsTheOtherEarFindsAndConfirmsIt() {
        CaseLife life =
                only(baseline().test(T0, TestPurpose.ANNUAL, 30, 15).test(RETEST, TestPurpose.RETEST, 30, 30), LATER);
        assertThat(life.ears()).isEqualTo(Ears.BOTH);
        assertThat(life.history())
                .extracting(event -> event.day().toString(), CaseEvent::ears, CaseEvent::move)
                .containsExactly(
                        tuple(T0, Ears.LEFT, SHIFT_FOUND),
                        tuple(RETEST, Ears.RIGHT, SHIFT_FOUND),
                        tuple(RETEST, Ears.BOTH, CONFIRMED),
                        tuple(RETEST, Ears.BOTH, FOUND_RECORDABLE));
    }

    @Test
    void row14FoundNotWorkRelatedBeforeTheDeadlineNothingIsRecorded() {
        CaseLife life = only(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .decided(T0, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2026-04-10"),
                LATER);
        assertThat(moves(life)).containsExactly(SHIFT_FOUND, FOUND_NOT_WORK_RELATED, CONFIRMED);
        assertThat(left(life).owed()).containsExactly(CaseDuty.NOTICE);
        assertThat(left(life).lifted()).containsExactly(CaseDuty.REFIT, CaseDuty.TRAINING);
    }

    @Test
    void row15FoundNotWorkRelatedAfterItWasRecordedTheEntryIsToBeLinedOut() {
        Case of = baseline()
                .test(T0, TestPurpose.ANNUAL, 30, 10)
                .decided(T0, Ears.LEFT, DecisionKind.RECORDED, "2026-05-05")
                .decided(T0, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2026-05-20");
        assertThat(owedBy(only(of, LATER), CaseDuty.LINE_OUT)).hasValue("no date");
        CaseLife linedOut = only(of.decided(T0, Ears.LEFT, DecisionKind.LINED_OUT, "2026-05-21"), LATER);
        assertThat(moves(linedOut))
                .containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_RECORDABLE, RECORDED, FOUND_NOT_WORK_RELATED, LINED_OUT);
        assertThat(owedBy(linedOut, CaseDuty.LINE_OUT)).isEmpty();
    }

    @Test
    void row16ARecordedCaseMayBeLinedOutAndEnteredAgain() {
        CaseLife life = only(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .decided(T0, Ears.LEFT, DecisionKind.RECORDED, "2026-05-05")
                        .decided(T0, Ears.LEFT, DecisionKind.LINED_OUT, "2026-06-01")
                        .decided(T0, Ears.LEFT, DecisionKind.RECORDED, "2026-06-10"),
                LATER);
        assertThat(moves(life))
                .containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_RECORDABLE, RECORDED, LINED_OUT, RE_ENTERED);
        assertThat(life.history()).allMatch(event -> event.note().isEmpty());
    }

    @Test
    void row17ALossThatAnEarlierCaseHoldsIsNotRecordedAgain() {
        CaseLife second = cases(
                        baseline()
                                .test("2025-04-01", TestPurpose.ANNUAL, 30, 10)
                                .decided("2025-04-01", Ears.LEFT, DecisionKind.RECORDED, "2025-04-20")
                                .test(T0, TestPurpose.ANNUAL, 30, 10),
                        LATER)
                .cases()
                .get(1);
        assertThat(moves(second)).containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_HELD_BY_EARLIER_CASE);
        assertThat(left(second).refusal(RECORDED)).hasValue(Refusal.HELD_BY_EARLIER_CASE);
    }

    @Test
    void row18AFurtherShiftFromTheRecordedAudiogramIsANewCase() {
        CaseLife second = cases(
                        baseline()
                                .test("2025-04-01", TestPurpose.ANNUAL, 30, 10)
                                .decided("2025-04-01", Ears.LEFT, DecisionKind.RECORDED, "2025-04-20")
                                .test(T0, TestPurpose.ANNUAL, 40, 10),
                        LATER)
                .cases()
                .get(1);
        assertThat(moves(second)).containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_RECORDABLE);
    }

    @Test
    void row19ACaseOfTheOtherEarHoldsNothingOfThisOne() {
        CaseLife second = cases(
                        baseline()
                                .test("2025-04-01", TestPurpose.ANNUAL, 15, 30)
                                .decided("2025-04-01", Ears.RIGHT, DecisionKind.RECORDED, "2025-04-20")
                                .test(T0, TestPurpose.ANNUAL, 30, 30),
                        LATER)
                .cases()
                .get(1);
        assertThat(left(second).forTheLog()).isEqualTo(ForTheLog.RECORDABLE);
        assertThat(second.state(Ear.RIGHT).orElseThrow().forTheLog()).isEqualTo(ForTheLog.HELD_BY_EARLIER_CASE);
    }

    @Test
    void row20ALossThatWasFoundNotWorkRelatedNeedsADeterminationAgain() {
        List<CaseLife> lives = cases(
                        baseline()
                                .test("2025-04-01", TestPurpose.ANNUAL, 30, 10)
                                .decided("2025-04-01", Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2025-04-20")
                                .test(T0, TestPurpose.ANNUAL, 30, 10),
                        LATER)
                .cases();
        assertThat(left(lives.getFirst()).forTheLog()).isEqualTo(ForTheLog.NOT_ASKED);
        assertThat(left(lives.get(1)).forTheLog()).isEqualTo(ForTheLog.RECORDABLE);
    }

    @Test
    void row21WhereTheLevelCannotBeKnownAPlainRetestIsJudgedAndElseItIsLeftUndecided() {
        Case of = new Case()
                .test("2023-04-03", TestPurpose.BASELINE, -10, 10)
                .test(T0, TestPurpose.ANNUAL, ">5 10 10", "10 10 10");
        CaseLife open = only(of, LATER);
        assertThat(moves(open)).containsExactly(SHIFT_FOUND, CONFIRMED, LEFT_UNDECIDED);
        assertThat(left(open).owed()).contains(CaseDuty.RECORDABILITY);
        assertThat(left(open).refusal(RECORDED)).isEmpty();
        assertThat(moves(only(of.test(RETEST, TestPurpose.RETEST, 25, 10), LATER)))
                .containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_RECORDABLE);
    }

    @Test
    void row22AShiftThatCannotBeKnownIsNoCase() {
        assertThat(cases(
                                new Case()
                                        .test("2023-04-03", TestPurpose.BASELINE, "NR 0 0", "10 10 10")
                                        .test(T0, TestPurpose.ANNUAL, "15 15 15", "10 10 10"),
                                LATER)
                        .cases())
                .isEmpty();
    }

    @Test
    void aCaseClosesWithTheLastDutyAndOpensAgainWithANewOne() {
        Case of = baseline()
                .test(T0, TestPurpose.ANNUAL, 30, 10)
                .decided(T0, Ears.LEFT, DecisionKind.NOTICE_GIVEN, "2026-04-10")
                .decided(T0, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2026-04-12");
        CaseLife closed = only(of, LATER);
        assertThat(closed.closedOn()).hasValue(LocalDate.parse(WINDOW_PASSED));
        CaseLife open = only(of.decided(T0, Ears.LEFT, DecisionKind.WORK_RELATED, "2026-06-01"), LATER);
        assertThat(moves(open))
                .containsExactly(
                        SHIFT_FOUND,
                        NOTICE_SENT,
                        FOUND_NOT_WORK_RELATED,
                        CONFIRMED,
                        CLOSED,
                        FOUND_WORK_RELATED,
                        FOUND_RECORDABLE);
        assertThat(open.isClosed()).isFalse();
        assertThat(left(open).owed()).containsExactly(CaseDuty.RECORD, CaseDuty.REFIT, CaseDuty.TRAINING);
    }

    @Test
    void protectorsAndTrainingAreOwedWithoutADateAndDoneForEarlierCasesToo() {
        Case of = baseline()
                .test("2025-04-01", TestPurpose.ANNUAL, 30, 10)
                .decided("2025-04-01", Ears.LEFT, DecisionKind.NOTICE_GIVEN, "2025-04-10")
                .decided("2025-04-01", Ears.LEFT, DecisionKind.RECORDED, "2025-04-20")
                .test(T0, TestPurpose.ANNUAL, 30, 10);
        assertThat(cases(of, LATER).cases().getFirst().owed())
                .containsExactly(
                        new Owed(CaseDuty.REFIT, Ears.LEFT, Optional.empty(), Optional.of(PROTECTORS)),
                        new Owed(CaseDuty.TRAINING, Ears.LEFT, Optional.empty(), Optional.of(PROTECTORS)));
        of.decided(T0, Ears.LEFT, DecisionKind.PROTECTOR_REFITTED, "2026-05-10")
                .decided(T0, Ears.LEFT, DecisionKind.TRAINED, "2026-05-11");
        List<CaseLife> lives = cases(of, LATER).cases();
        assertThat(lives.getFirst().owed()).isEmpty();
        assertThat(lives.getFirst().closedOn()).hasValue(LocalDate.parse("2026-05-11"));
        assertThat(moves(lives.getFirst())).containsSubsequence(PROTECTOR_REFITTED, TRAINED, CLOSED);
        assertThat(lives.get(1).owed()).extracting(Owed::duty).containsExactly(CaseDuty.NOTICE);
    }

    @Test
    void protectorsRefittedBeforeTheShiftWasFoundDoNothingForIt() {
        CaseLife second = cases(
                        baseline()
                                .test("2025-04-01", TestPurpose.ANNUAL, 30, 10)
                                .decided("2025-04-01", Ears.LEFT, DecisionKind.PROTECTOR_REFITTED, "2025-05-01")
                                .test(T0, TestPurpose.ANNUAL, 30, 10),
                        LATER)
                .cases()
                .get(1);
        assertThat(left(second).owed()).contains(CaseDuty.REFIT);
    }

    @Test
    void aTestSetAsideEndsItsCaseAndKeepsItsHistory() {
        CaseLife life = only(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .decided(T0, Ears.LEFT, DecisionKind.NOTICE_GIVEN, "2026-04-05")
                        .decided(T0, Ears.LEFT, DecisionKind.INVALID_TEST, "2026-04-08"),
                LATER);
        assertThat(moves(life)).containsExactly(SHIFT_FOUND, NOTICE_SENT, TEST_SET_ASIDE, CLOSED);
        assertThat(life.owed()).isEmpty();
        assertThat(left(life).refusal(NOTICE_SENT)).hasValue(Refusal.TEST_SET_ASIDE);
    }

    @Test
    void aRetestSetAsideSettlesNothingAndIsShown() {
        CaseLife life = only(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .test(RETEST, TestPurpose.RETEST, 15, 10)
                        .decided(RETEST, Ears.BOTH, DecisionKind.INVALID_TEST, "2026-04-14"),
                LATER);
        assertThat(life.history())
                .extracting(event -> event.day().toString(), CaseEvent::move)
                .startsWith(
                        tuple(T0, SHIFT_FOUND), tuple("2026-04-14", RETEST_SET_ASIDE), tuple(WINDOW_PASSED, CONFIRMED));
    }

    @Test
    void aDecisionFromElsewhereThatWasNoLegalMoveIsKeptWithANoteAndKeepsItsEffect() {
        CaseLife life = only(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .decided(T0, Ears.LEFT, DecisionKind.LINED_OUT, "2026-06-01"),
                LATER);
        assertThat(life.history().getLast())
                .extracting(CaseEvent::move, CaseEvent::note)
                .containsExactly(LINED_OUT, Optional.of(Refusal.NOT_ON_THE_LOG));
        assertThat(owedBy(life, CaseDuty.RECORD)).isEmpty();
    }

    @Test
    void aDecisionWithoutACaseIsKeptApart() {
        WorkerCases cases = cases(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .decided(T0, Ears.BOTH, DecisionKind.NOTICE_GIVEN, "2026-04-10")
                        .decided("2020-01-01", Ears.LEFT, DecisionKind.RECORDED, "2020-02-01"),
                LATER);
        assertThat(cases.withoutCase())
                .extracting(without -> without.decision().kind(), WorkerCases.WithoutCase::ear)
                .containsExactly(tuple(DecisionKind.RECORDED, Ear.LEFT), tuple(DecisionKind.NOTICE_GIVEN, Ear.RIGHT));
        assertThat(moves(cases.cases().getFirst())).contains(NOTICE_SENT);
    }

    @Test
    void theNextMovesTellWhatIsOwedWhatIsOpenAndWhatIsNot() {
        CaseLife life = only(baseline().test(T0, TestPurpose.ANNUAL, 30, 30), LATER);
        assertThat(life.nextMoves())
                .contains(
                        new NextMove.Open(NOTICE_SENT, Ears.BOTH, true),
                        new NextMove.Open(RECORDED, Ears.BOTH, true),
                        new NextMove.Open(PROTECTOR_REFITTED, Ears.BOTH, true),
                        new NextMove.Open(FOUND_NOT_WORK_RELATED, Ears.BOTH, false),
                        new NextMove.NotOpen(RETEST_BOOKED, Ears.BOTH, Refusal.SHIFT_CONFIRMED),
                        new NextMove.NotOpen(LINED_OUT, Ears.BOTH, Refusal.NOT_ON_THE_LOG))
                .extracting(NextMove::move)
                .doesNotContain(RE_ENTERED);
    }

    @Test
    void whereTheEarsDifferTheMoveNamesTheEarThatItIsOwedFor() {
        CaseLife life = only(
                new Case()
                        .test("2023-04-03", TestPurpose.BASELINE, 15, 0)
                        .test(T0, TestPurpose.ANNUAL, 30, 15)
                        .decided(T0, Ears.LEFT, DecisionKind.NOTICE_GIVEN, "2026-04-10"),
                LATER);
        assertThat(life.nextMoves())
                .contains(
                        new NextMove.Open(RECORDED, Ears.LEFT, true),
                        new NextMove.NotOpen(RECORDED, Ears.RIGHT, Refusal.NOT_RECORDABLE),
                        new NextMove.Open(NOTICE_SENT, Ears.RIGHT, true));
    }

    @Test
    void aDecisionEnteredNowIsObjectedToWhereItIsNoLegalMove() {
        WorkerHistory history = baseline()
                .test(T0, TestPurpose.ANNUAL, 30, 10)
                .decided(T0, Ears.LEFT, DecisionKind.RECORDED, "2026-05-20")
                .history();
        assertThat(objection(history, Ears.LEFT, DecisionKind.LINED_OUT, "2026-05-19"))
                .hasValue(new WorkerCases.Objection(Ear.LEFT, Refusal.NOT_ON_THE_LOG));
        assertThat(objection(history, Ears.LEFT, DecisionKind.LINED_OUT, "2026-05-21"))
                .isEmpty();
        assertThat(objection(history, Ears.BOTH, DecisionKind.NOTICE_GIVEN, "2026-05-21"))
                .hasValue(new WorkerCases.Objection(Ear.RIGHT, Refusal.NO_SHIFT_FOUND));
        assertThat(objection(history, Ears.LEFT, DecisionKind.RETEST_BOOKED, "2026-04-20"))
                .isEmpty();
        assertThat(objection(history, Ears.LEFT, DecisionKind.RETEST_BOOKED, "2026-05-01"))
                .as("day 30 counts")
                .isEmpty();
        assertThat(objection(history, Ears.LEFT, DecisionKind.RETEST_BOOKED, WINDOW_PASSED))
                .as("day 31 does not")
                .hasValue(new WorkerCases.Objection(Ear.LEFT, Refusal.SHIFT_CONFIRMED));
        assertThat(objection(history, Ears.BOTH, DecisionKind.BASELINE, "2026-05-21"))
                .isEmpty();
        assertThat(objection(history, Ears.BOTH, DecisionKind.INVALID_TEST, "2026-05-21"))
                .isEmpty();
    }

    private static Optional<WorkerCases.Objection> objection(
            WorkerHistory history, Ears ears, DecisionKind kind, String on) {
        return WorkerCases.objectionTo(
                new Decision(ears, LocalDate.parse(T0), kind, LocalDate.parse(on), "N. Invented", "entered now"),
                history,
                JudgingOptions.asOf(LocalDate.parse(LATER)));
    }

    @Test
    void everyEventNamesItsRuleAndEveryPersonsEventWhoAndWhy() {
        CaseLife life = only(
                baseline()
                        .test(T0, TestPurpose.ANNUAL, 30, 10)
                        .decided(T0, Ears.LEFT, DecisionKind.NOTICE_GIVEN, "2026-04-10"),
                LATER);
        assertThat(life.history())
                .extracting(CaseEvent::move, event -> event.rule().orElseThrow(), CaseEvent::by, CaseEvent::reason)
                .containsExactly(
                        tuple(SHIFT_FOUND, new Citation("29 CFR 1910.95(g)(10)(i)"), "", ""),
                        tuple(NOTICE_SENT, new Citation("29 CFR 1910.95(g)(8)(i)"), "Dr Invented", "as the test says"),
                        tuple(CONFIRMED, new Citation("29 CFR 1910.95(g)(7)(ii)"), "", ""),
                        tuple(FOUND_RECORDABLE, new Citation("29 CFR 1904.10(a)"), "", ""));
    }

    private static CaseLife only(Case of, RuleSet ruleSet, String asOf) {
        JudgingOptions options =
                new JudgingOptions(LocalDate.parse(asOf), ruleSet, AgeCorrection.ON, BaselineRevision.OFF);
        WorkerHistory history = of.history();
        List<CaseLife> cases =
                WorkerCases.of(history, Judge.judge(history, options), options).cases();
        assertThat(cases).hasSize(1);
        return cases.getFirst();
    }

    /** 30 CFR 62.174: within 30 calendar days of evidence or confirmation, here by a retest. */
    @Test
    void inMinesProtectorsAndTrainingHaveADate() {
        CaseLife life = only(
                baseline().test(T0, TestPurpose.ANNUAL, 30, 10).test(RETEST, TestPurpose.RETEST, 30, 10),
                RuleSets.find("msha").orElseThrow(),
                LATER);
        assertThat(owedBy(life, CaseDuty.REFIT)).hasValue("2026-05-11");
        assertThat(owedBy(life, CaseDuty.TRAINING)).hasValue("2026-05-11");
        assertThat(moves(life)).containsExactly(SHIFT_FOUND, CONFIRMED, FOUND_NOT_RECORDABLE);
    }

    /** NIOSH 98-126: two tests running; one alone never confirms, and no log is kept. */
    @Test
    void whereTwoTestsMustConfirmTheSecondSettlesItAndNoLogIsAsked() {
        RuleSet niosh = RuleSets.find("niosh").orElseThrow();
        Case of = baseline().test(T0, TestPurpose.ANNUAL, 30, 10);
        CaseLife waiting = only(of, niosh, LATER);
        assertThat(moves(waiting)).containsExactly(SHIFT_FOUND);
        assertThat(left(waiting).refusal(RECORDED)).hasValue(Refusal.NO_LOG);
        CaseLife cleared = only(of.test(RETEST, TestPurpose.RETEST, 15, 10), niosh, LATER);
        assertThat(moves(cleared)).containsExactly(SHIFT_FOUND, CLEARED, CLOSED);
    }
}
