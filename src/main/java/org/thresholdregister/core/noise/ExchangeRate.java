package org.thresholdregister.core.noise;

/** By how many decibels a level may rise when the time spent in it is halved. */
public enum ExchangeRate {
    /** 29 CFR 1910.95, 30 CFR 62, 49 CFR 227. */
    FIVE_DB(5, 16.61),
    /** Equal energy: NIOSH, and the rules of most other countries. */
    THREE_DB(3, 10.0);

    private final int decibels;
    private final double factor;

    ExchangeRate(int decibels, double factor) {
        this.decibels = decibels;
        this.factor = factor;
    }

    public int decibels() {
        return decibels;
    }

    /**
     * The factor before the logarithm in the published formula of the time-weighted average. It is rounded there: the
     * exact ones are 16.6096 and 9.9658, so that dose and average do not lead back to each other to the last digit.
     */
    public double factor() {
        return factor;
    }
}
