package org.thresholdregister.drawing;

import org.thresholdregister.core.audiometry.Ear;

/**
 * What differs between screen and paper: on screen the page's stylesheet may set the ears' colours and the font (a dark
 * page needs lighter ones), in a document they are fixed, for its renderer knows no custom properties. The two ears'
 * colours have a contrast of 7.3 and 7.5 to 1 on white (computed by the WCAG 2 formula).
 */
enum Medium {
    SCREEN("var(--tr-ear-right, #B00020)", "var(--tr-ear-left, #0B4FB3)", "currentColor"),
    PAPER("#B00020", "#0B4FB3", "#1A1A1A");

    private final String right;
    private final String left;
    private final String ink;

    Medium(String right, String left, String ink) {
        this.right = right;
        this.left = left;
        this.ink = ink;
    }

    String colour(Ear ear) {
        return ear == Ear.RIGHT ? right : left;
    }

    /** The colour of text, frame and grid. */
    String ink() {
        return ink;
    }
}
