package org.thresholdregister.core.population;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.population.Estimate.Limit;
import org.thresholdregister.core.population.Estimate.Mark;

/**
 * Hearing threshold level associated with age (HTLA), ISO 7029: dB of deviation from the median of otologically normal
 * people of 18 years and the same sex. To compare it with a level in dB HL is to take that median as 0 dB HL.
 */
public final class AgeComponent {

    private static final int YOUNGEST_YEARS = 18;
    private static final int SPREAD_UP_TO_YEARS = 70;
    private static final Frequency FIRST_FOR_INFORMATION = Frequency.HZ_3000;

    private static final Map<Row, Curve> EDITION_2000 = load2000();
    private static final Map<Row, Curve> EDITION_2017 = load2017();

    private AgeComponent() {}

    /** What a row of a table is for. */
    private record Row(Sex sex, Frequency frequency) {
        static Row of(Coefficients row) {
            return new Row(row.text("sex").equals(Sex.MALE.code()) ? Sex.MALE : Sex.FEMALE, row.frequency());
        }
    }

    /** The median at {@code years} beyond 18, and the spread above and below it. */
    private interface Curve {
        double median(double years);

        double upperSpread(double years);

        double lowerSpread(double years);
    }

    /** In the edition of 2000 the spreads grow with the median. */
    private record Quadratic(double a, double upperAt18, double lowerAt18) implements Curve {
        private static final double UPPER_GROWTH = 0.445;
        private static final double LOWER_GROWTH = 0.356;

        @Override
        public double median(double years) {
            return a * years * years;
        }

        @Override
        public double upperSpread(double years) {
            return upperAt18 + UPPER_GROWTH * median(years);
        }

        @Override
        public double lowerSpread(double years) {
            return lowerAt18 + LOWER_GROWTH * median(years);
        }
    }

    /** In the edition of 2017 the spreads are polynomials of the fifth degree. */
    private record Power(double a, double exponent, double[] upper, double[] lower) implements Curve {
        @Override
        public double median(double years) {
            return a * StrictMath.pow(years, exponent);
        }

        @Override
        public double upperSpread(double years) {
            return polynomial(upper, years);
        }

        @Override
        public double lowerSpread(double years) {
            return polynomial(lower, years);
        }

        private static double polynomial(double[] coefficients, double x) {
            double value = 0;
            for (int i = coefficients.length - 1; i >= 0; i--) {
                value = value * x + coefficients[i];
            }
            return value;
        }
    }

    /** The level in dB at a fractile, for an age in completed years. */
    public static Estimate<Double> decibels(
            AgeEdition edition, Sex sex, int ageYears, Frequency frequency, Fractile fractile) {
        if (!fractile.isCovered()) {
            return Estimate.outside(EnumSet.of(Limit.FRACTILE_BEYOND_5_TO_95_PERCENT));
        }
        return atQuantile(edition, sex, ageYears, frequency, fractile.quantile());
    }

    static Estimate<Double> atQuantile(
            AgeEdition edition, Sex sex, int ageYears, Frequency frequency, double quantile) {
        boolean isInformation = edition == AgeEdition.ISO_7029_2017
                && ageYears > SPREAD_UP_TO_YEARS
                && frequency.compareTo(FIRST_FOR_INFORMATION) >= 0;
        Set<Limit> limits = EnumSet.noneOf(Limit.class);
        if (ageYears < YOUNGEST_YEARS) {
            limits.add(Limit.AGE_UNDER_18);
        } else if (ageYears > edition.oldestYears()) {
            limits.add(
                    switch (edition) {
                        case ISO_7029_2000 -> Limit.AGE_OVER_70;
                        case ISO_7029_2017 -> Limit.AGE_OVER_80;
                    });
        } else if (isInformation && quantile != 0) {
            limits.add(Limit.SPREAD_OVER_70_YEARS);
        }
        if (!limits.isEmpty()) {
            return Estimate.outside(limits);
        }
        return Estimate.within(
                value(curve(edition, sex, frequency), ageYears - YOUNGEST_YEARS, quantile),
                isInformation ? EnumSet.of(Mark.INFORMATION_ONLY_ABOVE_70_YEARS) : EnumSet.noneOf(Mark.class));
    }

    private static double value(Curve curve, double years, double quantile) {
        double spread = quantile > 0 ? curve.upperSpread(years) : curve.lowerSpread(years);
        return curve.median(years) + quantile * spread;
    }

    private static Curve curve(AgeEdition edition, Sex sex, Frequency frequency) {
        Map<Row, Curve> curves = switch (edition) {
            case ISO_7029_2000 -> EDITION_2000;
            case ISO_7029_2017 -> EDITION_2017;
        };
        Curve curve = curves.get(new Row(sex, frequency));
        if (curve == null) {
            throw new IllegalStateException(edition.basis().source() + " lacks " + frequency.hertz() + " Hz");
        }
        return curve;
    }

    private static Map<Row, Curve> load2000() {
        Map<Row, Curve> curves = new HashMap<>();
        for (Coefficients row : Coefficients.load("iso7029-2000.csv", 14)) {
            curves.put(Row.of(row), new Quadratic(row.number("a"), row.number("bu_db"), row.number("bl_db")));
        }
        return curves;
    }

    private static Map<Row, Curve> load2017() {
        Map<Row, Curve> curves = new HashMap<>();
        for (Coefficients row : Coefficients.load("iso7029-2017.csv", 14)) {
            curves.put(
                    Row.of(row),
                    new Power(row.number("a"), row.number("b"), polynomial(row, "su_c"), polynomial(row, "sl_c")));
        }
        return curves;
    }

    private static double[] polynomial(Coefficients row, String prefix) {
        double[] coefficients = new double[6];
        for (int i = 0; i < coefficients.length; i++) {
            coefficients[i] = row.number(prefix + i);
        }
        return coefficients;
    }
}
