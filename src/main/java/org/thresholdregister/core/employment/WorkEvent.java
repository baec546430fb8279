package org.thresholdregister.core.employment;

import java.time.LocalDate;
import java.util.Optional;

/** Something that happens in a working life, on a day that {@link DatedEvent} gives. */
public sealed interface WorkEvent {

    /** Begins an employment, the first or, after leaving, another; the day is the first of it. */
    record Hired(Placement place) implements WorkEvent {}

    /** Was on the roster without a first day of employment; since when is not known. */
    record Listed(Placement place) implements WorkEvent {}

    /** Came with a plant that was bought; the day is the first with this employer. */
    record TakenOver(String predecessor, Placement place) implements WorkEvent {}

    /** Is an agency's or a contractor's worker from this day on, or the employer's own again. */
    record Engaged(Engagement engagement) implements WorkEvent {}

    /** First day of exposure at or above the action level. */
    record Enrolled() implements WorkEvent {}

    /** Works below the action level from this day on. */
    record EnrolmentEnded() implements WorkEvent {}

    /** Another site, department or job from this day on. */
    record Moved(Placement to) implements WorkEvent {}

    /** First day of a leave; {@code until} is its last day, where that is known. */
    record LeaveBegan(Optional<LocalDate> until) implements WorkEvent {}

    /** First day back from a leave. */
    record Returned() implements WorkEvent {}

    /** Leaves; the day is the last of employment. */
    record Left() implements WorkEvent {}

    /** Goes with a sold plant to its new owner; the day is the last with this employer. */
    record TransferredToSuccessor(String successor) implements WorkEvent {}

    /** Where it puts the worker. */
    default Optional<Placement> placement() {
        return switch (this) {
            case Hired(var at) -> Optional.of(at);
            case Listed(var at) -> Optional.of(at);
            case TakenOver(var predecessor, var at) -> Optional.of(at);
            case Moved(var to) -> Optional.of(to);
            case Engaged engaged -> Optional.empty();
            case Enrolled enrolled -> Optional.empty();
            case EnrolmentEnded ended -> Optional.empty();
            case LeaveBegan leave -> Optional.empty();
            case Returned returned -> Optional.empty();
            case Left left -> Optional.empty();
            case TransferredToSuccessor transferred -> Optional.empty();
        };
    }

    /** Whether it begins an employment, or is the first that is known of one. */
    default boolean begins() {
        return this instanceof Hired || this instanceof Listed || this instanceof TakenOver;
    }

    /** Whether it ends an employment. */
    default boolean ends() {
        return this instanceof Left || this instanceof TransferredToSuccessor;
    }
}
