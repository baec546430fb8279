package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.html.Span;

/** A state in words, helped by a shape of its own; the colour adds nothing that the two do not say. */
public class StateBadge extends Span {

    /** What kind of state it is; each has its shape. */
    public enum Kind {
        /** Its date has passed: a filled triangle. */
        OVERDUE("overdue"),
        /** Still to be done: an open ring. */
        OPEN("open"),
        /** Settled: a tick. */
        DONE("done"),
        /** The record does not hold what an answer rests on: a dashed ring. */
        UNDECIDED("undecided");

        private final String modifier;

        Kind(String modifier) {
            this.modifier = modifier;
        }

        /** The classes of the style sheet that draw the shape. */
        String classNames() {
            return "tr-state tr-state--" + modifier;
        }
    }

    /** @param words the whole state, such as {@code awaiting retest, 12 days left} */
    public StateBadge(Kind kind, String words) {
        super(words);
        setClassName(kind.classNames());
    }
}
