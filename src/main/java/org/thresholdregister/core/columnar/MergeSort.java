package org.thresholdregister.core.columnar;

import java.util.function.IntBinaryOperator;

/** Sorts numbers by an order of what they stand for, without an object for each; quick where most is sorted already. */
final class MergeSort {

    private final int[] numbers;
    private final int[] scratch;
    private final IntBinaryOperator order;

    private MergeSort(int[] numbers, IntBinaryOperator order) {
        this.numbers = numbers;
        this.scratch = new int[numbers.length];
        this.order = order;
    }

    /** @param order compares as a {@code Comparator} does */
    static void sort(int[] numbers, IntBinaryOperator order) {
        new MergeSort(numbers, order).sort(0, numbers.length);
    }

    private void sort(int from, int to) {
        if (to - from < 2) {
            return;
        }
        int middle = from + to >>> 1;
        sort(from, middle);
        sort(middle, to);
        if (order.applyAsInt(numbers[middle - 1], numbers[middle]) > 0) {
            merge(from, middle, to);
        }
    }

    private void merge(int from, int middle, int to) {
        System.arraycopy(numbers, from, scratch, from, middle - from);
        int left = from;
        int right = middle;
        for (int at = from; left < middle; at++) {
            boolean takeLeft = right == to || order.applyAsInt(scratch[left], numbers[right]) <= 0;
            numbers[at] = takeLeft ? scratch[left++] : numbers[right++];
        }
    }
}
