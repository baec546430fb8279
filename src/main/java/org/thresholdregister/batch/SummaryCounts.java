package org.thresholdregister.batch;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.columnar.JudgedRow;
import org.thresholdregister.core.columnar.Population;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.YearSummary;

/**
 * Counts as {@link YearSummary} does, without keeping what is counted: workers come one after the other, and of each
 * the determinations in the order of time. For one thread.
 */
final class SummaryCounts {

    private static final int MEASURES = Measure.values().length;
    private static final int NO_YEAR = Integer.MIN_VALUE;

    private final Population population;
    private final Map<Group, YearlyCounts> countsByGroup = new HashMap<>();

    private YearlyCounts countsOfGroup = new YearlyCounts();
    private int year;
    private int[] countsOfYear = {};
    private int day;
    private int annualTest;
    private int undecidedTest;

    private boolean found;
    private boolean confirmed;
    private boolean awaiting;
    private boolean notConfirmed;
    private boolean recordable;

    SummaryCounts(Population population) {
        this.population = population;
    }

    /** What is seen from here on is about a worker of this group. */
    void beginWorker(Group smallestGroup) {
        countsOfGroup = countsByGroup.computeIfAbsent(smallestGroup, group -> new YearlyCounts());
        year = NO_YEAR;
        day = Population.NO_DAY;
        annualTest = Population.NO_TEST;
        undecidedTest = Population.NO_TEST;
    }

    void see(JudgedRow row) {
        int test = row.test();
        if (population.day(test) != day) {
            endDay();
            beginDay(population.day(test));
        }
        Outcome outcome = row.outcome();
        TestPurpose purpose = population.purpose(test);
        if ((purpose == TestPurpose.ANNUAL || purpose == TestPurpose.EXIT) && annualTest != test) {
            annualTest = test;
            countsOfYear[Measure.ANNUAL_TESTS.ordinal()]++;
        }
        if (outcome == Outcome.UNDECIDED && undecidedTest != test) {
            undecidedTest = test;
            countsOfYear[Measure.UNDECIDED_TESTS.ordinal()]++;
        }
        found |= outcome == Outcome.CONFIRMED
                || outcome != Outcome.RETEST
                        && row.standardShift().filter(Answer.YES::equals).isPresent();
        confirmed |= outcome == Outcome.CONFIRMED;
        awaiting |= outcome == Outcome.AWAITING_RETEST;
        notConfirmed |= outcome == Outcome.NOT_CONFIRMED;
        recordable |= row.recordable().filter(Recordability.YES::equals).isPresent();
    }

    void endWorker() {
        endDay();
    }

    private void beginDay(int newDay) {
        day = newDay;
        int yearOfDay = LocalDate.ofEpochDay(newDay).getYear();
        if (yearOfDay != year) {
            year = yearOfDay;
            countsOfYear = countsOfGroup.of(year);
            countsOfYear[Measure.WORKERS_TESTED.ordinal()]++;
        }
    }

    private void endDay() {
        if (found || confirmed || awaiting || notConfirmed || recordable) {
            add(Measure.SHIFTS_FOUND, found);
            add(Measure.SHIFTS_CONFIRMED, confirmed);
            add(Measure.SHIFTS_AWAITING_RETEST, awaiting && !confirmed);
            add(Measure.SHIFTS_NOT_CONFIRMED, notConfirmed && !awaiting && !confirmed);
            add(Measure.RECORDABLE_CASES, recordable);
        }
        found = false;
        confirmed = false;
        awaiting = false;
        notConfirmed = false;
        recordable = false;
    }

    private void add(Measure measure, boolean counts) {
        if (counts) {
            countsOfYear[measure.ordinal()]++;
        }
    }

    void addTo(YearSummary summary) {
        countsByGroup.forEach((group, counts) -> counts.byYear.forEach((of, values) -> summary.add(of, group, values)));
    }

    /** By the ordinal of their {@link Measure}. */
    private static final class YearlyCounts {
        private final Map<Integer, int[]> byYear = new HashMap<>();

        int[] of(int year) {
            return byYear.computeIfAbsent(year, first -> new int[MEASURES]);
        }
    }
}
