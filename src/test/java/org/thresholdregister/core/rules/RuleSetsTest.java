package org.thresholdregister.core.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Case;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.Deadline.CalendarDays;
import org.thresholdregister.core.wording.RuleSetWording;

/** The rule sets as data: what each has to name, and what its settings reach. */
class RuleSetsTest {

    static Stream<RuleSet> ruleSets() {
        return RuleSets.ALL.stream();
    }

    private static RuleSet ruleSet(String word) {
        return RuleSets.find(word).orElseThrow();
    }

    private static RuleSet with(String word, String setting, int value) {
        return RuleSets.with(ruleSet(word), Map.of(setting, value));
    }

    @Test
    void aRuleSetIsFoundByItsWordOnly() {
        assertThat(RuleSets.ALL).extracting(RuleSet::word).doesNotHaveDuplicates();
        assertThat(RuleSets.ALL).extracting(RuleSet::name).doesNotHaveDuplicates();
        for (RuleSet ruleSet : RuleSets.ALL) {
            assertThat(RuleSets.find(ruleSet.word())).containsSame(ruleSet);
            assertThat(ruleSet.word()).matches("[a-z][a-z0-9-]*").hasSizeLessThanOrEqualTo(20);
        }
        assertThat(RuleSets.find("OSHA")).isEmpty();
        assertThat(RuleSets.find("")).isEmpty();
        assertThat(RuleSets.words()).isEqualTo("osha, msha, fra, niosh, dod, uk-l108, alberta, aao, twice");
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void everyRuleSetNamesAParagraphForItsShiftAndThatOfEveryStepIsKnown(RuleSet ruleSet) {
        assertThat(ruleSet.paragraphs()).containsKey(Step.SHIFT);
        for (Step step : Step.values()) {
            assertThat(ruleSet.paragraph(step).place()).isNotBlank();
        }
        assertThat(ruleSet.duties())
                .allSatisfy(duty -> assertThat(duty.basis().place()).isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void everyRuleOfASetHasAWordOfItsOwn(RuleSet ruleSet) {
        assertThat(ruleSet.furtherRules()).extracting(Rule::word).doesNotHaveDuplicates();
        assertThat(ruleSet.settings()).extracting(Setting::word).doesNotHaveDuplicates();
    }

    /** The same word in two rule sets is the same rule. */
    @Test
    void aRulesWordMeansOneThing() {
        Map<String, Rule> byWord = new HashMap<>();
        for (RuleSet ruleSet : RuleSets.ALL) {
            for (Rule rule : ruleSet.furtherRules()) {
                Rule known = byWord.putIfAbsent(rule.word(), rule);
                assertThat(known).isIn(null, rule);
            }
        }
        assertThat(byWord).hasSizeGreaterThan(10);
    }

    /** Whatever is unverified can be set, and whatever can be set is unverified. */
    @ParameterizedTest
    @MethodSource("ruleSets")
    void aRuleSetWithUnverifiedNumbersHasSettings(RuleSet ruleSet) {
        boolean anythingUnverified = Stream.concat(
                        ruleSet.duties().stream().map(Duty::provenance),
                        ruleSet.furtherRules().stream().map(Rule::provenance))
                .anyMatch(Provenance.UNVERIFIED::equals);
        assertThat(!ruleSet.settings().isEmpty()).isEqualTo(anythingUnverified);
    }

    @Test
    void aSettingThatTheRuleSetDoesNotHaveIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with("osha", "notice-days", 30))
                .withMessage("the rule set osha has no setting notice-days");
        assertThatIllegalArgumentException().isThrownBy(() -> with("niosh", "retest-days", 30));
    }

    @ParameterizedTest
    @CsvSource({
        "fra, notice-days, 0",
        "fra, notice-days, 366",
        "niosh, confirm-days, -1",
        "dod, early-warning-db, 61",
        "dod, negative-shift-db, 0"
    })
    void aValueOutsideItsRangeIsRefusedAndTheRangeIsTold(String ruleSet, String setting, int value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(ruleSet, setting, value))
                .withMessageContaining(setting + " is " + value + "; it goes from 1 to ");
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void theEndsOfARangeAreTaken(RuleSet ruleSet) {
        for (Setting setting : ruleSet.settings()) {
            for (int value : List.of(setting.lowest(), setting.highest())) {
                assertThat(RuleSets.with(ruleSet, Map.of(setting.word(), value)).settings())
                        .contains(setting.with(value))
                        .hasSameSizeAs(ruleSet.settings());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void aRuleSetWithItsOwnValuesIsTheSameRuleSet(RuleSet ruleSet) {
        assertThat(RuleSets.with(ruleSet, Map.of())).isEqualTo(ruleSet);
        for (Setting setting : ruleSet.settings()) {
            assertThat(RuleSets.with(ruleSet, Map.of(setting.word(), setting.value())))
                    .isEqualTo(ruleSet)
                    .hasSameHashCodeAs(ruleSet);
            assertThat(RuleSets.with(ruleSet, Map.of(setting.word(), setting.lowest())))
                    .isNotEqualTo(ruleSet);
        }
    }

    @Test
    void oneSettingLeavesTheOthersAndASecondChangeTheFirst() {
        RuleSet changed = with("dod", "retest-days", 60);
        assertThat(changed.settings())
                .extracting(Setting::word, Setting::value)
                .containsExactly(
                        tuple("retest-days", 60),
                        tuple("baseline-days", 30),
                        tuple("negative-shift-db", 10),
                        tuple("early-warning-db", 15));
        assertThat(RuleSets.with(changed, Map.of("baseline-days", 90)).settings())
                .extracting(Setting::value)
                .containsExactly(60, 90, 10, 15);
        assertThat(RuleSets.find("dod").orElseThrow().settings())
                .extracting(Setting::value)
                .containsExactly(30, 30, 10, 15);
    }

    @Test
    void aChangedTimeForNoticeReachesRuleDutyAndWording() {
        RuleSet changed = with("fra", "notice-days", 45);
        assertThat(changed.notice().orElseThrow().deadline()).isEqualTo(new CalendarDays(45));
        assertThat(changed.duties().stream()
                        .filter(duty -> duty.what().equals("The employee is told in writing."))
                        .map(Duty::deadline))
                .singleElement()
                .satisfies(deadline -> assertThat(deadline).contains(new CalendarDays(45)));
        assertThat(RuleSetWording.notice(changed)).contains("within 45 days");
        assertThat(RuleSetWording.setting(changed.settings().getFirst()))
                .isEqualTo("notice-days: the time for written notice of a shift, 45 days");
        assertThat(dueDate(changed, FollowUpKind.NOTICE)).isEqualTo("2026-04-23");
        assertThat(dueDate(ruleSet("fra"), FollowUpKind.NOTICE)).isEqualTo("2026-04-08");
    }

    @Test
    void aChangedTimeForTheSecondTestReachesRuleDutyAndWording() {
        RuleSet changed = with("niosh", "confirm-days", 20);
        assertThat(changed.retest().orElseThrow().days()).isEqualTo(20);
        assertThat(changed.duties())
                .extracting(RuleSetWording::when)
                .contains("within 20 days of the test that shows" + " the change");
        assertThat(RuleSetWording.retest(changed)).endsWith("within 20 days.");
        assertThat(dueDate(changed, FollowUpKind.RETEST)).isEqualTo("2026-03-29");
        assertThat(dueDate(ruleSet("niosh"), FollowUpKind.RETEST)).isEqualTo("2026-04-08");
    }

    @Test
    void aChangedNumberOfDecibelsReachesTheRuleAndItsWords() {
        Case worker = worseBy15();
        assertThat(earlyWarnings(ruleSet("dod"), worker)).containsExactly("no", "yes");
        RuleSet changed = with("dod", "early-warning-db", 16);
        assertThat(earlyWarnings(changed, worker)).containsExactly("no", "no");
        assertThat(changed.furtherRules())
                .extracting(Rule::explained)
                .contains("16 dB or more worse at 1000, 2000, 3000 or 4000 Hz");
    }

    /** {@code dod}: the first test within the time that a site sets. */
    @Test
    void aChangedTimeForTheBaselineReachesTheSchedule() {
        Case worker = new Case().enrolledFrom("2026-03-01");
        assertThat(owed(with("dod", "baseline-days", 60), worker, FollowUpKind.BASELINE_TEST))
                .isEqualTo("2026-04-30");
        assertThat(owed(ruleSet("dod"), worker, FollowUpKind.BASELINE_TEST)).isEqualTo("2026-03-31");
    }

    /** The right ear has changed by 15 dB from 2000 to 4000 Hz, on a Monday. */
    private static Case worseBy15() {
        return new Case()
                .test("2025-03-10", TestPurpose.BASELINE, 10, 10)
                .test("2026-03-09", TestPurpose.ANNUAL, 10, 25);
    }

    private static LocalDate dueDate(RuleSet ruleSet, FollowUpKind kind) {
        return owed(ruleSet, worseBy15(), kind);
    }

    private static LocalDate owed(RuleSet ruleSet, Case worker, FollowUpKind kind) {
        return Case.owed(judge(ruleSet, worker), kind).map(FollowUp::dueDate).orElseThrow();
    }

    private static List<String> earlyWarnings(RuleSet ruleSet, Case worker) {
        return judge(ruleSet, worker).findings().stream()
                .filter(finding -> finding.rule().word().equals("dod_early_warning"))
                .map(finding -> finding.verdict().word())
                .toList();
    }

    private static WorkerJudgement judge(RuleSet ruleSet, Case worker) {
        return Judge.judge(
                worker.history(),
                new JudgingOptions(LocalDate.parse("2026-03-20"), ruleSet, AgeCorrection.ON, BaselineRevision.OFF));
    }

    /** HSE L108, table of hearing categories, both columns from memory (see the file). */
    @Test
    void theTableOfCategoriesIsThatOfTheVectorsForEveryAge() {
        List<Map<String, String>> expected = Vectors.rows("uk-l108-categories.csv");
        assertThat(expected).hasSize(20);
        for (Map<String, String> row : expected) {
            Sex sex = row.get("sex").equals("M") ? Sex.MALE : Sex.FEMALE;
            int youngest = Integer.parseInt(row.get("age_min"));
            int oldest = row.get("age_max").isEmpty() ? 99 : Integer.parseInt(row.get("age_max"));
            // People under 18 read the first row: our reading, the table begins there.
            for (int age = youngest == 18 ? 14 : youngest; age <= oldest; age++) {
                assertThat(SumTable.L108.rows(OptionalInt.of(age), Optional.of(sex)))
                        .as("%s of %s", sex, age)
                        .extracting(SumTable.Row::warningSum, SumTable.Row::referralSum)
                        .containsExactly(tuple(
                                Integer.valueOf(row.get("warning_sum_db")),
                                Integer.valueOf(row.get("referral_sum_db"))));
            }
        }
    }

    @Test
    void withoutAgeOrSexEveryRowThatMayBeMeantIsRead() {
        assertThat(SumTable.L108.rows(OptionalInt.of(37), Optional.empty())).hasSize(2);
        assertThat(SumTable.L108.rows(OptionalInt.empty(), Optional.of(Sex.FEMALE)))
                .hasSize(10);
        assertThat(SumTable.L108.rows(OptionalInt.empty(), Optional.empty())).hasSize(20);
    }
}
