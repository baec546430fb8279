package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RetestRule;
import org.thresholdregister.core.shift.ThresholdShift;

/** One test in the course of judging a worker: its comparisons, and the retests that may take its place. */
final class TestEntry {

    private final Audiogram test;
    private final Map<Ear, ThresholdShift> comparisons = new EnumMap<>(Ear.class);
    private final List<TestEntry> retests = new ArrayList<>();
    private final @Nullable TestEntry resolves;
    private final Optional<RetestRule> retestRule;

    /** @param resolves the earlier test whose place this retest may take */
    TestEntry(Audiogram test, Optional<RetestRule> retestRule, @Nullable TestEntry resolves) {
        this.test = test;
        this.retestRule = retestRule;
        this.resolves = resolves;
        if (resolves != null) {
            resolves.retests.add(this);
        }
    }

    Audiogram test() {
        return test;
    }

    Optional<TestEntry> resolves() {
        return Optional.ofNullable(resolves);
    }

    void compare(ThresholdShift comparison) {
        comparisons.put(comparison.ear(), comparison);
    }

    /** The comparison of an ear with its baseline; none on the baseline itself, before it, or for an invalid test. */
    Optional<ThresholdShift> comparison(Ear ear) {
        return Optional.ofNullable(comparisons.get(ear));
    }

    /** The retests inside this test's window, in order. */
    List<TestEntry> retests() {
        return retests;
    }

    /** Whether a retest may take this test's place: it shows a shift in either ear and is not itself a stand-in. */
    boolean opensWindow() {
        return resolves == null
                && comparisons.values().stream().anyMatch(comparison -> comparison.isShift() == Answer.YES);
    }

    /** Whether a test of that day still falls in the days after this one in which a retest counts. */
    boolean windowHolds(Audiogram retest) {
        return retestRule.isPresent()
                && retest.purpose() == TestPurpose.RETEST
                && !retest.date().isBefore(test.date())
                && !retest.date().isAfter(retestRule.get().lastDay(test.date()));
    }

    /** The days by which a decision may name this test: its own, and those of its retests. */
    Set<LocalDate> days() {
        Set<LocalDate> days = new HashSet<>();
        days.add(test.date());
        retests.forEach(retest -> days.add(retest.test.date()));
        return days;
    }

    /**
     * The retest of an ear that counts: the last, or the first where the rule set allows one. One that is set aside as
     * invalid for the ear does not stand in another's way.
     */
    Optional<TestEntry> countingRetest(Ear ear) {
        boolean first = retestRule
                .filter(rule -> rule.choice() == RetestRule.Choice.FIRST)
                .isPresent();
        for (TestEntry retest : first ? retests : retests.reversed()) {
            if (retest.comparison(ear).isPresent()) {
                return Optional.of(retest);
            }
        }
        return Optional.empty();
    }

    /** What the counting retest says of an ear, where it can say anything. */
    Optional<ThresholdShift> resolvingRetest(Ear ear) {
        return countingRetest(ear)
                .flatMap(retest -> retest.comparison(ear))
                .filter(comparison -> comparison.isShift() != Answer.UNDECIDED);
    }
}
