package org.thresholdregister.core.columnar;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;

/**
 * Measures how long judging a population in memory takes, and how much memory it holds, on the machine that runs it:
 * {@code ColumnarMeasurement [AUDIOGRAMS [RUNS]]}. The first runs warm up. No test asserts a time.
 */
public final class ColumnarMeasurement {

    private static final double BILLION = 1e9;
    /** Enough readable judging to be sure of its speed. */
    private static final int READABLE_WORKERS = 10_000;

    private ColumnarMeasurement() {}

    public static void main(String[] arguments) throws InterruptedException {
        int audiograms = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
        int runs = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 15;
        JudgingOptions options = JudgingOptions.asOf(SyntheticPopulation.AS_OF);
        ColumnarJudge.judge(SyntheticPopulation.of(SyntheticPopulation.TESTS_PER_WORKER), options);

        long before = usedBytes();
        Population population = SyntheticPopulation.of(audiograms);
        long inputBytes = usedBytes() - before;
        double[] seconds = new double[runs];
        JudgedPopulation judged = ColumnarJudge.judge(population, options);
        for (int run = 0; run < runs; run++) {
            long start = System.nanoTime();
            judged = ColumnarJudge.judge(population, options);
            seconds[run] = (System.nanoTime() - start) / BILLION;
        }
        long allBytes = usedBytes() - before;
        System.out.printf("%,d audiograms of %,d workers%n", population.testCount(), population.workerCount());
        System.out.printf(
                "bytes an audiogram: %.1f held, %.1f with answers%n",
                per(inputBytes, population), per(allBytes, population));
        System.out.printf(
                "seconds in order: %s%n",
                Arrays.toString(Arrays.stream(seconds)
                        .map(s -> Math.round(s * 1000) / 1000.0)
                        .toArray()));
        System.out.printf(
                "judging: best %.3f s, median %.3f s%n",
                Arrays.stream(seconds).min().orElseThrow(), median(seconds));
        System.out.printf("outcomes: %s%n", outcomes(judged));
        measureReading(judged);
        measureReadable(population, options);
    }

    private static void measureReading(JudgedPopulation judged) {
        for (int run = 0; run < 5; run++) {
            long start = System.nanoTime();
            long sum = 0;
            JudgedRow row = judged.newRow();
            Population population = judged.population();
            for (int worker = 0; worker < population.workerCount(); worker++) {
                for (int test = population.firstTest(worker); test < population.endOfTests(worker); test++) {
                    for (Ear ear : Ear.values()) {
                        if (row.moveTo(worker, test, ear)) {
                            sum += row.shiftSum() + row.levelSum() + row.ageAtTest() + row.notifyByDay();
                            sum += row.standardShift().map(Enum::ordinal).orElse(0);
                            for (var frequency : org.thresholdregister.core.audiometry.Frequency.AVERAGED) {
                                sum += row.shift(frequency) + row.allowance(frequency);
                            }
                        }
                    }
                }
            }
            System.out.printf(
                    "reading every row on one core: %.3f s (%d)%n", (System.nanoTime() - start) / BILLION, sum);
        }
    }

    private static void measureReadable(Population population, JudgingOptions options) {
        int workers = Math.min(READABLE_WORKERS, population.workerCount());
        for (int run = 0; run < 5; run++) {
            long start = System.nanoTime();
            int determinations = 0;
            for (int worker = 0; worker < workers; worker++) {
                determinations += Judge.judge(population.history(worker), options)
                        .determinations()
                        .size();
            }
            System.out.printf(
                    "readable rules on one core: %.2f microseconds a determination%n",
                    (System.nanoTime() - start) / 1e3 / determinations);
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

    private static double per(long bytes, Population population) {
        return (double) bytes / population.testCount();
    }

    private static double median(double[] seconds) {
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static long usedBytes() throws InterruptedException {
        for (int i = 0; i < 3; i++) {
            System.gc();
            Thread.sleep(50);
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
