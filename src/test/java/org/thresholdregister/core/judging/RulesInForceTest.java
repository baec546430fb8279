package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.RulesInForce.Choice;
import org.thresholdregister.core.rules.Finding;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

class RulesInForceTest {

    private static final LocalDate SWITCH = LocalDate.parse("2026-01-01");

    private static RuleSet ruleSet(String word) {
        return RuleSets.find(word).orElseThrow();
    }

    private static Choice choice(LocalDate from, String ruleSet) {
        return new Choice(from, ruleSet(ruleSet), AgeCorrection.ON);
    }

    private static RulesInForce oshaThen(String ruleSet) {
        return new RulesInForce(List.of(choice(LocalDate.MIN, "osha"), choice(SWITCH, ruleSet)), Holidays.NONE);
    }

    private static WorkerJudgement judge(RulesInForce rules, Case worker, String asOf) {
        return rules.judge(worker.history(), LocalDate.parse(asOf), BaselineRevision.OFF);
    }

    /** 15 dB at 2000 Hz alone: a significant threshold shift of NIOSH, and a mean of 5 dB for OSHA. */
    private static Case worseAtOneFrequencyOn(String day) {
        return new Case()
                .test("2024-02-01", TestPurpose.BASELINE, 10, 10)
                .test(day, TestPurpose.ANNUAL, "10 10 10", "25 10 10");
    }

    @Test
    void aTestOnTheFirstDayIsJudgedByTheNewRules() {
        Determination row = Case.row(
                judge(oshaThen("niosh"), worseAtOneFrequencyOn("2026-01-01"), "2026-01-20"), "2026-01-01", Ear.RIGHT);
        assertThat(row.ruleSet()).isEqualTo(ruleSet("niosh"));
        assertThat(row.outcome()).isEqualTo(Outcome.AWAITING_RETEST);
    }

    @Test
    void aTestOnTheDayBeforeIsJudgedByTheOldRules() {
        Determination row = Case.row(
                judge(oshaThen("niosh"), worseAtOneFrequencyOn("2025-12-31"), "2026-01-20"), "2025-12-31", Ear.RIGHT);
        assertThat(row.ruleSet()).isEqualTo(RuleSets.OSHA);
        assertThat(row.outcome()).isEqualTo(Outcome.NO_SHIFT);
    }

    @Test
    void whatWasDeterminedBeforeTheChangeStays() {
        Case worker = worseAtOneFrequencyOn("2025-12-31").test("2026-06-01", TestPurpose.ANNUAL, 10, 10);
        WorkerJudgement judgement = judge(oshaThen("msha"), worker, "2026-07-01");
        assertThat(judgement.determinations())
                .extracting(row -> row.ruleSet().word())
                .containsExactly("osha", "osha", "osha", "osha", "msha", "msha");
        assertThat(judgement.determinations().subList(0, 4))
                .isEqualTo(worker.asOf("2026-07-01").determinations().subList(0, 4));
    }

    /** A retest after the change still answers for the test before it, by the rules of that test. */
    @Test
    void aRetestAfterTheChangeSettlesTheTestBeforeIt() {
        Case worker = new Case()
                .test("2024-02-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-12-20", TestPurpose.ANNUAL, 10, 30)
                .test("2026-01-10", TestPurpose.RETEST, 10, 10);
        WorkerJudgement judgement = judge(oshaThen("alberta"), worker, "2026-02-01");
        assertThat(Case.row(judgement, "2025-12-20", Ear.RIGHT).outcome()).isEqualTo(Outcome.NOT_CONFIRMED);
        assertThat(Case.row(judgement, "2026-01-10", Ear.RIGHT).ruleSet()).isEqualTo(ruleSet("alberta"));
    }

    @Test
    void beforeTheFirstDayOfAllTheFirstChoiceCounts() {
        RulesInForce rules = new RulesInForce(List.of(choice(SWITCH, "niosh")), Holidays.NONE);
        assertThat(rules.on(SWITCH.minusYears(40)).ruleSet()).isEqualTo(ruleSet("niosh"));
        RulesInForce later =
                new RulesInForce(List.of(choice(SWITCH, "niosh"), choice(SWITCH.plusYears(1), "dod")), Holidays.NONE);
        assertThat(later.on(SWITCH.minusDays(1)).ruleSet()).isEqualTo(ruleSet("niosh"));
        assertThat(later.on(SWITCH.plusYears(1).minusDays(1)).ruleSet()).isEqualTo(ruleSet("niosh"));
        assertThat(later.on(SWITCH.plusYears(1)).ruleSet()).isEqualTo(ruleSet("dod"));
    }

    /** OSHA tells a shift within 21 days, MSHA every result within ten working days. */
    @Test
    void aNoticeIsOwedByTheRulesOfItsTest() {
        Case before = new Case()
                .test("2024-02-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-12-31", TestPurpose.ANNUAL, 10, 30);
        assertThat(Case.owed(judge(oshaThen("msha"), before, "2026-01-05"), FollowUpKind.NOTICE))
                .map(FollowUp::dueDate)
                .contains(LocalDate.parse("2026-01-21"));
        Case after = new Case()
                .test("2024-02-01", TestPurpose.BASELINE, 10, 10)
                .test("2026-01-02", TestPurpose.ANNUAL, 10, 10);
        assertThat(Case.owed(judge(oshaThen("msha"), after, "2026-01-05"), FollowUpKind.NOTICE))
                .map(FollowUp::dueDate)
                .contains(LocalDate.parse("2026-01-16"));
    }

    /** UK guidance: every three years after the first two; OSHA: every year. */
    @Test
    void theNextTestIsOwedByTheRulesOfToday() {
        Case worker = new Case()
                .test("2020-06-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-06-02", TestPurpose.ANNUAL, 10, 10);
        RulesInForce rules = oshaThen("uk-l108");
        assertThat(Case.owed(judge(rules, worker, "2025-12-31"), FollowUpKind.ANNUAL_TEST))
                .map(FollowUp::dueDate)
                .contains(LocalDate.parse("2026-06-02"));
        assertThat(Case.owed(judge(rules, worker, "2026-01-01"), FollowUpKind.ANNUAL_TEST))
                .map(FollowUp::dueDate)
                .contains(LocalDate.parse("2028-06-02"));
    }

    /** UK guidance wants the first test before exposure, OSHA within six months. */
    @Test
    void aFirstTestIsOwedByTheRulesOfToday() {
        Case worker = new Case().enrolledFrom("2025-12-01");
        assertThat(Case.owed(judge(oshaThen("uk-l108"), worker, "2026-01-01"), FollowUpKind.BASELINE_TEST))
                .map(FollowUp::dueDate)
                .contains(LocalDate.parse("2025-12-01"));
        assertThat(Case.owed(judge(oshaThen("uk-l108"), worker, "2025-12-31"), FollowUpKind.BASELINE_TEST))
                .map(FollowUp::dueDate)
                .contains(LocalDate.parse("2026-06-01"));
    }

    @Test
    void holidaysReachTheDeadlines() {
        RulesInForce rules = new RulesInForce(
                List.of(choice(LocalDate.MIN, "osha"), choice(SWITCH, "msha")),
                new Holidays(Set.of(LocalDate.parse("2026-01-06"))));
        Case worker = new Case()
                .test("2024-02-01", TestPurpose.BASELINE, 10, 10)
                .test("2026-01-02", TestPurpose.ANNUAL, 10, 10);
        assertThat(Case.owed(judge(rules, worker, "2026-01-05"), FollowUpKind.NOTICE))
                .map(FollowUp::dueDate)
                .contains(LocalDate.parse("2026-01-19"));
    }

    @Test
    void aRuleThatIsReadBesideSpeaksOnlyOfTheTestsOfItsRuleSet() {
        Case worker = worseAtOneFrequencyOn("2025-12-31").test("2026-06-01", TestPurpose.ANNUAL, 10, 10);
        assertThat(judge(oshaThen("dod"), worker, "2026-07-01").findings())
                .isNotEmpty()
                .extracting(finding -> finding.test().date())
                .containsOnly(LocalDate.parse("2026-06-01"));
    }

    static List<RuleSet> ruleSets() {
        return RuleSets.ALL;
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void oneChoiceJudgesAsPlainJudgingDoes(RuleSet ruleSet) {
        RandomHistories.check(
                41,
                300,
                true,
                (history, options) -> assertThat(RulesInForce.always(ruleSet, options.ageCorrection())
                                .judge(history, options.asOf(), options.baselineRevision()))
                        .isEqualTo(Judge.judge(history, with(options, ruleSet))));
    }

    /** A change that changes nothing changes nothing. */
    @ParameterizedTest
    @MethodSource("ruleSets")
    void theSameRuleSetChosenAgainJudgesAsPlainJudgingDoes(RuleSet ruleSet) {
        Random random = new Random(42);
        RandomHistories.check(42, 300, true, (history, options) -> {
            RulesInForce rules = new RulesInForce(
                    List.of(
                            new Choice(LocalDate.MIN, ruleSet, options.ageCorrection()),
                            new Choice(someDayOf(history, random), ruleSet, options.ageCorrection())),
                    Holidays.NONE);
            WorkerJudgement judgement = rules.judge(history, options.asOf(), options.baselineRevision());
            WorkerJudgement plain = Judge.judge(history, with(options, ruleSet));
            assertThat(judgement.determinations()).isEqualTo(plain.determinations());
            assertThat(judgement.findings()).isEqualTo(plain.findings());
            assertThat(judgement.followUps()).isEqualTo(plain.followUps());
            assertThat(judgement.proposals()).isEqualTo(plain.proposals());
        });
    }

    @Test
    void eachTestIsJudgedAsIfTheRulesOfItsDayHadAlwaysBeenInForce() {
        Random random = new Random(43);
        RandomHistories.check(43, 500, true, (history, options) -> {
            List<Choice> choices = threeChoices(history, random);
            RulesInForce rules = new RulesInForce(choices, Holidays.NONE);
            WorkerJudgement judgement = rules.judge(history, options.asOf(), BaselineRevision.OFF);
            List<Determination> expected = new ArrayList<>();
            List<Finding> expectedFindings = new ArrayList<>();
            for (Determination row : Judge.judge(history, options.withBaselineRevision(BaselineRevision.OFF))
                    .determinations()) {
                Choice choice = rules.on(row.test().date());
                WorkerJudgement always = RulesInForce.always(choice.ruleSet(), choice.ageCorrection())
                        .judge(history, options.asOf(), BaselineRevision.OFF);
                expected.add(always.determinations().stream()
                        .filter(other -> other.test().equals(row.test()) && other.ear() == row.ear())
                        .findFirst()
                        .orElseThrow());
                always.findings().stream()
                        .filter(finding -> finding.test().equals(row.test()) && !expectedFindings.contains(finding))
                        .forEach(expectedFindings::add);
            }
            assertThat(judgement.determinations()).isEqualTo(expected);
            assertThat(judgement.findings()).isEqualTo(expectedFindings);
        });
    }

    @Test
    void theOrderOfTheChoicesDoesNotMatter() {
        Random random = new Random(44);
        RandomHistories.check(44, 300, true, (history, options) -> {
            List<Choice> choices = threeChoices(history, random);
            List<Choice> shuffled = new ArrayList<>(choices);
            Collections.shuffle(shuffled, random);
            RulesInForce rules = new RulesInForce(choices, Holidays.NONE);
            RulesInForce others = new RulesInForce(shuffled, Holidays.NONE);
            assertThat(others).isEqualTo(rules);
            assertThat(others.judge(history, options.asOf(), options.baselineRevision()))
                    .isEqualTo(rules.judge(history, options.asOf(), options.baselineRevision()));
        });
    }

    @Test
    void someRuleSetAndOnlyOneOfADayIsInForce() {
        assertThatIllegalArgumentException().isThrownBy(() -> new RulesInForce(List.of(), Holidays.NONE));
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new RulesInForce(List.of(choice(SWITCH, "osha"), choice(SWITCH, "niosh")), Holidays.NONE));
    }

    private static JudgingOptions with(JudgingOptions options, RuleSet ruleSet) {
        return new JudgingOptions(options.asOf(), ruleSet, options.ageCorrection(), options.baselineRevision());
    }

    private static List<Choice> threeChoices(WorkerHistory history, Random random) {
        LocalDate day = someDayOf(history, random);
        return List.of(
                new Choice(LocalDate.MIN, someRuleSet(random), AgeCorrection.ON),
                new Choice(day, someRuleSet(random), AgeCorrection.OFF),
                new Choice(day.plusDays(random.nextInt(1, 700)), someRuleSet(random), AgeCorrection.ON));
    }

    private static RuleSet someRuleSet(Random random) {
        return RuleSets.ALL.get(random.nextInt(RuleSets.ALL.size()));
    }

    /** The day of a test, or a day beside it. */
    private static LocalDate someDayOf(WorkerHistory history, Random random) {
        return history.audiograms()
                .get(random.nextInt(history.audiograms().size()))
                .date()
                .plusDays(random.nextInt(-1, 2));
    }
}
