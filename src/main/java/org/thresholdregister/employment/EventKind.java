package org.thresholdregister.employment;

import org.thresholdregister.core.employment.WorkEvent;

/** What kind of event a row keeps. */
enum EventKind {
    HIRED,
    LISTED,
    TAKEN_OVER,
    ENGAGED,
    ENROLLED,
    ENROLMENT_ENDED,
    MOVED,
    LEAVE_BEGAN,
    RETURNED,
    LEFT,
    SOLD,
    /** No event: the row that it corrects counts no more. */
    TAKEN_BACK;

    static EventKind of(WorkEvent event) {
        return switch (event) {
            case WorkEvent.Hired hired -> HIRED;
            case WorkEvent.Listed listed -> LISTED;
            case WorkEvent.TakenOver takenOver -> TAKEN_OVER;
            case WorkEvent.Engaged engaged -> ENGAGED;
            case WorkEvent.Enrolled enrolled -> ENROLLED;
            case WorkEvent.EnrolmentEnded ended -> ENROLMENT_ENDED;
            case WorkEvent.Moved moved -> MOVED;
            case WorkEvent.LeaveBegan leave -> LEAVE_BEGAN;
            case WorkEvent.Returned returned -> RETURNED;
            case WorkEvent.Left left -> LEFT;
            case WorkEvent.TransferredToSuccessor transferred -> SOLD;
        };
    }
}
