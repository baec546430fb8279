package org.thresholdregister.core.baseline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * Which audiogram each test of one ear is compared with.
 *
 * <p>The first baseline is the earliest test made as a baseline, or the earliest judged test where there is none; a
 * later test made as a baseline is compared like any other and never takes over by itself. Reading of 29 CFR
 * 1910.95(g)(5) and (g)(9): only a person's decision, or an accepted revision, moves a baseline.
 */
public final class BaselineTimeline {

    /** What a test is to the ear's baseline. */
    public enum Standing {
        BEFORE_BASELINE,
        IS_BASELINE,
        COMPARED
    }

    private final List<Audiogram> tests;
    private final int first;
    private final List<BaselineChange> changes;

    private BaselineTimeline(List<Audiogram> tests, int first, List<BaselineChange> changes) {
        this.tests = tests;
        this.first = first;
        this.changes = changes;
    }

    /**
     * The timeline of an ear before any revision by rule.
     *
     * @param tests the ear's valid judged tests, in order
     * @param chosen tests that a person made the ear's baseline
     */
    public static BaselineTimeline of(Ear ear, List<Audiogram> tests, Set<Audiogram> chosen) {
        int first = firstBaseline(tests, chosen);
        List<BaselineChange> changes = new ArrayList<>();
        for (int i = first + 1; first >= 0 && i < tests.size(); i++) {
            if (chosen.contains(tests.get(i))) {
                Audiogram from =
                        changes.isEmpty() ? tests.get(first) : changes.getLast().to();
                Audiogram to = tests.get(i);
                changes.add(new BaselineChange(ear, BaselineChange.Kind.DECIDED, to, from, to, List.of(to.date())));
            }
        }
        return new BaselineTimeline(tests, first, changes);
    }

    /** The same tests with the baseline moved by these changes instead, in order. */
    public BaselineTimeline movedBy(List<BaselineChange> instead) {
        return new BaselineTimeline(tests, first, List.copyOf(instead));
    }

    private static int firstBaseline(List<Audiogram> tests, Set<Audiogram> chosen) {
        int earliest = tests.isEmpty() ? -1 : 0;
        for (int i = 0; i < tests.size(); i++) {
            if (tests.get(i).purpose() == TestPurpose.BASELINE) {
                earliest = i;
                break;
            }
        }
        for (int i = 0; i < earliest; i++) {
            if (chosen.contains(tests.get(i))) {
                return i;
            }
        }
        return earliest;
    }

    public Optional<Audiogram> firstBaseline() {
        return first < 0 ? Optional.empty() : Optional.of(tests.get(first));
    }

    /** The tests that are compared with a baseline, in order. */
    public List<Audiogram> comparedTests() {
        return first < 0 ? List.of() : tests.subList(first + 1, tests.size());
    }

    /** The moves of the baseline, in order. */
    public List<BaselineChange> changes() {
        return changes;
    }

    /** Whether this test of the ear is valid and judged at all. */
    public boolean holds(Audiogram test) {
        return tests.contains(test);
    }

    /** @throws IllegalArgumentException for a test that the timeline does not hold */
    public Standing standing(Audiogram test) {
        int index = indexOf(test);
        return index < first ? Standing.BEFORE_BASELINE : index == first ? Standing.IS_BASELINE : Standing.COMPARED;
    }

    /**
     * The audiogram that a compared test is compared with.
     *
     * @throws IllegalArgumentException for a test that is not compared
     */
    public Audiogram baselineFor(Audiogram test) {
        if (standing(test) != Standing.COMPARED) {
            throw new IllegalArgumentException("not compared with a baseline: " + test);
        }
        Audiogram baseline = tests.get(first);
        for (BaselineChange change : changes) {
            if (Audiogram.CHRONOLOGICAL.compare(change.completedBy(), test) < 0) {
                baseline = change.to();
            }
        }
        return baseline;
    }

    private int indexOf(Audiogram test) {
        int index = tests.indexOf(test);
        if (index < 0) {
            throw new IllegalArgumentException("not on this timeline: " + test);
        }
        return index;
    }
}
