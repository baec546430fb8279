package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.scheduling.DueTest;
import org.thresholdregister.core.scheduling.MobileUnitRule;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.review.FollowUpStore;
import org.thresholdregister.review.OwedTest;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;
import org.thresholdregister.rulesets.RulesBySite;
import org.thresholdregister.rulesets.SiteRulesStore;
import org.thresholdregister.testdays.DuePerson.BookedTime;
import org.thresholdregister.testdays.ShiftFinder.Shifts;

/** Finds who is due for which test. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class DueFinder {

    private static final Citation EXIT_PRACTICE =
            new Citation("common practice; 29 CFR 1910.95 asks for no test at the end");

    /** A test as old as this is taken for the one at the end of employment; our choice. */
    private static final int EXIT_TEST_COUNTS_MONTHS = 3;

    /** So that no query has more parameters than PostgreSQL takes. */
    private static final int WORKERS_AT_A_TIME = 10_000;

    /** What somebody is to come for, so that missed times can be told from those for another test. */
    private record Errand(
            long workerKey, Occasion occasion, @Nullable LocalDate afterTest) {}

    private record Owed(
            long workerKey,
            Occasion occasion,
            LocalDate lastDay,
            Citation basis,
            Optional<LocalDate> afterTest,
            Ears ears,
            Optional<LocalDate> enrolledFrom) {

        Errand errand() {
            return new Errand(workerKey, occasion, afterTest.orElse(null));
        }

        /** A mobile unit has longer for a baseline, where the rule set says so. */
        Owed withMobileUnit(RuleSet ruleSet) {
            Optional<MobileUnitRule> rule =
                    MobileUnitRule.of(ruleSet).filter(exception -> occasion == Occasion.BASELINE);
            return rule.isEmpty() || enrolledFrom.isEmpty()
                    ? this
                    : new Owed(
                            workerKey,
                            occasion,
                            rule.get().baselineBy(enrolledFrom.get()),
                            rule.get().source(),
                            afterTest,
                            ears,
                            enrolledFrom);
        }
    }

    private final EntityManager entityManager;
    private final FollowUpStore followUps;
    private final WorkerStore workers;
    private final SiteRulesStore rules;
    private final ShiftFinder shifts;
    private final TestSiteFinder sites;
    private final Clock clock;

    DueFinder(
            EntityManager entityManager,
            FollowUpStore followUps,
            WorkerStore workers,
            SiteRulesStore rules,
            ShiftFinder shifts,
            TestSiteFinder sites,
            Clock clock) {
        this.entityManager = entityManager;
        this.followUps = followUps;
        this.workers = workers;
        this.rules = rules;
        this.shifts = shifts;
        this.sites = sites;
        this.clock = clock;
    }

    /** Who is due by a day, and who has not come when called, whatever the day; the most urgent first. */
    List<DuePerson> due(SiteScope scope, LocalDate dueBy) {
        LocalDate today = LocalDate.now(clock);
        Map<Errand, Integer> missed = missed();
        List<Owed> owed = new ArrayList<>();
        followUps.tests(scope, dueBy).forEach(test -> owed.add(owed(test)));
        owed.addAll(leaving(scope, today, dueBy));
        Set<Errand> known = owed.stream().map(Owed::errand).collect(Collectors.toSet());
        missed.keySet().stream()
                .filter(errand -> !known.contains(errand))
                .map(Errand::workerKey)
                .distinct()
                .flatMap(worker -> followUps.testsOf(worker).stream().map(DueFinder::owed))
                .filter(test -> missed.containsKey(test.errand()) && !known.contains(test.errand()))
                .forEach(owed::add);
        return people(owed, scope, today, missed);
    }

    /** What one worker is due for, near or far. */
    List<DuePerson> dueOf(StoredWorker worker) {
        LocalDate today = LocalDate.now(clock);
        List<Owed> owed = new ArrayList<>();
        followUps.testsOf(worker.key()).forEach(test -> owed.add(owed(test)));
        worker.details()
                .endDate()
                .ifPresent(end -> leaving(SiteScope.all(), today, end).stream()
                        .filter(test -> test.workerKey() == worker.key())
                        .forEach(owed::add));
        return people(owed, SiteScope.all(), today, missed());
    }

    private static Owed owed(OwedTest test) {
        return new Owed(
                test.workerKey(),
                occasion(test.kind()),
                test.dueDate(),
                RuleSets.find(test.ruleSet())
                        .orElse(RuleSets.OSHA)
                        .paragraph(test.kind().step()),
                test.afterTest(),
                test.ears(),
                test.enrolledFrom());
    }

    private static Occasion occasion(FollowUpKind kind) {
        return switch (kind) {
            case RETEST -> Occasion.RETEST;
            case BASELINE_TEST -> Occasion.BASELINE;
            case ANNUAL_TEST -> Occasion.ANNUAL;
            case NOTICE, RECORD -> throw new IllegalArgumentException("no test: " + kind);
        };
    }

    /** Those whose last day of employment is near, and who have had no test for it. */
    private List<Owed> leaving(SiteScope scope, LocalDate today, LocalDate until) {
        return ListQuery.of(entityManager, "Worker w", "w.site", scope)
                .where("w.endDate between ? and ?", today, until)
                .where("w.enrolledFrom is not null")
                .where(
                        "not exists (select a.id from StoredAudiogram a where a.workerId = w.id and a.purpose = ?"
                                + " and a.takenOut = 0 and a.testDate >= ?)",
                        TestPurpose.EXIT,
                        today.minusMonths(EXIT_TEST_COUNTS_MONTHS))
                .all("w.id, w.endDate, w.enrolledFrom", "", DueFinder::leaving);
    }

    private static Owed leaving(Tuple tuple) {
        return new Owed(
                tuple.get(0, Long.class),
                Occasion.EXIT,
                tuple.get(1, LocalDate.class),
                EXIT_PRACTICE,
                Optional.empty(),
                Ears.BOTH,
                Optional.of(tuple.get(2, LocalDate.class)));
    }

    private List<DuePerson> people(List<Owed> owed, SiteScope scope, LocalDate today, Map<Errand, Integer> missed) {
        Map<Long, StoredWorker> byKey =
                workers(owed.stream().map(Owed::workerKey).distinct().toList());
        Map<Long, BookedTime> booked = booked(today);
        RulesBySite rulesBySite = rules.all();
        Shifts allShifts = shifts.all();
        Map<String, TestSite> settings = new HashMap<>();
        List<DuePerson> people = new ArrayList<>();
        for (Owed test : owed) {
            StoredWorker worker = byKey.get(test.workerKey());
            if (worker == null || !scope.includes(worker.details().siteIfGiven())) {
                continue;
            }
            String site = worker.details().site();
            RuleSet ruleSet = rulesBySite.of(site).on(today).ruleSet();
            boolean mobile = settings.computeIfAbsent(site, sites::of).mobileUnit();
            Owed due = mobile ? test.withMobileUnit(ruleSet) : test;
            people.add(new DuePerson(
                    worker.key(),
                    worker.details(),
                    new DueTest(
                            worker.details().workerId(),
                            due.occasion(),
                            due.lastDay(),
                            due.basis(),
                            worker.details().department(),
                            allShifts.of(worker.key(), worker.details()),
                            ruleSet.quiet(),
                            missed.getOrDefault(test.errand(), 0)),
                    test.afterTest(),
                    test.ears(),
                    Optional.ofNullable(booked.get(worker.key()))));
        }
        people.sort(Comparator.comparing(DuePerson::due, DueTest.BY_URGENCY));
        return people;
    }

    private Map<Long, StoredWorker> workers(List<Long> keys) {
        Map<Long, StoredWorker> byKey = new HashMap<>();
        for (int from = 0; from < keys.size(); from += WORKERS_AT_A_TIME) {
            Collection<Long> some = keys.subList(from, Math.min(keys.size(), from + WORKERS_AT_A_TIME));
            workers.withKeys(some).forEach(worker -> byKey.put(worker.key(), worker));
        }
        return byKey;
    }

    /** The next time of everybody who has one. */
    private Map<Long, BookedTime> booked(LocalDate today) {
        Map<Long, BookedTime> booked = new HashMap<>();
        entityManager
                .createQuery(
                        "select b.workerId, d.id, d.testDate from StoredBooking b join StoredTestDay d"
                                + " on d.id = b.testDayId where b.state in (:expected) and d.testDate >= :today"
                                + " order by d.testDate desc",
                        Tuple.class)
                .setParameter("expected", BookingState.expected())
                .setParameter("today", today)
                .getResultStream()
                .forEach(tuple -> booked.put(
                        tuple.get(0, Long.class),
                        new BookedTime(tuple.get(1, Long.class), tuple.get(2, LocalDate.class))));
        return booked;
    }

    /** How often somebody did not come to the same test. */
    private Map<Errand, Integer> missed() {
        Map<Errand, Integer> missed = new HashMap<>();
        entityManager
                .createQuery(
                        "select b.workerId, b.occasion, b.afterTest, count(*) from StoredBooking b"
                                + " where b.state = :noShow group by b.workerId, b.occasion, b.afterTest",
                        Tuple.class)
                .setParameter("noShow", BookingState.NO_SHOW)
                .getResultStream()
                .forEach(tuple -> missed.put(
                        new Errand(
                                tuple.get(0, Long.class), tuple.get(1, Occasion.class), tuple.get(2, LocalDate.class)),
                        Math.toIntExact(tuple.get(3, Long.class))));
        return missed;
    }
}
