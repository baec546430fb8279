package org.thresholdregister.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.Threshold;

/** Reads the text of single cells. Only ASCII digits are digits. */
final class CellReader {

    /** Earlier dates are slips of the pen or a program's way to say "none". */
    static final int FIRST_YEAR = 1900;

    /** Stands for what cannot be read as a character. */
    static final char UNREADABLE_CHARACTER = '\uFFFD';

    private static final int LONGEST_LEVEL_DIGITS = 9;
    private static final Pattern DECIMAL = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,9})?");

    /** What a threshold cell was found to say. */
    sealed interface ThresholdCell {
        record Given(Threshold threshold) implements ThresholdCell {}

        record Unreadable(ProblemKind kind) implements ThresholdCell {}
    }

    private static final ThresholdCell.Given[] MEASURED =
            new ThresholdCell.Given[HearingLevel.HIGHEST_DB - HearingLevel.LOWEST_DB + 1];

    static {
        for (int i = 0; i < MEASURED.length; i++) {
            MEASURED[i] = new ThresholdCell.Given(Threshold.measured(i + HearingLevel.LOWEST_DB));
        }
    }

    private static final ThresholdCell NOT_GIVEN = new ThresholdCell.Given(Threshold.notGiven());
    private static final ThresholdCell NO_RESPONSE = new ThresholdCell.Given(Threshold.noResponse());
    private static final ThresholdCell DID_NOT_TEST =
            new ThresholdCell.Given(Threshold.notTested(Threshold.NotTested.Reason.DID_NOT_TEST));
    private static final ThresholdCell COULD_NOT_TEST =
            new ThresholdCell.Given(Threshold.notTested(Threshold.NotTested.Reason.COULD_NOT_TEST));
    private static final ThresholdCell UNREADABLE = new ThresholdCell.Unreadable(ProblemKind.UNREADABLE_THRESHOLD);
    private static final ThresholdCell OUT_OF_RANGE = new ThresholdCell.Unreadable(ProblemKind.THRESHOLD_OUT_OF_RANGE);

    private CellReader() {}

    /** Without white space around it, the kinds that spreadsheets bring along (no-break space) included. */
    static String trim(String cell) {
        int start = 0;
        int end = cell.length();
        while (start < end && isBlank(cell.charAt(start))) {
            start++;
        }
        while (end > start && isBlank(cell.charAt(end - 1))) {
            end--;
        }
        return cell.substring(start, end);
    }

    private static boolean isBlank(char c) {
        return c <= ' ' ? c == ' ' || Character.isWhitespace(c) : c >= 0x80 && isBlankBeyondAscii(c);
    }

    private static boolean isBlankBeyondAscii(char c) {
        return Character.isSpaceChar(c) || c == '\uFEFF' || c == '\u200B';
    }

    /** Without the apostrophe that keeps spreadsheets from taking a text for a formula. */
    static String withoutFormulaGuard(String text) {
        boolean guarded = text.length() > 1 && text.charAt(0) == '\'' && "=+-@".indexOf(text.charAt(1)) >= 0;
        return guarded ? text.substring(1) : text;
    }

    /** With U+FFFD in place of every character that has no place in a line of text. */
    static String withoutControls(String text) {
        StringBuilder cleaned = null;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isISOControl(c) && c != '\n' && c != '\t') {
                cleaned = cleaned == null ? new StringBuilder(text) : cleaned;
                cleaned.setCharAt(i, UNREADABLE_CHARACTER);
            }
        }
        return cleaned == null ? text : cleaned.toString();
    }

    static Optional<LocalDate> date(String text) {
        if (text.length() != 10 || text.charAt(4) != '-' || text.charAt(7) != '-') {
            return Optional.empty();
        }
        int year = digits(text, 0, 4);
        int month = digits(text, 5, 7);
        int day = digits(text, 8, 10);
        boolean exists = year >= FIRST_YEAR
                && month >= 1
                && month <= 12
                && day >= 1
                && (day <= 28 || day <= YearMonth.of(year, month).lengthOfMonth());
        return exists ? Optional.of(LocalDate.of(year, month, day)) : Optional.empty();
    }

    /** A decimal that is not negative and not larger than the limit. */
    static Optional<BigDecimal> decimal(String text, BigDecimal limit) {
        if (!DECIMAL.matcher(text).matches()) {
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(text)).filter(number -> number.compareTo(limit) <= 0);
    }

    static ThresholdCell threshold(String text) {
        if (text.isEmpty()) {
            return NOT_GIVEN;
        }
        char first = text.charAt(0);
        if (first == '>') {
            return noResponseAt(trim(text.substring(1)));
        }
        if (first == '-' || isDigit(first)) {
            return measured(text);
        }
        return switch (text.toUpperCase(Locale.ROOT)) {
            case "NR" -> NO_RESPONSE;
            case "DNT" -> DID_NOT_TEST;
            case "CNT" -> COULD_NOT_TEST;
            default -> UNREADABLE;
        };
    }

    private static ThresholdCell measured(String text) {
        if (!isWholeNumber(text)) {
            return UNREADABLE;
        }
        int decibels = wholeNumber(text);
        return HearingLevel.isInRange(decibels) ? MEASURED[decibels - HearingLevel.LOWEST_DB] : OUT_OF_RANGE;
    }

    private static ThresholdCell noResponseAt(String text) {
        if (!isWholeNumber(text)) {
            return UNREADABLE;
        }
        int decibels = wholeNumber(text);
        return HearingLevel.isInRange(decibels)
                ? new ThresholdCell.Given(Threshold.noResponseAt(decibels))
                : OUT_OF_RANGE;
    }

    private static boolean isWholeNumber(String text) {
        int start = text.startsWith("-") ? 1 : 0;
        return text.length() > start
                && text.length() <= start + LONGEST_LEVEL_DIGITS
                && digits(text, start, text.length()) >= 0;
    }

    private static int wholeNumber(String text) {
        return text.startsWith("-") ? -digits(text, 1, text.length()) : digits(text, 0, text.length());
    }

    /** The number that these characters write, or -1 where one of them is no digit. */
    private static int digits(String text, int start, int end) {
        int number = 0;
        for (int i = start; i < end; i++) {
            char c = text.charAt(i);
            if (!isDigit(c)) {
                return -1;
            }
            number = number * 10 + (c - '0');
        }
        return number;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** A few values, each with the word that stands for it; found in any case. */
    static final class Words<T> {
        private final Map<String, T> values = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        private final String list;

        Words(List<T> values, Function<T, String> word) {
            for (T value : values) {
                this.values.put(word.apply(value), value);
            }
            list = values.stream().map(word).collect(Collectors.joining(", "));
        }

        Optional<T> find(String text) {
            return Optional.ofNullable(values.get(text));
        }

        /** All the words, for a person to choose from. */
        String list() {
            return list;
        }
    }
}
