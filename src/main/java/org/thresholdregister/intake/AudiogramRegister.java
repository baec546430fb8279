package org.thresholdregister.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * The tests of a file set, packed into columns (36 bytes a test): a million fit into a small heap. Filled row by row,
 * then settled once, then read worker by worker.
 */
final class AudiogramRegister {

    private static final TestPurpose[] PURPOSES = TestPurpose.values();
    private static final int PURPOSE_BITS = 3;
    private static final int ROW_BITS = 31;

    private int size;
    private int[] workers = new int[1024];
    /** Day and purpose in one, so that their order is the order of time. */
    private int[] tests = new int[1024];

    private long[] left = new long[1024];
    private long[] right = new long[1024];
    private int[] lines = new int[1024];
    private long[] hashes = new long[1024];

    /** The rows that count, sorted by worker and then by test. */
    private int[] order = {};
    /** Where in {@link #order} each worker's rows begin; one more entry than workers. */
    private int[] starts = {0};

    void add(int worker, AudiogramRow row) {
        if (size == workers.length) {
            grow(size + (size >> 1));
        }
        workers[size] = worker;
        tests[size] = test(row.audiogram().date(), row.audiogram().purpose());
        left[size] = PackedThresholds.pack(row.audiogram(), Ear.LEFT);
        right[size] = PackedThresholds.pack(row.audiogram(), Ear.RIGHT);
        lines[size] = row.line();
        hashes[size] = row.contentHash();
        size++;
    }

    /**
     * Settles which tests stand in the file twice, once all of it has arrived: rows that are the same count once,
     * others count for nothing. Reports both in the order of the file.
     *
     * @return the lines of the rows that count
     */
    BitSet settle(String file, WorkerRegister register, ProblemSink problems) {
        sortByWorkerAndTest(register.size());
        Repetitions repetitions = new Repetitions();
        repetitions.report(file, register, problems);
        repetitions.removeFromOrder();
        hashes = new long[0];
        BitSet kept = new BitSet();
        for (int row : order) {
            kept.set(lines[row]);
        }
        lines = new int[0];
        return kept;
    }

    /** The worker's tests in the order of time. */
    List<Audiogram> audiograms(int worker) {
        if (worker + 1 >= starts.length) {
            return List.of();
        }
        List<Audiogram> audiograms = new ArrayList<>(starts[worker + 1] - starts[worker]);
        for (int i = starts[worker]; i < starts[worker + 1]; i++) {
            audiograms.add(audiogram(order[i]));
        }
        return audiograms;
    }

    boolean hasTestOn(int worker, LocalDate date) {
        if (worker + 1 >= starts.length) {
            return false;
        }
        int day = (int) date.toEpochDay();
        for (int i = starts[worker]; i < starts[worker + 1]; i++) {
            if (tests[order[i]] >> PURPOSE_BITS == day) {
                return true;
            }
        }
        return false;
    }

    private Audiogram audiogram(int row) {
        LocalDate date = LocalDate.ofEpochDay(tests[row] >> PURPOSE_BITS);
        TestPurpose purpose = PURPOSES[tests[row] & (1 << PURPOSE_BITS) - 1];
        Audiogram.Builder audiogram = new Audiogram.Builder(date, purpose);
        PackedThresholds.unpack(left[row], Ear.LEFT, audiogram);
        PackedThresholds.unpack(right[row], Ear.RIGHT, audiogram);
        return audiogram.build();
    }

    private static int test(LocalDate date, TestPurpose purpose) {
        return (int) date.toEpochDay() << PURPOSE_BITS | purpose.ordinal();
    }

    private void sortByWorkerAndTest(int workerCount) {
        starts = new int[workerCount + 1];
        for (int row = 0; row < size; row++) {
            starts[workers[row] + 1]++;
        }
        for (int worker = 0; worker < workerCount; worker++) {
            starts[worker + 1] += starts[worker];
        }
        order = new int[size];
        int[] next = Arrays.copyOf(starts, workerCount);
        for (int row = 0; row < size; row++) {
            order[next[workers[row]]++] = row;
        }
        for (int worker = 0; worker < workerCount; worker++) {
            sortByTest(starts[worker], starts[worker + 1]);
        }
    }

    /** Sorts a part of the order by test, and rows of the same test as they stand in the file. */
    private void sortByTest(int from, int to) {
        long[] keys = new long[to - from];
        for (int i = from; i < to; i++) {
            keys[i - from] = (long) tests[order[i]] << ROW_BITS | order[i];
        }
        Arrays.sort(keys);
        for (int i = from; i < to; i++) {
            order[i] = (int) (keys[i - from] & Integer.MAX_VALUE);
        }
    }

    private void grow(int capacity) {
        workers = Arrays.copyOf(workers, capacity);
        tests = Arrays.copyOf(tests, capacity);
        left = Arrays.copyOf(left, capacity);
        right = Arrays.copyOf(right, capacity);
        lines = Arrays.copyOf(lines, capacity);
        hashes = Arrays.copyOf(hashes, capacity);
    }

    /** The rows of the same worker, day and purpose, found in the sorted order. */
    private final class Repetitions {
        private final BitSet repeated = new BitSet(size);
        private final BitSet contradictory = new BitSet(size);
        private final BitSet leftOut = new BitSet(size);
        /** For each row of a group, where in the order the group begins. */
        private int[] groupStarts = {};

        Repetitions() {
            int start = 0;
            while (start < order.length) {
                int end = groupEnd(start);
                if (end - start > 1) {
                    addGroup(start, end);
                }
                start = end;
            }
        }

        private int groupEnd(int start) {
            int end = start + 1;
            while (end < order.length && isSameTest(order[start], order[end])) {
                end++;
            }
            return end;
        }

        private boolean isSameTest(int row, int other) {
            return workers[row] == workers[other] && tests[row] == tests[other];
        }

        private void addGroup(int start, int end) {
            groupStarts = groupStarts.length == 0 ? new int[size] : groupStarts;
            boolean contradicts = false;
            for (int i = start + 1; i < end; i++) {
                contradicts |= hashes[order[i]] != hashes[order[start]];
            }
            for (int i = start; i < end; i++) {
                groupStarts[order[i]] = start;
                repeated.set(order[i]);
                contradictory.set(order[i], contradicts);
                leftOut.set(order[i], contradicts || i > start);
            }
        }

        void report(String file, WorkerRegister register, ProblemSink problems) {
            for (int row = repeated.nextSetBit(0); row >= 0; row = repeated.nextSetBit(row + 1)) {
                if (leftOut.get(row)) {
                    problems.report(problem(row, file, register));
                }
            }
        }

        private RowProblem problem(int row, String file, WorkerRegister register) {
            boolean contradicts = contradictory.get(row);
            return new RowProblem(
                    Table.AUDIOGRAMS,
                    file,
                    lines[row],
                    AudiogramColumn.WORKER_ID.columnName(),
                    register.facts(workers[row]).workerId(),
                    contradicts ? ProblemKind.CONTRADICTING_TESTS : ProblemKind.SAME_ROW_AGAIN,
                    contradicts ? otherLines(row) : Integer.toString(lines[order[groupStarts[row]]]),
                    contradicts ? Effect.ROW_LEFT_OUT : Effect.NOTE);
        }

        private String otherLines(int row) {
            IntStream group = IntStream.range(groupStarts[row], order.length)
                    .map(i -> order[i])
                    .takeWhile(other -> isSameTest(other, row));
            return OtherLines.names(lines[row], group.map(other -> lines[other]));
        }

        void removeFromOrder() {
            if (leftOut.isEmpty()) {
                return;
            }
            int kept = 0;
            int start = 0;
            for (int worker = 0; worker + 1 < starts.length; worker++) {
                int end = starts[worker + 1];
                for (int i = start; i < end; i++) {
                    if (!leftOut.get(order[i])) {
                        order[kept++] = order[i];
                    }
                }
                start = end;
                starts[worker + 1] = kept;
            }
            order = Arrays.copyOf(order, kept);
        }
    }
}
