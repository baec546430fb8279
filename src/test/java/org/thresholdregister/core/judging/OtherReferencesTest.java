package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.judging.Case.judged;
import static org.thresholdregister.core.judging.Case.row;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.rules.NoticeRule;

/** HSE L108 compares a test with the latest one of the last three years instead of with a baseline. */
class OtherReferencesTest {

    private static final String TODAY = "2030-06-30";

    @Test
    void aTestIsComparedWithTheLatestBeforeIt() {
        WorkerJudgement judgement = new Case()
                .by("uk-l108")
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2023-04-01", TestPurpose.ANNUAL, 12, 10)
                .test("2024-04-01", TestPurpose.ANNUAL, 14, 10)
                .test("2025-04-01", TestPurpose.ANNUAL, 16, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2023-04-01", Ear.LEFT)
                        .comparison()
                        .earlier()
                        .date())
                .isEqualTo("2022-04-01");
        assertThat(judged(judgement, "2024-04-01", Ear.LEFT)
                        .comparison()
                        .earlier()
                        .date())
                .isEqualTo("2023-04-01");
    }

    @ParameterizedTest
    @CsvSource({"2025-04-01, true", "2025-04-02, false"})
    void aTestOlderThanThreeYearsIsComparedWithNothing(String test, boolean compared) {
        WorkerJudgement judgement = new Case()
                .by("uk-l108")
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .test(test, TestPurpose.ANNUAL, 12, 10)
                .asOf(TODAY);
        assertThat(row(judgement, test, Ear.LEFT).shift().isPresent()).isEqualTo(compared);
    }

    /** No test stands before a baseline where there is none. */
    @Test
    void theFirstTestIsNotBeforeTheBaselineWhereNothingIsComparedWithOne() {
        WorkerJudgement judgement = new Case()
                .by("uk-l108")
                .test("2020-04-01", TestPurpose.ANNUAL, 10, 10)
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .asOf(TODAY);
        assertThat(row(judgement, "2020-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.BASELINE);
        WorkerJudgement byOsha = new Case()
                .test("2020-04-01", TestPurpose.ANNUAL, 10, 10)
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .asOf(TODAY);
        assertThat(row(byOsha, "2020-04-01", Ear.LEFT).outcome()).isEqualTo(Outcome.BEFORE_BASELINE);
    }

    /** NIOSH 98-126: the second of two tests running confirms both of them. */
    @Test
    void theLaterOfTwoTestsThatConfirmEachOtherSettlesBoth() {
        WorkerJudgement judgement = new Case()
                .by("niosh")
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2023-04-01", TestPurpose.ANNUAL, 30, 10)
                .test("2024-04-01", TestPurpose.ANNUAL, 31, 10)
                .asOf(TODAY);
        Determination.Judged first = judged(judgement, "2023-04-01", Ear.LEFT);
        Determination.Judged second = judged(judgement, "2024-04-01", Ear.LEFT);
        assertThat(first.outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(second.outcome()).isEqualTo(Outcome.CONFIRMED);
        assertThat(first.settledBy()).isEqualTo(second.test());
        assertThat(second.settledBy()).isEqualTo(second.test());
        assertThat(second.settlingComparison()).isEqualTo(second.comparison());
    }

    /** 29 CFR 1910.95(g)(7)(ii): the retest takes the test's place. */
    @Test
    void theRetestSettlesTheTestWhosePlaceItTakes() {
        WorkerJudgement judgement = new Case()
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2023-04-01", TestPurpose.ANNUAL, 30, 10)
                .test("2023-04-20", TestPurpose.RETEST, 28, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2023-04-01", Ear.LEFT).settledBy().date()).isEqualTo("2023-04-20");
    }

    /** 30 CFR 62.175 tells every result; 29 CFR 1910.95(g)(8)(i) only a shift. */
    @ParameterizedTest
    @CsvSource({"osha, 12, false", "osha, 30, true", "msha, 12, true", "msha, 30, true"})
    void onlyWhatTheRuleSetTellsIsOwedANotice(String ruleSet, int level, boolean owed) {
        WorkerJudgement judgement = new Case()
                .by(ruleSet)
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2023-04-03", TestPurpose.ANNUAL, level, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2023-04-03", Ear.LEFT)
                        .dueDates()
                        .notifyBy()
                        .isPresent())
                .isEqualTo(owed);
    }

    @ParameterizedTest
    @CsvSource({
        "SHIFT, AWAITING_RETEST CONFIRMED",
        "CONFIRMED_SHIFT, CONFIRMED",
        "EVERY_TEST, BASELINE BEFORE_BASELINE NO_SHIFT AWAITING_RETEST CONFIRMED NOT_CONFIRMED UNDECIDED RETEST"
    })
    void eachOccasionOfNoticeNamesItsOutcomes(NoticeRule.Occasion occasion, String told) {
        for (Outcome outcome : Outcome.values()) {
            assertThat(outcome.isToldWhere(occasion))
                    .as(outcome.name())
                    .isEqualTo(List.of(told.split(" ")).contains(outcome.name()));
        }
    }

    @Test
    void whatIsOwedIsListedByItsDay() {
        WorkerJudgement judgement = new Case()
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2023-04-03", TestPurpose.ANNUAL, 30, 10)
                .asOf("2023-04-10");
        assertThat(judgement.followUps())
                .extracting(followUp -> followUp.kind() + " " + followUp.dueDate())
                .containsExactly("NOTICE 2023-04-24", "RETEST 2023-05-03", "ANNUAL_TEST 2024-04-03");
    }

    @Test
    void aChosenBaselineMovesNothingWhereNothingIsComparedWithOne() {
        WorkerJudgement judgement = new Case()
                .by("uk-l108")
                .test("2022-04-01", TestPurpose.BASELINE, 10, 10)
                .test("2023-04-01", TestPurpose.ANNUAL, 12, 10)
                .decided("2022-04-01", Ears.BOTH, DecisionKind.BASELINE, "2023-05-01")
                .test("2024-04-01", TestPurpose.ANNUAL, 14, 10)
                .asOf(TODAY);
        assertThat(judged(judgement, "2024-04-01", Ear.LEFT)
                        .comparison()
                        .earlier()
                        .date())
                .isEqualTo(LocalDate.parse("2023-04-01"));
    }
}
