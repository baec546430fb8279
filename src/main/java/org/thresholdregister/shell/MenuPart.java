package org.thresholdregister.shell;

import org.jspecify.annotations.Nullable;

/** The parts of the menu; a page belongs to the part that its order falls into. */
enum MenuPart {
    TODAY("Today's work", 30),
    REVIEW("Review", 50),
    RECORDS("Records", 70),
    PROGRAMME("Programme", 90),
    SETTINGS("Settings", Double.MAX_VALUE);

    private final String label;
    private final double end;

    MenuPart(String label, double end) {
        this.label = label;
        this.end = end;
    }

    /** The part of a page with this order; pages without one come last. */
    static MenuPart of(@Nullable Double order) {
        for (MenuPart part : values()) {
            if (order != null && order < part.end) {
                return part;
            }
        }
        return SETTINGS;
    }

    String label() {
        return label;
    }
}
