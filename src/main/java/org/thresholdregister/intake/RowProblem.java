package org.thresholdregister.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

/**
 * One thing that is wrong with one row.
 *
 * @param file the file's name as it was given
 * @param line the line of the file as an editor shows it, from 1; a row that runs over several lines is named by its
 *     first
 * @param column the column's name, or empty where the row as a whole is meant
 * @param value the cell as it stands in the file, cut off after {@value #LONGEST_TEXT} characters
 * @param detail what the sentence of this kind has to fill in; empty for most kinds
 */
public record RowProblem(
        Table table,
        String file,
        int line,
        String column,
        String value,
        ProblemKind kind,
        String detail,
        Effect effect) {

    /**
     * The order of reports: by file, then by line, then by column as {@link Table#columns} lists them, with what
     * concerns the row as a whole before all columns and columns that are not read after them.
     */
    public static final Comparator<RowProblem> FILE_ORDER = Comparator.comparing(RowProblem::table)
            .thenComparingInt(RowProblem::line)
            .thenComparingInt(RowProblem::columnRank);

    static final int LONGEST_TEXT = 200;

    public RowProblem {
        column = cutOff(column);
        value = cutOff(value);
    }

    /** What is wrong and how to mend it, as a plain sentence. */
    public String problem() {
        return ProblemWording.sentence(kind, column, detail);
    }

    /** The problem as it stands in a row that is left out: no cell of it is kept. */
    private RowProblem inRowLeftOut() {
        return effect == Effect.CELL_LEFT_BLANK
                ? new RowProblem(table, file, line, column, value, kind, detail, Effect.ROW_LEFT_OUT)
                : this;
    }

    /** Takes problems in {@link #FILE_ORDER} and hands them on row by row, with the effect that they have together. */
    static final class RowByRow implements Consumer<RowProblem> {
        private final Consumer<RowProblem> action;
        private final List<RowProblem> row = new ArrayList<>();

        RowByRow(Consumer<RowProblem> action) {
            this.action = action;
        }

        @Override
        public void accept(RowProblem problem) {
            if (!row.isEmpty() && (row.getFirst().table != problem.table || row.getFirst().line != problem.line)) {
                finish();
            }
            row.add(problem);
        }

        /** To be called after the last problem. */
        void finish() {
            boolean leftOut = row.stream().anyMatch(problem -> problem.effect == Effect.ROW_LEFT_OUT);
            row.forEach(problem -> action.accept(leftOut ? problem.inRowLeftOut() : problem));
            row.clear();
        }
    }

    /** How many rows of this file these problems leave out. */
    static long linesLeftOut(List<RowProblem> problems, Table table) {
        return problems.stream()
                .filter(problem -> problem.table() == table && problem.effect() == Effect.ROW_LEFT_OUT)
                .mapToInt(RowProblem::line)
                .distinct()
                .count();
    }

    private int columnRank() {
        if (column.isEmpty()) {
            return -1;
        }
        int rank = 0;
        for (Column known : table.columns()) {
            if (known.columnName().equals(column)) {
                return rank;
            }
            rank++;
        }
        return rank;
    }

    private static String cutOff(String text) {
        if (text.length() <= LONGEST_TEXT) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(LONGEST_TEXT - 1)) ? LONGEST_TEXT - 1 : LONGEST_TEXT;
        return text.substring(0, end) + "…";
    }

    /** Without the value and the detail, which may be personal and stay out of logs. */
    @Override
    public String toString() {
        return table + " line " + line + ", " + kind + ", " + effect.words();
    }
}
