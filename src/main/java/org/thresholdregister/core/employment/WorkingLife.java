package org.thresholdregister.core.employment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A worker's events in order of time, and what follows from them. Events that do not fit are kept and named as
 * {@link Inconsistency}; none is dropped.
 */
public final class WorkingLife {

    private final List<DatedEvent> events;

    private WorkingLife(List<DatedEvent> events) {
        this.events = events;
    }

    /** The life with these events, given in any order; of two alike on one day the first given comes first. */
    public static WorkingLife of(List<DatedEvent> events) {
        return new WorkingLife(events.stream().sorted(DatedEvent.CHRONOLOGICAL).toList());
    }

    /** In order of time. */
    public List<DatedEvent> events() {
        return events;
    }

    /** What holds on a day by the events up to it. A last day that lies ahead is told. */
    public WorkState on(LocalDate day) {
        return upTo(day).on(day);
    }

    /** The same, with what is entered ahead of the day: the last day of employment, and enrolment. */
    public WorkState asEnteredOn(LocalDate day) {
        Replay all = new Replay();
        events.forEach(all::take);
        WorkState ahead = all.on(day);
        WorkState today = on(day);
        return new WorkState(
                today.standing(),
                ahead.hired(),
                ahead.lastDay(),
                today.standing() instanceof Standing.NotYetEmployed ? ahead.place() : today.place(),
                ahead.enrolledSince(),
                ahead.firstEnrolled(),
                today.engagement());
    }

    /** Times away that had begun by a day. */
    public List<Absence> absences(LocalDate asOf) {
        return upTo(asOf).absences(asOf);
    }

    /** What does not fit, in order of time. */
    public List<Inconsistency> inconsistencies() {
        Replay replay = new Replay();
        List<Inconsistency> found = new ArrayList<>();
        for (DatedEvent event : events) {
            replay.take(event).ifPresent(kind -> found.add(new Inconsistency(kind, event)));
        }
        return List.copyOf(found);
    }

    /** Whether an event begins another employment after an earlier one. */
    public boolean isRehire(DatedEvent event) {
        return event.event().begins()
                && events.stream()
                        .anyMatch(other -> other.event().ends() && other.day().isBefore(event.day()));
    }

    /** The latest event up to a day that is of this kind. */
    public <E extends WorkEvent> Optional<DatedEvent> latest(Class<E> kind, LocalDate asOf) {
        return events.stream()
                .filter(event -> kind.isInstance(event.event()) && !event.day().isAfter(asOf))
                .reduce((earlier, later) -> later);
    }

    private Replay upTo(LocalDate day) {
        Replay replay = new Replay();
        events.stream().filter(event -> !event.day().isAfter(day)).forEach(replay::take);
        return replay;
    }
}
