package org.thresholdregister.core.employment;

import java.time.LocalDate;
import java.util.Comparator;

/** An event with its day. */
public record DatedEvent(LocalDate day, WorkEvent event) {

    /** By day; on one day what begins comes first and what ends last, since a last day is still worked. */
    public static final Comparator<DatedEvent> CHRONOLOGICAL =
            Comparator.comparing(DatedEvent::day).thenComparing(dated -> rank(dated.event()));

    private static int rank(WorkEvent event) {
        return switch (event) {
            case WorkEvent.Hired hired -> 0;
            case WorkEvent.Listed listed -> 0;
            case WorkEvent.TakenOver takenOver -> 0;
            case WorkEvent.Engaged engaged -> 1;
            case WorkEvent.EnrolmentEnded ended -> 2;
            case WorkEvent.Enrolled enrolled -> 3;
            case WorkEvent.Moved moved -> 4;
            case WorkEvent.Returned returned -> 5;
            case WorkEvent.LeaveBegan leave -> 6;
            case WorkEvent.Left left -> 7;
            case WorkEvent.TransferredToSuccessor transferred -> 7;
        };
    }
}
