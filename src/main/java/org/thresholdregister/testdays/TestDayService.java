package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.scheduling.DayHours;
import org.thresholdregister.core.scheduling.DueTest;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.Slot;
import org.thresholdregister.core.scheduling.TestPlan;
import org.thresholdregister.core.scheduling.TestPlanner;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.review.DecisionResult;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;
import org.thresholdregister.testdays.DayProblem.Field;

/** Test days: a nurse plans them, has people proposed, and confirms; a safety officer reads. */
@Service
@Transactional
public class TestDayService {

    /** Somebody who did not fit when people were last proposed, and is still without a time. */
    public record LeftOutPerson(
            String workerId, String name, String department, Occasion occasion, LocalDate lastDay, TestPlan.Why why) {}

    /** What came of proposing people for a day and the later ones of its visit. */
    public record Proposed(int people, int leftOut) {}

    private final EntityManager entityManager;
    private final BookingReader reader;
    private final DueFinder dueFinder;
    private final WorkerStore workers;
    private final DecisionService decisions;
    private final AccountFinder accounts;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    TestDayService(
            EntityManager entityManager,
            BookingReader reader,
            DueFinder dueFinder,
            WorkerStore workers,
            DecisionService decisions,
            AccountFinder accounts,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.reader = reader;
        this.dueFinder = dueFinder;
        this.workers = workers;
        this.decisions = decisions;
        this.accounts = accounts;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** The days from today on by date, then those gone by, the latest first. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<TestDayCounts> days() {
        LocalDate today = LocalDate.now(clock);
        List<StoredTestDay> all = reader.days(currentUser.scope());
        Stream<StoredTestDay> ahead = all.stream().filter(day -> !day.date().isBefore(today));
        Stream<StoredTestDay> past =
                all.reversed().stream().filter(day -> day.date().isBefore(today));
        return Stream.concat(ahead, past).map(reader::counted).toList();
    }

    /** One day; empty also for a day of a site that the user may not see. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public Optional<TestDayCounts> find(long key) {
        return reader.day(key, currentUser.scope()).map(reader::counted);
    }

    /** The day's bookings in order of time, those taken off it left out. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<Booking> bookings(long key) {
        return reader.day(key, currentUser.scope())
                .map(day -> reader.inFull(reader.bookingsOf(List.of(day.key())).stream()
                        .filter(booking -> booking.state() != BookingState.REMOVED)
                        .toList()))
                .orElse(List.of());
    }

    /** Who did not fit, the most urgent first. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<LeftOutPerson> leftOut(long key) {
        return reader.day(key, currentUser.scope()).map(day -> reader.leftOut(day.key())).orElse(List.of()).stream()
                .filter(left -> !reader.isBooked(left.workerKey()))
                .flatMap(left ->
                        workers.withKeys(List.of(left.workerKey())).stream().map(worker -> leftOut(worker, left)))
                .sorted(Comparator.comparing((LeftOutPerson left) -> left.occasion() != Occasion.RETEST)
                        .thenComparing(LeftOutPerson::lastDay)
                        .thenComparing(LeftOutPerson::workerId))
                .toList();
    }

    private static LeftOutPerson leftOut(StoredWorker worker, StoredLeftOut left) {
        var details = worker.details();
        String name = (details.givenName() + " " + details.familyName()).strip();
        return new LeftOutPerson(
                details.workerId(),
                name.isEmpty() ? details.workerId() : name,
                details.department(),
                left.occasion(),
                left.lastDay(),
                left.why());
    }

    /** Times at which nobody is called, on the days of a visit that are not over, by day. */
    @PreAuthorize(Roles.HAS_NURSE)
    @Transactional(readOnly = true)
    public List<Slot> freeTimes(long key) {
        return reader.day(key, currentUser.scope()).stream()
                .flatMap(day -> free(day).stream())
                .toList();
    }

    /** The days to come on which somebody of the site can be given a time. */
    @PreAuthorize(Roles.HAS_NURSE)
    @Transactional(readOnly = true)
    public List<TestDay> openDays(String site) {
        return reader.days(currentUser.scope()).stream()
                .filter(day -> day.site().equals(site) && isOpen(day))
                .map(StoredTestDay::toTestDay)
                .toList();
    }

    private List<Slot> free(StoredTestDay day) {
        Set<Slot> taken = taken(List.of(day));
        return day.hours().slots().stream()
                .filter(slot -> !taken.contains(slot))
                .toList();
    }

    private Set<Slot> taken(List<StoredTestDay> days) {
        Map<Long, StoredTestDay> byKey = days.stream().collect(Collectors.toMap(StoredTestDay::key, day -> day));
        return reader.bookingsOf(byKey.keySet()).stream()
                .filter(booking -> booking.state().holdsItsTime())
                .map(booking -> new Slot(known(byKey, booking.dayKey()).date(), booking.startsAt()))
                .collect(Collectors.toSet());
    }

    private boolean isOpen(StoredTestDay day) {
        return !day.isCancelled() && !day.date().isBefore(LocalDate.now(clock));
    }

    /** Stores a test day, or the days of a visit. */
    @PreAuthorize(Roles.HAS_NURSE)
    public PlannedDays plan(NewTestDays planned) {
        List<DayProblem> problems = problems(planned);
        if (!problems.isEmpty()) {
            return new PlannedDays.Refused(problems);
        }
        LocalDate first = planned.firstDay().orElseThrow();
        LocalDate last = planned.lastDay().orElse(first);
        List<StoredTestDay> days = first.datesUntil(last.plusDays(1))
                .filter(day -> first.equals(last) || isWeekday(day))
                .map(day -> new StoredTestDay(
                        planned.site(),
                        planned.place().strip(),
                        hours(planned, day),
                        nurse(planned),
                        planned.mobileUnit(),
                        clock.instant()))
                .toList();
        days.forEach(entityManager::persist);
        long visit = days.getFirst().key();
        for (StoredTestDay day : days) {
            day.planWith(visit);
            auditTrail.record(
                    TestDayAction.TEST_DAY_PLANNED,
                    "test day",
                    Long.toString(day.key()),
                    day.date().toString());
        }
        return new PlannedDays.Stored(visit, days.size());
    }

    private static DayHours hours(NewTestDays planned, LocalDate day) {
        return new DayHours(
                day,
                planned.from().orElseThrow(),
                planned.to().orElseThrow(),
                planned.perHour().orElseThrow(),
                planned.breaks());
    }

    private static String nurse(NewTestDays planned) {
        return planned.nurse().strip().toLowerCase(Locale.ROOT);
    }

    private static boolean isWeekday(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
    }

    private List<DayProblem> problems(NewTestDays planned) {
        List<DayProblem> problems = new ArrayList<>();
        if (!currentUser.scope().includes(planned.site().isEmpty() ? null : planned.site())) {
            problems.add(new DayProblem(Field.SITE, "Choose a site whose records you may see."));
        }
        if (planned.place().isBlank()) {
            problems.add(new DayProblem(Field.PLACE, "Say where people go, such as First aid room 2."));
        } else if (planned.place().length() > NewTestDays.LONGEST_PLACE) {
            problems.add(new DayProblem(Field.PLACE, "Use " + NewTestDays.LONGEST_PLACE + " characters or fewer."));
        }
        addDateProblems(planned, problems);
        addHourProblems(planned, problems);
        if (!nurse(planned).isEmpty() && !isNurseOf(nurse(planned), planned.site())) {
            problems.add(
                    new DayProblem(Field.NURSE, "No nurse of this site signs in by this name. It may stay empty."));
        }
        return problems;
    }

    private void addDateProblems(NewTestDays planned, List<DayProblem> problems) {
        Optional<LocalDate> first = planned.firstDay();
        if (first.isEmpty()) {
            problems.add(new DayProblem(Field.FIRST_DAY, "Choose the day."));
        } else if (first.get().isBefore(LocalDate.now(clock))) {
            problems.add(new DayProblem(Field.FIRST_DAY, "The day has gone by."));
        } else if (planned.lastDay().isPresent()) {
            LocalDate last = planned.lastDay().get();
            if (last.isBefore(first.get())) {
                problems.add(new DayProblem(Field.LAST_DAY, "The last day comes before the first."));
            } else if (last.isAfter(first.get().plusDays(NewTestDays.MOST_DAYS - 1L))) {
                problems.add(
                        new DayProblem(Field.LAST_DAY, "Plan " + NewTestDays.MOST_DAYS + " days or fewer at once."));
            } else if (!last.equals(first.get())
                    && first.get().datesUntil(last.plusDays(1)).noneMatch(TestDayService::isWeekday)) {
                problems.add(new DayProblem(Field.LAST_DAY, "These days are a weekend; plan such a day by itself."));
            }
        }
    }

    private static void addHourProblems(NewTestDays planned, List<DayProblem> problems) {
        if (planned.from().isEmpty()) {
            problems.add(new DayProblem(Field.FROM, "Give the time of the first test, such as 06:00."));
        }
        if (planned.to().isEmpty()) {
            problems.add(new DayProblem(Field.TO, "Give the time at which testing ends, such as 14:00."));
        }
        boolean perHourFits = planned.perHour()
                .filter(number -> number >= 1 && number <= DayHours.MOST_PER_HOUR)
                .isPresent();
        if (!perHourFits) {
            problems.add(
                    new DayProblem(Field.PER_HOUR, "Give a number from 1 to " + DayHours.MOST_PER_HOUR + " people."));
        }
        if (planned.from().isPresent() && planned.to().isPresent()) {
            if (!planned.to().get().isAfter(planned.from().get())) {
                problems.add(new DayProblem(Field.TO, "Testing ends after it begins."));
            } else if (perHourFits && hours(planned, LocalDate.EPOCH).slots().isEmpty()) {
                problems.add(new DayProblem(Field.TO, "Nobody can be tested in these hours."));
            }
        }
    }

    private boolean isNurseOf(String username, String site) {
        return accounts.find(username)
                .filter(user -> user.role() == Role.NURSE && user.scope().includes(site.isEmpty() ? null : site))
                .isPresent();
    }

    /** Calls a day off: nobody is expected any more, and who was due stays due. */
    @PreAuthorize(Roles.HAS_NURSE)
    public BookingResult cancel(long key) {
        Optional<StoredTestDay> found = reader.dayToChange(key, currentUser.scope());
        if (found.isEmpty()) {
            return BookingResult.UNKNOWN;
        }
        StoredTestDay day = found.get();
        if (!isOpen(day)) {
            return BookingResult.DAY_OVER;
        }
        day.cancel(clock.instant());
        reader.bookingsOf(List.of(key)).stream()
                .filter(booking -> booking.state().isExpected())
                .forEach(booking -> booking.become(BookingState.REMOVED, "the day was called off"));
        auditTrail.record(TestDayAction.TEST_DAY_CANCELLED, "test day", Long.toString(key), "");
        return BookingResult.DONE;
    }

    /**
     * Fills the free times of a day, and of the later days of its visit, with those who are due by a day and have no
     * time. Whoever is on the list stays. Empty where the day is over or unknown.
     */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<Proposed> propose(long key, LocalDate dueBy) {
        Optional<StoredTestDay> found =
                reader.dayToChange(key, currentUser.scope()).filter(this::isOpen);
        return found.map(day -> propose(day, dueBy));
    }

    private Proposed propose(StoredTestDay first, LocalDate dueBy) {
        List<StoredTestDay> days = reader.daysOfVisit(first.toTestDay().visit()).stream()
                .filter(day -> isOpen(day) && !day.date().isBefore(first.date()))
                .toList();
        List<DuePerson> due = dueFinder.due(siteOf(first), dueBy).stream()
                .filter(person ->
                        person.booking().isEmpty() && person.worker().site().equals(first.site()))
                .toList();
        Map<DueTest, DuePerson> byTest =
                due.stream().collect(Collectors.toMap(DuePerson::due, person -> person, (one, other) -> one));
        TestPlan plan = TestPlanner.plan(
                days.stream().map(StoredTestDay::hours).toList(),
                taken(days),
                due.stream().map(DuePerson::due).toList());
        Map<LocalDate, StoredTestDay> byDate = new HashMap<>();
        days.forEach(day -> byDate.put(day.date(), day));
        Instant now = clock.instant();
        for (TestPlan.Planned planned : plan.planned()) {
            StoredTestDay day = known(byDate, planned.slot().day());
            entityManager.persist(new StoredBooking(day.key(), known(byTest, planned.due()), planned.slot()));
        }
        days.forEach(day -> {
            entityManager
                    .createQuery("delete from StoredLeftOut l where l.place.testDayId = :day")
                    .setParameter("day", day.key())
                    .executeUpdate();
            day.changed(now);
        });
        plan.leftOut()
                .forEach(left -> entityManager.persist(
                        new StoredLeftOut(first.key(), known(byTest, left.due()).workerKey(), left)));
        auditTrail.record(
                TestDayAction.TESTS_PROPOSED,
                "test day",
                Long.toString(first.key()),
                plan.planned().size() + " people on " + days.size() + " days, "
                        + plan.leftOut().size() + " did not fit");
        return new Proposed(plan.planned().size(), plan.leftOut().size());
    }

    /** Those without a site are in no scope but that of all sites. */
    private static SiteScope siteOf(StoredTestDay day) {
        return day.site().isEmpty() ? SiteScope.all() : SiteScope.only(Set.of(day.site()));
    }

    private static <K, V> V known(Map<K, V> map, K key) {
        return Optional.ofNullable(map.get(key)).orElseThrow();
    }

    /** Takes everybody off the day who is proposed and not confirmed. */
    @PreAuthorize(Roles.HAS_NURSE)
    public int clearProposals(long key) {
        return reader.dayToChange(key, currentUser.scope())
                .map(day -> {
                    List<StoredBooking> proposed = proposed(day);
                    proposed.forEach(entityManager::remove);
                    day.changed(clock.instant());
                    auditTrail.record(
                            TestDayAction.BOOKING_REMOVED,
                            "test day",
                            Long.toString(key),
                            proposed.size() + " proposed people taken off");
                    return proposed.size();
                })
                .orElse(0);
    }

    private List<StoredBooking> proposed(StoredTestDay day) {
        return reader.bookingsOf(List.of(day.key())).stream()
                .filter(booking -> booking.state() == BookingState.PROPOSED)
                .toList();
    }

    /** Confirms everybody who is proposed; the case behind each retest learns that it is booked. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<Confirmed> confirm(long key) {
        return reader.dayToChange(key, currentUser.scope()).filter(this::isOpen).map(this::confirm);
    }

    private Confirmed confirm(StoredTestDay day) {
        LocalDate date = day.date();
        List<StoredBooking> proposed = proposed(day);
        Map<Long, String> numbers = workers
                .withKeys(proposed.stream().map(StoredBooking::workerKey).toList())
                .stream()
                .collect(Collectors.toMap(
                        StoredWorker::key, worker -> worker.details().workerId()));
        proposed.forEach(booking -> booking.become(BookingState.CONFIRMED, ""));
        day.changed(clock.instant());
        auditTrail.record(
                TestDayAction.TESTS_CONFIRMED, "test day", Long.toString(day.key()), proposed.size() + " people");
        // Judging lets go of what it does not know.
        entityManager.flush();
        int retests = 0;
        List<Confirmed.Objection> objections = new ArrayList<>();
        for (StoredBooking booking : proposed) {
            if (booking.occasion() == Occasion.RETEST && booking.afterTest().isPresent()) {
                String workerId = numbers.getOrDefault(booking.workerKey(), "");
                DecisionResult result = decisions.enter(workerId, retestBooked(booking, date));
                if (result instanceof DecisionResult.Recorded || result instanceof DecisionResult.AlreadyOnRecord) {
                    retests++;
                } else {
                    objections.add(new Confirmed.Objection(workerId, result));
                }
            }
        }
        return new Confirmed(proposed.size(), retests, objections);
    }

    private Decision retestBooked(StoredBooking booking, LocalDate day) {
        return new Decision(
                booking.ears(),
                booking.afterTest().orElseThrow(),
                DecisionKind.RETEST_BOOKED,
                LocalDate.now(clock),
                currentUser.get().displayName(),
                SchedulingWords.bookedFor(day, booking.startsAt()));
    }
}
