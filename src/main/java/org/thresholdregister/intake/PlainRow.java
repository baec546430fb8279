package org.thresholdregister.intake;

import static org.thresholdregister.core.columnar.Population.NO_DAY;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.columnar.ThresholdCode;

/**
 * A row whose cells are read while they are still bytes. Only plain lines are: printable ASCII without quotation marks
 * and, in a UTF-8 file, letters like {@code ñ}; with as many cells as the header has columns. A cell of a column that
 * the file does not have is blank.
 */
final class PlainRow<C extends Enum<C> & Column> {

    private static final byte TEXT = 0;
    private static final byte SEPARATOR = 1;
    private static final byte END_OF_LINE = 2;
    private static final byte NOT_PLAIN = 3;

    /**
     * The first of two bytes in UTF-8. What lies from U+00C0 to U+07FF is neither blank nor a control, unlike much of
     * what lies before and beyond.
     */
    private static final byte FIRST_OF_TWO = 4;

    private final byte[] kinds = new byte[256];
    private final int columns;
    /** Where each column's cell stands, from 1; 0 where the file has no such column. */
    private final int[] cells;

    private final TextEncoding encoding;
    private byte[] bytes = {};
    /** Where each cell begins, and one past the end of the line; before the first is a blank cell of no column. */
    private final int[] starts;

    private long contentHash;

    PlainRow(Header<C> header, C[] allColumns, char separator, TextEncoding encoding) {
        this.encoding = encoding;
        Arrays.fill(kinds, NOT_PLAIN);
        Arrays.fill(kinds, 0xC3, 0xE0, FIRST_OF_TWO);
        Arrays.fill(kinds, ' ', 0x7F, TEXT);
        kinds['"'] = NOT_PLAIN;
        kinds['\n'] = END_OF_LINE;
        kinds['\r'] = END_OF_LINE;
        kinds[separator] = SEPARATOR;
        columns = header.size();
        starts = new int[columns + 2];
        cells = new int[allColumns.length];
        for (C column : allColumns) {
            cells[column.ordinal()] = header.position(column) + 1;
        }
    }

    /**
     * Moves to the line at the beginning of these bytes.
     *
     * @return how many bytes the line takes up, its end included; 0 where it is not plain or its end is not among them
     */
    int moveTo(byte[] bytes, int from, int to) throws IOException {
        this.bytes = bytes;
        // Local names: this loop sees every byte of a file.
        byte[] kindOf = kinds;
        int[] startOf = starts;
        startOf[0] = from - 1;
        startOf[1] = from;
        long hash = RowHash.START;
        int cell = 1;
        int at = from;
        while (at < to) {
            byte unit = bytes[at++];
            byte kind = kindOf[unit & 0xFF];
            if (kind == TEXT) {
                hash = RowHash.withUnit(hash, unit);
            } else if (kind == FIRST_OF_TWO && isLetter(at, to)) {
                hash = RowHash.withUnit(hash, (unit & 0x1F) << 6 | bytes[at++] & 0x3F);
            } else if (cell <= columns && kind <= END_OF_LINE) {
                hash = RowHash.withEndOfCell(hash);
                startOf[++cell] = at;
                if (kind == END_OF_LINE) {
                    contentHash = hash;
                    return cell == columns + 1 ? lengthWithEnd(from, at, to) : 0;
                }
            } else {
                return 0;
            }
        }
        return 0;
    }

    private boolean isLetter(int at, int to) throws IOException {
        return at < to && (bytes[at] & 0xC0) == 0x80 && encoding.charset().equals(StandardCharsets.UTF_8);
    }

    /** An end of line of two bytes is one. */
    private int lengthWithEnd(int from, int at, int to) {
        if (bytes[at - 1] == '\n') {
            return at - from;
        }
        if (at == to) {
            return 0;
        }
        return (bytes[at] == '\n' ? at + 1 : at) - from;
    }

    boolean has(C column) {
        return cells[column.ordinal()] > 0;
    }

    /** As {@link Row#contentHash}. */
    long contentHash() {
        return contentHash;
    }

    byte[] bytes() {
        return bytes;
    }

    /** Where the cell begins. */
    int start(C column) {
        return starts[cells[column.ordinal()]];
    }

    /** Where the cell ends. */
    int end(C column) {
        return starts[cells[column.ordinal()] + 1] - 1;
    }

    boolean isBlank(C column) {
        return start(column) == end(column);
    }

    /** Whether a text stands in the cell without what is taken off: blanks around it, the guard of a formula. */
    boolean isBareText(C column) {
        int start = start(column);
        int end = end(column);
        return start < end && bytes[start] != ' ' && bytes[start] != '\'' && bytes[end - 1] != ' ';
    }

    String text(C column) {
        return new String(bytes, start(column), end(column) - start(column), StandardCharsets.UTF_8);
    }

    /** A day as {@code LocalDate.toEpochDay} counts it, or {@link PlainCells#NOT_PLAIN}. */
    int day(C column) {
        return PlainCells.day(bytes, start(column), end(column));
    }

    /** Likewise, or {@link org.thresholdregister.core.columnar.Population#NO_DAY} where the cell is blank. */
    int dayIfGiven(C column) {
        return isBlank(column) ? NO_DAY : day(column);
    }

    /** By {@link ThresholdCode}, or {@link PlainCells#NOT_PLAIN}. */
    int threshold(C column) {
        return PlainCells.threshold(bytes, start(column), end(column));
    }

    boolean isBlankOrBelow(int limit, C column) {
        return isBlank(column) || PlainCells.isBelow(limit, bytes, start(column), end(column));
    }

    /** One of a few words, or null where none of them stands in the cell. */
    <T> @Nullable T word(C column, PlainWords<T> words) {
        return words.find(bytes, start(column), end(column));
    }

    boolean isBlankOrWord(C column, PlainWords<?> words) {
        return isBlank(column) || word(column, words) != null;
    }
}
