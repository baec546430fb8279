package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.util.List;

/** The arithmetic behind an estimate, with its numbers. */
public sealed interface Reckoning {

    /** What is taken off the level outside, in dB; never less than nothing. */
    BigDecimal attenuation();

    /**
     * {@code level - (share * (rating - before) - after)}.
     *
     * @param level outside, in the unit of its weighting
     * @param rating in dB
     * @param share of the rating that is counted
     * @param before what is taken off the rating before the share
     * @param after what is taken off after the share; negative where it is added
     */
    record ByRating(
            Weighting weighting,
            BigDecimal level,
            BigDecimal rating,
            BigDecimal share,
            BigDecimal before,
            BigDecimal after)
            implements Reckoning {

        /** By the formula; it may be less than nothing. */
        public BigDecimal formula() {
            return rating.subtract(before).multiply(share).subtract(after);
        }

        @Override
        public BigDecimal attenuation() {
            return formula().max(BigDecimal.ZERO);
        }
    }

    /**
     * H, M and L: with D the C-weighted less the A-weighted level, {@code M - (H - M) / 4 * (D - 2)} up to a D of 2, and
     * {@code M - (M - L) / 8 * (D - 2)} above.
     */
    record ByHml(BigDecimal dba, BigDecimal dbc, BigDecimal high, BigDecimal medium, BigDecimal low)
            implements Reckoning {

        private static final BigDecimal TWO = BigDecimal.valueOf(2);

        public BigDecimal difference() {
            return dbc.subtract(dba);
        }

        /** Whether the upper of the two formulas applies. */
        public boolean isUpToTwo() {
            return difference().compareTo(TWO) <= 0;
        }

        /** The predicted noise level reduction; it may be less than nothing. */
        public BigDecimal formula() {
            BigDecimal slope = isUpToTwo()
                    ? high.subtract(medium).divide(BigDecimal.valueOf(4))
                    : medium.subtract(low).divide(BigDecimal.valueOf(8));
            return medium.subtract(slope.multiply(difference().subtract(TWO)));
        }

        @Override
        public BigDecimal attenuation() {
            return formula().max(BigDecimal.ZERO);
        }
    }

    /** Band by band, from 125 to 8000 Hz. */
    record ByBands(List<BandStep> steps) implements Reckoning {
        public ByBands {
            steps = List.copyOf(steps);
        }

        /** The A-weighted level of the bands outside the protector. */
        public BigDecimal outside() {
            return BandStep.sumOutside(steps);
        }

        public BigDecimal under() {
            return BandStep.sum(steps);
        }

        @Override
        public BigDecimal attenuation() {
            return outside().subtract(under());
        }
    }
}
