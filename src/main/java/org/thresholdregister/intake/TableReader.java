package org.thresholdregister.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.intake.UnusableFileException.Reason;

/**
 * Reads one file from its first byte to its last: finds out encoding and separator, checks the header, and hands on each
 * row that fits it. Rows that do not fit are reported here; rows that are blank all through are passed over.
 */
final class TableReader<C extends Enum<C> & Column> {

    /** The separators tried, in this order where several fit the header row equally well. */
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};

    private static final String SEPARATOR_HINT = "sep=";
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final byte[] COMPOUND_FILE = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

    private final Table table;
    private final C[] columns;
    private final SourceFile file;
    private final ProblemSink problems;

    TableReader(Table table, C[] columns, SourceFile file, ProblemSink problems) {
        this.table = table;
        this.columns = columns;
        this.file = file;
        this.problems = problems;
    }

    /** Makes a taker of plain rows for a file with this header. */
    @FunctionalInterface
    interface PlainRowsFactory<C extends Enum<C> & Column> {
        PlainRows of(Header<C> header, char separator, TextEncoding encoding);
    }

    /**
     * Reads the whole file.
     *
     * @return how many rows the file has, blank ones not counted
     */
    int read(Consumer<Row<C>> rows) throws IOException, UnusableFileException {
        return read((header, separator, encoding) -> PlainRows.NONE, rows);
    }

    /**
     * Reads the whole file.
     *
     * @param plain takes what it can
     * @param rows takes all other rows
     * @return how many rows the file has, blank ones not counted
     */
    int read(PlainRowsFactory<C> plain, Consumer<Row<C>> rows) throws IOException, UnusableFileException {
        refuseWorkbook();
        TextEncoding encoding = TextEncoding.detect(file);
        @Nullable Character hint = separatorHint(encoding);
        char separator = hint == null ? likeliestSeparator(encoding) : hint;
        try (RecordReader records = new RecordReader(encoding.open(), separator)) {
            if (hint != null) {
                records.skipLine();
            }
            RecordReader.Cells headerRow = headerRow(records);
            Header<C> header = new Header<>(file.name(), columns, headerRow);
            noteColumnsNotRead(header, headerRow);
            PlainRows plainRows = plain.of(header, separator, encoding);
            int count = records.takePlain(plainRows);
            RecordReader.Outcome outcome;
            while ((outcome = records.next()) != null) {
                switch (outcome) {
                    case RecordReader.Fault fault -> {
                        count++;
                        report(fault);
                    }
                    case RecordReader.Cells cells when cells.areBlank() -> {}
                    case RecordReader.Cells cells -> {
                        count++;
                        readRow(records, header, cells, rows);
                    }
                }
                count += records.takePlain(plainRows);
            }
            return count;
        }
    }

    private void readRow(RecordReader records, Header<C> header, RecordReader.Cells cells, Consumer<Row<C>> rows) {
        String[] values = cells.values();
        int line = cells.line();
        if (cells.lines() > 1 && !mayRunOverLines(header, values)) {
            report(records.giveUpFirstLine());
            return;
        }
        int extra = firstExtraCell(header, values);
        if (extra < values.length) {
            report(line, "", values[extra], ProblemKind.EXTRA_CELLS, Effect.ROW_LEFT_OUT);
            return;
        }
        if (values.length < header.requiredCells()) {
            String column = header.firstRequiredFrom(values.length).columnName();
            report(line, column, "", ProblemKind.ROW_TOO_SHORT, Effect.ROW_LEFT_OUT);
            return;
        }
        Row<C> row = new Row<>(table, file.name(), header, line, values);
        List<C> missing = values.length < header.size() ? header.readFrom(values.length) : List.of();
        if (!missing.isEmpty()) {
            String names = missing.stream().map(Column::columnName).collect(Collectors.joining(", "));
            row.problem(missing.getFirst(), ProblemKind.OPTIONAL_CELLS_MISSING, names, Effect.NOTE);
        }
        rows.accept(row);
    }

    /**
     * Whether a record of several lines can be one: its line breaks stand where people write several lines, and its
     * cells fit the header. Otherwise two stray quotation marks have joined rows that were never one.
     */
    private static boolean mayRunOverLines(Header<?> header, String[] values) {
        if (values.length < header.requiredCells() || firstExtraCell(header, values) < values.length) {
            return false;
        }
        for (int i = 0; i < Math.min(values.length, header.size()); i++) {
            if (!header.isFreeText(i) && values[i].indexOf('\n') >= 0) {
                return false;
            }
        }
        return true;
    }

    /** The position of the first cell that is not blank and has no column; beyond the last cell where there is none. */
    private static int firstExtraCell(Header<?> header, String[] values) {
        int position = header.size();
        while (position < values.length && CellReader.trim(values[position]).isEmpty()) {
            position++;
        }
        return position;
    }

    private void noteColumnsNotRead(Header<C> header, RecordReader.Cells headerRow) {
        for (int i = 0; i < header.size(); i++) {
            if (!header.reads(i)) {
                ProblemKind kind = header.name(i).isEmpty() ? ProblemKind.NAMELESS_COLUMN : ProblemKind.UNKNOWN_COLUMN;
                report(headerRow.line(), CellReader.trim(headerRow.values()[i]), "", kind, Effect.NOTE);
            }
        }
    }

    private void report(RecordReader.Fault fault) {
        report(fault.line(), "", fault.text(), fault.kind(), Effect.ROW_LEFT_OUT);
    }

    private void report(int line, String column, String value, ProblemKind kind, Effect effect) {
        problems.report(new RowProblem(table, file.name(), line, column, value, kind, "", effect));
    }

    private void refuseWorkbook() throws IOException, UnusableFileException {
        try (InputStream bytes = file.content().open()) {
            byte[] start = bytes.readNBytes(ZIP.length);
            if (Arrays.equals(start, ZIP) || Arrays.equals(start, COMPOUND_FILE)) {
                throw new UnusableFileException(file.name(), Reason.WORKBOOK, List.of());
            }
        }
    }

    /** The separator that a first line like {@code sep=;} asks for, as spreadsheets write and obey it. */
    private @Nullable Character separatorHint(TextEncoding encoding) throws IOException {
        try (LineSource lines = encoding.open()) {
            LineSource.Line first = lines.next();
            if (first == null) {
                return null;
            }
            String text = first.text();
            boolean isHint = text.length() == SEPARATOR_HINT.length() + 1
                    && text.regionMatches(true, 0, SEPARATOR_HINT, 0, SEPARATOR_HINT.length());
            char asked = isHint ? text.charAt(SEPARATOR_HINT.length()) : ' ';
            for (char separator : SEPARATORS) {
                if (isHint && separator == asked) {
                    return asked;
                }
            }
            return null;
        }
    }

    /** The separator by which the header row names most of the columns. No other could give all the required ones. */
    private char likeliestSeparator(TextEncoding encoding) throws IOException {
        char likeliest = SEPARATORS[0];
        int most = -1;
        for (char separator : SEPARATORS) {
            try (RecordReader records = new RecordReader(encoding.open(), separator)) {
                RecordReader.Outcome first = firstNotBlank(records);
                int known = first instanceof RecordReader.Cells cells ? Header.known(columns, cells) : 0;
                if (known > most) {
                    most = known;
                    likeliest = separator;
                }
            }
        }
        return likeliest;
    }

    private RecordReader.Cells headerRow(RecordReader records) throws IOException, UnusableFileException {
        return switch (firstNotBlank(records)) {
            case null -> throw new UnusableFileException(file.name(), Reason.EMPTY, List.of());
            case RecordReader.Fault fault ->
                throw new UnusableFileException(file.name(), Reason.UNREADABLE_HEADER, List.of());
            case RecordReader.Cells cells -> cells;
        };
    }

    private static RecordReader.@Nullable Outcome firstNotBlank(RecordReader records) throws IOException {
        RecordReader.Outcome outcome = records.next();
        while (outcome instanceof RecordReader.Cells cells && cells.areBlank()) {
            outcome = records.next();
        }
        return outcome;
    }
}
