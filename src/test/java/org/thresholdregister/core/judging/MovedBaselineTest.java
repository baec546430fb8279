package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.judging.Case.judged;
import static org.thresholdregister.core.judging.Case.row;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.recording.RecordingReference;

/**
 * What a moved baseline does to the tests after it, and to the question of the log, which is then asked from the
 * recording reference: 29 CFR 1904.10(b)(2)(i) and the readings in the developers' notes.
 */
class MovedBaselineTest {

    private static final String TODAY = "2027-06-30";

    @Test
    void aTestBeforeTheDecisionIsMeasuredFromTheFirstBaseline() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 20, 20)
                .test("2021-04-01", TestPurpose.ANNUAL, 15, 20)
                .test("2021-06-01", TestPurpose.EXIT, 40, 20)
                .test("2022-04-01", TestPurpose.ANNUAL, 40, 20)
                .decided("2021-04-01", Ears.LEFT, DecisionKind.BASELINE, "2021-07-01")
                .decided("2021-06-01", Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2021-07-01")
                .asOf(TODAY);
        assertThat(reference(judgement, "2021-06-01")).isEqualTo(RecordingReference.Kind.FIRST_BASELINE);
        assertThat(reference(judgement, "2022-04-01")).isEqualTo(RecordingReference.Kind.IMPROVED_BASELINE);
    }

    /** The question of the log is settled by the shift from the baseline as long as that has not moved. */
    @Test
    void aTestWithoutAShiftFromAnUnmovedBaselineIsMeasuredFromNothingElse() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2021-04-01", TestPurpose.ANNUAL, 15, 15)
                .test("2022-04-01", TestPurpose.ANNUAL, "10 - 10", "10 10 10")
                .decided("2021-04-01", Ears.RIGHT, DecisionKind.BASELINE, "2022-05-01")
                .test("2023-04-01", TestPurpose.ANNUAL, 15, 15)
                .asOf(TODAY);
        assertThat(judged(judgement, "2021-04-01", Ear.RIGHT).recording())
                .isEqualTo(Recording.without(Recordability.NO));
        assertThat(judged(judgement, "2022-04-01", Ear.LEFT).recording())
                .isEqualTo(Recording.without(Recordability.UNDECIDED));
        assertThat(judged(judgement, "2023-04-01", Ear.LEFT).recording())
                .isEqualTo(Recording.without(Recordability.NO));
        assertThat(judged(judgement, "2023-04-01", Ear.RIGHT).recording().comparison())
                .isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-04-01", "2026-04-15"})
    void theCauseOfTheHiddenCaseIsFoundByNamingTheTestOrItsRetest(String named) {
        Case hidden = hiddenCase().test("2026-04-15", TestPurpose.RETEST, "20 25 30", "10 10 10");
        assertThat(answer(hidden.asOf(TODAY), "2026-04-01")).isEqualTo(Recordability.YES);
        hidden.decided(named, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2026-05-10");
        assertThat(answer(hidden.asOf(TODAY), "2026-04-01")).isEqualTo(Recordability.NO);
    }

    /** Reading 9: the date of any retest in the window names the test, also of one that does not count. */
    @ParameterizedTest
    @ValueSource(strings = {"2024-04-01", "2024-04-11", "2024-04-20"})
    void theCauseIsFoundByNamingAnyRetestInTheWindow(String named) {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2024-04-01", TestPurpose.ANNUAL, 30, 10)
                .test("2024-04-11", TestPurpose.RETEST, 30, 10)
                .test("2024-04-20", TestPurpose.RETEST, 30, 10)
                .decided(named, Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2024-05-10")
                .asOf(TODAY);
        assertThat(answer(judgement, "2024-04-01")).isEqualTo(Recordability.NO);
    }

    @Test
    void aRetestThatLeavesTheHiddenCaseOpenLeavesItWithTheTest() {
        WorkerJudgement judgement = hiddenCase()
                .test("2026-04-15", TestPurpose.RETEST, "- 25 30", "10 10 10")
                .asOf(TODAY);
        assertThat(answer(judgement, "2026-04-01")).isEqualTo(Recordability.YES);
        assertThat(settledOn(judgement, "2026-04-01")).isEqualTo("2026-04-01");
    }

    /** A retest answers for the latest test before it that shows the shift from the reference, here the first one. */
    @Test
    void theRetestOfTheNextTestIsNotTheRetestOfTheHiddenCase() {
        WorkerJudgement judgement = hiddenCase()
                .test("2026-04-15", TestPurpose.RETEST, "20 25 30", "10 10 10")
                .test("2026-04-20", TestPurpose.EXIT, "20 25 30", "10 10 10")
                .test("2026-04-25", TestPurpose.RETEST, "20 24 30", "10 10 10")
                .decided("2026-04-01", Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2026-05-10")
                .decided("2026-04-15", Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2026-05-10")
                .asOf(TODAY);
        assertThat(settledOn(judgement, "2026-04-01")).isEqualTo("2026-04-15");
        assertThat(settledOn(judgement, "2026-04-20")).isEqualTo("2026-04-25");
    }

    @Test
    void aTestWithoutAShiftInBetweenTakesNoRetestAway() {
        WorkerJudgement judgement = hiddenCase()
                .test("2026-04-20", TestPurpose.EXIT, "10 10 10", "10 10 10")
                .test("2026-04-25", TestPurpose.RETEST, "20 24 30", "10 10 10")
                .asOf(TODAY);
        assertThat(settledOn(judgement, "2026-04-01")).isEqualTo("2026-04-25");
        assertThat(settledOn(judgement, "2026-04-20")).isEqualTo("2026-04-20");
    }

    /** The retest that shows the shift first is then a test of its own. */
    @Test
    void aTestWithoutAShiftFromTheReferenceHasNoRetest() {
        WorkerJudgement judgement = movedToLastingShift()
                .test("2026-04-01", TestPurpose.ANNUAL, "5 5 10", "10 10 10")
                .test("2026-04-15", TestPurpose.RETEST, "20 25 30", "10 10 10")
                .asOf(TODAY);
        assertThat(answer(judgement, "2026-04-01")).isEqualTo(Recordability.NO);
        assertThat(settledOn(judgement, "2026-04-01")).isEqualTo("2026-04-01");
        assertThat(answer(judgement, "2026-04-15")).isEqualTo(Recordability.YES);
    }

    @Test
    void aRetestThatSettlesTheShiftFromTheMovedBaselineSettlesTheCase() {
        WorkerJudgement judgement = movedToLastingShift()
                .test("2026-04-01", TestPurpose.ANNUAL, 40, 10)
                .test("2026-04-15", TestPurpose.RETEST, 38, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(settledOn(judgement, "2026-04-01")).isEqualTo("2026-04-15");
        assertThat(answer(judgement, "2026-04-01")).isEqualTo(Recordability.YES);
    }

    /** The reference lacks a level, so that no test can say how far it has moved from there. */
    @Test
    void aRetestThatConfirmsTheShiftSettlesTheCaseThoughTheReferenceLacksALevel() {
        WorkerJudgement judgement = incompleteFirstBaseline("10 10 10")
                .test("2026-04-01", TestPurpose.ANNUAL, 40, 10)
                .test("2026-04-15", TestPurpose.RETEST, 38, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(settledOn(judgement, "2026-04-01")).isEqualTo("2026-04-15");
        assertThat(answer(judgement, "2026-04-01")).isEqualTo(Recordability.UNDECIDED);
    }

    @Test
    void aRetestThatShowsNoShiftLeavesTheCaseWithTheTestWhereTheReferenceLacksALevel() {
        WorkerJudgement judgement = incompleteFirstBaseline("10 10 10")
                .test("2026-04-01", TestPurpose.ANNUAL, 40, 10)
                .test("2026-04-15", TestPurpose.RETEST, 12, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.NOT_CONFIRMED);
        assertThat(settledOn(judgement, "2026-04-01")).isEqualTo("2026-04-01");
    }

    /** The level by itself rules a case out, once the shift from the baseline is known to be none. */
    @Test
    void withoutAShiftAndUnderTheLevelThereIsNoCaseThoughTheReferenceLacksALevel() {
        WorkerJudgement judgement = incompleteFirstBaseline("10 10 10")
                .test("2026-04-01", TestPurpose.ANNUAL, 12, 10)
                .asOf(TODAY);
        assertThat(answer(judgement, "2026-04-01")).isEqualTo(Recordability.NO);
    }

    @Test
    void whereNeitherShiftCanBeToldTheCaseIsUndecided() {
        WorkerJudgement judgement = incompleteFirstBaseline("10 - 10")
                .test("2026-04-01", TestPurpose.ANNUAL, 12, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.UNDECIDED);
        assertThat(answer(judgement, "2026-04-01")).isEqualTo(Recordability.UNDECIDED);
    }

    @Test
    void whereTheShiftFromTheReferenceIsNoneThereIsNoCaseThoughTheBaselineLacksALevel() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2024-04-01", TestPurpose.ANNUAL, "10 - 10", "10 10 10")
                .decided("2024-04-01", Ears.LEFT, DecisionKind.BASELINE, "2024-05-01")
                .test("2026-04-01", TestPurpose.ANNUAL, 12, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.UNDECIDED);
        assertThat(answer(judgement, "2026-04-01")).isEqualTo(Recordability.NO);
    }

    /** A shift from a baseline that was moved back, and none from the last case, is that case. */
    @Test
    void aShiftFromTheBaselineThatTheLastCaseHoldsIsRecordedAlready() {
        WorkerJudgement judgement = new Case()
                .test("2019-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2020-04-01", TestPurpose.ANNUAL, 12, 10)
                .test("2021-04-01", TestPurpose.ANNUAL, 30, 10)
                .decided("2020-04-01", Ears.LEFT, DecisionKind.BASELINE, "2021-06-01")
                .test("2022-04-01", TestPurpose.ANNUAL, 30, 10)
                .asOf(TODAY);
        assertThat(answer(judgement, "2021-04-01")).isEqualTo(Recordability.YES);
        assertThat(judged(judgement, "2022-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(reference(judgement, "2022-04-01")).isEqualTo(RecordingReference.Kind.RECORDABLE_CASE);
        assertThat(answer(judgement, "2022-04-01")).isEqualTo(Recordability.ALREADY_RECORDED);
    }

    /** 30 CFR 62.101: a loss of 25 dB is reported once, also where the revised baseline shows none any more. */
    @Test
    void aLossThatWasReportedIsNotReportedAgainAfterTheBaselineMoved() {
        WorkerJudgement judgement = new Case()
                .by("msha")
                .test("2019-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2021-04-01", TestPurpose.ANNUAL, 40, 10)
                .decided("2021-04-01", Ears.LEFT, DecisionKind.BASELINE, "2021-06-01")
                .test("2022-04-01", TestPurpose.ANNUAL, 41, 10)
                .asOf(TODAY);
        assertThat(answer(judgement, "2021-04-01")).isEqualTo(Recordability.YES);
        assertThat(judged(judgement, "2022-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.NO_SHIFT);
        assertThat(answer(judgement, "2022-04-01")).isEqualTo(Recordability.ALREADY_RECORDED);
    }

    @Test
    void aTestBeforeTheFirstBaselineMayBeChosenToo() {
        WorkerJudgement judgement = new Case()
                .test("2019-04-01", TestPurpose.ANNUAL, 5, 10)
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .decided("2019-04-01", Ears.LEFT, DecisionKind.BASELINE, "2020-06-01")
                .test("2021-04-01", TestPurpose.ANNUAL, 15, 10)
                .asOf(TODAY);
        assertThat(baselineDate(judgement, "2021-04-01")).isEqualTo("2019-04-01");
    }

    @Test
    void anAcceptedRevisionIsTheBaselineOfTheTestsAfterIt() {
        WorkerJudgement judgement = new Case()
                .with(BaselineRevision.APPLY)
                .test("2020-04-01", TestPurpose.BASELINE, 40, 40)
                .test("2021-04-01", TestPurpose.ANNUAL, 30, 40)
                .test("2022-04-01", TestPurpose.ANNUAL, 30, 40)
                .test("2023-04-01", TestPurpose.ANNUAL, 30, 40)
                .asOf(TODAY);
        assertThat(baselineDate(judgement, "2022-04-01")).isEqualTo("2020-04-01");
        assertThat(baselineDate(judgement, "2023-04-01")).isEqualTo("2021-04-01");
    }

    /** A person moves the baseline once; the two better tests after it are counted from there, and both count. */
    @Test
    void theRuleOfRevisionStartsAgainFromAChosenBaselineAndOnlyOnce() {
        WorkerJudgement judgement = new Case()
                .with(BaselineRevision.APPLY)
                .test("2020-04-01", TestPurpose.BASELINE, 20, 20)
                .test("2021-04-01", TestPurpose.ANNUAL, 40, 20)
                .decided("2021-04-01", Ears.LEFT, DecisionKind.BASELINE, "2021-05-01")
                .test("2022-04-01", TestPurpose.ANNUAL, 30, 20)
                .test("2023-04-01", TestPurpose.ANNUAL, 31, 20)
                .asOf(TODAY);
        assertThat(judgement.proposals()).singleElement().satisfies(proposal -> {
            assertThat(proposal.kind()).isEqualTo(BaselineChange.Kind.PERSISTENT_IMPROVEMENT);
            assertThat(proposal.from().date()).isEqualTo("2021-04-01");
            assertThat(proposal.evidence())
                    .containsExactly(LocalDate.parse("2022-04-01"), LocalDate.parse("2023-04-01"));
        });
    }

    /** Reading 8: a retest answers the question of its test, and so on that test's baseline. */
    @Test
    void aRetestIsComparedWithTheBaselineOfTheTestThatItAnswersFor() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2024-04-01", TestPurpose.ANNUAL, 30, 10)
                .decided("2024-04-01", Ears.LEFT, DecisionKind.BASELINE, "2024-04-05")
                .test("2024-04-11", TestPurpose.RETEST, 30, 10)
                .asOf(TODAY);
        Determination retest = row(judgement, "2024-04-11", Ear.LEFT);
        assertThat(retest).isInstanceOf(Determination.Retest.class);
        assertThat(retest.shift().orElseThrow().earlier().date()).isEqualTo("2020-04-01");
    }

    @Test
    void anEarWhoseTestWasSetAsideIsJudgedOnTheRetestItself() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2024-04-01", TestPurpose.ANNUAL, 30, 30)
                .decided("2024-04-01", Ears.LEFT, DecisionKind.INVALID_TEST, "2024-04-05")
                .test("2024-04-11", TestPurpose.RETEST, 30, 30)
                .asOf(TODAY);
        assertThat(judged(judgement, "2024-04-11", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(row(judgement, "2024-04-11", Ear.RIGHT)).isInstanceOf(Determination.Retest.class);
    }

    private static Case movedToLastingShift() {
        return new Case()
                .test("2021-04-01", TestPurpose.BASELINE, "5 5 10", "10 10 10")
                .test("2024-04-01", TestPurpose.ANNUAL, "15 20 20", "10 10 10")
                .decided("2024-04-01", Ears.LEFT, DecisionKind.BASELINE, "2024-05-01");
    }

    /** Vector F06: no shift from the revised baseline, a recordable one from the first. */
    private static Case hiddenCase() {
        return movedToLastingShift().test("2026-04-01", TestPurpose.ANNUAL, "20 25 30", "10 10 10");
    }

    /** The first baseline, which stays the reference, lacks a level; the chosen one has these. */
    private static Case incompleteFirstBaseline(String chosen) {
        return new Case()
                .test("2020-04-01", TestPurpose.BASELINE, "10 - 10", "10 10 10")
                .test("2024-04-01", TestPurpose.ANNUAL, chosen, "10 10 10")
                .decided("2024-04-01", Ears.LEFT, DecisionKind.BASELINE, "2024-05-01");
    }

    private static Recordability answer(WorkerJudgement judgement, String date) {
        return judged(judgement, date, Ear.LEFT).recording().answer();
    }

    private static String settledOn(WorkerJudgement judgement, String date) {
        return comparison(judgement, date).decidingTest().date().toString();
    }

    private static RecordingReference.Kind reference(WorkerJudgement judgement, String date) {
        return comparison(judgement, date).reference().kind();
    }

    private static Recording.Comparison comparison(WorkerJudgement judgement, String date) {
        return judged(judgement, date, Ear.LEFT).recording().comparison().orElseThrow();
    }

    private static String baselineDate(WorkerJudgement judgement, String date) {
        return judged(judgement, date, Ear.LEFT).comparison().earlier().date().toString();
    }
}
