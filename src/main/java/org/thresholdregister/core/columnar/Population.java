package org.thresholdregister.core.columnar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;

/**
 * All that is on record of many workers, in plain arrays: about 35 bytes a test. Workers are numbered from 0 by their
 * ids in the order of Unicode code points; tests are numbered from 0 worker by worker, and each worker's by
 * {@link Audiogram#CHRONOLOGICAL}. Immutable, and safe to read from several threads. Days are counted as
 * {@link LocalDate#toEpochDay} counts them.
 */
public final class Population {

    /** In place of a test's number: there is no such test. */
    public static final int NO_TEST = -1;

    /** In place of a day: none is known, or none applies. */
    public static final int NO_DAY = Integer.MIN_VALUE;

    private final WorkerColumns workers;
    private final int[] numbersInBuilder;
    /** Where each worker's tests begin; one more entry than workers. */
    private final int[] firstTests;

    private final int[] occasions;
    private final short[] codes;
    private final Decision[] decisions;
    /** Where each worker's decisions begin; one more entry than workers. */
    private final int[] firstDecisions;

    /**
     * @param workers in the order of their ids
     * @param occasions of the tests, as {@link Occasion} packs them
     * @param codes of the thresholds, {@link ThresholdCode#PER_AUDIOGRAM} for each test
     */
    Population(
            WorkerColumns workers,
            int[] numbersInBuilder,
            int[] firstTests,
            int[] occasions,
            short[] codes,
            int[] firstDecisions,
            Decision[] decisions) {
        this.workers = workers;
        this.numbersInBuilder = numbersInBuilder;
        this.firstTests = firstTests;
        this.occasions = occasions;
        this.codes = codes;
        this.firstDecisions = firstDecisions;
        this.decisions = decisions;
    }

    /** The population of these histories, in whatever order they come. */
    public static Population of(Iterable<WorkerHistory> histories) {
        PopulationBuilder builder = new PopulationBuilder();
        histories.forEach(builder::addHistory);
        return builder.build();
    }

    public int workerCount() {
        return workers.size();
    }

    public int testCount() {
        return occasions.length;
    }

    /** The number of the worker's first test. The last one stands before {@link #endOfTests}. */
    public int firstTest(int worker) {
        return firstTests[worker];
    }

    /** The number after the worker's last test. */
    public int endOfTests(int worker) {
        return firstTests[worker + 1];
    }

    /** Whose test it is; found by search, so that a loop over workers should rather carry the number along. */
    public int workerOf(int test) {
        if (test < 0 || test >= testCount()) {
            throw new IllegalArgumentException("no test has this number");
        }
        int low = 0;
        int high = workerCount();
        while (high - low > 1) {
            int middle = low + high >>> 1;
            if (firstTests[middle] <= test) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    public int day(int test) {
        return Occasion.day(occasions[test]);
    }

    public TestPurpose purpose(int test) {
        return Occasion.purpose(occasions[test]);
    }

    /** What was found, by {@link ThresholdCode}. */
    public short thresholdCode(int test, Ear ear, Frequency frequency) {
        return codes[test * ThresholdCode.PER_AUDIOGRAM + ThresholdCode.place(ear, frequency)];
    }

    public String workerId(int worker) {
        return workers.id(worker);
    }

    /** How many bytes the worker's id has in UTF-8. */
    public int idLength(int worker) {
        return workers.idLength(worker);
    }

    /** Copies the worker's id in UTF-8, and gives the place after it. */
    public int copyId(int worker, byte[] into, int at) {
        return workers.copyId(worker, into, at);
    }

    /** The number that {@link PopulationBuilder} gave to the worker. */
    public int numberInBuilder(int worker) {
        return numbersInBuilder[worker];
    }

    public WorkerFacts facts(int worker) {
        return workers.facts(worker);
    }

    /** What was decided about the worker's tests, in the order in which it was added. */
    public List<Decision> decisions(int worker) {
        return List.of(Arrays.copyOfRange(decisions, firstDecisions[worker], firstDecisions[worker + 1]));
    }

    public Audiogram audiogram(int test) {
        Audiogram.Builder audiogram = new Audiogram.Builder(LocalDate.ofEpochDay(day(test)), purpose(test));
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                audiogram.set(ear, frequency, ThresholdCode.threshold(thresholdCode(test, ear, frequency)));
            }
        }
        return audiogram.build();
    }

    /** All that is on record of one worker, as {@code Judge} takes it. */
    public WorkerHistory history(int worker) {
        List<Audiogram> audiograms = new ArrayList<>(endOfTests(worker) - firstTest(worker));
        for (int test = firstTest(worker); test < endOfTests(worker); test++) {
            audiograms.add(audiogram(test));
        }
        return new WorkerHistory(facts(worker), audiograms, decisions(worker));
    }

    WorkerColumns workers() {
        return workers;
    }

    boolean hasDecisions(int worker) {
        return firstDecisions[worker] < firstDecisions[worker + 1];
    }

    /** Day and purpose of a test, as {@link Occasion} packs them. */
    int occasion(int test) {
        return occasions[test];
    }

    /** @param place among the test's thresholds, by {@link ThresholdCode#place} */
    short thresholdCode(int test, int place) {
        return codes[test * ThresholdCode.PER_AUDIOGRAM + place];
    }
}
