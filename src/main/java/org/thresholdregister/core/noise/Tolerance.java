package org.thresholdregister.core.noise;

/**
 * Comparing what was computed in floating point: a billionth is far above the error of these computations and far below
 * what an instrument can tell apart.
 */
final class Tolerance {

    private static final double RELATIVE = 1e-9;

    private Tolerance() {}

    static boolean reaches(double value, double limit) {
        return value >= limit - RELATIVE * Math.abs(limit);
    }

    static boolean exceeds(double value, double limit) {
        return value > limit + RELATIVE * Math.abs(limit);
    }
}
