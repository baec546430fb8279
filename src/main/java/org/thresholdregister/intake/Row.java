package org.thresholdregister.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.intake.CellReader.Words;

/** One row of a file that fits its header: its cells by column, and the problems found in it. */
final class Row<C extends Enum<C> & Column> {

    private final Table table;
    private final String file;
    private final Header<C> header;
    private final int line;
    private final String[] cells;
    private final List<RowProblem> problems = new ArrayList<>(0);

    Row(Table table, String file, Header<C> header, int line, String[] cells) {
        this.table = table;
        this.file = file;
        this.header = header;
        this.line = line;
        this.cells = cells;
    }

    int line() {
        return line;
    }

    /** A fingerprint of the cells as they stand in the file: the same for rows of one file that are the same. */
    long contentHash() {
        long hash = RowHash.START;
        for (String cell : cells) {
            for (int i = 0; i < cell.length(); i++) {
                hash = RowHash.withUnit(hash, cell.charAt(i));
            }
            hash = RowHash.withEndOfCell(hash);
        }
        return hash;
    }

    /** The cell without white space around it; empty where the file has no such column or the row no such cell. */
    String cell(C column) {
        return CellReader.trim(raw(column));
    }

    /** Whether the row has a cell for this column and nothing stands in it. */
    boolean isGivenBlank(C column) {
        int position = header.position(column);
        return position != Header.ABSENT
                && position < cells.length
                && cell(column).isEmpty();
    }

    /** A cell of a person's own words. */
    String text(C column) {
        String text = CellReader.withoutFormulaGuard(cell(column));
        String cleaned = CellReader.withoutControls(text);
        if (cleaned.indexOf(CellReader.UNREADABLE_CHARACTER) >= 0) {
            problem(column, ProblemKind.UNREADABLE_CHARACTERS, "", Effect.NOTE);
        }
        return cleaned;
    }

    /** A worker's number: leading zeros count, white space around it does not. */
    String workerId(C column) {
        return CellReader.withoutFormulaGuard(cell(column));
    }

    /** A date; a problem where the cell is not blank and cannot be read. */
    Optional<LocalDate> date(C column, Effect ifUnreadable) {
        String cell = cell(column);
        Optional<LocalDate> date = CellReader.date(cell);
        if (date.isEmpty() && !cell.isEmpty()) {
            problem(column, ProblemKind.UNREADABLE_DATE, "", ifUnreadable);
        }
        return date;
    }

    /** A date without which the row is left out. */
    Optional<LocalDate> requiredDate(C column) {
        requireCell(column);
        return date(column, Effect.ROW_LEFT_OUT);
    }

    /** One of a few words; a problem where the cell is not blank and holds none of them. */
    <T> Optional<T> word(C column, Words<T> words, Effect ifUnknown) {
        String cell = cell(column);
        Optional<T> word = words.find(cell);
        if (word.isEmpty() && !cell.isEmpty()) {
            problem(column, ProblemKind.UNKNOWN_WORD, words.list(), ifUnknown);
        }
        return word;
    }

    /** One of a few words, without which the row is left out. */
    <T> Optional<T> requiredWord(C column, Words<T> words) {
        requireCell(column);
        return word(column, words, Effect.ROW_LEFT_OUT);
    }

    /** An optional decimal from 0 to the limit. */
    Optional<BigDecimal> decimal(C column, BigDecimal limit) {
        String cell = cell(column);
        Optional<BigDecimal> number = CellReader.decimal(cell, limit);
        if (number.isEmpty() && !cell.isEmpty()) {
            String range = "a number from 0 to " + limit.toPlainString();
            problem(column, ProblemKind.UNREADABLE_NUMBER, range, Effect.CELL_LEFT_BLANK);
        }
        return number;
    }

    /** Leaves the row out where the cell is blank. */
    void requireCell(C column) {
        if (cell(column).isEmpty()) {
            problem(column, ProblemKind.REQUIRED_CELL_BLANK, "", Effect.ROW_LEFT_OUT);
        }
    }

    /** Leaves the row out where the cell holds characters that mean nothing. */
    void requireReadable(C column) {
        if (CellReader.withoutControls(cell(column)).indexOf(CellReader.UNREADABLE_CHARACTER) >= 0) {
            problem(column, ProblemKind.UNREADABLE_CHARACTERS, "", Effect.ROW_LEFT_OUT);
        }
    }

    void problem(C column, ProblemKind kind, String detail, Effect effect) {
        problems.add(new RowProblem(table, file, line, column.columnName(), raw(column), kind, detail, effect));
    }

    /** Whether a problem found so far leaves the row out. */
    boolean isLeftOut() {
        for (RowProblem problem : problems) {
            if (problem.effect() == Effect.ROW_LEFT_OUT) {
                return true;
            }
        }
        return false;
    }

    /** Hands over the problems in the order of the columns. */
    void reportTo(ProblemSink sink) {
        if (problems.size() > 1) {
            problems.sort(RowProblem.FILE_ORDER);
        }
        problems.forEach(sink::report);
    }

    private String raw(C column) {
        int position = header.position(column);
        return position == Header.ABSENT || position >= cells.length ? "" : cells[position];
    }
}
