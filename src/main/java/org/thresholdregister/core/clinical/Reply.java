package org.thresholdregister.core.clinical;

/** An answer to a question, with what was said to it; the note may be empty. */
public record Reply(boolean yes, String note) {

    /** The most characters of a note. */
    public static final int LONGEST_NOTE = 300;
}
