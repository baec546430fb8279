package org.thresholdregister.batch;

import static org.thresholdregister.core.columnar.JudgedRow.NO_NUMBER;
import static org.thresholdregister.core.columnar.Population.NO_DAY;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.MeanOfThree;

/**
 * Cells of a {@link CsvFile} as bytes, each with the separator behind it. What is written again and again is made once;
 * the arrays are shared and must not be changed.
 */
final class CsvCells {

    static final byte[] BLANK = of("");

    private static final byte SEPARATOR = ',';
    private static final byte QUOTE = '"';

    /** Of these days the cells are made beforehand, as tests and what follows from them mostly are of one of them. */
    private static final int FIRST_YEAR = 1960;

    private static final int LAST_YEAR = 2060;
    private static final int FIRST_DAY = (int) LocalDate.of(FIRST_YEAR, 1, 1).toEpochDay();
    private static final byte[][] DAYS = days();

    private static final int FURTHEST_NUMBER = 600;
    private static final byte[][] NUMBERS = numbers(Integer::toString);
    private static final byte[][] MEANS = numbers(MeanOfThree::ofSum);

    private CsvCells() {}

    static byte[] of(String text) {
        byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
        ByteBuffer cell = ByteBuffer.allocate(2 * utf8.length + 3);
        if (needsQuotes(utf8)) {
            putQuoted(utf8, cell);
        } else {
            cell.put(utf8);
        }
        cell.put(SEPARATOR);
        return Arrays.copyOf(cell.array(), cell.position());
    }

    private static boolean needsQuotes(byte[] text) {
        for (byte unit : text) {
            if (unit == SEPARATOR || unit == QUOTE || unit == '\n' || unit == '\r') {
                return true;
            }
        }
        return false;
    }

    private static void putQuoted(byte[] text, ByteBuffer cell) {
        cell.put(QUOTE);
        for (byte unit : text) {
            if (unit == QUOTE) {
                cell.put(QUOTE);
            }
            cell.put(unit);
        }
        cell.put(QUOTE);
    }

    /** Several cells as one piece. */
    static byte[] ofAll(byte[]... cells) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] cell : cells) {
            all.writeBytes(cell);
        }
        return all.toByteArray();
    }

    static byte[] blanks(int count) {
        return ",".repeat(count).getBytes(StandardCharsets.US_ASCII);
    }

    /** The words of an enum, by ordinal. */
    static <E extends Enum<E>> byte[][] ofWords(E[] values, Function<E, String> word) {
        return Stream.of(values).map(word).map(CsvCells::of).toArray(byte[][]::new);
    }

    /** Blank for {@link org.thresholdregister.core.columnar.Population#NO_DAY}. */
    static byte[] ofDay(int epochDay) {
        int index = epochDay - FIRST_DAY;
        if (index >= 0 && index < DAYS.length) {
            return DAYS[index];
        }
        return epochDay == NO_DAY ? BLANK : of(LocalDate.ofEpochDay(epochDay).toString());
    }

    /** Blank for {@link org.thresholdregister.core.columnar.JudgedRow#NO_NUMBER}. */
    static byte[] ofNumber(int number) {
        int index = number + FURTHEST_NUMBER;
        if (index >= 0 && index < NUMBERS.length) {
            return NUMBERS[index];
        }
        return number == NO_NUMBER ? BLANK : of(Integer.toString(number));
    }

    /** The mean of three values with this sum, blank likewise. */
    static byte[] ofMean(int sumDecibels) {
        int index = sumDecibels + FURTHEST_NUMBER;
        if (index >= 0 && index < MEANS.length) {
            return MEANS[index];
        }
        return sumDecibels == NO_NUMBER ? BLANK : of(MeanOfThree.ofSum(sumDecibels));
    }

    private static byte[][] days() {
        int count = (int) LocalDate.of(LAST_YEAR + 1, 1, 1).toEpochDay() - FIRST_DAY;
        byte[][] days = new byte[count][];
        LocalDate month = LocalDate.of(FIRST_YEAR, 1, 1);
        int next = 0;
        while (next < count) {
            byte[] first = of(month.toString());
            for (int day = 1; day <= month.lengthOfMonth(); day++) {
                byte[] cell = first.clone();
                cell[cell.length - 3] = (byte) ('0' + day / 10);
                cell[cell.length - 2] = (byte) ('0' + day % 10);
                days[next++] = cell;
            }
            month = month.plusMonths(1);
        }
        return days;
    }

    private static byte[][] numbers(IntFunction<String> text) {
        byte[][] cells = new byte[2 * FURTHEST_NUMBER + 1][];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = of(text.apply(i - FURTHEST_NUMBER));
        }
        return cells;
    }
}
