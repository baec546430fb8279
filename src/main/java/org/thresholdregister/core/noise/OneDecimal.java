package org.thresholdregister.core.noise;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they are shown: one decimal, half up. */
public final class OneDecimal {

    /** Beyond this place a computed number holds nothing but the error of the computation. */
    private static final int EXACT_PLACES = 9;

    private static final int MOST_PLACES = 4;

    private OneDecimal() {}

    /** {@code 85.0} for 84.95 and 85.04. */
    public static String of(double value) {
        return rounded(value, 1).toPlainString();
    }

    /**
     * The same, with as many places more, up to four, as keep it apart from a limit that it is not: 49.97 beside a limit
     * of 50 reads {@code 49.97}.
     */
    public static String beside(double value, double limit) {
        boolean over = Tolerance.exceeds(value, limit);
        if (!over && Tolerance.reaches(value, limit)) {
            return of(limit);
        }
        BigDecimal bound = BigDecimal.valueOf(limit);
        for (int places = 1; places < MOST_PLACES; places++) {
            BigDecimal shown = rounded(value, places);
            if (shown.compareTo(bound) != 0) {
                return shown.toPlainString();
            }
        }
        return BigDecimal.valueOf(value)
                .setScale(MOST_PLACES, over ? RoundingMode.UP : RoundingMode.DOWN)
                .toPlainString();
    }

    private static BigDecimal rounded(double value, int places) {
        return BigDecimal.valueOf(value)
                .setScale(EXACT_PLACES, RoundingMode.HALF_UP)
                .setScale(places, RoundingMode.HALF_UP);
    }
}
