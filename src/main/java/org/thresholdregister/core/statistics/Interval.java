package org.thresholdregister.core.statistics;

/** All values from {@code low} to {@code high}, both included. */
public record Interval(double low, double high) {

    /** @throws IllegalArgumentException where the ends are no numbers or the wrong way round */
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval runs from the lower to the higher value");
        }
    }

    public boolean contains(double value) {
        return low <= value && value <= high;
    }
}
