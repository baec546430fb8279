package org.thresholdregister.core.employment;

/** An event that does not fit what goes before it. The event is kept, and counts as far as it can. */
public record Inconsistency(Kind kind, DatedEvent about) {

    /** What does not fit. */
    public enum Kind {
        LEFT_BEFORE_HIRED,
        BEFORE_HIRED,
        HIRED_WHILE_EMPLOYED,
        LEFT_ALREADY,
        AFTER_LEAVING,
        ENROLLED_ALREADY,
        NOT_ENROLLED,
        ON_LEAVE_ALREADY,
        LEAVE_ENDS_BEFORE_IT_BEGINS,
        NOT_ON_LEAVE,
        MOVED_NOWHERE
    }
}
