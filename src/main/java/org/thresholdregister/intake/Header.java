package org.thresholdregister.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.thresholdregister.intake.UnusableFileException.Reason;

/** Which column stands where in one file. */
final class Header<C extends Enum<C> & Column> {

    static final int ABSENT = -1;

    private final C[] columns;
    private final int[] positions;
    private final List<String> names;
    private final boolean[] freeText;
    private final int requiredCells;

    /**
     * @param columns all the columns that the file may have
     * @throws UnusableFileException when a required column is missing or a column is named twice
     */
    Header(String fileName, C[] columns, RecordReader.Cells row) throws UnusableFileException {
        this.columns = columns;
        this.names = names(row);
        requireEachOnce(fileName, names);
        positions = new int[columns.length];
        freeText = new boolean[names.size()];
        Arrays.fill(freeText, true);
        List<String> missing = new ArrayList<>();
        int required = 0;
        for (C column : columns) {
            int position = names.indexOf(column.columnName());
            positions[column.ordinal()] = position;
            if (position != ABSENT) {
                freeText[position] = column.content() == Column.Content.FREE_TEXT;
                required = column.required() ? Math.max(required, position + 1) : required;
            } else if (column.required()) {
                missing.add(column.columnName());
            }
        }
        if (!missing.isEmpty()) {
            throw new UnusableFileException(fileName, Reason.MISSING_COLUMNS, missing);
        }
        requiredCells = required;
    }

    /** How many of the columns a header row names. */
    static int known(Column[] columns, RecordReader.Cells row) {
        List<String> names = names(row);
        return (int) Arrays.stream(columns)
                .filter(column -> names.contains(column.columnName()))
                .count();
    }

    /** The names without white space and in lower case; blank cells at the end of the row name nothing. */
    private static List<String> names(RecordReader.Cells row) {
        List<String> names = new ArrayList<>();
        for (String cell : row.values()) {
            names.add(CellReader.trim(cell).toLowerCase(Locale.ROOT));
        }
        while (!names.isEmpty() && names.getLast().isEmpty()) {
            names.removeLast();
        }
        return names;
    }

    private static void requireEachOnce(String fileName, List<String> names) throws UnusableFileException {
        Set<String> seen = new TreeSet<>();
        Set<String> twice = new TreeSet<>();
        for (String name : names) {
            if (!name.isEmpty() && !seen.add(name)) {
                twice.add(name);
            }
        }
        if (!twice.isEmpty()) {
            throw new UnusableFileException(fileName, Reason.COLUMN_TWICE, List.copyOf(twice));
        }
    }

    /** Where the column stands, from 0, or {@link #ABSENT}. */
    int position(C column) {
        return positions[column.ordinal()];
    }

    /** How many columns the header row names. */
    int size() {
        return names.size();
    }

    /** How many cells a row needs to reach every required column. */
    int requiredCells() {
        return requiredCells;
    }

    String name(int position) {
        return names.get(position);
    }

    boolean reads(int position) {
        return Arrays.stream(positions).anyMatch(read -> read == position);
    }

    /** Whether a cell may hold a line break; where nothing is read, it may. */
    boolean isFreeText(int position) {
        return freeText[position];
    }

    /** The columns that are read and stand at this position or after it, in the order of the file. */
    List<C> readFrom(int position) {
        return Arrays.stream(columns)
                .filter(column -> position(column) >= position)
                .sorted(Comparator.comparingInt(this::position))
                .toList();
    }

    /** The first required column at this position or after it. */
    C firstRequiredFrom(int position) {
        return readFrom(position).stream().filter(Column::required).findFirst().orElseThrow();
    }
}
