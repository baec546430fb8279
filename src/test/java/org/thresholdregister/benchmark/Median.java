package org.thresholdregister.benchmark;

import java.util.List;

/** The middle of several measurements, which one slow run does not move. */
final class Median {

    private Median() {}

    static double of(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
