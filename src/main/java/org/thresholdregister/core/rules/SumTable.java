package org.thresholdregister.core.rules;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.regulation.PublishedTable;
import org.thresholdregister.core.rules.Verdict.Category;

/**
 * Sums of levels from which an ear falls into a worse category, by sex and age. Nothing is subtracted for age: the row
 * of the age on the day of the test is a comparison. Younger people than the first row read the first row.
 */
public final class SumTable {

    /** HSE L108, from memory of the 2005 table; the 2021 edition is assumed to keep it. */
    public static final SumTable L108 = load("uk-l108-categories.csv");

    private static final int BELOW_WARNING = 1;
    private static final int WARNING = 2;
    private static final int REFERRAL = 3;

    /** One row: the sums in dB from which the second and the third category begin. */
    public record Row(Sex sex, int youngest, int oldest, int warningSum, int referralSum) {
        private boolean isFor(int age) {
            return age >= youngest && age <= oldest;
        }

        private int category(int sum) {
            return sum >= referralSum ? REFERRAL : sum >= warningSum ? WARNING : BELOW_WARNING;
        }

        private Category category(DecibelRange sum) {
            return new Category(
                    sum.lowest().isPresent() ? category(sum.lowest().getAsInt()) : BELOW_WARNING,
                    sum.highest().isPresent() ? category(sum.highest().getAsInt()) : REFERRAL);
        }
    }

    private final List<Row> rows;

    private SumTable(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    /** The category of a sum; where several rows remain possible, all categories that some row gives. */
    static Category category(DecibelRange sum, List<Row> rows) {
        return rows.stream()
                .map(row -> row.category(sum))
                .reduce((one, other) ->
                        new Category(Math.min(one.lowest(), other.lowest()), Math.max(one.highest(), other.highest())))
                .orElseThrow();
    }

    /** The rows that a person of this age and sex may read; one where both are known. */
    public List<Row> rows(OptionalInt age, Optional<Sex> sex) {
        int youngest = rows.stream().mapToInt(Row::youngest).min().orElseThrow();
        return rows.stream()
                .filter(row -> sex.isEmpty() || row.sex == sex.get())
                .filter(row -> age.isEmpty() || row.isFor(Math.max(age.getAsInt(), youngest)))
                .toList();
    }

    private static SumTable load(String resource) {
        return new SumTable(PublishedTable.rows(SumTable.class, resource, resource).stream()
                .skip(1)
                .map(SumTable::row)
                .toList());
    }

    private static Row row(String[] cells) {
        return new Row(
                cells[0].equals(Sex.MALE.code()) ? Sex.MALE : Sex.FEMALE,
                Integer.parseInt(cells[1]),
                cells[2].isEmpty() ? Integer.MAX_VALUE : Integer.parseInt(cells[2]),
                Integer.parseInt(cells[3]),
                Integer.parseInt(cells[4]));
    }
}
