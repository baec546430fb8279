package org.thresholdregister.core.columnar;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/**
 * Measures how long judging a population in memory takes, and how much memory it holds, on the machine that runs it:
 * {@code ColumnarMeasurement [AUDIOGRAMS [RUNS]]}. The first run is cold, the next ones warm up. No test asserts a time.
 */
public final class ColumnarMeasurement {

    private static final double BILLION = 1e9;
    /** Enough readable judging to be sure of its speed. */
    private static final int READABLE_WORKERS = 10_000;

    private static final int FEW_RUNS = 6;

    private ColumnarMeasurement() {}

    public static void main(String[] arguments) throws InterruptedException {
        int audiograms = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
        int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 20;
        JudgingOptions options = JudgingOptions.asOf(SyntheticPopulation.AS_OF);

        long before = usedBytes();
        Population population = SyntheticPopulation.of(audiograms);
        long inputBytes = usedBytes() - before;
        System.out.printf("%,d audiograms of %,d workers%n", population.testCount(), population.workerCount());

        JudgedPopulation judged = judge(population, options, runs);
        long allBytes = usedBytes() - before;
        System.out.printf(
                "bytes an audiogram: %.1f held, %.1f with answers%n",
                (double) inputBytes / population.testCount(), (double) allBytes / population.testCount());
        System.out.printf("outcomes: %s%n", outcomes(judged));

        for (BaselineRevision revision : List.of(BaselineRevision.PROPOSE, BaselineRevision.APPLY)) {
            JudgingOptions revised = options.withBaselineRevision(revision);
            measure("judging with revision " + revision, FEW_RUNS, () -> ColumnarJudge.judge(population, revised));
        }
        for (RuleSet ruleSet : RuleSets.ALL) {
            JudgingOptions other = new JudgingOptions(
                    SyntheticPopulation.AS_OF, ruleSet, options.ageCorrection(), options.baselineRevision());
            measure("judging by " + ruleSet.word(), FEW_RUNS, () -> ColumnarJudge.judge(population, other));
        }
        measure("reading every row on one core", FEW_RUNS, () -> readAll(judged));
        int workers = Math.min(READABLE_WORKERS, population.workerCount());
        measure("readable rules on one core for %,d workers".formatted(workers), FEW_RUNS, () -> {
            for (int worker = 0; worker < workers; worker++) {
                Judge.judge(population.history(worker), options);
            }
        });
    }

    private static JudgedPopulation judge(Population population, JudgingOptions options, int runs) {
        @Nullable JudgedPopulation[] judged = {null};
        measure("judging", runs, () -> judged[0] = ColumnarJudge.judge(population, options));
        return Objects.requireNonNull(judged[0]);
    }

    /** Times what is done; the time of all processors together does not grow with what else the machine does. */
    private static void measure(String what, int runs, Runnable action) {
        double[] seconds = new double[runs];
        double[] processorSeconds = new double[runs];
        for (int run = 0; run < runs; run++) {
            long processorStart = processorNanos();
            long start = System.nanoTime();
            action.run();
            seconds[run] = (System.nanoTime() - start) / BILLION;
            processorSeconds[run] = (processorNanos() - processorStart) / BILLION;
        }
        report(what + ", seconds", seconds);
        report(what + ", processor seconds", processorSeconds);
    }

    private static void report(String what, double[] seconds) {
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        System.out.printf(
                "%s: first %.3f, best %.3f, median %.3f%n", what, seconds[0], sorted[0], sorted[sorted.length / 2]);
    }

    private static long processorNanos() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private static void readAll(JudgedPopulation judged) {
        long sum = 0;
        JudgedRow row = judged.newRow();
        Population population = judged.population();
        for (int worker = 0; worker < population.workerCount(); worker++) {
            for (int test = population.firstTest(worker); test < population.endOfTests(worker); test++) {
                for (Ear ear : Ear.values()) {
                    if (row.moveTo(worker, test, ear)) {
                        sum += row.baselineDay() + row.ageAtBaseline() + row.ageAtTest();
                        for (Frequency frequency : Frequency.AVERAGED) {
                            sum += row.shift(frequency) + row.allowance(frequency);
                        }
                        sum += row.shiftSum() + row.levelSum() + row.retestByDay();
                        sum += row.notifyByDay() + row.recordByDay();
                        sum += row.standardShift().hashCode() + row.recordable().hashCode();
                    }
                }
            }
        }
        if (sum == 0) {
            throw new IllegalStateException("nothing was read");
        }
    }

    private static Map<Outcome, Integer> outcomes(JudgedPopulation judged) {
        Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
        for (int test = 0; test < judged.population().testCount(); test++) {
            for (Ear ear : Ear.values()) {
                if (judged.hasRow(test, ear)) {
                    counts.merge(judged.outcome(test, ear), 1, Integer::sum);
                }
            }
        }
        return counts;
    }

    private static long usedBytes() throws InterruptedException {
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(50);
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
