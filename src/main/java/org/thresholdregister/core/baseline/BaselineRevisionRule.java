package org.thresholdregister.core.baseline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RevisionRule;

/**
 * The two rules by which the professional guide on audiometric baseline revision (text of 49 CFR 227 Appendix C)
 * flags an ear for revision: improvement of 5 dB or more on two tests running, and a standard threshold shift that is
 * still there on a test at least six months later. They propose; under 29 CFR 1910.95(g)(9) a professional decides.
 *
 * <p>Sums of the raw levels at 2000, 3000 and 4000 Hz are compared. Improvement is never age-corrected. The rule is
 * shown one ear's tests in order, without the retests that stand in a window, and each proposal counts as accepted
 * unless a professional has declined it: then the baseline stays, and the later test of the pair waits for another.
 */
public final class BaselineRevisionRule {

    private final Ear ear;
    private final RevisionRule rule;
    private final int retestDays;
    private final BiFunction<Audiogram, Audiogram, Answer> isShift;
    private final Predicate<Audiogram> declined;
    private Audiogram baseline;
    private @Nullable Audiogram firstBetter;
    private @Nullable Audiogram firstWorse;

    /**
     * @param retestDays how long after a test a better retest may stand for it
     * @param isShift whether there is a shift, less the allowance for aging, from one audiogram to another
     * @param declined whether a professional has declined to make this test the ear's baseline
     */
    public BaselineRevisionRule(
            Ear ear,
            Audiogram baseline,
            RevisionRule rule,
            int retestDays,
            BiFunction<Audiogram, Audiogram, Answer> isShift,
            Predicate<Audiogram> declined) {
        this.ear = ear;
        this.baseline = baseline;
        this.rule = rule;
        this.retestDays = retestDays;
        this.isShift = isShift;
        this.declined = declined;
    }

    /** A person moved the baseline: what was waiting for a second test waits no more. */
    public void startFrom(Audiogram newBaseline) {
        baseline = newBaseline;
        firstBetter = null;
        firstWorse = null;
    }

    /**
     * Looks at the next test.
     *
     * @param tests all tests of the ear, among which a better retest of this one is looked for
     * @return the revisions that it completes, in order; a test can complete two, since it is looked at again on the
     *     new baseline
     */
    public List<BaselineChange> consider(Audiogram test, List<Audiogram> tests) {
        List<BaselineChange> proposals = new ArrayList<>();
        if (sum(test).isEmpty() || sum(baseline).isEmpty()) {
            return proposals;
        }
        Audiogram considered = standInFor(test, tests);
        boolean again = true;
        while (again) {
            again = considerImprovement(considered, proposals) || considerShift(considered, proposals);
        }
        return proposals;
    }

    /** The latest better retest takes the place of a test that shows a shift. */
    private Audiogram standInFor(Audiogram test, List<Audiogram> tests) {
        Audiogram considered = test;
        if (shift(test) == Answer.YES) {
            LocalDate last = test.date().plusDays(retestDays);
            for (Audiogram retest : tests) {
                if (retest.purpose() == TestPurpose.RETEST
                        && Audiogram.CHRONOLOGICAL.compare(test, retest) < 0
                        && !retest.date().isAfter(last)
                        && sum(retest).isPresent()
                        && level(retest) < level(test)) {
                    considered = retest;
                }
            }
        }
        return considered;
    }

    /** Whether the baseline moved to an earlier test, so that this one must be looked at again. */
    private boolean considerImprovement(Audiogram test, List<BaselineChange> proposals) {
        if (level(baseline) - level(test) < rule.improvementDb() * Frequency.AVERAGED.size()) {
            firstBetter = null;
            return false;
        }
        Audiogram earlier = firstBetter;
        if (earlier == null) {
            firstBetter = test;
            return false;
        }
        if (declined.test(better(earlier, test))) {
            firstBetter = test;
            return false;
        }
        return propose(BaselineChange.Kind.PERSISTENT_IMPROVEMENT, earlier, test, proposals);
    }

    private boolean considerShift(Audiogram test, List<BaselineChange> proposals) {
        switch (shift(test)) {
            case NO -> firstWorse = null;
            case UNDECIDED -> {
                // Neither confirms nor clears: the allowance for aging is not known.
            }
            case YES -> {
                Audiogram earlier = firstWorse;
                if (earlier == null) {
                    firstWorse = test;
                } else if (!test.date().isBefore(earlier.date().plusMonths(rule.persistenceMonths()))) {
                    if (declined.test(better(earlier, test))) {
                        firstWorse = test;
                        return false;
                    }
                    return propose(BaselineChange.Kind.PERSISTENT_SHIFT, earlier, test, proposals);
                }
            }
        }
        return false;
    }

    private boolean propose(
            BaselineChange.Kind kind, Audiogram earlier, Audiogram test, List<BaselineChange> proposals) {
        Audiogram revised = better(earlier, test);
        proposals.add(new BaselineChange(
                ear, kind, baseline, revised, test, test.date(), List.of(earlier.date(), test.date())));
        startFrom(revised);
        return !revised.equals(test);
    }

    /** The one with the lower mean; of equals the earlier. */
    private Audiogram better(Audiogram earlier, Audiogram later) {
        return level(later) < level(earlier) ? later : earlier;
    }

    private Answer shift(Audiogram test) {
        return isShift.apply(baseline, test);
    }

    private OptionalInt sum(Audiogram test) {
        return test.levelSum(ear).exact();
    }

    private int level(Audiogram test) {
        return sum(test).orElseThrow();
    }
}
