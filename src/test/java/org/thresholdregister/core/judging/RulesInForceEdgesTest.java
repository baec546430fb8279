package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.RulesInForce.Choice;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/** A workplace that changes its rule set is judged by the one of each test's day. */
class RulesInForceEdgesTest {

    private static final LocalDate CHANGE = LocalDate.parse("2024-01-01");
    private static final RuleSet ALBERTA = RuleSets.find("alberta").orElseThrow();

    /** A shift of 20 dB before the change and one after it. */
    private static final WorkerHistory HISTORY = new Case()
            .test("2022-03-09", TestPurpose.BASELINE, 10, 10)
            .test("2023-12-31", TestPurpose.ANNUAL, 30, 10)
            .test("2024-01-01", TestPurpose.ANNUAL, 30, 10)
            .history();

    @Test
    void aWorkplaceAnswersToSomeRuleSet() {
        assertThatIllegalArgumentException().isThrownBy(() -> new RulesInForce(List.of(), Holidays.NONE));
    }

    @ParameterizedTest
    @CsvSource({"2000-01-01, osha", "2023-12-31, osha", "2024-01-01, alberta", "2030-01-01, alberta"})
    void aRuleSetIsInForceFromItsFirstDay(LocalDate day, String word) {
        assertThat(changing().on(day).ruleSet().word()).isEqualTo(word);
    }

    @Test
    void eachTestIsJudgedByTheRuleSetOfItsDay() {
        WorkerJudgement judgement = judge(changing(), "2024-01-10");
        assertThat(judgement.determinations())
                .extracting(determination -> determination.test().date() + " " + determination.ear() + " "
                        + determination.ruleSet().word())
                .containsExactly(
                        "2022-03-09 LEFT osha",
                        "2022-03-09 RIGHT osha",
                        "2023-12-31 LEFT osha",
                        "2023-12-31 RIGHT osha",
                        "2024-01-01 LEFT alberta",
                        "2024-01-01 RIGHT alberta");
        assertThat(judgement.findings())
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.test().date()).isEqualTo("2024-01-01"));
    }

    /** OSHA's shift of 2023 is owed its retest and notice; the next test is owed by the rules of today. */
    @Test
    void whatIsOwedForATestStaysAsTheRulesOfItsDayHaveIt() {
        List<FollowUp> owed = judge(changing(), "2024-01-10").followUps();
        assertThat(owed)
                .extracting(FollowUp::kind)
                .containsExactly(FollowUpKind.NOTICE, FollowUpKind.RETEST, FollowUpKind.ANNUAL_TEST);
        // Alberta: every two years after the first year, where OSHA has every year.
        assertThat(owed.getLast().dueDate()).isEqualTo("2026-01-01");
    }

    /** MSHA's notice of the second test, within ten working days, is due before OSHA's of the first. */
    @Test
    void whatIsOwedByTwoRuleSetsIsListedByItsDay() {
        RulesInForce changing = new RulesInForce(
                List.of(
                        new Choice(LocalDate.MIN, RuleSets.OSHA, AgeCorrection.ON),
                        new Choice(CHANGE, RuleSets.find("msha").orElseThrow(), AgeCorrection.ON)),
                Holidays.NONE);
        List<FollowUp> owed = judge(changing, "2024-01-10").followUps();
        assertThat(owed).extracting(FollowUp::dueDate).isSorted();
        assertThat(owed.getFirst().testDate()).contains(CHANGE);
        assertThat(owed)
                .extracting(followUp -> followUp.testDate().orElseThrow())
                .contains(CHANGE.minusDays(1));
    }

    @Test
    void beforeTheChangeNothingIsOwedByTheLaterRules() {
        List<FollowUp> owed = judge(changing(), "2023-12-31").followUps();
        assertThat(owed)
                .filteredOn(followUp -> followUp.kind() == FollowUpKind.ANNUAL_TEST)
                .extracting(FollowUp::dueDate)
                .containsExactly(LocalDate.parse("2024-12-31"));
    }

    @Test
    void oneRuleSetForAllTimeJudgesAsItDoesByItself() {
        RulesInForce always = RulesInForce.always(RuleSets.OSHA, AgeCorrection.ON);
        assertThat(judge(always, "2024-01-10"))
                .isEqualTo(Judge.judge(HISTORY, JudgingOptions.asOf(LocalDate.parse("2024-01-10"))));
    }

    private static RulesInForce changing() {
        return new RulesInForce(
                List.of(
                        new Choice(CHANGE, ALBERTA, AgeCorrection.OFF),
                        new Choice(LocalDate.MIN, RuleSets.OSHA, AgeCorrection.ON)),
                Holidays.NONE);
    }

    private static WorkerJudgement judge(RulesInForce rules, String asOf) {
        return rules.judge(HISTORY, LocalDate.parse(asOf), BaselineRevision.OFF);
    }
}
