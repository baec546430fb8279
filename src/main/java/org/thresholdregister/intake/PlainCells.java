package org.thresholdregister.intake;

import java.time.LocalDate;
import java.time.YearMonth;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.columnar.ThresholdCode;

/**
 * Reads cells from their bytes: those forms that are beyond doubt, in which {@link CellReader} reads the same. All
 * others are {@link #NOT_PLAIN}, which says nothing of whether they can be read.
 */
final class PlainCells {

    static final int NOT_PLAIN = -1 << 30;

    /** Of the years from {@link CellReader#FIRST_YEAR} to this one each month is worked out beforehand. */
    private static final int LAST_YEAR = 2099;

    private static final int MONTHS = (LAST_YEAR - CellReader.FIRST_YEAR + 1) * 12;
    private static final int[] DAY_BEFORE_MONTH = new int[MONTHS];
    private static final byte[] DAYS_OF_MONTH = new byte[MONTHS];

    /** The codes of the levels of up to two digits, of which most cells are. */
    private static final short[] MEASURED = new short[100];

    private static final int MOST_DIGITS = 9;

    static {
        for (int level = 0; level < MEASURED.length; level++) {
            MEASURED[level] = ThresholdCode.measured(level);
        }
        for (int i = 0; i < MONTHS; i++) {
            YearMonth month = YearMonth.of(CellReader.FIRST_YEAR + i / 12, 1 + i % 12);
            DAY_BEFORE_MONTH[i] = (int) month.atDay(1).toEpochDay() - 1;
            DAYS_OF_MONTH[i] = (byte) month.lengthOfMonth();
        }
    }

    private PlainCells() {}

    /** A day as {@link LocalDate#toEpochDay} counts it. */
    static int day(byte[] bytes, int start, int end) {
        if (end - start != 10 || bytes[start + 4] != '-' || bytes[start + 7] != '-') {
            return NOT_PLAIN;
        }
        int year = digits(bytes, start, start + 4);
        int month = digits(bytes, start + 5, start + 7);
        int day = digits(bytes, start + 8, start + 10);
        if (year < CellReader.FIRST_YEAR || year > LAST_YEAR || month < 1 || month > 12 || day < 1) {
            return NOT_PLAIN;
        }
        int index = (year - CellReader.FIRST_YEAR) * 12 + month - 1;
        return day <= DAYS_OF_MONTH[index] ? DAY_BEFORE_MONTH[index] + day : NOT_PLAIN;
    }

    /** Whether this is a decimal, not negative and below the limit. */
    static boolean isBelow(int limit, byte[] bytes, int start, int end) {
        int point = start;
        while (point < end && bytes[point] != '.') {
            point++;
        }
        int whole = digits(bytes, start, point);
        return whole >= 0 && whole < limit && (point == end || digits(bytes, point + 1, end) >= 0);
    }

    /** The {@link ThresholdCode}. */
    static int threshold(byte[] bytes, int start, int end) {
        int length = end - start;
        if (length == 0) {
            return ThresholdCode.NOT_GIVEN;
        }
        int ones = bytes[end - 1] - '0';
        int tens = length == 2 ? bytes[start] - '0' : 0;
        if (length <= 2 && ones >= 0 && ones <= 9 && tens >= 0 && tens <= 9) {
            return MEASURED[10 * tens + ones];
        }
        return rarerThreshold(bytes, start, end);
    }

    private static int rarerThreshold(byte[] bytes, int start, int end) {
        byte first = bytes[start];
        int level = digits(bytes, start, end);
        if (level >= 0) {
            return HearingLevel.isInRange(level) ? ThresholdCode.measured(level) : NOT_PLAIN;
        }
        int number = digits(bytes, start + 1, end);
        if (first == '-') {
            return number >= 0 && HearingLevel.isInRange(-number) ? ThresholdCode.measured(-number) : NOT_PLAIN;
        }
        if (first == '>') {
            return number >= 0 && HearingLevel.isInRange(number) ? ThresholdCode.noResponseAt(number) : NOT_PLAIN;
        }
        return switch (end - start) {
            case 2 -> first == 'N' && bytes[start + 1] == 'R' ? ThresholdCode.NO_RESPONSE : NOT_PLAIN;
            case 3 -> bytes[start + 1] == 'N' && bytes[start + 2] == 'T' ? notTested(first) : NOT_PLAIN;
            default -> NOT_PLAIN;
        };
    }

    private static int notTested(byte first) {
        return switch (first) {
            case 'D' -> ThresholdCode.DID_NOT_TEST;
            case 'C' -> ThresholdCode.COULD_NOT_TEST;
            default -> NOT_PLAIN;
        };
    }

    /** The number that these digits write, a few at least one; negative otherwise. */
    private static int digits(byte[] bytes, int start, int end) {
        if (start >= end || end - start > MOST_DIGITS) {
            return NOT_PLAIN;
        }
        int number = 0;
        for (int i = start; i < end; i++) {
            int digit = bytes[i] - '0';
            if (digit < 0 || digit > 9) {
                return NOT_PLAIN;
            }
            number = 10 * number + digit;
        }
        return number;
    }
}
