package org.thresholdregister.core.scheduling;

/** How the hours before a planned test stand to noise, as far as the worker's shift tells. */
public enum QuietTime {
    /** It is needed, and the shift leaves enough of it. */
    RESTED,
    /** It is needed and the shift does not leave it: protectors are worn in all noise of these hours instead. */
    PROTECTORS_INSTEAD,
    /** It is needed, and the worker's shift is not known. */
    TO_BE_ASKED,
    /** The rule set asks for none before a test of this kind. */
    NOT_NEEDED;

    /** What holds for a test at that time. */
    public static QuietTime of(DueTest due, Slot slot) {
        if (!due.needsQuiet()) {
            return NOT_NEEDED;
        }
        return due.shift()
                .map(shift -> shift.isRested(slot.time(), due.quiet().hours()) ? RESTED : PROTECTORS_INSTEAD)
                .orElse(TO_BE_ASKED);
    }
}
