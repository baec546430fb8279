package org.thresholdregister.platform.ui;

import java.io.Serializable;

/**
 * What stands in one cell of a list: words, which may lead to a page or show a state, a line beneath them, and a thing
 * to do. Texts that are not given are empty.
 *
 * @param classNames how the words look
 * @param path where the words lead to, relative to the application
 * @param note the smaller line beneath
 * @param action the words of a button
 * @param actionLabel the same for those who do not see the row that it stands in
 */
public record ListCell(String words, String classNames, String path, String note, String action, String actionLabel)
        implements Serializable {

    public static final ListCell EMPTY = text("");

    public static ListCell text(String words) {
        return new ListCell(words, "", "", "", "", "");
    }

    /** A number, or a date in a column of dates. */
    public static ListCell figures(String words) {
        return new ListCell(words, "tr-figures", "", "", "", "");
    }

    public static ListCell link(String words, String path) {
        return new ListCell(words, "", path, "", "", "");
    }

    public static ListCell state(StateBadge.Kind kind, String words) {
        return new ListCell(words, kind.classNames(), "", "", "", "");
    }

    public static ListCell action(String words, String label) {
        return new ListCell("", "", "", "", words, label);
    }

    public ListCell withNote(String line) {
        return new ListCell(words, classNames, path, line, action, actionLabel);
    }

    boolean isEmpty() {
        return words.isEmpty() && note.isEmpty() && action.isEmpty();
    }
}
