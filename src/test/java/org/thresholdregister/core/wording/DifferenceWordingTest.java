package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.audiometry.TestPurpose.ANNUAL;
import static org.thresholdregister.core.audiometry.TestPurpose.BASELINE;
import static org.thresholdregister.core.audiometry.TestPurpose.RETEST;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.comparing.Difference;
import org.thresholdregister.core.comparing.TwoWays;
import org.thresholdregister.core.judging.Case;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

class DifferenceWordingTest {

    private static List<String> why(WorkerHistory history, String one, String other) {
        var wording = new DifferenceWording(one.toUpperCase(), other.toUpperCase());
        return TwoWays.differences(history, "2026-03-20", one, other).stream()
                .map(wording::why)
                .toList();
    }

    private static List<String> why(Case worker, String one, String other) {
        return why(worker.history(), one, other);
    }

    /** 45 dB over three frequencies, of which Table F-1 takes 25 dB for the years from 25 to 46. */
    @Test
    void anAllowanceIsSaidWithBothMeans() {
        WorkerHistory history = TwoWays.ofAManBornIn1980(
                Vectors.flat(LocalDate.parse("2005-03-01"), BASELINE, 10, 5),
                Vectors.flat(LocalDate.parse("2026-03-02"), ANNUAL, 10, 20));
        assertThat(why(history, "osha", "osha off"))
                .containsExactly("OSHA: a mean of 6.67 dB at 2000, 3000 and 4000 Hz after 8.33 dB for age (before it"
                        + " 15.00 dB), no shift."
                        + " OSHA OFF: a mean of 15.00 dB at 2000, 3000 and 4000 Hz, a shift.");
    }

    @Test
    void anAllowanceThatIsNotKnownIsSaidToBe() {
        WorkerHistory history = TwoWays.ofAManBornIn1980(
                Vectors.flat(LocalDate.parse("2005-03-01"), BASELINE, 10, 5),
                Vectors.flat(LocalDate.parse("2026-03-02"), ANNUAL, 10, 20));
        WorkerFacts known = history.worker();
        WorkerHistory unknown = new WorkerHistory(
                new WorkerFacts(
                        known.workerId(),
                        Optional.empty(),
                        Optional.of(Sex.MALE),
                        known.enrolledFrom(),
                        known.endDate()),
                history.audiograms(),
                List.of());
        assertThat(why(unknown, "osha", "dod"))
                .containsExactly("OSHA: a mean of 15.00 dB or less at 2000, 3000 and 4000 Hz after an allowance for age"
                        + " that is not known, undecided. DOD: a mean of 15.00 dB at 2000, 3000 and 4000 Hz, a shift.");
    }

    @Test
    void anotherCriterionIsSaidByTheFrequenciesThatMeetIt() {
        Case worker = new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-03-02", ANNUAL, "10 10 10", "25 25 5");
        assertThat(why(worker, "osha off", "niosh"))
                .containsExactly(
                        "OSHA OFF: a mean of 8.33 dB at 2000, 3000 and 4000 Hz, no shift. NIOSH: worse by 15 dB"
                                + " at 2000 Hz and 15 dB at 3000 Hz, a shift.");
    }

    @Test
    void noResponseIsAChangeOfSoMuchOrMore() {
        Case worker =
                new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-03-02", ANNUAL, "10 10 10", "10 10 >25");
        assertThat(why(worker, "osha off", "niosh"))
                .containsExactly("OSHA OFF: a mean of 6.67 dB or more at 2000, 3000 and 4000 Hz, undecided. NIOSH:"
                        + " worse by 20 dB or more at 4000 Hz, a shift.");
    }

    @Test
    void aCriterionThatNoFrequencyMeetsIsSaidWithItsLimit() {
        Case worker =
                new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-03-02", ANNUAL, "10 10 10", "20 20 20");
        assertThat(why(worker, "osha", "niosh"))
                .containsExactly("OSHA: a mean of 10.00 dB at 2000, 3000 and 4000 Hz after 0.00 dB for age, a shift."
                        + " NIOSH: at no frequency 15 dB worse, no shift.");
    }

    @Test
    void aChangeThatIsNotKnownIsSaidToBe() {
        Case worker =
                new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-03-02", ANNUAL, "10 10 10", "25 CNT 10");
        assertThat(why(worker, "osha off", "niosh"))
                .containsExactly("OSHA OFF: a mean that is not known at 2000, 3000 and 4000 Hz, undecided. NIOSH: worse"
                        + " by 15 dB at 2000 Hz, a shift.");
        assertThat(why(worker, "alberta", "niosh"))
                .containsExactly("ALBERTA: changes of 0, 15, an unknown number of, 0 and 0 dB at 1000, 2000, 3000, 4000"
                        + " and 6000 Hz, undecided. NIOSH: worse by 15 dB at 2000 Hz, a shift.");
    }

    @Test
    void anotherEarlierTestIsSaidWithItsDay() {
        Case worker = new Case()
                .test("2021-03-01", BASELINE, 10, 10)
                .test("2024-02-01", ANNUAL, 10, 30)
                .test("2026-03-02", ANNUAL, 10, 30);
        assertThat(why(worker, "uk-l108", "osha off").getLast())
                .isEqualTo("UK-L108, compared with the test of 1 Feb 2024: a mean of 0.00 dB at 3000, 4000 and 6000 Hz,"
                        + " no shift. OSHA OFF, compared with the test of 1 Mar 2021: a mean of 20.00 dB at 2000, 3000"
                        + " and 4000 Hz, a shift.");
    }

    @Test
    void aComparisonWithNothingIsSaidToBe() {
        Case worker = new Case().test("2016-03-01", BASELINE, 10, 10).test("2026-03-02", ANNUAL, 10, 15);
        assertThat(why(worker, "osha off", "uk-l108").getLast())
                .isEqualTo("OSHA OFF, compared with the test of 1 Mar 2016: a mean of 5.00 dB at 2000, 3000 and 4000"
                        + " Hz, no shift. UK-L108, compared with nothing: baseline.");
    }

    @Test
    void aRetestThatCountsOnOneSideOnlyIsSaidWithItsDay() {
        Case worker = new Case()
                .test("2025-03-03", BASELINE, 10, 10)
                .test("2026-01-05", ANNUAL, 10, 30)
                .test("2026-03-02", RETEST, 10, 10);
        assertThat(why(worker, "osha", "fra"))
                .containsExactly(
                        "Both read the change alike. OSHA: shift confirmed, by the test itself. FRA: shift not"
                                + " confirmed, by the retest of 2 Mar 2026.",
                        "Both read the change alike. OSHA: no shift, by the test itself. FRA: a retest, which answers"
                                + " for the test of 5 Jan 2026.",
                        "Both read the change alike. OSHA: no shift, by the test itself. FRA: a retest, which answers"
                                + " for the test of 5 Jan 2026.");
    }

    @Test
    void aTestThatWaitsForAnotherIsSaidWithTheDayOfTheLatest() {
        Case worker = new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-01-05", ANNUAL, 10, 30);
        assertThat(why(worker, "fra", "dod"))
                .containsExactly("Both read the change alike. FRA: awaiting retest, wanted by 5 Apr 2026. DOD: shift"
                        + " confirmed, by the test itself.");
    }

    @Test
    void aSecondTestThatConfirmedAShiftOrDidNotIsSaidWithItsDay() {
        Case lasting = new Case()
                .test("2024-03-04", BASELINE, 10, 10)
                .test("2025-03-03", ANNUAL, 10, 25)
                .test("2026-03-02", ANNUAL, 10, 25);
        assertThat(why(lasting, "niosh", "dod"))
                .containsExactly("Both read the change alike. NIOSH: shift confirmed, by the test of 3 Mar 2025. DOD:"
                        + " awaiting retest, wanted by 1 Apr 2026.");
        Case once = new Case()
                .test("2024-03-04", BASELINE, 10, 10)
                .test("2025-03-03", ANNUAL, 10, 25)
                .test("2026-03-02", ANNUAL, 10, 10);
        assertThat(why(once, "niosh", "alberta"))
                .containsExactly("Both read the change alike. NIOSH: shift not confirmed, by the test of 2 Mar 2026."
                        + " ALBERTA: shift confirmed, by the test itself.");
    }

    @Test
    void whatIsRecordedIsSaidWithShiftAndLevel() {
        Case worker = new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-01-05", ANNUAL, 10, 30);
        assertThat(why(worker, "osha", "msha"))
                .containsExactly("Both agree on the shift. OSHA: recordable, a mean of 20.00 dB worse than on 3 Mar"
                        + " 2025 and a mean level of 30.00 dB HL. MSHA: not recordable, a mean of 20.00 dB worse than"
                        + " on 3 Mar 2025.");
    }

    @Test
    void whatASideFoundNamesTheLogOnlyWhereThereIsOne() {
        Case worker = new Case().test("2025-03-03", BASELINE, 10, 10).test("2026-01-05", ANNUAL, 10, 30);
        WorkerJudgement osha = worker.asOf("2026-03-20");
        assertThat(DifferenceWording.found(osha.determinations().getLast())).isEqualTo("shift confirmed, recordable");
        assertThat(DifferenceWording.found(osha.determinations().getFirst())).isEqualTo("baseline");
        WorkerJudgement dod = judge(worker.history(), JudgingOptions.asOf(LocalDate.parse("2026-03-20")), "dod");
        assertThat(DifferenceWording.found(dod.determinations().getLast())).isEqualTo("shift confirmed");
    }

    @Test
    void everyReasonHasWordsOfItsOwn() {
        assertThat(Stream.of(Difference.Reason.values()).map(DifferenceWording::reason))
                .doesNotHaveDuplicates()
                .allSatisfy(words -> assertThat(words).matches("[a-z ]{8,}"));
    }

    static List<RuleSet> ruleSets() {
        return RuleSets.ALL;
    }

    /** Over random records and every other rule set: whole sentences, no number without a unit, every reason met. */
    @ParameterizedTest
    @MethodSource("ruleSets")
    void everyDifferenceCanBeSaid(RuleSet ruleSet) {
        Set<Difference.Reason> met = EnumSet.noneOf(Difference.Reason.class);
        RandomHistories.check(61, 200, true, (history, options) -> {
            for (RuleSet another : RuleSets.ALL) {
                var wording = new DifferenceWording(ruleSet.shortName(), another.shortName());
                Difference.between(judge(history, options, ruleSet.word()), judge(history, options, another.word()))
                        .forEach(difference -> {
                            met.add(difference.reason());
                            assertThat(wording.why(difference))
                                    .matches("[A-Z].*\\.")
                                    .contains(ruleSet.shortName(), another.shortName())
                                    .doesNotContain("null", "Optional", "  ", "..", " ,", "of not known")
                                    .doesNotContainPattern("\\d+\\.\\d\\d (?!dB)");
                        });
            }
        });
        assertThat(met).contains(Difference.Reason.CRITERION, Difference.Reason.CONFIRMATION);
    }

    private static WorkerJudgement judge(WorkerHistory history, JudgingOptions options, String ruleSet) {
        return Judge.judge(
                history,
                new JudgingOptions(
                        options.asOf(),
                        RuleSets.find(ruleSet).orElseThrow(),
                        options.ageCorrection(),
                        options.baselineRevision()));
    }
}
