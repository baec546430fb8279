package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.shift.ThresholdShift;

/** What must hold of every history, tried on many. */
class JudgingPropertiesTest {

    private static final int HISTORIES = 3_000;

    /** One row, told from all others of a worker. */
    private record Key(LocalDate date, TestPurpose purpose, Ear ear) {
        static Key of(Determination determination) {
            return new Key(determination.test().date(), determination.test().purpose(), determination.ear());
        }
    }

    @Test
    void theHistoriesHoldEveryOutcomeAndEveryAnswer() {
        Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
        Map<Recordability, Integer> answers = new EnumMap<>(Recordability.class);
        RandomHistories.check(1, HISTORIES, true, (history, options) -> {
            for (Determination determination : Judge.judge(history, options).determinations()) {
                outcomes.merge(determination.outcome(), 1, Integer::sum);
                if (determination instanceof Judged judged) {
                    answers.merge(judged.recording().answer(), 1, Integer::sum);
                }
            }
        });
        assertThat(outcomes)
                .containsOnlyKeys(Outcome.values())
                .allSatisfy(
                        (outcome, count) -> assertThat(count).as(outcome.word()).isGreaterThan(50));
        assertThat(answers)
                .containsOnlyKeys(EnumSet.complementOf(EnumSet.of(Recordability.NOT_ASKED))
                        .toArray(Recordability[]::new))
                .allSatisfy(
                        (answer, count) -> assertThat(count).as(answer.word()).isGreaterThan(50));
    }

    @Test
    void theOrderInWhichTheHistoryIsListedDoesNotMatter() {
        Random random = new Random(2);
        RandomHistories.check(2, HISTORIES, true, (history, options) -> {
            List<Audiogram> audiograms = new ArrayList<>(history.audiograms());
            List<Decision> decisions = new ArrayList<>(history.decisions());
            Collections.shuffle(audiograms, random);
            Collections.shuffle(decisions, random);
            assertThat(Judge.judge(new WorkerHistory(history.worker(), audiograms, decisions), options))
                    .isEqualTo(Judge.judge(history, options));
        });
    }

    @Test
    void everyValidJudgedTestHasOneRowForEachEarInOrder() {
        RandomHistories.check(3, HISTORIES, false, (history, options) -> {
            List<Key> expected = history.audiograms().stream()
                    .filter(test -> test.purpose() != TestPurpose.OTHER)
                    .sorted(Audiogram.CHRONOLOGICAL)
                    .flatMap(test ->
                            List.of(Ear.LEFT, Ear.RIGHT).stream().map(ear -> new Key(test.date(), test.purpose(), ear)))
                    .toList();
            assertThat(Judge.judge(history, options).determinations().stream().map(Key::of))
                    .containsExactlyElementsOf(expected);
        });
    }

    private record ShiftAnswer(
            Key key,
            Outcome outcome,
            Optional<LocalDate> baseline,
            Optional<Answer> sts,
            List<OptionalInt> shifts,
            List<OptionalInt> left) {

        static ShiftAnswer of(Determination determination) {
            Optional<ThresholdShift> shift = determination.shift();
            return new ShiftAnswer(
                    Key.of(determination),
                    determination.outcome(),
                    shift.map(of -> of.earlier().date()),
                    shift.map(ThresholdShift::isShift),
                    shift.map(of -> of.frequencies().stream()
                                    .map(at -> at.uncorrected().exact())
                                    .toList())
                            .orElse(List.of()),
                    shift.map(of -> of.frequencies().stream()
                                    .map(at -> at.corrected().exact())
                                    .toList())
                            .orElse(List.of()));
        }
    }

    @Test
    void fiveDecibelsMoreOnEveryTestChangeNoShift() {
        RandomHistories.check(4, HISTORIES, true, (history, options) -> {
            WorkerHistory louder = new WorkerHistory(
                    history.worker(),
                    history.audiograms().stream()
                            .map(JudgingPropertiesTest::fiveDecibelsMore)
                            .toList(),
                    history.decisions());
            List<Determination> before = Judge.judge(history, options).determinations();
            List<Determination> after = Judge.judge(louder, options).determinations();

            assertThat(after.stream().map(ShiftAnswer::of))
                    .containsExactlyElementsOf(
                            before.stream().map(ShiftAnswer::of).toList());
            for (int i = 0; i < before.size(); i++) {
                OptionalInt level = before.get(i).levelSum().lowest();
                assertThat(after.get(i).levelSum().lowest())
                        .isEqualTo(level.isPresent() ? OptionalInt.of(level.getAsInt() + 15) : OptionalInt.empty());
            }
        });
    }

    private static Audiogram fiveDecibelsMore(Audiogram audiogram) {
        Audiogram raised = audiogram;
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                Threshold more = switch (audiogram.threshold(ear, frequency)) {
                    case Threshold.Measured measured ->
                        Threshold.measured(measured.level().decibels() + 5);
                    case Threshold.NoResponse none ->
                        none.limit()
                                .map(HearingLevel::decibels)
                                .map(limit -> Threshold.noResponseAt(limit + 5))
                                .orElse(none);
                    case Threshold.NotTested untested -> untested;
                };
                raised = raised.with(ear, frequency, more);
            }
        }
        return raised;
    }

    private record RowAnswer(
            Key key,
            Outcome outcome,
            Optional<Answer> sts,
            Optional<Recordability> recordable,
            Optional<LocalDate> reference,
            Optional<Determination.DueDates> dueDates) {

        static RowAnswer of(Determination determination, boolean swapped) {
            Key key = Key.of(determination);
            Optional<Judged> judged = determination instanceof Judged itself ? Optional.of(itself) : Optional.empty();
            return new RowAnswer(
                    swapped ? new Key(key.date, key.purpose, key.ear.other()) : key,
                    determination.outcome(),
                    determination.shift().map(ThresholdShift::isShift),
                    judged.map(row -> row.recording().answer()),
                    judged.flatMap(row -> row.recording().comparison())
                            .map(comparison ->
                                    comparison.reference().audiogram().date()),
                    judged.map(Judged::dueDates));
        }
    }

    @Test
    void swappingTheEarsSwapsTheAnswers() {
        RandomHistories.check(5, HISTORIES, true, (history, options) -> {
            WorkerHistory swapped = new WorkerHistory(
                    history.worker(),
                    history.audiograms().stream()
                            .map(JudgingPropertiesTest::swapped)
                            .toList(),
                    history.decisions().stream()
                            .map(JudgingPropertiesTest::swapped)
                            .toList());
            WorkerJudgement judgement = Judge.judge(history, options);
            WorkerJudgement ofSwapped = Judge.judge(swapped, options);

            assertThat(ofSwapped.determinations().stream().map(row -> RowAnswer.of(row, true)))
                    .containsExactlyInAnyOrderElementsOf(judgement.determinations().stream()
                            .map(row -> RowAnswer.of(row, false))
                            .toList());
            assertThat(ofSwapped.followUps().stream()
                            .map(owed ->
                                    new FollowUp(owed.kind(), owed.dueDate(), owed.testDate(), swapped(owed.ears()))))
                    .containsExactlyInAnyOrderElementsOf(judgement.followUps());
        });
    }

    private static Audiogram swapped(Audiogram audiogram) {
        Audiogram.Builder builder = new Audiogram.Builder(audiogram.date(), audiogram.purpose());
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(ear.other(), frequency, audiogram.threshold(ear, frequency));
            }
        }
        return builder.build();
    }

    private static Decision swapped(Decision decision) {
        return new Decision(
                swapped(decision.ears()),
                decision.testDate(),
                decision.kind(),
                decision.decidedOn(),
                decision.by(),
                decision.reason());
    }

    private static Ears swapped(Ears ears) {
        return switch (ears) {
            case LEFT -> Ears.RIGHT;
            case RIGHT -> Ears.LEFT;
            case BOTH -> Ears.BOTH;
        };
    }

    @Test
    void takingANumberAwayNeverTurnsAYesIntoANoNorANoIntoAYes() {
        Random random = new Random(6);
        int[] undecided = {0};
        RandomHistories.check(6, HISTORIES, false, (history, options) -> {
            JudgingOptions onFirstBaseline = options.withBaselineRevision(BaselineRevision.OFF);
            List<Audiogram> audiograms = new ArrayList<>(history.audiograms());
            int test = random.nextInt(audiograms.size());
            Ear ear = random.nextBoolean() ? Ear.LEFT : Ear.RIGHT;
            Frequency frequency = Frequency.AVERAGED.get(random.nextInt(3));
            audiograms.set(test, audiograms.get(test).with(ear, frequency, lessKnown(random)));
            if (!(history.audiograms().get(test).threshold(ear, frequency) instanceof Threshold.Measured)) {
                return;
            }
            Map<Key, Answer> before = answers(Judge.judge(history, onFirstBaseline));
            Map<Key, Answer> after =
                    answers(Judge.judge(new WorkerHistory(history.worker(), audiograms, List.of()), onFirstBaseline));

            assertThat(after).containsOnlyKeys(before.keySet());
            before.forEach((key, answer) -> {
                assertThat(after.get(key)).as(key.toString()).isIn(answer, Answer.UNDECIDED);
                undecided[0] += after.get(key) == answer ? 0 : 1;
            });
        });
        assertThat(undecided[0]).isGreaterThan(500);
    }

    private static Threshold lessKnown(Random random) {
        return random.nextBoolean() ? Threshold.notGiven() : Threshold.noResponse();
    }

    private static Map<Key, Answer> answers(WorkerJudgement judgement) {
        Map<Key, Answer> answers = new java.util.HashMap<>();
        for (Determination determination : judgement.determinations()) {
            determination.shift().ifPresent(shift -> answers.put(Key.of(determination), shift.isShift()));
        }
        return answers;
    }

    @Test
    void theAgeAllowanceNeverAddsAShift() {
        int[] taken = {0};
        RandomHistories.check(7, HISTORIES, false, (history, options) -> {
            Map<Key, Answer> with = answers(Judge.judge(history, options(options.asOf(), AgeCorrection.ON)));
            Map<Key, Answer> without = answers(Judge.judge(history, options(options.asOf(), AgeCorrection.OFF)));
            assertThat(with).containsOnlyKeys(without.keySet());
            with.forEach((key, answer) -> {
                Set<Answer> allowed = switch (without.get(key)) {
                    case YES -> EnumSet.allOf(Answer.class);
                    case NO -> EnumSet.of(Answer.NO);
                    case UNDECIDED -> EnumSet.of(Answer.NO, Answer.UNDECIDED);
                };
                assertThat(answer).as(key.toString()).isIn(allowed);
                taken[0] += answer == Answer.NO && without.get(key) == Answer.YES ? 1 : 0;
            });
        });
        assertThat(taken[0]).isGreaterThan(50);
    }

    private static JudgingOptions options(LocalDate asOf, AgeCorrection correction) {
        return new JudgingOptions(asOf, RuleSets.OSHA, correction, BaselineRevision.OFF);
    }

    @Test
    void timeAloneOnlyTurnsAwaitingIntoConfirmed() {
        Random random = new Random(8);
        int[] confirmed = {0};
        RandomHistories.check(8, HISTORIES, true, (history, options) -> {
            JudgingOptions later = new JudgingOptions(
                    options.asOf().plusDays(random.nextInt(1, 90)),
                    options.ruleSet(),
                    options.ageCorrection(),
                    options.baselineRevision());
            List<Determination> before = Judge.judge(history, options).determinations();
            List<Determination> after = Judge.judge(history, later).determinations();
            assertThat(after.stream().map(Key::of))
                    .containsExactlyElementsOf(before.stream().map(Key::of).toList());
            for (int i = 0; i < before.size(); i++) {
                Outcome outcome = before.get(i).outcome();
                if (outcome == Outcome.AWAITING_RETEST) {
                    assertThat(after.get(i).outcome()).isIn(Outcome.AWAITING_RETEST, Outcome.CONFIRMED);
                    confirmed[0] += after.get(i).outcome() == Outcome.CONFIRMED ? 1 : 0;
                } else {
                    assertThat(after.get(i).outcome()).isEqualTo(outcome);
                }
            }
        });
        assertThat(confirmed[0]).isGreaterThan(50);
    }

    @Test
    void nothingChangesBeforeTheDayThatIsNamedForTheNextChange() {
        Random random = new Random(9);
        int[] named = {0};
        RandomHistories.check(9, HISTORIES, true, (history, options) -> {
            // In the midst of the record, so that there are later tests and decisions to come.
            LocalDate asOf = options.asOf().minusDays(random.nextInt(900));
            JudgingOptions then =
                    new JudgingOptions(asOf, options.ruleSet(), options.ageCorrection(), options.baselineRevision());
            WorkerJudgement judgement = Judge.judge(history, then);
            Optional<LocalDate> change = NextChange.after(asOf, history, judgement);
            long unchanged =
                    change.map(day -> day.toEpochDay() - 1 - asOf.toEpochDay()).orElse(5_000L);
            named[0] += change.isPresent() ? 1 : 0;
            for (long days : new long[] {unchanged, random.nextLong(unchanged + 1)}) {
                JudgingOptions later = new JudgingOptions(
                        asOf.plusDays(days), options.ruleSet(), options.ageCorrection(), options.baselineRevision());
                assertThat(Judge.judge(history, later)).isEqualTo(judgement);
            }
        });
        assertThat(named[0]).isGreaterThan(500);
    }

    @Test
    void eachDateStandsExactlyWhereItApplies() {
        RandomHistories.check(10, HISTORIES, true, (history, options) -> {
            for (Determination determination : Judge.judge(history, options).determinations()) {
                if (determination instanceof Judged judged) {
                    assertDates(judged);
                }
            }
        });
    }

    /** 29 CFR 1910.95(g)(7)(ii), (g)(8)(i) and 1904.10(b)(4). */
    private static void assertDates(Judged judged) {
        LocalDate test = judged.test().date();
        boolean shiftStands = judged.outcome() == Outcome.CONFIRMED || judged.outcome() == Outcome.AWAITING_RETEST;
        boolean waits = judged.outcome() == Outcome.AWAITING_RETEST
                || judged.recording().answer() == Recordability.AWAITING_RETEST;
        boolean record = judged.recording().answer() == Recordability.YES;

        assertThat(judged.dueDates().retestBy()).isEqualTo(waits ? Optional.of(test.plusDays(30)) : Optional.empty());
        assertThat(judged.dueDates().notifyBy())
                .isEqualTo(shiftStands ? Optional.of(judged.settledBy().date().plusDays(21)) : Optional.empty());
        assertThat(judged.dueDates().recordBy().isPresent()).isEqualTo(record);
        if (record) {
            Audiogram deciding = judged.recording().comparison().orElseThrow().decidingTest();
            assertThat(judged.dueDates().recordBy())
                    .contains(
                            deciding.equals(judged.test())
                                    ? test.plusDays(30)
                                    : deciding.date().plusDays(7));
        }
    }

    @Test
    void aShiftIsConfirmedOrRecordableOnlyWhereItsNumbersSaySo() {
        RandomHistories.check(11, HISTORIES, true, (history, options) -> {
            for (Determination determination : Judge.judge(history, options).determinations()) {
                if (!(determination instanceof Judged judged)) {
                    continue;
                }
                if (judged.outcome() == Outcome.CONFIRMED) {
                    assertThat(judged.settlingComparison().sum().lowest().orElseThrow())
                            .isGreaterThanOrEqualTo(30);
                }
                if (judged.recording().answer() == Recordability.YES) {
                    var comparison = judged.recording().comparison().orElseThrow();
                    assertThat(comparison.shift().sum().lowest().orElseThrow()).isGreaterThanOrEqualTo(30);
                    assertThat(comparison.levelSum().lowest().orElseThrow()).isGreaterThanOrEqualTo(75);
                }
            }
        });
    }
}
