package org.thresholdregister.core.noise;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.PublishedTable;

/**
 * A day beside Table G-16: the sum C1/T1 + C2/T2 + ... + Cn/Tn of its first footnote, with the printed durations T. The
 * limit is exceeded when the sum is more than 1; exactly 1 is within it.
 *
 * <p>Readings: levels under 90 dBA are not in the table and count nothing. A level between two printed ones has the
 * duration of the formula of Table G-16a. The table ends at 115 dBA, so that any time above it exceeds the limit; the sum
 * then still goes on by the formula, to have a number. The limit is not adjusted for long shifts.
 *
 * @param sum of the fractions; exact to the last digit of the division where {@code exact}
 * @param exact whether every level stands in the table, so that the comparison is one of fractions
 * @param aboveTable whether a level is above 115 dBA
 */
public record PermissibleExposure(double sum, boolean exact, boolean exceeded, boolean aboveTable) {

    public static final Citation BASIS = new Citation("29 CFR 1910.95(b)(1), Table G-16 and its footnote 1");

    /** Levels under this one count nothing. */
    public static final double LOWEST_DBA = 90;

    public static final double HIGHEST_DBA = 115;

    /** All printed durations divide 24 hours, in quarters of an hour: 96. */
    private static final int QUARTERS = 96;

    private static final NavigableMap<Double, BigDecimal> TABLE = read();

    public static PermissibleExposure of(NoiseDay day) {
        BigDecimal parts = BigDecimal.ZERO;
        double between = 0;
        boolean exact = true;
        boolean above = false;
        for (var spent : day.hoursByLevel().entrySet()) {
            SoundLevel level = spent.getKey();
            BigDecimal printed = TABLE.get(level.decibels());
            if (printed != null) {
                BigDecimal quarters = printed.multiply(BigDecimal.valueOf(4));
                parts = parts.add(spent.getValue().multiply(BigDecimal.valueOf(QUARTERS / quarters.intValueExact())));
            } else if (level.reaches(LOWEST_DBA)) {
                exact = false;
                above |= level.decibels() > HIGHEST_DBA;
                between += spent.getValue().doubleValue() / DoseRule.OSHA_LIMIT.referenceHours(level);
            }
        }
        BigDecimal whole = BigDecimal.valueOf(QUARTERS / 4);
        double sum = parts.doubleValue() / whole.doubleValue() + between;
        boolean exceeded = above || (exact ? parts.compareTo(whole) > 0 : Tolerance.exceeds(sum, 1));
        return new PermissibleExposure(sum, exact, exceeded, above);
    }

    /** The hours that the table permits at this level: as printed where it is printed, else by the formula. */
    public static double permittedHours(SoundLevel level) {
        BigDecimal printed = TABLE.get(level.decibels());
        return printed != null ? printed.doubleValue() : DoseRule.OSHA_LIMIT.referenceHours(level);
    }

    /** The levels that the table prints, in order. */
    public static List<SoundLevel> printedLevels() {
        return TABLE.keySet().stream().map(SoundLevel::ofDba).toList();
    }

    private static NavigableMap<Double, BigDecimal> read() {
        var table = new TreeMap<Double, BigDecimal>();
        PublishedTable.rows(PermissibleExposure.class, "osha-table-g16.csv", "Table G-16").stream()
                .skip(1)
                .forEach(row -> table.put(Double.valueOf(row[1]), new BigDecimal(row[0])));
        return Collections.unmodifiableNavigableMap(table);
    }
}
