package org.thresholdregister.core.watch;

/**
 * The sum of one direction of one channel on one unit (Page 1954): each standardised difference adds what it exceeds the
 * allowance by, and the sum never falls under 0.
 */
final class CumulativeSum {

    private final double allowance;
    private final double limit;
    private double sum;

    CumulativeSum(double allowance, double limit) {
        this.allowance = allowance;
        this.limit = limit;
    }

    /** Held at its limit, so that it falls back as soon as the fault is mended. */
    void add(double standardised) {
        sum = Math.min(limit, Math.max(0, sum + standardised - allowance));
    }

    boolean isAtLimit() {
        return sum >= limit;
    }

    boolean isAtRest() {
        return sum <= 0;
    }

    /**
     * The limit at which a sum of independent normal differences signals falsely once in so many tests, by Siegmund's
     * approximation (1985).
     */
    static double limitFor(double allowance, double testsBetweenFalseSignals) {
        double low = 0;
        double high = 100;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            double x = 2 * allowance * (middle + 1.166);
            double tests = (Math.exp(x) - x - 1) / (2 * allowance * allowance);
            if (tests < testsBetweenFalseSignals) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
