package org.thresholdregister.intake;

import java.util.List;

/** The file as a whole cannot be read. The message is for the user and names the file and the columns concerned. */
public final class UnusableFileException extends Exception {

    private static final long serialVersionUID = 1L;

    /** What makes the file unusable. */
    public enum Reason {
        EMPTY,
        /** A spreadsheet workbook, not text. */
        WORKBOOK,
        UNREADABLE_HEADER,
        MISSING_COLUMNS,
        COLUMN_TWICE
    }

    private final String fileName;
    private final Reason reason;
    private final List<String> columns;

    UnusableFileException(String fileName, Reason reason, List<String> columns) {
        super(message(fileName, reason, columns));
        this.fileName = fileName;
        this.reason = reason;
        this.columns = List.copyOf(columns);
    }

    public String fileName() {
        return fileName;
    }

    public Reason reason() {
        return reason;
    }

    /** The columns that are missing or named twice; empty for the other reasons. */
    public List<String> columns() {
        return columns;
    }

    private static String message(String fileName, Reason reason, List<String> columns) {
        String names = String.join(", ", columns);
        return fileName
                + switch (reason) {
                    case EMPTY -> " is empty: its first row must name the columns.";
                    case WORKBOOK -> " is a spreadsheet workbook: save it as CSV and use that file.";
                    case UNREADABLE_HEADER ->
                        " has a first row that cannot be read: it must name the columns, and every quotation mark in it"
                                + " must be closed.";
                    case MISSING_COLUMNS ->
                        columns.size() == 1
                                ? " has no column " + names + ", which is required."
                                : " has no columns " + names + ", which are required.";
                    case COLUMN_TWICE ->
                        columns.size() == 1
                                ? " names the column " + names + " more than once: leave just one."
                                : " names the columns " + names + " more than once: leave just one of each.";
                };
    }
}
