package org.thresholdregister.core.population;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.PublishedTable;

/** One row of a table of coefficients that comes with the program, by column name. */
record Coefficients(Map<String, String> cells) {

    /** @throws IllegalStateException where the table is missing or has another number of rows */
    static List<Coefficients> load(String resource, int expectedRows) {
        List<String[]> rows = PublishedTable.rows(Coefficients.class, resource, resource);
        if (rows.size() != expectedRows + 1) {
            throw new IllegalStateException(resource + " does not have " + expectedRows + " rows");
        }
        return rows.stream().skip(1).map(row -> of(rows.getFirst(), row)).toList();
    }

    private static Coefficients of(String[] header, String[] row) {
        Map<String, String> cells = new HashMap<>();
        for (int column = 0; column < header.length; column++) {
            cells.put(header[column], row[column]);
        }
        return new Coefficients(Map.copyOf(cells));
    }

    String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalStateException("no column " + column);
        }
        return cell;
    }

    double number(String column) {
        return Double.parseDouble(text(column));
    }

    Frequency frequency() {
        return Frequency.valueOf("HZ_" + text("freq_hz"));
    }
}
