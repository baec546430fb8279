package org.thresholdregister.core.noise;

import org.thresholdregister.core.regulation.Citation;

/** Peak sound pressure level of impulsive or impact noise in dB; the rule states no weighting. */
public record ImpulsePeak(double decibels) {

    /** Advisory: the footnote says that exposure should not exceed it. */
    public static final double ADVISED_LIMIT_DB = 140;

    public static final Citation BASIS = new Citation("29 CFR 1910.95 Table G-16, footnote");

    /** @throws IllegalArgumentException outside 0 to 200 dB */
    public ImpulsePeak {
        if (!(decibels >= 0 && decibels <= 200)) {
            throw new IllegalArgumentException("a peak level goes from 0 to 200 dB");
        }
    }

    public boolean isAboveAdvisedLimit() {
        return Tolerance.exceeds(decibels, ADVISED_LIMIT_DB);
    }
}
