package org.thresholdregister.core.comparing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;
import static org.thresholdregister.core.audiometry.TestPurpose.ANNUAL;
import static org.thresholdregister.core.audiometry.TestPurpose.BASELINE;
import static org.thresholdregister.core.audiometry.TestPurpose.RETEST;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.comparing.Difference.Reason;
import org.thresholdregister.core.judging.Case;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/** Judging one record in two ways, and what the two answer differently. */
class DifferenceTest {

    private static List<Difference> differences(Case worker, String one, String other) {
        return TwoWays.differences(worker.history(), "2026-06-30", one, other);
    }

    private static Difference only(List<Difference> differences) {
        assertThat(differences).hasSize(1);
        return differences.getFirst();
    }

    /** 29 CFR 1910.95 Table F-1: 25 years 3, 5, 7 dB; 46 years 8, 13, 19 dB: 25 dB of 45 are for age. */
    @Test
    void anAllowanceThatTheShiftTurnsOnIsTheReason() {
        WorkerHistory history = TwoWays.ofAManBornIn1980(
                Vectors.flat(LocalDate.parse("2005-03-01"), BASELINE, 10, 5),
                Vectors.flat(LocalDate.parse("2026-03-02"), ANNUAL, 10, 20));
        Difference difference = only(TwoWays.differences(history, "2026-06-30", "osha", "osha off"));
        assertThat(difference.reason()).isEqualTo(Reason.AGE_ALLOWANCE);
        assertThat(difference.ear()).isEqualTo(Ear.RIGHT);
        assertThat(difference.test().date()).isEqualTo("2026-03-02");
        assertThat(difference.one().outcome()).isEqualTo(Outcome.NO_SHIFT);
        assertThat(difference.other().outcome()).isEqualTo(Outcome.CONFIRMED);
    }

    /** Without the allowance both would find a shift, though by other criteria: the reason is the allowance. */
    @Test
    void anAllowanceIsTheReasonAcrossRuleSetsToo() {
        WorkerHistory history = TwoWays.ofAManBornIn1980(
                Vectors.flat(LocalDate.parse("2005-03-01"), BASELINE, 10, 5),
                Vectors.flat(LocalDate.parse("2026-03-02"), ANNUAL, 10, 20));
        assertThat(only(TwoWays.differences(history, "2026-06-30", "osha", "dod"))
                        .reason())
                .isEqualTo(Reason.AGE_ALLOWANCE);
    }

    /** 15 dB at 2000 Hz alone is a shift for NIOSH; its mean of 5 dB is none for OSHA. */
    @Test
    void anotherCriterionIsTheReason() {
        Case worker =
                new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-03-02", ANNUAL, "10 10 10", "25 10 10");
        Difference difference = only(differences(worker, "osha", "niosh"));
        assertThat(difference.reason()).isEqualTo(Reason.CRITERION);
        assertThat(difference.ear()).isEqualTo(Ear.RIGHT);
        assertThat(difference.other().outcome()).isEqualTo(Outcome.AWAITING_RETEST);
    }

    /** The baseline of six years ago is too old for the UK guidance, which compares with the last three years. */
    @Test
    void anotherEarlierTestIsTheReason() {
        Case worker = new Case()
                .test("2016-03-01", BASELINE, 10, 10)
                .test("2019-02-01", ANNUAL, 10, 30)
                .test("2021-03-01", ANNUAL, 10, 30);
        assertThat(differences(worker, "osha", "uk-l108"))
                .extracting(
                        difference -> difference.test().date().getYear(),
                        Difference::ear,
                        difference -> difference.one().outcome(),
                        difference -> difference.other().outcome(),
                        Difference::reason)
                .containsExactly(tuple(2021, Ear.RIGHT, Outcome.CONFIRMED, Outcome.NO_SHIFT, Reason.REFERENCE));
    }

    @Test
    void aTestThatOneSideComparesWithNothingDiffersByItsReference() {
        Case worker = new Case().test("2016-03-01", BASELINE, 10, 10).test("2026-03-02", ANNUAL, 10, 10);
        assertThat(differences(worker, "osha", "uk-l108"))
                .extracting(Difference::ear, difference -> difference.other().outcome(), Difference::reason)
                .containsExactly(
                        tuple(Ear.LEFT, Outcome.BASELINE, Reason.REFERENCE),
                        tuple(Ear.RIGHT, Outcome.BASELINE, Reason.REFERENCE));
    }

    /** A lasting improvement of 10 dB on two tests moves the baseline, 49 CFR 227 Appendix C. */
    @Test
    void aRevisedBaselineIsAnotherReference() {
        Case worker = new Case()
                .test("2020-03-02", BASELINE, 30, 10)
                .test("2021-03-02", ANNUAL, 20, 10)
                .test("2022-03-02", ANNUAL, 20, 10)
                .test("2023-03-02", ANNUAL, 30, 10);
        Difference difference = only(differences(worker, "osha", "osha revised"));
        assertThat(difference.reason()).isEqualTo(Reason.REFERENCE);
        assertThat(difference.test().date()).isEqualTo("2023-03-02");
        assertThat(difference.one().outcome()).isEqualTo(Outcome.NO_SHIFT);
        assertThat(difference.other().outcome()).isEqualTo(Outcome.CONFIRMED);
    }

    /** OSHA gives a retest 30 days, FRA 90. */
    @Test
    void aRetestThatCountsOnOneSideOnlyIsTheReason() {
        Case worker = new Case()
                .test("2025-03-03", BASELINE, 10, 10)
                .test("2026-03-02", ANNUAL, 10, 30)
                .test("2026-05-01", RETEST, 10, 10);
        assertThat(differences(worker, "osha", "fra"))
                .extracting(
                        difference -> difference.test().date().toString(),
                        Difference::ear,
                        difference -> difference.one().outcome(),
                        difference -> difference.other().outcome(),
                        Difference::reason)
                .containsExactly(
                        tuple("2026-03-02", Ear.RIGHT, Outcome.CONFIRMED, Outcome.NOT_CONFIRMED, Reason.CONFIRMATION),
                        tuple("2026-05-01", Ear.LEFT, Outcome.NO_SHIFT, Outcome.RETEST, Reason.CONFIRMATION),
                        tuple("2026-05-01", Ear.RIGHT, Outcome.NO_SHIFT, Outcome.RETEST, Reason.CONFIRMATION));
    }

    /** A shift of 20 dB to 30 dB HL is recordable for OSHA; MSHA has a loss reported from 25 dB on. */
    @Test
    void whatIsRecordedIsTheReason() {
        Case worker = new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-03-02", ANNUAL, 10, 30);
        Difference difference = only(differences(worker, "osha", "msha"));
        assertThat(difference.reason()).isEqualTo(Reason.RECORDING);
        assertThat(difference.one().outcome()).isEqualTo(difference.other().outcome());
    }

    @Test
    void aRuleSetWithoutALogSaysNothingDifferentAboutACase() {
        Case worker = new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-03-02", ANNUAL, 10, 30);
        assertThat(differences(worker, "osha", "dod")).isEmpty();
        assertThat(differences(worker, "dod", "msha")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"osha, msha", "osha, fra", "osha, dod", "niosh, twice", "osha, osha off"})
    void recordsThatBothAnswerAlikeDoNotDiffer(String one, String other) {
        Case worker = new Case()
                .test("2024-03-04", BASELINE, 10, 10)
                .test("2025-03-03", ANNUAL, 10, 15)
                .test("2026-03-02", ANNUAL, 15, 10);
        assertThat(differences(worker, one, other)).isEmpty();
    }

    @Test
    void judgementsOfTwoRecordsAreNotCompared() {
        Case one = new Case().test("2025-03-03", BASELINE, 10, 10);
        Case more = new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-03-02", ANNUAL, 10, 10);
        Case another = new Case().test("2025-03-04", BASELINE, 10, 10);
        for (Case other : List.of(more, another)) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Difference.between(one.asOf("2026-06-30"), other.asOf("2026-06-30")));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Difference.between(other.asOf("2026-06-30"), one.asOf("2026-06-30")));
        }
    }

    static List<RuleSet> ruleSets() {
        return RuleSets.ALL;
    }

    /** Over random records, whichever two rule sets: the two sides swap, and every test that differs is listed. */
    @ParameterizedTest
    @MethodSource("ruleSets")
    void whatDiffersDoesNotDependOnWhichComesFirst(RuleSet ruleSet) {
        int[] found = {0};
        RandomHistories.check(51, 200, true, (history, options) -> {
            WorkerJudgement here = judge(history, options, ruleSet);
            assertThat(Difference.between(here, here)).isEmpty();
            for (RuleSet another : RuleSets.ALL) {
                WorkerJudgement there = judge(history, options, another);
                List<Difference> differences = Difference.between(here, there);
                List<Difference> swapped = Difference.between(there, here);
                assertThat(swapped)
                        .isEqualTo(differences.stream()
                                .map(difference -> new Difference(difference.other(), difference.one()))
                                .toList());
                assertThat(swapped)
                        .extracting(Difference::reason)
                        .isEqualTo(differences.stream().map(Difference::reason).toList());
                for (int i = 0; i < here.determinations().size(); i++) {
                    if (here.determinations().get(i).outcome()
                            != there.determinations().get(i).outcome()) {
                        assertThat(differences)
                                .contains(new Difference(
                                        here.determinations().get(i),
                                        there.determinations().get(i)));
                    }
                }
                found[0] += differences.size();
            }
        });
        assertThat(found[0]).isGreaterThan(500);
    }

    private static WorkerJudgement judge(WorkerHistory history, JudgingOptions options, RuleSet ruleSet) {
        return Judge.judge(
                history,
                new JudgingOptions(options.asOf(), ruleSet, options.ageCorrection(), options.baselineRevision()));
    }
}
