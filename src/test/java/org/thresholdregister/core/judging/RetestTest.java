package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.judging.Case.judged;
import static org.thresholdregister.core.judging.Case.row;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

/** 29 CFR 1910.95(g)(7)(ii): a retest within 30 days may stand as the annual audiogram. */
class RetestTest {

    @Test
    void aRetestOnDayThirtyCounts() {
        // Day 30 is within 30 days (letters of 17 April 1991 and 4 March 2004: calendar days from the test).
        WorkerJudgement judgement =
                shifted().test("2026-05-01", TestPurpose.RETEST, 15, 10).asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.NOT_CONFIRMED);
        assertThat(row(judgement, "2026-05-01", Ear.LEFT).outcome()).isEqualTo(Outcome.RETEST);
    }

    @Test
    void aRetestOnDayThirtyOneDoesNot() {
        WorkerJudgement judgement =
                shifted().test("2026-05-02", TestPurpose.RETEST, 15, 10).asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, "2026-05-02", Ear.LEFT).outcome()).isEqualTo(Outcome.NO_SHIFT);
    }

    @Test
    void aRetestOnTheSameDayCounts() {
        // Letter of 14 August 2003: an immediate retest after refitting the earphones is one.
        WorkerJudgement judgement =
                shifted().test("2026-04-01", TestPurpose.RETEST, 15, 10).asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.NOT_CONFIRMED);
    }

    @Test
    void theShiftAwaitsARetestUntilDayThirtyAndStandsFromDayThirtyOne() {
        assertThat(judged(shifted().asOf("2026-05-01"), "2026-04-01", Ear.LEFT).outcome())
                .isEqualTo(Outcome.AWAITING_RETEST);
        assertThat(judged(shifted().asOf("2026-05-02"), "2026-04-01", Ear.LEFT).outcome())
                .isEqualTo(Outcome.CONFIRMED);
    }

    @Test
    void theRetestStandsForBothEars() {
        // Letter of 18 June 1985: a shift that the retest shows in the other ear counts too.
        WorkerJudgement judgement =
                shifted().test("2026-04-11", TestPurpose.RETEST, 30, 30).asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.RIGHT).comparison().isShift())
                .isEqualTo(Answer.NO);
        assertThat(judged(judgement, "2026-04-01", Ear.RIGHT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).dueDates().notifyBy())
                .contains(LocalDate.parse("2026-05-02"));
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).dueDates().recordBy())
                .contains(LocalDate.parse("2026-04-18"));
    }

    @Test
    void ofSeveralRetestsTheLastOneAnswers() {
        WorkerJudgement judgement = shifted()
                .test("2026-04-11", TestPurpose.RETEST, 15, 10)
                .test("2026-04-21", TestPurpose.RETEST, 30, 10)
                .asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).settledBy().date())
                .isEqualTo(LocalDate.parse("2026-04-21"));
    }

    @Test
    void aRetestThatLeavesAnEarOpenLeavesItWithTheAnnualTest() {
        Case retested = shifted().test("2026-04-11", TestPurpose.RETEST, "30 DNT 30", "10 10 10");
        assertThat(judged(retested.asOf("2026-04-20"), "2026-04-01", Ear.LEFT).outcome())
                .isEqualTo(Outcome.AWAITING_RETEST);
        assertThat(judged(retested.asOf("2026-06-30"), "2026-04-01", Ear.LEFT).outcome())
                .isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(retested.asOf("2026-06-30"), "2026-04-01", Ear.LEFT)
                        .settledBy()
                        .date())
                .isEqualTo(LocalDate.parse("2026-04-01"));
    }

    @Test
    void aLateRetestIsATestOfItsOwnAndMayOpenAWindow() {
        WorkerJudgement judgement = shifted()
                .test("2026-05-02", TestPurpose.RETEST, 30, 10)
                .test("2026-05-20", TestPurpose.RETEST, 15, 10)
                .asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, "2026-05-02", Ear.LEFT).outcome()).isEqualTo(Outcome.NOT_CONFIRMED);
        assertThat(row(judgement, "2026-05-20", Ear.LEFT).outcome()).isEqualTo(Outcome.RETEST);
    }

    @Test
    void aRetestAnswersTheLatestTestThatAsks() {
        WorkerJudgement judgement = shifted()
                .test("2026-04-15", TestPurpose.EXIT, 30, 10)
                .test("2026-04-20", TestPurpose.RETEST, 15, 10)
                .asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, "2026-04-15", Ear.LEFT).outcome()).isEqualTo(Outcome.NOT_CONFIRMED);
    }

    @Test
    void aRetestThatShowsTheShiftUnderTheLevelLeavesNothingToRecord() {
        // 1904.10(b)(4): the recordable shift is not confirmed where either test fails; the level on the retest is
        // 24.67.
        WorkerJudgement judgement = shifted()
                .test("2026-04-11", TestPurpose.RETEST, "24 25 25", "10 10 10")
                .asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).recording().answer())
                .isEqualTo(Recordability.NO);
    }

    @Test
    void withoutAPlaceToStandInARetestIsJudgedByItself() {
        WorkerJudgement judgement = new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2026-04-01", TestPurpose.ANNUAL, 15, 10)
                .test("2026-04-11", TestPurpose.RETEST, 30, 10)
                .asOf("2026-06-30");
        assertThat(judged(judgement, "2026-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.NO_SHIFT);
        assertThat(judged(judgement, "2026-04-11", Ear.LEFT).outcome()).isEqualTo(Outcome.CONFIRMED);
    }

    /** A shift of 20 dB to a level of 30 dB HL in the left ear on 1 April 2026. */
    private static Case shifted() {
        return new Case()
                .test("2020-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2026-04-01", TestPurpose.ANNUAL, 30, 10);
    }
}
