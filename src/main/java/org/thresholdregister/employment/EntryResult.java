package org.thresholdregister.employment;

import org.thresholdregister.core.employment.Inconsistency;

/** What came of entering or correcting an event. */
public sealed interface EntryResult {

    /** @param stillVisible whether the user still sees the worker, who may have moved to another site */
    record Entered(boolean stillVisible) implements EntryResult {}

    /** The event, or one that is on record, would no longer fit. Nothing was changed. */
    record Misfit(Inconsistency found, boolean ofWhatWasEntered) implements EntryResult {}

    /** Nobody works at this site yet: a new site, or a slip of the pen. Nothing was changed until someone is certain. */
    record SiteNotKnown(String site) implements EntryResult {}

    record Refused(Reason reason) implements EntryResult {}

    /** Why nothing was changed. */
    enum Reason {
        UNKNOWN_WORKER,
        NO_SUCH_ENTRY,
        IN_THE_FUTURE,
        BEFORE_ANYONE_LIVED,
        REASON_MISSING,
        NAME_MISSING,
        TEXT_TOO_LONG
    }
}
