package org.thresholdregister.core.programme;

import org.thresholdregister.core.regulation.Citation;

/**
 * Where a percentage of people stops being acceptable, and where it becomes unacceptable: below {@code marginalFrom}
 * acceptable, up to {@code marginalTo} marginal, both ends included, above it unacceptable. A site may have its own from
 * its copy of the report; these are known from memory only, the inclusion of the ends too.
 *
 * @param marginalFrom in per cent
 * @param marginalTo in per cent, not below {@code marginalFrom}
 */
public record RatingRange(double marginalFrom, double marginalTo) {

    /** The report that the ranges are from. It is no regulation, and its ranges bear hard on tests in 5 dB steps. */
    public static final Citation SOURCE = new Citation("ANSI/ASA S12.13 TR-2002");

    /** For the share of people who are worse somewhere than in the test before. */
    public static final RatingRange WORSE = new RatingRange(17, 27);

    /** For the share of people who are worse or better somewhere than in the test before. */
    public static final RatingRange WORSE_OR_BETTER = new RatingRange(26, 40);

    /** @throws IllegalArgumentException for ends the wrong way round */
    public RatingRange {
        if (!(marginalFrom <= marginalTo)) {
            throw new IllegalArgumentException("the marginal range runs from the lower to the higher percentage");
        }
    }

    public Rating of(double percent) {
        if (percent < marginalFrom) {
            return Rating.ACCEPTABLE;
        }
        return percent <= marginalTo ? Rating.MARGINAL : Rating.UNACCEPTABLE;
    }
}
