package org.thresholdregister.intake;

/** A column that a file may have. */
public interface Column {

    /** What a column holds. */
    enum Content {
        /** One of a few words, a number, a date or an identifier: never more than one line. */
        SINGLE_LINE,
        /** Words of a person's own choice, which may run over several lines. */
        FREE_TEXT
    }

    /** The name in the header row, in lower case; in a file any case will do. */
    String columnName();

    /** Whether a file without this column cannot be used. */
    boolean required();

    Content content();
}
