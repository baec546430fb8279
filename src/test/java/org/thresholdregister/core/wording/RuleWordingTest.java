package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.Finding;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

class RuleWordingTest {

    private static final LocalDate BASELINE = LocalDate.parse("2024-03-09");
    private static final LocalDate TEST = LocalDate.parse("2026-03-09");

    @Test
    void aCategoryIsSaidWithItsSumAndItsRow() {
        assertThat(said("uk-l108", "uk_l108_sum", 10, 40))
                .contains(
                        "Right ear: the levels at 1000, 2000, 3000, 4000 and 6000 Hz are 10, 40, 40, 40, 10, a sum of"
                                + " 140 dB, a mean of 28.00 dB.",
                        "For men of 35 to 39 years the warning value is 100 dB and the referral value 154 dB.",
                        "The numbers of this rule were written from memory.");
        assertThat(String.join(" ", said("uk-l108", "uk_l108_sum", 10, 40))).contains("): category 2.");
    }

    @Test
    void aChangeIsSaidFrequencyByFrequencyFromTheTestThatItIsMeasuredFrom() {
        assertThat(said("dod", "dod_early_warning", 10, 25))
                .contains(
                        "Right ear: the changes since the test of 9 Mar 2024 at 1000, 2000, 3000 and 4000 Hz are 0,"
                                + " 15, 15, 15, the largest 15 dB.",
                        "Right ear, early warning (15 dB or more worse at 1000, 2000, 3000 or 4000 Hz): yes.",
                        "Unverified: the numbers of this rule were written from memory and are settings.");
    }

    @Test
    void aDifferenceBetweenTheEarsIsSaidFromEachSide() {
        assertThat(said("uk-l108", "uk_l108_unilateral", 10, 40))
                .contains("Right ear less the other at 1000, 2000, 3000 and 4000 Hz: 0, 30, 30, 30, a sum of 90 dB, a"
                        + " mean of 22.50 dB.");
    }

    @Test
    void aShiftThatNeedsASecondTestSaysSo() {
        List<String> working = working("niosh", 10, 25);
        assertThat(working)
                .contains(
                        "The change is that large at 2000, 3000 and 4000 Hz. 15 dB or more worse at any of 500, 1000,"
                                + " 2000, 3000, 4000 and 6000 Hz is a significant threshold shift: this is one.",
                        "One test alone does not establish the shift: the next one, wanted by 8 Apr 2026, has to show"
                                + " it at the same frequency of this ear.");
        assertThat(working).noneMatch(sentence -> sentence.contains("injury log"));
    }

    @Test
    void aReportableLossIsMeasuredFromTheFirstBaselineAndReportedInWorkingDays() {
        assertThat(working("msha", 10, 40))
                .contains(
                        "For the report the annual test of 9 Mar 2026 is measured from the first baseline, of 9 Mar"
                                + " 2024: a mean of 29.00 dB, a shift of 25 dB or more.",
                        "Reportable, if the loss is work-related.",
                        "It is reported by 23 Mar 2026.");
    }

    static List<RuleSet> ruleSets() {
        return RuleSets.ALL;
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void everyDeterminationAndFindingOfEveryRuleSetCanBeSaid(RuleSet ruleSet) {
        RandomHistories.check(31, 800, true, (history, options) -> {
            WorkerJudgement judgement = Judge.judge(
                    history,
                    new JudgingOptions(options.asOf(), ruleSet, options.ageCorrection(), options.baselineRevision()));
            for (Determination determination : judgement.determinations()) {
                assertThat(Working.of(determination)).isNotEmpty().allSatisfy(RuleWordingTest::isASentence);
            }
            for (Finding finding : judgement.findings()) {
                assertThat(RuleWording.of(finding)).isNotEmpty().allSatisfy(RuleWordingTest::isASentence);
            }
        });
    }

    private static void isASentence(Sentence sentence) {
        assertThat(sentence.text()).matches("[A-Z0-9].*\\.").doesNotContain("null", "Optional", "  ", "..", " ,");
    }

    private static List<String> said(String ruleSet, String rule, int before, int now) {
        return judgement(ruleSet, before, now).findings().stream()
                .filter(finding -> finding.rule().word().equals(rule)
                        && finding.test().date().equals(TEST))
                .flatMap(finding -> RuleWording.of(finding).stream())
                .map(Sentence::text)
                .toList();
    }

    private static List<String> working(String ruleSet, int before, int now) {
        return Working.of(judgement(ruleSet, before, now).determinations().getLast()).stream()
                .map(Sentence::text)
                .toList();
    }

    /** A man of 37 whose right ear goes from one level to another at 2000, 3000 and 4000 Hz. */
    private static WorkerJudgement judgement(String ruleSet, int before, int now) {
        return Judge.judge(
                new WorkerHistory(
                        new WorkerFacts(
                                "W-1",
                                Optional.of(LocalDate.parse("1988-06-01")),
                                Optional.of(Sex.MALE),
                                Optional.empty(),
                                Optional.empty()),
                        List.of(
                                Vectors.flat(BASELINE, TestPurpose.BASELINE, 10, before),
                                Vectors.flat(TEST, TestPurpose.ANNUAL, 10, now)),
                        List.of()),
                new JudgingOptions(
                        TEST.plusDays(40),
                        RuleSets.find(ruleSet).orElseThrow(),
                        AgeCorrection.ON,
                        BaselineRevision.OFF));
    }
}
