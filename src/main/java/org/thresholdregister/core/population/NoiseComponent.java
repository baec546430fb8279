package org.thresholdregister.core.population;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.population.Estimate.Limit;
import org.thresholdregister.core.population.Estimate.Mark;
import org.thresholdregister.core.population.ExposureLevel.Origin;

/**
 * Noise-induced permanent threshold shift (NIPTS) in dB, ISO 1999:2013 clause 6.3: 500 to 6000 Hz, 75 to 100 dB, up to
 * 40 years, the same for both sexes.
 */
public final class NoiseComponent {

    private static final double LOWEST_DB = 75;
    private static final double HIGHEST_DB = 100;
    private static final double HIGHEST_EXTRAPOLATED_DB = 105;
    private static final double SHORTEST_YEARS = 1;
    private static final double LONGEST_YEARS = 40;

    /** The formula of the median holds from here on; below, it is brought down to nothing at no years. */
    private static final double FORMULA_FROM_YEARS = 10;

    private static final Map<Frequency, NoiseComponent.Terms> TERMS = load();

    private NoiseComponent() {}

    private record Terms(double u, double v, double fromDecibels, double xu, double yu, double xl, double yl) {

        double median(double years, double excessSquared) {
            if (years < FORMULA_FROM_YEARS) {
                return StrictMath.log10(years + 1)
                        / StrictMath.log10(FORMULA_FROM_YEARS + 1)
                        * median(FORMULA_FROM_YEARS, excessSquared);
            }
            return (u + v * StrictMath.log10(years)) * excessSquared;
        }

        double upperSpread(double years, double excessSquared) {
            return (xu + yu * StrictMath.log10(years)) * excessSquared;
        }

        double lowerSpread(double years, double excessSquared) {
            return (xl + yl * StrictMath.log10(years)) * excessSquared;
        }

        double shift(NoiseExposure exposure, double quantile) {
            double excess = Math.max(0, exposure.level().decibels() - fromDecibels);
            double squared = excess * excess;
            double spread =
                    quantile > 0 ? upperSpread(exposure.years(), squared) : lowerSpread(exposure.years(), squared);
            return Math.max(0, median(exposure.years(), squared) + quantile * spread);
        }
    }

    /** The shift in dB at a fractile. */
    public static Estimate<Double> decibels(NoiseExposure exposure, Frequency frequency, Fractile fractile) {
        if (!fractile.isCovered()) {
            return Estimate.outside(EnumSet.of(Limit.FRACTILE_BEYOND_5_TO_95_PERCENT));
        }
        return atQuantile(exposure, frequency, fractile.quantile());
    }

    static Estimate<Double> atQuantile(NoiseExposure exposure, Frequency frequency, double quantile) {
        Terms terms = TERMS.get(frequency);
        Set<Limit> limits = limits(exposure);
        if (terms == null) {
            limits.add(Limit.NO_NOISE_COMPONENT_AT_8000_HZ);
            return Estimate.outside(limits);
        }
        return limits.isEmpty()
                ? Estimate.within(terms.shift(exposure, quantile), marks(exposure, quantile))
                : Estimate.outside(limits);
    }

    private static Set<Limit> limits(NoiseExposure exposure) {
        Set<Limit> limits = EnumSet.noneOf(Limit.class);
        double level = exposure.level().decibels();
        if (!(level >= LOWEST_DB)) {
            limits.add(Limit.LEVEL_UNDER_75_DB);
        } else if (level > HIGHEST_EXTRAPOLATED_DB) {
            limits.add(Limit.LEVEL_OVER_105_DB);
        }
        if (!(exposure.years() >= SHORTEST_YEARS)) {
            limits.add(Limit.EXPOSURE_UNDER_1_YEAR);
        } else if (exposure.years() > LONGEST_YEARS) {
            limits.add(Limit.EXPOSURE_OVER_40_YEARS);
        }
        return limits;
    }

    private static Set<Mark> marks(NoiseExposure exposure, double quantile) {
        Set<Mark> marks = EnumSet.noneOf(Mark.class);
        if (exposure.level().decibels() > HIGHEST_DB) {
            marks.add(Mark.LEVEL_ABOVE_100_DB);
        }
        if (exposure.years() < FORMULA_FROM_YEARS && quantile != 0) {
            marks.add(Mark.SPREAD_UNDER_TEN_YEARS);
        }
        if (exposure.level().origin() == Origin.TWA_OF_5_DB_EXCHANGE) {
            marks.add(Mark.LEVEL_OF_5_DB_EXCHANGE);
        }
        return marks;
    }

    private static Map<Frequency, Terms> load() {
        Map<Frequency, Terms> terms = new EnumMap<>(Frequency.class);
        for (Coefficients row : Coefficients.load("iso1999-nipts.csv", 6)) {
            terms.put(
                    row.frequency(),
                    new Terms(
                            row.number("u"),
                            row.number("v"),
                            row.number("L0_db"),
                            row.number("Xu"),
                            row.number("Yu"),
                            row.number("Xl"),
                            row.number("Yl")));
        }
        return terms;
    }
}
