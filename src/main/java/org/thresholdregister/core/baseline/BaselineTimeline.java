package org.thresholdregister.core.baseline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * Which audiogram each test of one ear is compared with, as the ear's tests are gone through in order.
 *
 * <p>The first baseline is the earliest test made as a baseline, or the earliest judged test where there is none; a
 * later test made as a baseline is compared like any other and never takes over by itself. Reading of 29 CFR
 * 1910.95(g)(5) and (g)(9): only a person's decision, or an accepted revision, moves a baseline.
 */
public final class BaselineTimeline {

    /** What a test is to the ear's first baseline. */
    public enum Standing {
        BEFORE_BASELINE,
        IS_BASELINE,
        COMPARED
    }

    private final List<Audiogram> tests;
    private final int first;
    private final List<BaselineChange> changes = new ArrayList<>();

    /** @param tests the ear's valid judged tests, in order */
    public BaselineTimeline(List<Audiogram> tests) {
        this.tests = tests;
        this.first = firstBaseline(tests);
    }

    private static int firstBaseline(List<Audiogram> tests) {
        for (int i = 0; i < tests.size(); i++) {
            if (tests.get(i).purpose() == TestPurpose.BASELINE) {
                return i;
            }
        }
        return tests.isEmpty() ? -1 : 0;
    }

    public Optional<Audiogram> firstBaseline() {
        return first < 0 ? Optional.empty() : Optional.of(tests.get(first));
    }

    /** The ear's valid judged tests, in order. */
    public List<Audiogram> tests() {
        return tests;
    }

    /** The moves of the baseline so far, in order. */
    public List<BaselineChange> changes() {
        return Collections.unmodifiableList(changes);
    }

    /** Moves the baseline for the tests that the change applies to. */
    public void move(BaselineChange change) {
        changes.add(change);
    }

    /** Whether this test is compared with another baseline than the first. */
    public boolean hasMovedFor(Audiogram test) {
        for (BaselineChange change : changes) {
            if (change.appliesTo(test)) {
                return true;
            }
        }
        return false;
    }

    /** Whether this test of the ear is valid and judged at all. */
    public boolean holds(Audiogram test) {
        return indexOf(test) >= 0;
    }

    private int indexOf(Audiogram test) {
        int index = Collections.binarySearch(tests, test, Audiogram.CHRONOLOGICAL);
        return index >= 0 && tests.get(index).equals(test) ? index : -1;
    }

    /** @throws IllegalArgumentException for a test that the timeline does not hold */
    public Standing standing(Audiogram test) {
        int index = indexOf(test);
        if (index < 0) {
            throw new IllegalArgumentException("not on this timeline: " + test);
        }
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
            if (change.appliesTo(test)) {
                baseline = change.to();
            }
        }
        return baseline;
    }
}
