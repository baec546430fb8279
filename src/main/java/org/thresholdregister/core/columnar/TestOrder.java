package org.thresholdregister.core.columnar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Tests that were added in any order, sorted by worker, by day and purpose, and then as they were added. */
final class TestOrder {

    private static final int NUMBER_BITS = 31;

    /** Where each worker's tests begin in {@link #tests}; one more entry than workers. */
    private final int[] starts;

    private final int[] tests;
    private final int[] occasions;

    private TestOrder(int[] starts, int[] tests, int[] occasions) {
        this.starts = starts;
        this.tests = tests;
        this.occasions = occasions;
    }

    /** @param dropped the tests that are left out */
    static TestOrder of(int workerCount, int testCount, int[] workersOfTests, int[] occasions, BitSet dropped) {
        int[] starts = new int[workerCount + 1];
        for (int test = dropped.nextClearBit(0); test < testCount; test = dropped.nextClearBit(test + 1)) {
            starts[workersOfTests[test] + 1]++;
        }
        for (int worker = 0; worker < workerCount; worker++) {
            starts[worker + 1] += starts[worker];
        }
        int[] tests = new int[starts[workerCount]];
        int[] next = starts.clone();
        for (int test = dropped.nextClearBit(0); test < testCount; test = dropped.nextClearBit(test + 1)) {
            tests[next[workersOfTests[test]]++] = test;
        }
        TestOrder order = new TestOrder(starts, tests, occasions);
        for (int worker = 0; worker < workerCount; worker++) {
            order.sortByOccasion(starts[worker], starts[worker + 1]);
        }
        return order;
    }

    private void sortByOccasion(int from, int to) {
        if (isSorted(from, to)) {
            return;
        }
        long[] keys = new long[to - from];
        for (int i = from; i < to; i++) {
            keys[i - from] = (long) occasions[tests[i]] << NUMBER_BITS | tests[i];
        }
        Arrays.sort(keys);
        for (int i = from; i < to; i++) {
            tests[i] = (int) keys[i - from] & Integer.MAX_VALUE;
        }
    }

    private boolean isSorted(int from, int to) {
        for (int i = from + 1; i < to; i++) {
            if (occasions[tests[i - 1]] > occasions[tests[i]]) {
                return false;
            }
        }
        return true;
    }

    /** Workers who were added after the tests were sorted have none. */
    int start(int worker) {
        return starts[Math.min(worker, starts.length - 1)];
    }

    int end(int worker) {
        return starts[Math.min(worker + 1, starts.length - 1)];
    }

    int count(int worker) {
        return end(worker) - start(worker);
    }

    /** The number of the test that stands here in the order. */
    int test(int place) {
        return tests[place];
    }

    boolean hasTestOn(int worker, int day) {
        for (int i = start(worker); i < end(worker); i++) {
            if (Occasion.day(occasions[tests[i]]) == day) {
                return true;
            }
        }
        return false;
    }

    /** Each group of tests of one worker, day and purpose. */
    List<int[]> repeated() {
        List<int[]> groups = new ArrayList<>();
        for (int worker = 0; worker + 1 < starts.length; worker++) {
            int first = start(worker);
            while (first < end(worker)) {
                int end = first + 1;
                while (end < end(worker) && occasions[tests[end]] == occasions[tests[first]]) {
                    end++;
                }
                if (end - first > 1) {
                    groups.add(Arrays.copyOfRange(tests, first, end));
                }
                first = end;
            }
        }
        return groups;
    }
}
