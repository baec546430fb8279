package org.thresholdregister.core.baseline;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
     * @return the revision that it completes
     */
    public Optional<BaselineChange> consider(Audiogram test, List<Audiogram> tests) {
        if (sum(test).isEmpty() || sum(baseline).isEmpty()) {
            return Optional.empty();
        }
        Audiogram considered = standInFor(test, tests);
        return considerImprovement(considered).or(() -> considerShift(considered));
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

    private Optional<BaselineChange> considerImprovement(Audiogram test) {
        if (level(baseline) - level(test) < rule.improvementDb() * Frequency.AVERAGED.size()) {
            firstBetter = null;
            return Optional.empty();
        }
        Audiogram earlier = firstBetter;
        if (earlier == null) {
            firstBetter = test;
            return Optional.empty();
        }
        if (declined.test(better(earlier, test))) {
            firstBetter = test;
            return Optional.empty();
        }
        return Optional.of(propose(BaselineChange.Kind.PERSISTENT_IMPROVEMENT, earlier, test));
    }

    private Optional<BaselineChange> considerShift(Audiogram test) {
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
                        return Optional.empty();
                    }
                    return Optional.of(propose(BaselineChange.Kind.PERSISTENT_SHIFT, earlier, test));
                }
            }
        }
        return Optional.empty();
    }

    private BaselineChange propose(BaselineChange.Kind kind, Audiogram earlier, Audiogram test) {
        Audiogram revised = better(earlier, test);
        BaselineChange proposal = new BaselineChange(
                ear, kind, baseline, revised, test, test.date(), List.of(earlier.date(), test.date()));
        startFrom(revised);
        // The test is looked at again on the new baseline, where it may be the first that is worse. It is never better.
        if (shift(test) == Answer.YES) {
            firstWorse = test;
        }
        return proposal;
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
