package org.thresholdregister.core.baseline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.regulation.Answer;

/**
 * The two rules by which the professional guide on audiometric baseline revision (text of 49 CFR 227 Appendix C)
 * flags an ear for revision: improvement of 5 dB or more on two tests running, and a standard threshold shift that is
 * still there on a test at least six months later. They propose; under 29 CFR 1910.95(g)(9) a professional decides.
 *
 * <p>Sums of the raw levels at 2000, 3000 and 4000 Hz are compared. Improvement is never age-corrected.
 */
public final class BaselineRevisionRule {

    private static final int IMPROVEMENT_SUM_DB = 15;
    private static final int SHIFT_SUM_DB = 30;
    private static final int RETEST_DAYS = 30;
    private static final int PERSISTENCE_MONTHS = 6;

    private final Ear ear;
    private final BiFunction<Audiogram, Audiogram, DecibelRange> correctedShiftSum;
    private final List<BaselineChange> changes = new ArrayList<>();
    private Audiogram baseline;
    private @Nullable Audiogram firstBetter;
    private @Nullable Audiogram firstWorse;

    private BaselineRevisionRule(
            Ear ear, Audiogram baseline, BiFunction<Audiogram, Audiogram, DecibelRange> correctedShiftSum) {
        this.ear = ear;
        this.baseline = baseline;
        this.correctedShiftSum = correctedShiftSum;
    }

    /**
     * All moves of the ear's baseline if every proposal is accepted when it is made, with the decided ones among them.
     *
     * @param correctedShiftSum the sum of the shifts, less the allowance for aging, from one audiogram to another
     */
    public static List<BaselineChange> changes(
            Ear ear, BaselineTimeline timeline, BiFunction<Audiogram, Audiogram, DecibelRange> correctedShiftSum) {
        Optional<Audiogram> first = timeline.firstBaseline();
        if (first.isEmpty()) {
            return List.of();
        }
        BaselineRevisionRule rule = new BaselineRevisionRule(ear, first.get(), correctedShiftSum);
        List<Audiogram> tests = timeline.comparedTests();
        for (Audiogram test : tests) {
            if (test.purpose() != TestPurpose.RETEST) {
                rule.consider(test, tests);
            }
            for (BaselineChange decided : timeline.changes()) {
                if (decided.to().equals(test)) {
                    rule.decide(decided);
                }
            }
        }
        return rule.changes;
    }

    private void decide(BaselineChange decided) {
        changes.add(new BaselineChange(
                ear, BaselineChange.Kind.DECIDED, decided.to(), baseline, decided.to(), decided.evidence()));
        startFrom(decided.to());
    }

    private void consider(Audiogram test, List<Audiogram> tests) {
        if (sum(test).isEmpty() || sum(baseline).isEmpty()) {
            return;
        }
        Audiogram considered = standInFor(test, tests);
        boolean again = true;
        while (again) {
            again = considerImprovement(considered, test) || considerShift(considered, test);
        }
    }

    /** A better retest takes the place of a test that shows a shift; no retest of it is ever a next test. */
    private Audiogram standInFor(Audiogram test, List<Audiogram> tests) {
        Audiogram considered = test;
        if (shift(test) == Answer.YES) {
            LocalDate last = test.date().plusDays(RETEST_DAYS);
            for (Audiogram retest : tests) {
                if (retest.purpose() == TestPurpose.RETEST
                        && !retest.date().isBefore(test.date())
                        && !retest.date().isAfter(last)
                        && sum(retest).isPresent()
                        && sum(retest).getAsInt() < sum(test).getAsInt()) {
                    considered = retest;
                }
            }
        }
        return considered;
    }

    /** Whether the baseline moved to an earlier test, so that this one must be looked at again. */
    private boolean considerImprovement(Audiogram test, Audiogram completedBy) {
        if (level(baseline) - level(test) < IMPROVEMENT_SUM_DB) {
            firstBetter = null;
            return false;
        }
        Audiogram earlier = firstBetter;
        if (earlier == null) {
            firstBetter = test;
            return false;
        }
        return propose(BaselineChange.Kind.PERSISTENT_IMPROVEMENT, earlier, test, completedBy);
    }

    private boolean considerShift(Audiogram test, Audiogram completedBy) {
        switch (shift(test)) {
            case NO -> firstWorse = null;
            case UNDECIDED -> {
                // Neither confirms nor clears: the allowance for aging is not known.
            }
            case YES -> {
                Audiogram earlier = firstWorse;
                if (earlier == null) {
                    firstWorse = test;
                } else if (!test.date().isBefore(earlier.date().plusMonths(PERSISTENCE_MONTHS))) {
                    return propose(BaselineChange.Kind.PERSISTENT_SHIFT, earlier, test, completedBy);
                }
            }
        }
        return false;
    }

    private boolean propose(BaselineChange.Kind kind, Audiogram earlier, Audiogram test, Audiogram completedBy) {
        Audiogram revised = level(test) < level(earlier) ? test : earlier;
        changes.add(
                new BaselineChange(ear, kind, completedBy, baseline, revised, List.of(earlier.date(), test.date())));
        startFrom(revised);
        return !revised.equals(test);
    }

    private void startFrom(Audiogram newBaseline) {
        baseline = newBaseline;
        firstBetter = null;
        firstWorse = null;
    }

    private Answer shift(Audiogram test) {
        return correctedShiftSum.apply(baseline, test).isAtLeast(SHIFT_SUM_DB);
    }

    private OptionalInt sum(Audiogram test) {
        return test.levelSum(ear).exact();
    }

    private int level(Audiogram test) {
        return sum(test).orElseThrow();
    }
}
