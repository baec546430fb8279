package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Case;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.rules.Step;
import org.thresholdregister.core.shift.FrequencyShift;
import org.thresholdregister.core.shift.ThresholdShift;

class WorkingTest {

    private static final String TODAY = "2026-06-30";

    @Test
    void appendixFReadsAloudAsItsExampleDoes() {
        // 29 CFR 1910.95 Appendix F, worked example, right ear, from 27 to 32.
        LocalDate birth = LocalDate.parse("1990-06-15");
        WorkerHistory history = new WorkerHistory(
                new WorkerFacts("F1", Optional.of(birth), Optional.of(Sex.MALE), Optional.empty(), Optional.empty()),
                List.of(
                        Vectors.audiogram(
                                birth.plusYears(27),
                                TestPurpose.BASELINE,
                                List.of("10", "10", "10"),
                                List.of("0", "0", "5")),
                        Vectors.audiogram(
                                birth.plusYears(32),
                                TestPurpose.ANNUAL,
                                List.of("10", "10", "10"),
                                List.of("10", "10", "25"))),
                List.of());
        List<Sentence> sentences = Working.of(Judge.judge(history, JudgingOptions.asOf(LocalDate.parse(TODAY)))
                .determinations()
                .getLast());

        assertThat(sentences)
                .extracting(Sentence::withBasis)
                .containsExactly(
                        "Right ear: the annual test of 15 Jun 2022 is compared with the baseline of 15 Jun 2017."
                                + " [29 CFR 1910.95(g)(7)(i)]",
                        "The age allowance is read from Table F-1 at 27 and at 32 years."
                                + " [29 CFR 1910.95(g)(10)(ii) and Appendix F]",
                        "2000 Hz: 10 dB HL now, 0 at the baseline, 10 worse; 1 of it is the age allowance from 27 to"
                                + " 32; 9 left. [29 CFR 1910.95(g)(10)(ii) and Appendix F]",
                        "3000 Hz: 10 dB HL now, 0 at the baseline, 10 worse; 1 of it is the age allowance from 27 to"
                                + " 32; 9 left. [29 CFR 1910.95(g)(10)(ii) and Appendix F]",
                        "4000 Hz: 25 dB HL now, 5 at the baseline, 20 worse; 3 of it is the age allowance from 27 to"
                                + " 32; 17 left. [29 CFR 1910.95(g)(10)(ii) and Appendix F]",
                        "What is left adds up to 9 + 9 + 17 = 35 dB, a mean of 11.67 dB. A mean of 10 dB or more is a"
                                + " standard threshold shift: this is one. [29 CFR 1910.95(g)(10)(i)]",
                        "Without the age allowance the mean is 13.33 dB: a shift."
                                + " [29 CFR 1910.95(g)(10)(ii) and Appendix F]",
                        "No retest until 15 Jul 2022 answered for this ear: the shift stands."
                                + " [29 CFR 1910.95(g)(7)(ii)]",
                        "For the injury log the annual test of 15 Jun 2022 is measured from the first baseline, of"
                                + " 15 Jun 2017: a mean of 11.67 dB, a shift. [29 CFR 1904.10(b)(2)(i)]",
                        "The levels at 2000, 3000 and 4000 Hz are 10, 10, 25, a mean of 15.00 dB HL without any age"
                                + " allowance; 25 dB or more is not reached. [29 CFR 1904.10(b)(2)(ii)]",
                        "The two tests are not both met in this ear: not recordable. [29 CFR 1904.10(a)]",
                        "The worker is told in writing by 6 Jul 2022, 21 days after the test that settled it; the"
                                + " test's date is taken as the day of determination. [29 CFR 1910.95(g)(8)(i)]");
    }

    @Test
    void aBaselineSaysThatItIsOne() {
        assertThat(texts(new Case().test("2020-04-01", TestPurpose.BASELINE, "5 10 20", "10 10 DNT"), "2020-04-01"))
                .containsExactly(
                        "Left ear: the baseline test of 1 Apr 2020 is the baseline: later tests of this ear are"
                                + " compared with it.",
                        "The levels at 2000, 3000 and 4000 Hz are 5, 10, 20, a mean of 11.67 dB HL.");
        assertThat(texts(
                        new Case().test("2020-04-01", TestPurpose.BASELINE, "5 10 20", "10 >95 DNT"),
                        "2020-04-01",
                        Ear.RIGHT))
                .last()
                .isEqualTo("The levels at 2000, 3000 and 4000 Hz are 10, no response at 95 dB HL, not tested, a mean"
                        + " that is not known.");
    }

    @Test
    void aTestBeforeTheBaselineSaysSo() {
        assertThat(texts(
                        new Case()
                                .test("2019-04-01", TestPurpose.ANNUAL, 10, 10)
                                .test("2020-04-01", TestPurpose.BASELINE, 10, 10),
                        "2019-04-01"))
                .containsExactly(
                        "Left ear: the annual test of 1 Apr 2019 was made before the baseline and is not compared.");
    }

    @Test
    void aRetestSaysWhereItsAnswerIsGiven() {
        assertThat(texts(shifted().test("2026-04-11", TestPurpose.RETEST, 10, 10), "2026-04-11"))
                .first()
                .isEqualTo("Left ear: the retest of 11 Apr 2026 was made on day 10 of the 30 after the annual test of"
                        + " 1 Apr 2026: its answer is given there.");
    }

    @Test
    void noShiftEndsInNothingToRecord() {
        assertThat(texts(base().test("2026-04-01", TestPurpose.ANNUAL, 5, 10), "2026-04-01"))
                .contains(
                        "2000 Hz: 5 dB HL now, 10 at the baseline, 5 better; there is no age allowance from 70 to 76.",
                        "What is left adds up to (-5) + (-5) + (-5) = -15 dB, a mean of -5.00 dB. A mean of 10 dB or"
                                + " more is a standard threshold shift: this is none.")
                .last()
                .isEqualTo("No shift stands, so there is nothing to record.");
    }

    @Test
    void aShiftThatAwaitsItsRetestSaysUntilWhen() {
        assertThat(texts(shifted(), "2026-04-01", Ear.LEFT, "2026-04-20"))
                .endsWith(
                        "A retest until 1 May 2026 may take this test's place.",
                        "Whether it is recordable waits for the retest.",
                        "The worker is told in writing by 22 Apr 2026, 21 days after the test; the test's date is"
                                + " taken as the day of determination.");
    }

    @Test
    void aShiftThatAwaitsItsRetestIsNotSaidToBeGoneWhenFoundNotWorkRelated() {
        Case found = shifted().decided("2026-04-01", Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2026-04-10");
        assertThat(texts(found, "2026-04-01", Ear.LEFT, "2026-04-20"))
                .contains(
                        "The loss was found not work-related: not recordable.",
                        "Found not work-related on 10 Apr 2026 by Dr Invented: as the test says.")
                .noneMatch(text -> text.contains("No shift stands"));
    }

    @Test
    void aConfirmedShiftNamesItsRetestAndItsDates() {
        assertThat(texts(shifted().test("2026-04-11", TestPurpose.RETEST, 31, 10), "2026-04-01"))
                .endsWith(
                        "The retest of 11 Apr 2026, day 10 of 30, takes the test's place for both ears; for this ear"
                                + " its mean is 21.00 dB, a shift: shift confirmed.",
                        "For the injury log the retest of 11 Apr 2026 is measured from the first baseline, of 1 Apr"
                                + " 2020: a mean of 21.00 dB, a shift.",
                        "The levels at 2000, 3000 and 4000 Hz are 31, 31, 31, a mean of 31.00 dB HL without any age"
                                + " allowance; 25 dB or more is reached.",
                        "Both tests are met in the same ear: recordable, if the loss is work-related.",
                        "The worker is told in writing by 2 May 2026, 21 days after the test that settled it; the"
                                + " test's date is taken as the day of determination.",
                        "It is entered on the injury log by 18 Apr 2026.");
    }

    @Test
    void aShiftThatTheRetestDoesNotShowIsNotConfirmed() {
        Case retested = shifted().test("2026-04-11", TestPurpose.RETEST, 12, 10);
        assertThat(texts(retested, "2026-04-01"))
                .endsWith(
                        "The retest of 11 Apr 2026, day 10 of 30, takes the test's place for both ears; for this ear"
                                + " its mean is 2.00 dB, no shift: shift not confirmed.",
                        "No shift stands, so there is nothing to record.");
        assertThat(texts(retested, "2026-04-01", Ear.RIGHT))
                .contains("The retest of 11 Apr 2026, day 10 of 30, takes the test's place for both ears; for this ear"
                        + " its mean is 0.00 dB, no shift either.");
    }

    @Test
    void whatCannotBeDecidedIsSaidToBeOpen() {
        assertThat(texts(base().test("2026-04-01", TestPurpose.ANNUAL, "12 NR CNT", "10 10 10"), "2026-04-01"))
                .contains(
                        "3000 Hz: no response, level not given now, 10 at the baseline: the change is not known.",
                        "4000 Hz: could not be tested now, 10 at the baseline: the change is not known.",
                        "The mean of what is left is not known. A mean of 10 dB or more is a standard threshold"
                                + " shift: that cannot be decided from the record.")
                .last()
                .isEqualTo("Whether it is recordable cannot be decided from the record.");
    }

    @Test
    void anOpenEndedLevelCarriesItsUnit() {
        assertThat(texts(base().test("2026-04-01", TestPurpose.ANNUAL, "30 >95 30", "10 10 10"), "2026-04-01"))
                .contains(
                        "3000 Hz: no response at 95 dB HL now, 10 at the baseline: worse by 90 dB or more; there is no"
                                + " age allowance from 70 to 76.",
                        "The levels at 2000, 3000 and 4000 Hz are 30, no response at 95 dB HL, 30, a mean of 53.33 dB"
                                + " HL or more without any age allowance; 25 dB or more is reached.");
    }

    @Test
    void theAllowanceOfAnOpenChangeIsSaidSoThatTheSumCanBeFollowed() {
        // Table F-1, 29 CFR 1910.95 Appendix F, males at 27 and at 32: 1, 1 and 3 dB.
        LocalDate birth = LocalDate.parse("1990-06-15");
        WorkerHistory history = new WorkerHistory(
                new WorkerFacts("F2", Optional.of(birth), Optional.of(Sex.MALE), Optional.empty(), Optional.empty()),
                List.of(
                        Vectors.flat(birth.plusYears(27), TestPurpose.BASELINE, 10, 10),
                        Vectors.audiogram(
                                birth.plusYears(32),
                                TestPurpose.ANNUAL,
                                List.of("10", "10", "10"),
                                List.of("20", "20", ">95"))),
                List.of());

        assertThat(Working.of(Judge.judge(history, JudgingOptions.asOf(LocalDate.parse(TODAY)))
                        .determinations()
                        .getLast()))
                .extracting(Sentence::text)
                .contains(
                        "4000 Hz: no response at 95 dB HL now, 10 at the baseline: worse by 90 dB or more; the age"
                                + " allowance from 27 to 32 is 3; worse by 87 dB or more is left.",
                        "The mean of what is left is 35.00 dB or more. A mean of 10 dB or more is a standard threshold"
                                + " shift: this is one.");
    }

    @Test
    void aLossThatACaseHoldsAlreadyNamesTheCase() {
        assertThat(texts(
                        base().test("2025-04-01", TestPurpose.ANNUAL, 30, 10)
                                .test("2026-04-01", TestPurpose.ANNUAL, 32, 10),
                        "2026-04-01"))
                .contains(
                        "For the injury log the annual test of 1 Apr 2026 is measured from this ear's last recordable"
                                + " case, the test of 1 Apr 2025: a mean of 2.00 dB, no shift.",
                        "An earlier case of this ear holds this loss already: nothing new to record.");
    }

    @Test
    void bothOfficialReadingsAreShownWhereTheyDiffer() {
        // Vector F06 with its baseline revised in 2024: 1904.10(b)(2)(i) against 67 FR 77169.
        Case f06 = new Case()
                .test("2021-04-01", TestPurpose.BASELINE, "5 5 10", "10 10 10")
                .test("2024-04-01", TestPurpose.ANNUAL, "15 20 20", "10 10 10")
                .decided("2024-04-01", Ears.LEFT, DecisionKind.BASELINE, "2024-05-01")
                .test("2026-04-01", TestPurpose.ANNUAL, "20 25 30", "10 10 10");
        assertThat(texts(f06, "2026-04-01"))
                .contains(
                        "For the injury log the annual test of 1 Apr 2026 is measured from the first baseline, of 1"
                                + " Apr 2021: a mean of 18.33 dB, a shift.",
                        "The official readings differ here: measured from the current baseline the shift has a mean of"
                                + " 6.67 dB, no shift. A professional decides which applies.");
        assertThat(texts(f06, "2026-04-01", Ear.LEFT, "2026-04-10"))
                .contains("A retest until 1 May 2026 may take this test's place.");
    }

    @Test
    void aHiddenShiftUnderTheLevelIsNotSaidToBeGone() {
        Case underTheLevel = new Case()
                .test("2021-04-01", TestPurpose.BASELINE, "5 5 10", "10 10 10")
                .test("2024-04-01", TestPurpose.ANNUAL, "15 20 20", "10 10 10")
                .decided("2024-04-01", Ears.LEFT, DecisionKind.BASELINE, "2024-05-01")
                .test("2026-04-01", TestPurpose.ANNUAL, "20 25 29", "10 10 10");
        assertThat(texts(underTheLevel, "2026-04-01"))
                .contains("The two tests are not both met in this ear: not recordable.")
                .noneMatch(text -> text.contains("No shift stands"));
    }

    @Test
    void everyWorkingHoldsEveryNumberItRestsOn() {
        Set<Outcome> seen = EnumSet.noneOf(Outcome.class);
        RandomHistories.check(20, 1_500, true, (history, options) -> {
            for (Determination determination : Judge.judge(history, options).determinations()) {
                seen.add(determination.outcome());
                String all =
                        Working.of(determination).stream().map(Sentence::text).collect(Collectors.joining("\n"));
                assertThat(all)
                        .contains(
                                Words.day(determination.test().date()),
                                determination.ear() == Ear.LEFT ? "Left ear" : "Right ear");
                determination.shift().ifPresent(shift -> assertShift(all, shift));
                if (determination instanceof Judged judged) {
                    assertJudged(all, judged);
                }
            }
        });
        assertThat(seen).containsExactlyInAnyOrder(Outcome.values());
    }

    private static void assertShift(String all, ThresholdShift shift) {
        for (FrequencyShift at : shift.frequencies()) {
            String line = all.lines()
                    .filter(text -> text.startsWith(at.frequency().hertz() + " Hz: "))
                    .findFirst()
                    .orElseThrow();
            assertThat(line).contains(Words.threshold(at.now()));
            at.uncorrected()
                    .exact()
                    .ifPresent(change -> assertThat(line)
                            .contains(
                                    change == 0
                                            ? "no change"
                                            : Math.abs(change) + (change > 0 ? " worse" : " better")));
            if (at.uncorrected().exact().isPresent() && shift.allowance() instanceof AgeAllowance.FromTable table) {
                int allowed = at.allowance().exact().orElseThrow();
                int left = at.corrected().exact().orElseThrow();
                assertThat(line)
                        .contains("from " + table.yearsAtBaseline() + " to " + table.yearsAtTest())
                        .contains(allowed == 0 ? "no age allowance" : "" + allowed)
                        .contains(allowed == 0 ? "." : "" + Math.abs(left));
            }
        }
        assertThat(all).contains(Words.mean(shift.sum()));
    }

    private static void assertJudged(String all, Judged judged) {
        assertThat(all)
                .contains(Words.day(judged.comparison().earlier().date()))
                .contains(Words.day(judged.settledBy().date()))
                .contains(Words.mean(judged.settlingComparison().sum()));
        judged.recording().comparison().ifPresent(comparison -> {
            assertThat(all)
                    .contains(Words.day(comparison.reference().audiogram().date()))
                    .contains(Words.mean(comparison.shift().sum()))
                    .contains(Words.meanLevel(comparison.levelSum()));
            for (Frequency frequency : Frequency.AVERAGED) {
                Audiogram deciding = comparison.decidingTest();
                assertThat(all)
                        .contains(Words.thresholdCell(deciding.threshold(judged.ear(), frequency))
                                .replace(">", "no response at ")
                                .replace("NR", "no response"));
            }
        });
        judged.dueDates().retestBy().ifPresent(day -> assertThat(all).contains(Words.day(day)));
        judged.dueDates().notifyBy().ifPresent(day -> assertThat(all).contains(Words.day(day)));
        judged.dueDates().recordBy().ifPresent(day -> assertThat(all).contains(Words.day(day)));
    }

    @Test
    void everyWorkingNamesTheParagraphsItRestsOn() {
        RandomHistories.check(21, 1_500, true, (history, options) -> {
            for (Determination determination : Judge.judge(history, options).determinations()) {
                Set<Citation> named = Working.of(determination).stream()
                        .flatMap(sentence -> sentence.basis().stream())
                        .collect(Collectors.toSet());
                determination
                        .shift()
                        .ifPresent(shift -> assertThat(named).contains(osha(Step.SHIFT), osha(Step.AGE_ALLOWANCE)));
                switch (determination) {
                    case Determination.BaselineTest ignored -> assertThat(named).contains(osha(Step.BASELINE));
                    case Determination.BeforeBaseline ignored ->
                        assertThat(named).containsExactly(osha(Step.BASELINE));
                    case Determination.Retest ignored -> assertThat(named).contains(osha(Step.RETEST));
                    case Judged judged -> assertThat(named).containsAll(paragraphs(judged));
                }
            }
        });
    }

    private static Set<Citation> paragraphs(Judged judged) {
        Set<Citation> paragraphs = new java.util.HashSet<>(Set.of(osha(Step.COMPARISON)));
        paragraphs.add(
                judged.recording().answer() == Recordability.AWAITING_RETEST
                        ? osha(Step.RECORDING_DEADLINE)
                        : osha(Step.RECORDABLE));
        judged.recording().comparison().ifPresent(comparison -> {
            paragraphs.add(osha(Step.RECORDING_REFERENCE));
            paragraphs.add(osha(Step.RECORDING_LEVEL));
        });
        judged.dueDates().retestBy().ifPresent(day -> paragraphs.add(osha(Step.RETEST)));
        judged.dueDates().notifyBy().ifPresent(day -> paragraphs.add(osha(Step.NOTICE)));
        judged.dueDates().recordBy().ifPresent(day -> paragraphs.add(osha(Step.RECORDING_DEADLINE)));
        judged.recording().workRelatedness().ifPresent(decision -> paragraphs.add(osha(Step.NOT_WORK_RELATED)));
        return paragraphs;
    }

    private static Citation osha(Step step) {
        return RuleSets.OSHA.paragraph(step);
    }

    @Test
    void everySentenceReadsAsOne() {
        RandomHistories.check(22, 1_500, true, (history, options) -> {
            for (Determination determination : Judge.judge(history, options).determinations()) {
                assertThat(Working.of(determination))
                        .isNotEmpty()
                        .allSatisfy(sentence -> assertThat(sentence.text())
                                .matches("[A-Z0-9].*\\.")
                                .doesNotContain("  ", "..", " .", ",.", "null", "not known HL", "mean of not known"));
            }
        });
    }

    @Test
    void aWorkingNeverContradictsTheAnswer() {
        RandomHistories.check(23, 3_000, true, (history, options) -> {
            for (Determination determination : Judge.judge(history, options).determinations()) {
                if (determination instanceof Judged judged) {
                    String all = Working.of(judged).stream().map(Sentence::text).collect(Collectors.joining("\n"));
                    boolean stands =
                            judged.outcome() == Outcome.CONFIRMED || judged.outcome() == Outcome.AWAITING_RETEST;
                    if (stands) {
                        assertThat(all).doesNotContain("No shift stands");
                    }
                    assertThat(all.contains("recordable, if the loss is work-related"))
                            .isEqualTo(judged.recording().answer() == Recordability.YES);
                    assertThat(all.contains("the shift stands") || all.contains("shift confirmed"))
                            .isEqualTo(judged.outcome() == Outcome.CONFIRMED);
                }
            }
        });
    }

    private static Case base() {
        return new Case().test("2020-04-01", TestPurpose.BASELINE, 10, 10);
    }

    private static Case shifted() {
        return base().test("2026-04-01", TestPurpose.ANNUAL, 30, 10);
    }

    private static List<String> texts(Case worker, String date) {
        return texts(worker, date, Ear.LEFT);
    }

    private static List<String> texts(Case worker, String date, Ear ear) {
        return texts(worker, date, ear, TODAY);
    }

    private static List<String> texts(Case worker, String date, Ear ear, String asOf) {
        return Working.of(Case.row(worker.asOf(asOf), date, ear)).stream()
                .map(Sentence::text)
                .toList();
    }
}
