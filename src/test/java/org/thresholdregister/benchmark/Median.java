package org.thresholdregister.benchmark;

import java.util.List;

/** The middle of several measurements, which one slow run does not move. */
final class Median {

    private Median() {}

    static double of(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int count = sorted.size();
        return (sorted.get((count - 1) / 2) + sorted.get(count / 2)) / 2;
    }
}
