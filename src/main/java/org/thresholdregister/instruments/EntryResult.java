package org.thresholdregister.instruments;

/** What became of an entry. */
public sealed interface EntryResult {

    /** It is on record. */
    record Entered(long key) implements EntryResult {}

    /** Nothing was changed. */
    record Refused(Objection objection) implements EntryResult {}

    /** What stands against an entry. */
    enum Objection {
        REASON_MISSING,
        TEXT_MISSING,
        TEXT_TOO_LONG,
        NAME_TAKEN,
        IN_THE_FUTURE,
        ENDS_BEFORE_IT_BEGINS,
        NOT_ON_RECORD,
        /** What is corrected is of another kind, or belongs to something else. */
        NOT_THE_SAME_THING
    }
}
