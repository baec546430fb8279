package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.WorkShift;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;
import org.thresholdregister.rulesets.RulesBySite;
import org.thresholdregister.rulesets.SiteRulesStore;
import org.thresholdregister.testdays.ShiftFinder.Shifts;

/** Reads test days and bookings. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class BookingReader {

    private final EntityManager entityManager;
    private final WorkerStore workers;
    private final ShiftFinder shifts;
    private final SiteRulesStore rules;
    private final Clock clock;

    BookingReader(
            EntityManager entityManager, WorkerStore workers, ShiftFinder shifts, SiteRulesStore rules, Clock clock) {
        this.entityManager = entityManager;
        this.workers = workers;
        this.shifts = shifts;
        this.rules = rules;
        this.clock = clock;
    }

    Optional<StoredTestDay> day(long key, SiteScope scope) {
        return Optional.ofNullable(entityManager.find(StoredTestDay.class, key))
                .filter(day -> scope.includes(day.site()));
    }

    /** The day, kept from others until the transaction ends, so that no time is given twice. */
    Optional<StoredTestDay> dayToChange(long key, SiteScope scope) {
        return Optional.ofNullable(entityManager.find(StoredTestDay.class, key, LockModeType.PESSIMISTIC_WRITE))
                .filter(day -> scope.includes(day.site()));
    }

    StoredTestDay dayOf(StoredBooking booking) {
        return Optional.ofNullable(entityManager.find(StoredTestDay.class, booking.dayKey()))
                .orElseThrow();
    }

    /** All days of the scope's sites, by date. */
    List<StoredTestDay> days(SiteScope scope) {
        return entityManager
                .createQuery("select d from StoredTestDay d order by d.testDate, d.startsAt, d.id", StoredTestDay.class)
                .getResultStream()
                .filter(day -> scope.includes(day.site()))
                .toList();
    }

    List<StoredTestDay> daysOfVisit(long visit) {
        return entityManager
                .createQuery(
                        "select d from StoredTestDay d where d.visit = :visit order by d.testDate, d.id",
                        StoredTestDay.class)
                .setParameter("visit", visit)
                .setLockMode(LockModeType.PESSIMISTIC_WRITE)
                .getResultList();
    }

    List<StoredBooking> bookingsOf(Collection<Long> dayKeys) {
        return dayKeys.isEmpty()
                ? List.of()
                : entityManager
                        .createQuery(
                                "select b from StoredBooking b where b.testDayId in (:days) order by b.startsAt, b.id",
                                StoredBooking.class)
                        .setParameter("days", dayKeys)
                        .getResultList();
    }

    List<StoredBooking> bookingsOfWorker(long workerKey) {
        return entityManager
                .createQuery("select b from StoredBooking b where b.workerId = :worker", StoredBooking.class)
                .setParameter("worker", workerKey)
                .getResultList();
    }

    List<StoredLeftOut> leftOut(long dayKey) {
        return entityManager
                .createQuery("select l from StoredLeftOut l where l.place.testDayId = :day", StoredLeftOut.class)
                .setParameter("day", dayKey)
                .getResultList();
    }

    /** The bookings in words and numbers, in order of time. */
    List<Booking> inFull(List<StoredBooking> stored) {
        Map<Long, StoredWorker> byKey = new HashMap<>();
        workers.withKeys(
                        stored.stream().map(StoredBooking::workerKey).distinct().toList())
                .forEach(worker -> byKey.put(worker.key(), worker));
        Map<Long, StoredTestDay> days = new HashMap<>();
        Shifts allShifts = shifts.all();
        RulesBySite rulesBySite = rules.all();
        LocalDate today = LocalDate.now(clock);
        Map<Long, List<StoredBooking>> missed = missed(byKey.keySet());
        return stored.stream()
                .map(booking -> {
                    StoredTestDay day = days.computeIfAbsent(booking.dayKey(), key -> dayOf(booking));
                    StoredWorker found = byKey.get(booking.workerKey());
                    if (found == null) {
                        throw new IllegalStateException("a booking whose worker is not in the register");
                    }
                    WorkerDetails worker = found.details();
                    long before = missed.getOrDefault(booking.workerKey(), List.of()).stream()
                            .filter(other -> other.key() != booking.key()
                                    && other.occasion() == booking.occasion()
                                    && other.afterTest().equals(booking.afterTest()))
                            .count();
                    return new Booking(
                            booking.key(),
                            booking.dayKey(),
                            day.date(),
                            booking.startsAt(),
                            worker.workerId(),
                            worker.familyName(),
                            worker.givenName(),
                            worker.site(),
                            worker.department(),
                            booking.occasion(),
                            booking.lastDay(),
                            new Citation(booking.basis()),
                            booking.afterTest(),
                            allShifts
                                    .of(booking.workerKey(), worker)
                                    .map(WorkShift::name)
                                    .orElse(""),
                            booking.quietTime(),
                            rulesBySite
                                    .of(day.site())
                                    .on(today)
                                    .ruleSet()
                                    .quiet()
                                    .hours(),
                            booking.state(),
                            Math.toIntExact(before),
                            booking.hoursSinceNoise(),
                            booking.protectorsWorn(),
                            booking.note());
                })
                .sorted(Comparator.comparing(Booking::date)
                        .thenComparing(Booking::starts)
                        .thenComparing(Booking::key))
                .toList();
    }

    private Map<Long, List<StoredBooking>> missed(Collection<Long> workerKeys) {
        Map<Long, List<StoredBooking>> missed = new HashMap<>();
        if (!workerKeys.isEmpty()) {
            entityManager
                    .createQuery(
                            "select b from StoredBooking b where b.state = :noShow and b.workerId in (:workers)",
                            StoredBooking.class)
                    .setParameter("noShow", BookingState.NO_SHOW)
                    .setParameter("workers", workerKeys)
                    .getResultStream()
                    .forEach(booking -> missed.computeIfAbsent(booking.workerKey(), key -> new ArrayList<>())
                            .add(booking));
        }
        return missed;
    }

    /** How many of a day's bookings there are. */
    TestDayCounts counted(StoredTestDay day) {
        List<StoredBooking> all = bookingsOf(List.of(day.key())).stream()
                .filter(booking -> booking.state() != BookingState.REMOVED)
                .toList();
        return new TestDayCounts(
                day.toTestDay(),
                all.size(),
                (int) all.stream()
                        .filter(booking -> booking.occasion() == Occasion.RETEST)
                        .count(),
                (int) all.stream()
                        .filter(booking -> booking.state() == BookingState.PROPOSED)
                        .count(),
                (int) leftOut(day.key()).stream()
                        .filter(left -> !isBooked(left.workerKey()))
                        .count());
    }

    /** Whether the worker has a time from today on. */
    boolean isBooked(long workerKey) {
        LocalDate today = LocalDate.now(clock);
        return bookingsOfWorker(workerKey).stream()
                .filter(booking -> booking.state().isExpected())
                .anyMatch(booking -> !dayOf(booking).date().isBefore(today));
    }
}
