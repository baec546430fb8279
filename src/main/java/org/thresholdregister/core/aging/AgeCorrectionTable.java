package org.thresholdregister.core.aging;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.PublishedTable;

/**
 * A published table of age correction values in dB by frequency for ages 20 to 60. Younger people read the first row,
 * "20 or younger", older ones the last, "60 or older". {@link AgeTables} says which tables there are.
 */
public final class AgeCorrectionTable {

    private static final int YOUNGEST = 20;
    private static final int OLDEST = 60;

    private final String name;
    private final Map<Frequency, int[]> valuesByAge;

    private AgeCorrectionTable(String name, Map<Frequency, int[]> valuesByAge) {
        this.name = name;
        this.valuesByAge = valuesByAge;
    }

    /** The table's name in its rule. */
    public String name() {
        return name;
    }

    /**
     * The value in dB at this age in completed years.
     *
     * @throws IllegalArgumentException for a frequency that the table has no values for
     */
    public int decibels(int ageYears, Frequency frequency) {
        int[] values = valuesByAge.get(frequency);
        if (values == null) {
            throw new IllegalArgumentException("no age correction is published for " + frequency.hertz() + " Hz");
        }
        return values[Math.clamp(ageYears, YOUNGEST, OLDEST) - YOUNGEST];
    }

    static AgeCorrectionTable load(String name, String resource) {
        return new AgeCorrectionTable(name, parse(name, PublishedTable.rows(AgeCorrectionTable.class, resource, name)));
    }

    private static Map<Frequency, int[]> parse(String name, List<String[]> rows) {
        if (rows.size() != OLDEST - YOUNGEST + 2) {
            throw new IllegalStateException(name + " does not have a row for each age");
        }
        Map<Frequency, int[]> values = new EnumMap<>(Frequency.class);
        String[] header = rows.getFirst();
        for (int column = 1; column < header.length; column++) {
            int[] byAge = new int[OLDEST - YOUNGEST + 1];
            for (int row = 0; row < byAge.length; row++) {
                byAge[row] = Integer.parseInt(rows.get(row + 1)[column]);
            }
            values.put(Frequency.valueOf("HZ_" + header[column]), byAge);
        }
        return values;
    }
}
