package org.thresholdregister.core.statistics;

/**
 * How many there were beside how many there should have been, as after a standardisation by age and sex.
 *
 * @param observed people counted, 0 or more
 * @param expected people expected, above 0
 */
public record ObservedToExpected(int observed, double expected) {

    /** @throws IllegalArgumentException for numbers outside their ranges */
    public ObservedToExpected {
        if (observed < 0 || !(expected > 0)) {
            throw new IllegalArgumentException("observed people are counted, and some are expected");
        }
    }

    public double ratio() {
        return observed / expected;
    }

    /** Byar's approximation to the exact Poisson interval of the ratio, of 95 %. */
    public Interval byar() {
        double low = observed == 0
                ? 0
                : observed * cube(1 - 1 / (9.0 * observed) - Proportion.Z_95 / (3 * Math.sqrt(observed)));
        double more = observed + 1.0;
        double high = more * cube(1 - 1 / (9 * more) + Proportion.Z_95 / (3 * Math.sqrt(more)));
        return new Interval(low / expected, high / expected);
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
