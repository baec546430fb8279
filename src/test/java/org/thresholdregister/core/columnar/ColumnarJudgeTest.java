package org.thresholdregister.core.columnar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.Recording.Comparison;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.shift.ThresholdShift;

/** The columns say of random populations, cell by cell, what the readable rules say. */
class ColumnarJudgeTest {

    private static final int WORKERS = 2000;

    /** Days in, at the end of, and long after the years in which random histories lie. */
    private static final List<LocalDate> DAYS = List.of(
            LocalDate.of(2016, 2, 29), LocalDate.of(2017, 6, 15), LocalDate.of(2020, 1, 1), LocalDate.of(2040, 1, 1));

    private static final LocalDate CROWDED_FROM = LocalDate.of(2021, 3, 1);

    private static final Holidays HOLIDAYS =
            new Holidays(Set.of(LocalDate.of(2016, 3, 7), LocalDate.of(2017, 6, 23), LocalDate.of(2018, 1, 1)));

    @Test
    void everyCellIsTheSameWithoutDecisions() {
        assertSame(RuleSets.OSHA, population(41, false), BaselineRevision.OFF);
    }

    @Test
    void everyCellIsTheSameWithDecisions() {
        assertSame(RuleSets.OSHA, population(42, true), BaselineRevision.OFF);
    }

    @Test
    void everyCellIsTheSameWhereRevisionsAreProposed() {
        assertSame(RuleSets.OSHA, population(43, true), BaselineRevision.PROPOSE);
    }

    @Test
    void everyCellIsTheSameWhereRevisionsAreApplied() {
        assertSame(RuleSets.OSHA, population(44, true), BaselineRevision.APPLY);
    }

    /** So many tests in so few weeks, with shifts that come and go, that windows overlap and days coincide. */
    @Test
    void everyCellIsTheSameWhereTestsCrowd() {
        List<WorkerHistory> histories = new ArrayList<>();
        Random random = new Random(47);
        for (int i = 0; i < WORKERS / 2; i++) {
            histories.add(crowded("C" + i, random));
        }
        List<LocalDate> days = List.of(CROWDED_FROM.plusDays(40), CROWDED_FROM.plusDays(75), LocalDate.of(2040, 1, 1));
        for (RuleSet ruleSet : List.of(RuleSets.OSHA, RuleSets.find("msha").orElseThrow())) {
            for (BaselineRevision revision : BaselineRevision.values()) {
                assertSame(ruleSet, histories, revision, days);
            }
        }
    }

    private static WorkerHistory crowded(String id, Random random) {
        List<Audiogram> audiograms = new ArrayList<>();
        LocalDate day = CROWDED_FROM;
        int[] levels = {10, 10};
        for (int i = 0; i < 12; i++) {
            TestPurpose purpose = TestPurpose.values()[random.nextInt(TestPurpose.values().length)];
            LocalDate date = day;
            if (audiograms.stream().noneMatch(test -> test.date().equals(date) && test.purpose() == purpose)) {
                audiograms.add(Vectors.flat(date, purpose, levels[0], levels[1]));
            }
            day = day.plusDays(random.nextInt(3) == 0 ? 0 : random.nextInt(20));
            levels[random.nextInt(2)] = 10 + random.nextInt(4) * 10;
        }
        List<Decision> decisions = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            LocalDate test = audiograms.get(random.nextInt(audiograms.size())).date();
            DecisionKind kind = DecisionKind.values()[random.nextInt(DecisionKind.values().length)];
            decisions.add(new Decision(Ears.BOTH, test, kind, test.plusDays(random.nextInt(10)), "", ""));
        }
        return new WorkerHistory(
                new WorkerFacts(
                        id,
                        Optional.of(LocalDate.of(1970, 1, 1)),
                        Optional.of(Sex.MALE),
                        Optional.empty(),
                        Optional.of(CROWDED_FROM.plusDays(random.nextInt(900)))),
                audiograms,
                decisions);
    }

    @Test
    void everyCellIsTheSameUnderEveryRuleSet() {
        List<WorkerHistory> withoutDecisions = population(45, false).subList(0, WORKERS / 10);
        List<WorkerHistory> withDecisions = population(46, true).subList(0, WORKERS / 10);
        for (RuleSet ruleSet : RuleSets.ALL) {
            assertSame(ruleSet, withoutDecisions, BaselineRevision.OFF);
            for (BaselineRevision revision : BaselineRevision.values()) {
                assertSame(ruleSet, withDecisions, revision);
            }
        }
    }

    @Test
    void theRandomPopulationsMeetEveryOutcomeAndAnswer() {
        List<WorkerHistory> histories = population(41, false);
        Population population = Population.of(histories);
        Set<Outcome> outcomes = new HashSet<>();
        Set<Recordability> answers = new HashSet<>();
        Set<Answer> shifts = new HashSet<>();
        for (LocalDate asOf : DAYS) {
            JudgedPopulation judged = ColumnarJudge.judge(population, JudgingOptions.asOf(asOf));
            JudgedRow row = judged.newRow();
            for (int worker = 0; worker < population.workerCount(); worker++) {
                for (int test = population.firstTest(worker); test < population.endOfTests(worker); test++) {
                    for (Ear ear : Ear.values()) {
                        if (row.moveTo(worker, test, ear)) {
                            outcomes.add(row.outcome());
                            row.recordable().ifPresent(answers::add);
                            row.standardShift().ifPresent(shifts::add);
                        }
                    }
                }
            }
        }
        assertThat(outcomes).containsExactlyInAnyOrder(Outcome.values());
        assertThat(answers)
                .containsExactlyInAnyOrder(Arrays.stream(Recordability.values())
                        .filter(answer -> answer != Recordability.NOT_ASKED)
                        .toArray(Recordability[]::new));
        assertThat(shifts).containsExactlyInAnyOrder(Answer.values());
    }

    private static List<WorkerHistory> population(long seed, boolean withDecisions) {
        List<WorkerHistory> histories = new ArrayList<>();
        RandomHistories.check(seed, WORKERS, withDecisions, (history, options) -> {
            WorkerFacts facts = history.worker();
            histories.add(new WorkerHistory(
                    new WorkerFacts(
                            "R" + histories.size(),
                            facts.birthDate(),
                            facts.sex(),
                            facts.enrolledFrom(),
                            facts.endDate()),
                    history.audiograms(),
                    history.decisions()));
        });
        histories.add(notTested("not tested", Optional.empty()));
        histories.add(notTested("leaves when due", Optional.of(LocalDate.of(2017, 7, 31))));
        histories.add(notTested("leaves the day before", Optional.of(LocalDate.of(2017, 7, 30))));
        for (LocalDate asOf : DAYS) {
            histories.add(notTested("left on " + asOf, Optional.of(asOf)));
            histories.add(notTested("left before " + asOf, Optional.of(asOf.minusDays(1))));
        }
        Collections.shuffle(histories, new Random(seed));
        return histories;
    }

    private static WorkerHistory notTested(String id, Optional<LocalDate> endDate) {
        Optional<LocalDate> enrolledFrom = Optional.of(LocalDate.of(2017, 1, 31));
        return new WorkerHistory(
                new WorkerFacts(id, Optional.empty(), Optional.empty(), enrolledFrom, endDate), List.of(), List.of());
    }

    private static void assertSame(RuleSet ruleSet, List<WorkerHistory> histories, BaselineRevision revision) {
        assertSame(ruleSet, histories, revision, DAYS);
    }

    private static void assertSame(
            RuleSet ruleSet, List<WorkerHistory> histories, BaselineRevision revision, List<LocalDate> days) {
        Population population = Population.of(histories);
        Map<String, WorkerHistory> byId = new HashMap<>();
        histories.forEach(history -> byId.put(history.worker().workerId(), history));
        assertThat(population.workerCount()).isEqualTo(histories.size());
        for (AgeCorrection correction : AgeCorrection.values()) {
            for (LocalDate asOf : days) {
                JudgingOptions options = new JudgingOptions(asOf, ruleSet, correction, revision, HOLIDAYS);
                JudgedPopulation judged = ColumnarJudge.judge(population, options);
                JudgedRow row = judged.newRow();
                for (int worker = 0; worker < population.workerCount(); worker++) {
                    WorkerJudgement expected = Judge.judge(byId.get(population.workerId(worker)), options);
                    assertSame(expected, judged, row, worker);
                }
            }
        }
    }

    private static void assertSame(WorkerJudgement expected, JudgedPopulation judged, JudgedRow row, int worker) {
        Population population = judged.population();
        boolean withReferences = judged.options().baselineRevision() == BaselineRevision.APPLY;
        List<Cells> expectedCells = expected.determinations().stream()
                .map(determination -> Cells.of(determination, withReferences))
                .toList();
        List<Cells> cells = new ArrayList<>();
        for (int test = population.firstTest(worker); test < population.endOfTests(worker); test++) {
            for (Ear ear : Ear.values()) {
                boolean hasRow = row.moveTo(worker, test, ear);
                if (hasRow != judged.hasRow(test, ear) || hasRow && row.outcome() != judged.outcome(test, ear)) {
                    fail("the row and the population differ");
                }
                if (hasRow) {
                    cells.add(Cells.of(row, population));
                }
            }
        }
        assertThat(cells).isEqualTo(expectedCells);
        assertThat(judged.followUps(worker)).isEqualTo(expected.followUps());
        assertThat(judged.proposals(worker)).isEqualTo(expected.proposals());
        for (int i = judged.firstFollowUp(worker); i < judged.endOfFollowUps(worker); i++) {
            assertThat(judged.isFollowUpOverdue(i))
                    .isEqualTo(expected.followUps()
                            .get(i - judged.firstFollowUp(worker))
                            .isOverdue(judged.options().asOf()));
        }
    }

    /** Everything that a row of the file of determinations shows, the sums in place of means. */
    private record Cells(
            LocalDate testDate,
            String purpose,
            Ear ear,
            Optional<LocalDate> baselineDate,
            OptionalInt ageAtBaseline,
            OptionalInt ageAtTest,
            Map<Frequency, Integer> shifts,
            Map<Frequency, Integer> allowances,
            OptionalInt shiftSum,
            Optional<Answer> standardShift,
            OptionalInt levelSum,
            Outcome outcome,
            Optional<Recordability> recordable,
            Optional<LocalDate> retestBy,
            Optional<LocalDate> notifyBy,
            Optional<LocalDate> recordBy,
            Optional<LocalDate> referenceDate,
            OptionalInt referenceShiftSum) {

        static Cells of(Determination determination, boolean withReferences) {
            Optional<ThresholdShift> shift = determination.shift();
            Optional<Judged> judged = determination instanceof Judged itself ? Optional.of(itself) : Optional.empty();
            Optional<Comparison> forLog = judged.filter(row -> withReferences)
                    .flatMap(row -> row.recording().comparison());
            Map<Frequency, Integer> shifts = new EnumMap<>(Frequency.class);
            Map<Frequency, Integer> allowances = new EnumMap<>(Frequency.class);
            shift.ifPresent(compared -> {
                for (Frequency frequency : Frequency.AVERAGED) {
                    compared.at(frequency).uncorrected().exact().ifPresent(dB -> shifts.put(frequency, dB));
                    compared.at(frequency).allowance().exact().ifPresent(dB -> allowances.put(frequency, dB));
                }
            });
            return new Cells(
                    determination.test().date(),
                    determination.test().purpose().word(),
                    determination.ear(),
                    shift.map(compared -> compared.earlier().date()),
                    shift.map(compared -> compared.allowance().ageAtBaseline()).orElse(OptionalInt.empty()),
                    shift.map(compared -> compared.allowance().ageAtTest()).orElse(OptionalInt.empty()),
                    shifts,
                    allowances,
                    shift.map(ThresholdShift::sum).map(DecibelRange::exact).orElse(OptionalInt.empty()),
                    shift.map(ThresholdShift::isShift),
                    determination.levelSum().exact(),
                    determination.outcome(),
                    judged.map(row -> row.recording().answer()),
                    judged.flatMap(row -> row.dueDates().retestBy()),
                    judged.flatMap(row -> row.dueDates().notifyBy()),
                    judged.flatMap(row -> row.dueDates().recordBy()),
                    forLog.map(comparison -> comparison.reference().audiogram().date()),
                    forLog.map(comparison -> comparison.shift().sum().exact()).orElse(OptionalInt.empty()));
        }

        static Cells of(JudgedRow row, Population population) {
            Map<Frequency, Integer> shifts = new EnumMap<>(Frequency.class);
            Map<Frequency, Integer> allowances = new EnumMap<>(Frequency.class);
            for (Frequency frequency : Frequency.AVERAGED) {
                number(row.shift(frequency)).ifPresent(decibels -> shifts.put(frequency, decibels));
                number(row.allowance(frequency)).ifPresent(decibels -> allowances.put(frequency, decibels));
            }
            return new Cells(
                    LocalDate.ofEpochDay(population.day(row.test())),
                    population.purpose(row.test()).word(),
                    row.ear(),
                    date(row.baselineDay()),
                    number(row.ageAtBaseline()),
                    number(row.ageAtTest()),
                    shifts,
                    allowances,
                    number(row.shiftSum()),
                    row.standardShift(),
                    number(row.levelSum()),
                    row.outcome(),
                    row.recordable(),
                    date(row.retestByDay()),
                    date(row.notifyByDay()),
                    date(row.recordByDay()),
                    date(row.referenceDay()),
                    number(row.referenceShiftSum()));
        }

        private static OptionalInt number(int number) {
            return number == JudgedRow.NO_NUMBER ? OptionalInt.empty() : OptionalInt.of(number);
        }

        private static Optional<LocalDate> date(int day) {
            return day == Population.NO_DAY ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(day));
        }
    }
}
