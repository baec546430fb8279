package org.thresholdregister.employment;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Placement;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.employment.StoredWorkEvent.Origin;
import org.thresholdregister.roster.RosterListener;
import org.thresholdregister.roster.WorkerDetails;

/** Writes the event that stands behind what a roster file changes, so that the life and the roster tell the same. */
@Component
class RosterFollower implements RosterListener {

    private static final String BY = "(import)";

    private final LifeStore lives;
    private final Clock clock;

    RosterFollower(LifeStore lives, Clock clock) {
        this.lives = lives;
        this.clock = clock;
    }

    @Override
    public void changed(long workerKey, WorkerDetails before, WorkerDetails after, long importBatch) {
        boolean moved = !Opening.place(before).equals(Opening.place(after));
        if (moved
                || !before.hireDate().equals(after.hireDate())
                || !before.endDate().equals(after.endDate())
                || !before.enrolledFrom().equals(after.enrolledFrom())) {
            new Change(workerKey, before, after, importBatch).write(moved);
        }
    }

    /** One row's change. */
    private final class Change {
        private final long worker;
        private final WorkerDetails before;
        private final WorkerDetails after;
        private final String reason;
        private final Origin origin;
        private final List<StoredWorkEvent> inForce;

        Change(long worker, WorkerDetails before, WorkerDetails after, long batch) {
            this.worker = worker;
            this.before = before;
            this.after = after;
            this.reason = "By import " + batch;
            this.origin = new Origin(BY, clock.instant(), batch, null);
            this.inForce = LifeStore.inForce(lives.begun(worker, before));
        }

        void write(boolean moved) {
            Optional<LocalDate> rehired = after.hireDate()
                    .filter(day -> before.endDate().filter(day::isAfter).isPresent());
            if (rehired.isPresent()) {
                rehire(rehired.get());
                return;
            }
            if (!before.hireDate().equals(after.hireDate())) {
                after.hireDate().ifPresent(this::hire);
            }
            if (!before.endDate().equals(after.endDate())) {
                after.endDate().ifPresentOrElse(this::leave, this::takeBackTheEnd);
            }
            if (moved) {
                move();
            }
            if (!before.enrolledFrom().equals(after.enrolledFrom())) {
                after.enrolledFrom().ifPresent(this::enrol);
            }
        }

        /** What was before stays as it was. */
        private void rehire(LocalDate day) {
            add(day, new WorkEvent.Hired(Opening.place(after)));
            after.enrolledFrom()
                    .filter(from -> !from.isBefore(day))
                    .ifPresent(from -> add(from, new WorkEvent.Enrolled()));
            after.endDate().filter(last -> !last.isBefore(day)).ifPresent(last -> add(last, new WorkEvent.Left()));
        }

        private void add(LocalDate day, WorkEvent event) {
            put(new DatedEvent(day, event), Optional.empty());
        }

        private void hire(LocalDate day) {
            if (on(day).noneMatch(event -> event.begins())) {
                Optional<StoredWorkEvent> beginning = latest(WorkEvent::begins);
                Placement place = beginning
                        .flatMap(StoredWorkEvent::event)
                        .flatMap(event -> event.event().placement())
                        .orElse(Opening.place(after));
                put(new DatedEvent(day, new WorkEvent.Hired(place)), beginning);
            }
        }

        private void leave(LocalDate lastDay) {
            if (on(lastDay).noneMatch(event -> event.ends())) {
                put(
                        new DatedEvent(lastDay, new WorkEvent.Left()),
                        before.endDate().flatMap(day -> latest(WorkEvent::ends)));
            }
        }

        private void takeBackTheEnd() {
            latest(WorkEvent::ends).ifPresent(end -> lives.takeBack(end, reason, origin));
        }

        /** The roster does not say since when: the day is that of the import, or the last day of someone who has left. */
        private void move() {
            LocalDate today = lives.today();
            LocalDate day = after.endDate().filter(today::isAfter).orElse(today);
            lives.add(
                    worker,
                    new DatedEvent(day, new WorkEvent.Moved(Opening.place(after))),
                    null,
                    reason + ", which does not say since when",
                    origin);
        }

        private void enrol(LocalDate from) {
            if (on(from).noneMatch(WorkEvent.Enrolled.class::isInstance)) {
                put(
                        new DatedEvent(from, new WorkEvent.Enrolled()),
                        before.enrolledFrom()
                                .flatMap(day -> inForce.stream()
                                        .filter(row -> isOn(row, day)
                                                && row.event()
                                                        .filter(event -> event.event() instanceof WorkEvent.Enrolled)
                                                        .isPresent())
                                        .findFirst()));
            }
        }

        private void put(DatedEvent event, Optional<StoredWorkEvent> instead) {
            lives.add(worker, event, instead.orElse(null), reason, origin);
        }

        private Stream<WorkEvent> on(LocalDate day) {
            return inForce.stream()
                    .filter(row -> isOn(row, day))
                    .flatMap(row -> row.event().stream())
                    .map(DatedEvent::event);
        }

        private Optional<StoredWorkEvent> latest(Predicate<WorkEvent> kind) {
            return inForce.stream()
                    .filter(row ->
                            row.event().map(DatedEvent::event).filter(kind).isPresent())
                    .reduce((one, other) -> dayOf(other).isBefore(dayOf(one)) ? one : other);
        }
    }

    private static boolean isOn(StoredWorkEvent row, LocalDate day) {
        return row.event().filter(event -> event.day().equals(day)).isPresent();
    }

    private static LocalDate dayOf(StoredWorkEvent row) {
        return row.event().map(DatedEvent::day).orElse(LocalDate.MIN);
    }
}
