package org.thresholdregister.intake;

import org.thresholdregister.core.audiometry.HearingLevel;

/** The one place where problems of rows are put into words: what is wrong, and how to mend it. */
final class ProblemWording {

    private ProblemWording() {}

    static String sentence(ProblemKind kind, String column, String detail) {
        return switch (kind) {
            case UNKNOWN_COLUMN -> "This column is not read: nothing of that name is expected in this file.";
            case NAMELESS_COLUMN ->
                "A column without a name in the first row is not read. Give it a name, or remove it.";
            case UNCLOSED_QUOTE ->
                "A quotation mark is never closed. Close it, or write it twice where it belongs to the text.";
            case MISPLACED_QUOTE ->
                "A quotation mark stands where no cell begins or ends. Remove it, or put the whole cell in quotation"
                        + " marks and write those within it twice.";
            case TOO_LONG ->
                "The row is longer than " + RecordReader.LONGEST_RECORD + " characters. Shorten it, or look for a"
                        + " missing line break.";
            case ROW_TOO_SHORT ->
                "The row ends before " + column + ", which is required. Add the missing cells, even where they are"
                        + " blank.";
            case OPTIONAL_CELLS_MISSING -> "The row ends before " + detail + "; what is missing is taken as not given.";
            case EXTRA_CELLS ->
                "The row has more cells than the first row has columns. Put cells that contain the separator in"
                        + " quotation marks.";
            case UNREADABLE_CHARACTERS ->
                "The cell holds characters that cannot be read. Save the file as UTF-8 and look at this cell.";
            case REQUIRED_CELL_BLANK -> "The cell is blank. Fill in " + column + ".";
            case UNKNOWN_WORKER ->
                "No worker with this number is on the roster, or the roster's row was left out. Compare the number with"
                        + " the roster, leading zeros included.";
            case UNREADABLE_DATE ->
                "This is no date of the calendar since " + CellReader.FIRST_YEAR + ". Write year, month and day like"
                        + " 2026-03-09.";
            case UNREADABLE_NUMBER -> "This is not " + detail + ". Use a point for decimals and no unit.";
            case UNKNOWN_WORD -> "This word is not known here. Write one of: " + detail + ".";
            case UNREADABLE_THRESHOLD ->
                "This is no hearing level. Write whole dB HL, >95 for no response at 95, NR for no response with no"
                        + " level given, DNT, CNT, or leave the cell blank.";
            case THRESHOLD_OUT_OF_RANGE ->
                "This level lies outside the range from " + HearingLevel.LOWEST_DB + " to " + HearingLevel.HIGHEST_DB
                        + " dB HL. Look it up in the test's record.";
            case BORN_AFTER_AS_OF -> "The birth date lies after " + detail + ". Look it up.";
            case ENDED_BEFORE_HIRED -> "The employment ends before it begins, on " + detail + ". Look up both dates.";
            case TESTED_BEFORE_BIRTH -> "The test lies before the worker's birth date. Look up both dates.";
            case TESTED_AFTER_AS_OF -> "The test lies after " + detail + ", the day this is worked out for.";
            case DECIDED_AFTER_AS_OF -> "Not decided yet on " + detail + ", the day this is worked out for.";
            case DECIDED_BEFORE_TEST -> "The decision is dated before the test it is about. Look up both dates.";
            case NO_SUCH_TEST ->
                "There is no test of this worker on that day, so the decision has no effect. Compare the date with the"
                        + " tests.";
            case SAME_ROW_AGAIN -> "The same row stands on line " + detail + "; it counts once.";
            case CONTRADICTING_WORKERS ->
                "Another row for this worker says something else: " + detail + ". Nobody can tell which is right, so"
                        + " none is used. Keep just the right one.";
            case CONTRADICTING_TESTS ->
                "Another row for this worker, day and purpose says something else: " + detail + ". Nobody can tell"
                        + " which is right, so none is used. Keep just the right one.";
            case TEXT_TOO_LONG_TO_KEEP -> "The text is longer than " + detail + " characters. Shorten it.";
            case WORKER_OF_ANOTHER_SITE ->
                "The worker belongs to a site that you do not look after, now or by this row. Ask someone who looks"
                        + " after both.";
            case DIFFERS_FROM_TEST_ON_RECORD ->
                "The register holds a test of this worker, day and purpose that says something else in: " + detail
                        + ". What is on record is kept. Look up which is right.";
            case SUPERSEDED_ON_RECORD ->
                "The register holds this very test, which was superseded or entered in error on " + detail
                        + ", so that it counts no more. Take the row out of the file.";
            case DECISION_OF_ANOTHER_ROLE ->
                "Decisions of this kind are a safety officer's to enter. Ask one to import this file.";
        };
    }
}
