package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Something done at the source, the path or the time spent, so that less noise reaches people.
 *
 * @param owner who sees to it
 */
public record NoiseControl(
        long key,
        NoiseSubject subject,
        Kind kind,
        String what,
        String owner,
        LocalDate dueOn,
        Optional<LocalDate> doneOn,
        String doneNote) {

    /** The longest description that is kept, in characters. */
    public static final int LONGEST_TEXT = 2000;

    /** What a control changes (29 CFR 1910.95(b)(1)). */
    public enum Kind {
        /** The machine, the room or the way of the sound. */
        ENGINEERING,
        /** Who is there, and for how long. */
        ADMINISTRATIVE
    }

    public boolean isOpen() {
        return doneOn.isEmpty();
    }
}
