package org.thresholdregister.core.population;

/**
 * A place in a population by the share of its people whose hearing is <em>worse</em>: 0.1 is the edge of the worst
 * tenth. The editions of ISO 1999 and most libraries of statistics differ in the direction; here it is always this one.
 *
 * @param worse the share with worse hearing, more than 0 and less than 1
 */
public record Fractile(double worse) {

    public static final Fractile MEDIAN = new Fractile(0.5);
    /** Nine people in ten hear worse. */
    public static final Fractile BEST_TENTH = new Fractile(0.9);
    /** One person in ten hears worse. */
    public static final Fractile WORST_TENTH = new Fractile(0.1);

    /** The standards give no fractile beyond these. */
    static final double LEAST_WORSE = 0.05;

    static final double MOST_WORSE = 0.95;

    /** @throws IllegalArgumentException for a share that is not between 0 and 1 */
    public Fractile {
        if (!(worse > 0 && worse < 1)) {
            throw new IllegalArgumentException("no fractile: " + worse);
        }
    }

    boolean isCovered() {
        return worse >= LEAST_WORSE && worse <= MOST_WORSE;
    }

    /** The standard normal quantile that belongs to it, positive where hearing is worse than the median's. */
    double quantile() {
        return NormalDistribution.quantileAbove(worse);
    }
}
