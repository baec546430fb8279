package org.thresholdregister.sample;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** One row of a committed file, read back by column name. The sample has no line break inside a cell. */
record Row(Map<String, String> cells) {

    static List<Row> allOf(Path file) {
        List<String> lines;
        try {
            lines = Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<String> header = cellsOf(lines.getFirst());
        return lines.stream().skip(1).map(line -> of(header, cellsOf(line))).toList();
    }

    private static Row of(List<String> header, List<String> cells) {
        if (header.size() != cells.size()) {
            throw new IllegalArgumentException(cells.size() + " cells under " + header.size() + " columns");
        }
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            row.put(header.get(i), cells.get(i));
        }
        return new Row(row);
    }

    private static List<String> cellsOf(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char character : line.toCharArray()) {
            if (character == '"') {
                quoted = !quoted;
            } else if (character == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(character);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    String get(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalArgumentException("no column " + column);
        }
        return cell;
    }

    boolean has(String column, String value) {
        return get(column).equals(value);
    }

    boolean isBlank(String column) {
        return get(column).isEmpty();
    }

    LocalDate date(String column) {
        return LocalDate.parse(get(column));
    }

    boolean isNumber(String column) {
        return get(column).matches("-?\\d+");
    }

    int number(String column) {
        return Integer.parseInt(get(column));
    }

    /** The sum of the levels at 2000, 3000 and 4000 Hz. */
    int levelSum(String ear) {
        return number(ear + "_2000") + number(ear + "_3000") + number(ear + "_4000");
    }

    Collection<String> values() {
        return cells.values();
    }

    /** The first two cells, enough to find the row. */
    @Override
    public String toString() {
        return cells.values().stream().limit(2).collect(Collectors.joining(" "));
    }
}
