package org.thresholdregister.core.summary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

/**
 * Counts determinations by year and group, worker by worker. A person with both ears on one date is one shift and one
 * case; where the ears differ, the weightier outcome counts: confirmed, awaiting a retest, not confirmed.
 */
public final class YearSummary {

    private record YearAndGroup(int year, Group group) {}

    private record TestOfDay(LocalDate date, TestPurpose purpose) {}

    private static final Comparator<YearAndGroup> ORDER = Comparator.comparingInt(YearAndGroup::year)
            .thenComparing(key -> key.group().site())
            .thenComparing(key -> key.group().department());

    private final Map<YearAndGroup, int[]> counts = new TreeMap<>(ORDER);

    /** Adds all that was determined about one worker; each worker is added once. */
    public void add(Group group, List<CountedTest> tests) {
        Map<Integer, YearOfPerson> years = new HashMap<>();
        for (CountedTest test : tests) {
            years.computeIfAbsent(test.date().getYear(), year -> new YearOfPerson())
                    .see(test);
        }
        years.forEach((year, person) -> {
            int[] values = new int[Measure.values().length];
            person.count(values);
            add(year, group, values);
        });
    }

    /**
     * Adds what was counted elsewhere in the same way, of any number of workers of one group.
     *
     * @param values by the ordinal of their {@link Measure}
     */
    public void add(int year, Group group, int[] values) {
        // A set, since a site or department may be named like a total.
        for (Group counted : new LinkedHashSet<>(List.of(group, group.wholeSite(), Group.EVERYBODY))) {
            int[] sums = counts.computeIfAbsent(new YearAndGroup(year, counted), key -> new int[values.length]);
            Arrays.setAll(sums, i -> sums[i] + values[i]);
        }
    }

    /** All counts, zeros included, by year, site, department and measure. */
    public List<SummaryRow> rows() {
        List<SummaryRow> rows = new ArrayList<>();
        counts.forEach((key, values) -> {
            for (Measure measure : Measure.values()) {
                rows.add(new SummaryRow(key.year(), key.group(), measure, Count.of(values[measure.ordinal()])));
            }
        });
        return rows;
    }

    /** What one person's tests of one year come to. */
    private static final class YearOfPerson {
        private final Map<LocalDate, DayOfPerson> days = new HashMap<>();
        private final Set<TestOfDay> annualTests = new HashSet<>();
        private final Set<TestOfDay> undecidedTests = new HashSet<>();

        void see(CountedTest test) {
            days.computeIfAbsent(test.date(), date -> new DayOfPerson()).see(test);
            TestOfDay ofBothEars = new TestOfDay(test.date(), test.purpose());
            if (test.purpose() == TestPurpose.ANNUAL || test.purpose() == TestPurpose.EXIT) {
                annualTests.add(ofBothEars);
            }
            if (test.outcome() == Outcome.UNDECIDED) {
                undecidedTests.add(ofBothEars);
            }
        }

        void count(int[] values) {
            values[Measure.WORKERS_TESTED.ordinal()]++;
            values[Measure.ANNUAL_TESTS.ordinal()] += annualTests.size();
            values[Measure.UNDECIDED_TESTS.ordinal()] += undecidedTests.size();
            days.values().forEach(day -> day.count(values));
        }
    }

    /** What one person's tests of one date come to. */
    private static final class DayOfPerson {
        private boolean found;
        private boolean confirmed;
        private boolean awaiting;
        private boolean notConfirmed;
        private boolean recordable;

        void see(CountedTest test) {
            if (test.outcome() != Outcome.RETEST) {
                boolean ownShift = test.shift().filter(Answer.YES::equals).isPresent();
                found |= ownShift || test.outcome() == Outcome.CONFIRMED;
            }
            confirmed |= test.outcome() == Outcome.CONFIRMED;
            awaiting |= test.outcome() == Outcome.AWAITING_RETEST;
            notConfirmed |= test.outcome() == Outcome.NOT_CONFIRMED;
            recordable |= test.recordable().filter(Recordability.YES::equals).isPresent();
        }

        void count(int[] values) {
            add(values, Measure.SHIFTS_FOUND, found);
            add(values, Measure.SHIFTS_CONFIRMED, confirmed);
            add(values, Measure.SHIFTS_AWAITING_RETEST, awaiting && !confirmed);
            add(values, Measure.SHIFTS_NOT_CONFIRMED, notConfirmed && !awaiting && !confirmed);
            add(values, Measure.RECORDABLE_CASES, recordable);
        }

        private static void add(int[] values, Measure measure, boolean counts) {
            if (counts) {
                values[measure.ordinal()]++;
            }
        }
    }
}
