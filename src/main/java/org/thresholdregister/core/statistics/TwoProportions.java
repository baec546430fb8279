package org.thresholdregister.core.statistics;

import java.util.Optional;

/** Two groups that have nobody in common, compared: {@code a} beside {@code b}. */
public record TwoProportions(Proportion a, Proportion b) {

    /** Tables as unlikely as the one found count too; sums of doubles differ in the last digits. */
    private static final double AS_UNLIKELY = 1 + 1e-7;

    /** The rate of {@code a} less that of {@code b}, -1 to 1. */
    public double difference() {
        return a.rate() - b.rate();
    }

    /** The interval of the difference by Newcombe's hybrid of two score intervals (1998, method 10), of 95 %. */
    public Interval differenceInterval() {
        Interval ofA = a.wilson();
        Interval ofB = b.wilson();
        double below = Math.hypot(a.rate() - ofA.low(), ofB.high() - b.rate());
        double above = Math.hypot(ofA.high() - a.rate(), b.rate() - ofB.low());
        return new Interval(difference() - below, difference() + above);
    }

    /** The rate of {@code a} over that of {@code b}; empty where either count is 0. */
    public Optional<Double> ratio() {
        return a.count() == 0 || b.count() == 0 ? Optional.empty() : Optional.of(a.rate() / b.rate());
    }

    /** The interval of the ratio, made on its logarithm, of 95 %; empty where either count is 0. */
    public Optional<Interval> ratioInterval() {
        return ratio().map(ratio -> {
            double deviation = Math.sqrt(1.0 / a.count() - 1.0 / a.of() + 1.0 / b.count() - 1.0 / b.of());
            double factor = Math.exp(Proportion.Z_95 * deviation);
            return new Interval(ratio / factor, ratio * factor);
        });
    }

    /**
     * The two-sided p of Fisher's exact test: how often chance alone, with the totals as they are, deals the counts out as
     * unevenly as this or more so. 0 to 1.
     */
    public double fisher() {
        int counted = a.count() + b.count();
        int all = a.of() + b.of();
        double found = hypergeometric(a.count(), counted, all);
        double sum = 0;
        for (int k = Math.max(0, counted - b.of()); k <= Math.min(counted, a.of()); k++) {
            double chance = hypergeometric(k, counted, all);
            if (chance <= found * AS_UNLIKELY) {
                sum += chance;
            }
        }
        return Math.min(1, sum);
    }

    private double hypergeometric(int k, int counted, int all) {
        return Math.exp(Chances.logChoose(a.of(), k)
                + Chances.logChoose(b.of(), counted - k)
                - Chances.logChoose(all, counted));
    }
}
