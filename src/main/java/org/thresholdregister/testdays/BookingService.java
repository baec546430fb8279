package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.QuietTime;
import org.thresholdregister.core.scheduling.Slot;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/** One worker's time on a test day: given, moved, taken off, and what came of it. */
@Service
@Transactional
public class BookingService {

    /** The most characters of a reason or note. */
    public static final int LONGEST_NOTE = 500;

    private static final BigDecimal MOST_HOURS = BigDecimal.valueOf(9999);

    /**
     * What is asked of somebody who arrives.
     *
     * @param hoursSinceNoise empty where nobody asked or the answer is not known
     * @param protectorsWorn whether protectors were worn in all noise of these hours
     */
    public record Arrival(Optional<BigDecimal> hoursSinceNoise, Optional<Boolean> protectorsWorn) {}

    private final EntityManager entityManager;
    private final BookingReader reader;
    private final DueFinder dueFinder;
    private final WorkerStore workers;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    BookingService(
            EntityManager entityManager,
            BookingReader reader,
            DueFinder dueFinder,
            WorkerStore workers,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.reader = reader;
        this.dueFinder = dueFinder;
        this.workers = workers;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** What a worker is due for, the most urgent first; nothing for a worker whom the user may not see. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<DuePerson> dueOf(String workerId) {
        return workers.find(workerId, currentUser.scope()).map(dueFinder::dueOf).orElse(List.of());
    }

    /** A worker's bookings, the latest first, those taken off left out. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<Booking> ofWorker(String workerId) {
        return workers.find(workerId, currentUser.scope())
                .map(worker -> reader.inFull(reader.bookingsOfWorker(worker.key()).stream()
                        .filter(booking -> booking.state() != BookingState.REMOVED)
                        .toList()))
                .orElse(List.of())
                .reversed();
    }

    /** Gives a worker a time for a test that is due, near or far. It is confirmed with the others of the day. */
    @PreAuthorize(Roles.HAS_NURSE)
    public BookingResult book(long dayKey, LocalTime time, String workerId, Occasion occasion) {
        Optional<StoredTestDay> day = reader.dayToChange(dayKey, currentUser.scope());
        Optional<StoredWorker> worker = workers.find(workerId, currentUser.scope());
        if (day.isEmpty() || worker.isEmpty()) {
            return BookingResult.UNKNOWN;
        }
        if (!worker.get().details().site().equals(day.get().site())) {
            return BookingResult.ANOTHER_SITE;
        }
        Optional<DuePerson> person = dueFinder.dueOf(worker.get()).stream()
                .filter(due -> due.due().occasion() == occasion)
                .findFirst();
        if (person.isEmpty()) {
            return BookingResult.NOT_DUE;
        }
        if (person.get().booking().isPresent()) {
            return BookingResult.BOOKED_ALREADY;
        }
        Optional<BookingResult> objection =
                objection(day.get(), time, occasion, person.get().due().lastDay());
        if (objection.isPresent()) {
            return objection.get();
        }
        entityManager.persist(new StoredBooking(dayKey, person.get(), day.get().slot(time)));
        return changed(
                day.get(), TestDayAction.TEST_BOOKED, workerId, occasion.name().toLowerCase(Locale.ROOT));
    }

    /** Gives a booking another time, of the same day or another one of the site; it stays confirmed if it was. */
    @PreAuthorize(Roles.HAS_NURSE)
    public BookingResult move(long bookingKey, long dayKey, LocalTime time) {
        Optional<StoredTestDay> day = reader.dayToChange(dayKey, currentUser.scope());
        Optional<StoredBooking> found = booking(bookingKey);
        if (day.isEmpty() || found.isEmpty()) {
            return BookingResult.UNKNOWN;
        }
        StoredBooking booking = found.get();
        if (!booking.state().isExpected()) {
            return BookingResult.SETTLED;
        }
        StoredTestDay before = reader.dayOf(booking);
        if (!before.site().equals(day.get().site())) {
            return BookingResult.ANOTHER_SITE;
        }
        Optional<BookingResult> objection = objection(day.get(), time, booking.occasion(), booking.lastDay());
        if (objection.isPresent()) {
            return objection.get();
        }
        Slot slot = day.get().slot(time);
        QuietTime quiet = dueFinder.dueOf(worker(booking)).stream()
                .filter(due -> due.due().occasion() == booking.occasion())
                .findFirst()
                .map(due -> QuietTime.of(due.due(), slot))
                .orElse(booking.quietTime());
        booking.moveTo(dayKey, slot, quiet);
        before.changed(clock.instant());
        return changed(day.get(), TestDayAction.TEST_MOVED, workerId(booking), "to " + slot.day() + " " + time);
    }

    /** Takes a booking off its day; whoever was due stays due. A confirmed one needs a reason. */
    @PreAuthorize(Roles.HAS_NURSE)
    public BookingResult remove(long bookingKey, String reason) {
        return change(bookingKey, booking -> {
            if (!booking.state().isExpected()) {
                return BookingResult.SETTLED;
            }
            if (booking.state() != BookingState.PROPOSED && !isGiven(reason)) {
                return BookingResult.REASON_MISSING;
            }
            booking.become(BookingState.REMOVED, reason.strip());
            return done(booking, TestDayAction.BOOKING_REMOVED);
        });
    }

    /** Notes that somebody has come, and what was asked. */
    @PreAuthorize(Roles.HAS_NURSE)
    public BookingResult arrive(long bookingKey, Arrival arrival) {
        boolean outOfRange = arrival.hoursSinceNoise()
                .filter(hours -> hours.signum() < 0 || hours.compareTo(MOST_HOURS) > 0)
                .isPresent();
        if (outOfRange) {
            return BookingResult.HOURS_OUT_OF_RANGE;
        }
        return onTheDay(bookingKey, booking -> {
            booking.arrive(arrival.hoursSinceNoise(), arrival.protectorsWorn());
            return done(booking, TestDayAction.ARRIVAL_NOTED);
        });
    }

    /** Notes that somebody did not come: the test stays due, and the next proposal knows. */
    @PreAuthorize(Roles.HAS_NURSE)
    public BookingResult noShow(long bookingKey) {
        return onTheDay(bookingKey, booking -> {
            booking.become(BookingState.NO_SHOW, "");
            return done(booking, TestDayAction.NO_SHOW_NOTED);
        });
    }

    /** Notes that somebody refused the test; the signed refusal belongs to the clinical part of the record. */
    @PreAuthorize(Roles.HAS_NURSE)
    public BookingResult refuse(long bookingKey, String note) {
        if (!isGiven(note)) {
            return BookingResult.REASON_MISSING;
        }
        return onTheDay(bookingKey, booking -> {
            booking.become(BookingState.REFUSED, note.strip());
            return done(booking, TestDayAction.REFUSAL_NOTED);
        });
    }

    private static boolean isGiven(String reason) {
        return !reason.isBlank() && reason.length() <= LONGEST_NOTE;
    }

    @FunctionalInterface
    private interface Change {
        BookingResult of(StoredBooking booking);
    }

    private BookingResult change(long bookingKey, Change change) {
        return booking(bookingKey).map(change::of).orElse(BookingResult.UNKNOWN);
    }

    /** What can be noted once the day has come, as long as the test is not signed and nothing was refused. */
    private BookingResult onTheDay(long bookingKey, Change change) {
        return change(bookingKey, booking -> {
            if (day(booking).date().isAfter(LocalDate.now(clock))) {
                return BookingResult.DAY_TO_COME;
            }
            boolean open = booking.state().isExpected() || booking.state() == BookingState.NO_SHOW;
            return open ? change.of(booking) : BookingResult.SETTLED;
        });
    }

    private Optional<BookingResult> objection(StoredTestDay day, LocalTime time, Occasion occasion, LocalDate lastDay) {
        if (day.isCancelled() || day.date().isBefore(LocalDate.now(clock))) {
            return Optional.of(BookingResult.DAY_OVER);
        }
        if (occasion.endsWithItsLastDay() && day.date().isAfter(lastDay)) {
            return Optional.of(BookingResult.TOO_LATE);
        }
        boolean taken = reader.bookingsOf(List.of(day.key())).stream()
                .anyMatch(booking ->
                        booking.state().holdsItsTime() && booking.startsAt().equals(time));
        return taken || !day.hours().slots().contains(day.slot(time))
                ? Optional.of(BookingResult.TIME_NOT_FREE)
                : Optional.empty();
    }

    private BookingResult done(StoredBooking booking, TestDayAction action) {
        return changed(day(booking), action, workerId(booking), "");
    }

    private BookingResult changed(StoredTestDay day, TestDayAction action, String workerId, String detail) {
        day.changed(clock.instant());
        auditTrail.record(
                action, "worker", workerId, "test day " + day.key() + (detail.isEmpty() ? "" : ", " + detail));
        return BookingResult.DONE;
    }

    private Optional<StoredBooking> booking(long key) {
        return Optional.ofNullable(entityManager.find(StoredBooking.class, key))
                .filter(booking -> currentUser.scope().includes(day(booking).site()));
    }

    private StoredTestDay day(StoredBooking booking) {
        return reader.dayOf(booking);
    }

    private StoredWorker worker(StoredBooking booking) {
        return workers.withKeys(List.of(booking.workerKey())).getFirst();
    }

    private String workerId(StoredBooking booking) {
        return worker(booking).details().workerId();
    }
}
