package org.thresholdregister.core.summary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
        Map<Integer, Set<TestOfDay>> annualTests = new HashMap<>();
        Map<Integer, Map<LocalDate, DayOfPerson>> days = new HashMap<>();
        for (CountedTest test : tests) {
            int year = test.date().getYear();
            days.computeIfAbsent(year, y -> new HashMap<>())
                    .computeIfAbsent(test.date(), d -> new DayOfPerson())
                    .see(test);
            if (test.purpose() == TestPurpose.ANNUAL || test.purpose() == TestPurpose.EXIT) {
                annualTests.computeIfAbsent(year, y -> new HashSet<>()).add(new TestOfDay(test.date(), test.purpose()));
            }
        }
        days.forEach((year, daysOfYear) -> {
            int annual = annualTests.getOrDefault(year, Set.of()).size();
            for (Group counted : List.of(group, group.wholeSite(), Group.EVERYBODY)) {
                int[] values = counts.computeIfAbsent(
                        new YearAndGroup(year, counted), key -> new int[Measure.values().length]);
                values[Measure.WORKERS_TESTED.ordinal()]++;
                values[Measure.ANNUAL_TESTS.ordinal()] += annual;
                daysOfYear.values().forEach(day -> day.count(values));
            }
        });
    }

    /** All counts, zeros included, by year, site, department and measure. */
    public List<SummaryRow> rows() {
        List<SummaryRow> rows = new ArrayList<>();
        counts.forEach((key, values) -> {
            for (Measure measure : Measure.values()) {
                rows.add(new SummaryRow(key.year(), key.group(), measure, values[measure.ordinal()]));
            }
        });
        return rows;
    }

    /** What one person's tests of one date come to. */
    private static final class DayOfPerson {
        private boolean found;
        private boolean confirmed;
        private boolean awaiting;
        private boolean notConfirmed;
        private boolean undecided;
        private boolean recordable;

        void see(CountedTest test) {
            if (test.outcome() != Outcome.RETEST) {
                boolean ownShift = test.shift().filter(Answer.YES::equals).isPresent();
                found |= ownShift || test.outcome() == Outcome.CONFIRMED;
            }
            confirmed |= test.outcome() == Outcome.CONFIRMED;
            awaiting |= test.outcome() == Outcome.AWAITING_RETEST;
            notConfirmed |= test.outcome() == Outcome.NOT_CONFIRMED;
            undecided |= test.outcome() == Outcome.UNDECIDED;
            recordable |= test.recordable().filter(Recordability.YES::equals).isPresent();
        }

        void count(int[] values) {
            add(values, Measure.SHIFTS_FOUND, found);
            add(values, Measure.SHIFTS_CONFIRMED, confirmed);
            add(values, Measure.SHIFTS_AWAITING_RETEST, awaiting && !confirmed);
            add(values, Measure.SHIFTS_NOT_CONFIRMED, notConfirmed && !awaiting && !confirmed);
            add(values, Measure.UNDECIDED_TESTS, undecided);
            add(values, Measure.RECORDABLE_CASES, recordable);
        }

        private static void add(int[] values, Measure measure, boolean counts) {
            if (counts) {
                values[measure.ordinal()]++;
            }
        }
    }
}
