package org.thresholdregister.clinical;

/** What came of an entry. */
public sealed interface ClinicalResult {

    record Kept() implements ClinicalResult {}

    record Refused(Reason reason) implements ClinicalResult {}

    /** Why nothing was kept. */
    enum Reason {
        UNKNOWN_WORKER,
        NOTHING_ENTERED,
        IN_THE_FUTURE,
        TEXT_TOO_LONG,
        CLEAR_AND_MORE,
        OTHER_WITHOUT_NOTE,
        /** An entry of this day is in force, and is replaced only with a reason. */
        REASON_MISSING,
        NO_SUCH_REFUSAL
    }
}
