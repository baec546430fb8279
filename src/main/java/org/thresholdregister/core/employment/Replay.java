package org.thresholdregister.core.employment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.employment.Inconsistency.Kind;

/** Takes the events of a life in order of time and knows after each what holds. */
final class Replay {

    private boolean begun;
    private Optional<LocalDate> hired = Optional.empty();
    private Optional<LocalDate> lastDay = Optional.empty();
    private Optional<String> successor = Optional.empty();
    private Placement place = Placement.NOT_GIVEN;
    private Optional<LocalDate> enrolledSince = Optional.empty();
    private Optional<LocalDate> firstEnrolled = Optional.empty();
    private Optional<LocalDate> enrolmentEnded = Optional.empty();
    private Engagement engagement = Engagement.OWN;
    private Optional<LocalDate> leaveFrom = Optional.empty();
    private Optional<LocalDate> leaveUntil = Optional.empty();
    private final List<Absence> absences = new ArrayList<>();

    /** Takes the next event and says what does not fit; the event counts all the same. */
    Optional<Kind> take(DatedEvent dated) {
        endLeaveBefore(dated.day());
        Optional<Kind> misfit = misfit(dated);
        apply(dated);
        return misfit;
    }

    private Optional<Kind> misfit(DatedEvent dated) {
        LocalDate day = dated.day();
        WorkEvent event = dated.event();
        boolean hasLeft = lastDay.filter(day::isAfter).isPresent();
        if (event.begins()) {
            return when(begun && !hasLeft, Kind.HIRED_WHILE_EMPLOYED);
        }
        if (!begun) {
            return Optional.of(event.ends() ? Kind.LEFT_BEFORE_HIRED : Kind.BEFORE_HIRED);
        }
        if (event.ends()) {
            return when(lastDay.isPresent(), Kind.LEFT_ALREADY);
        }
        if (hasLeft) {
            return Optional.of(Kind.AFTER_LEAVING);
        }
        return switch (event) {
            case WorkEvent.Enrolled enrolled -> when(enrolledSince.isPresent(), Kind.ENROLLED_ALREADY);
            case WorkEvent.EnrolmentEnded ended -> when(enrolledSince.isEmpty(), Kind.NOT_ENROLLED);
            case WorkEvent.Moved(var to) -> when(to.equals(place), Kind.MOVED_NOWHERE);
            case WorkEvent.LeaveBegan(var until) ->
                leaveFrom.isPresent()
                        ? Optional.of(Kind.ON_LEAVE_ALREADY)
                        : when(until.filter(day::isAfter).isPresent(), Kind.LEAVE_ENDS_BEFORE_IT_BEGINS);
            case WorkEvent.Returned returned -> when(leaveFrom.isEmpty(), Kind.NOT_ON_LEAVE);
            case WorkEvent.Engaged engaged -> Optional.empty();
            case WorkEvent.Hired hiredAgain -> Optional.empty();
            case WorkEvent.Listed listed -> Optional.empty();
            case WorkEvent.TakenOver takenOver -> Optional.empty();
            case WorkEvent.Left left -> Optional.empty();
            case WorkEvent.TransferredToSuccessor transferred -> Optional.empty();
        };
    }

    private static Optional<Kind> when(boolean wrong, Kind kind) {
        return wrong ? Optional.of(kind) : Optional.empty();
    }

    private void apply(DatedEvent dated) {
        LocalDate day = dated.day();
        switch (dated.event()) {
            case WorkEvent.Hired(var at) -> begin(Optional.of(day), day, at);
            case WorkEvent.Listed(var at) -> begin(Optional.empty(), day, at);
            case WorkEvent.TakenOver(var predecessor, var at) -> begin(Optional.of(day), day, at);
            case WorkEvent.Engaged(var with) -> engagement = with;
            case WorkEvent.Enrolled enrolled -> {
                enrolmentEnded.ifPresent(
                        ended -> absences.add(new Absence(Absence.Kind.NOT_ENROLLED, ended, Optional.of(day))));
                enrolmentEnded = Optional.empty();
                enrolledSince = Optional.of(enrolledSince.orElse(day));
                firstEnrolled = Optional.of(firstEnrolled.orElse(day));
            }
            case WorkEvent.EnrolmentEnded ended -> {
                enrolledSince = Optional.empty();
                enrolmentEnded = Optional.of(day);
            }
            case WorkEvent.Moved(var to) -> place = to;
            case WorkEvent.LeaveBegan(var until) -> {
                leaveFrom = Optional.of(leaveFrom.orElse(day));
                leaveUntil = until;
            }
            case WorkEvent.Returned returned -> endLeave(day);
            case WorkEvent.Left left -> lastDay = Optional.of(day);
            case WorkEvent.TransferredToSuccessor(var to) -> {
                lastDay = Optional.of(day);
                successor = Optional.of(to);
            }
        }
    }

    private void begin(Optional<LocalDate> firstDay, LocalDate day, Placement at) {
        lastDay.filter(last -> last.isBefore(day))
                .ifPresent(last -> absences.add(
                        new Absence(Absence.Kind.BETWEEN_EMPLOYMENTS, last.plusDays(1), Optional.of(day))));
        begun = true;
        hired = firstDay;
        lastDay = Optional.empty();
        successor = Optional.empty();
        place = at;
        enrolledSince = Optional.empty();
        firstEnrolled = Optional.empty();
        enrolmentEnded = Optional.empty();
        engagement = Engagement.OWN;
        leaveFrom = Optional.empty();
        leaveUntil = Optional.empty();
    }

    /** A leave whose last day is known ends by itself; whoever returns on the next day is said to. */
    private void endLeaveBefore(LocalDate day) {
        leaveUntil.filter(until -> day.isAfter(until.plusDays(1))).ifPresent(until -> endLeave(until.plusDays(1)));
    }

    private void endLeave(LocalDate firstDayBack) {
        leaveFrom.ifPresent(from -> absences.add(new Absence(Absence.Kind.LEAVE, from, Optional.of(firstDayBack))));
        leaveFrom = Optional.empty();
        leaveUntil = Optional.empty();
    }

    WorkState on(LocalDate day) {
        return new WorkState(standing(day), hired, lastDay, place, enrolledSince, firstEnrolled, engagement);
    }

    private Standing standing(LocalDate day) {
        if (!begun) {
            return new Standing.NotYetEmployed();
        }
        Optional<LocalDate> left = lastDay.filter(day::isAfter);
        if (left.isPresent()) {
            LocalDate last = left.get();
            return successor
                    .<Standing>map(to -> new Standing.WithSuccessor(last, to))
                    .orElse(new Standing.HasLeft(last));
        }
        return leaveFrom
                .filter(from -> leaveUntil.filter(day::isAfter).isEmpty())
                .<Standing>map(from -> new Standing.OnLeave(from, leaveUntil))
                .orElse(new Standing.Employed());
    }

    List<Absence> absences(LocalDate day) {
        List<Absence> all = new ArrayList<>(absences);
        leaveFrom.ifPresent(from -> all.add(new Absence(
                Absence.Kind.LEAVE,
                from,
                leaveUntil.map(until -> until.plusDays(1)).filter(back -> !back.isAfter(day)))));
        enrolmentEnded.ifPresent(from -> all.add(new Absence(Absence.Kind.NOT_ENROLLED, from, Optional.empty())));
        return List.copyOf(all);
    }
}
