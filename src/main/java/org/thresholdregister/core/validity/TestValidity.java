package org.thresholdregister.core.validity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.validity.SameDayTests.OthersTest;

/**
 * Finds what there is to doubt about one worker's tests. It only reads: no flag changes a number or a determination.
 *
 * <p>An ear that a decision set aside as invalid is flagged like any other, but other tests are not measured by it.
 */
public final class TestValidity {

    private static final Comparator<ValidityFlag> IN_ORDER =
            Comparator.comparing(ValidityFlag::kind).thenComparing(ValidityFlag::ears);

    private final List<Audiogram> tests;
    /** The same tests without the ears that were set aside. */
    private final List<Audiogram> measures;

    private final Baselines baselines;
    private final Function<Audiogram, TestConditions> conditions;
    private final QuietRule quietTime;
    private final SameDayTests sameDay;

    /**
     * @param judgement of this history, for the baselines
     * @param conditions how each test was made
     * @param sameDay others who were tested on a day at the worker's site; the worker is not among them
     */
    public TestValidity(
            WorkerHistory history,
            WorkerJudgement judgement,
            Function<Audiogram, TestConditions> conditions,
            QuietRule quietTime,
            SameDayTests sameDay) {
        this.tests =
                history.audiograms().stream().sorted(Audiogram.CHRONOLOGICAL).toList();
        this.measures = Measures.of(history);
        this.baselines = new Baselines(judgement);
        this.conditions = conditions;
        this.quietTime = quietTime;
        this.sameDay = sameDay;
    }

    /** Every test with its flags, in order of time. */
    public List<TestFlags> ofAllTests() {
        return tests.stream().map(test -> new TestFlags(test, of(test))).toList();
    }

    /**
     * The flags of one test, by kind, the left ear before the right.
     *
     * @throws IllegalArgumentException for a test that the history does not hold
     */
    public List<ValidityFlag> of(Audiogram test) {
        int index = tests.indexOf(test);
        if (index < 0) {
            throw new IllegalArgumentException("not a test of this history: " + test);
        }
        List<ValidityFlag> flags = new ArrayList<>(
                SingleTestChecks.of(test, conditions.apply(test), quietTime, baselines.isBaseline(test)));
        for (Ear ear : Ear.values()) {
            baselines
                    .of(test, ear)
                    .flatMap(baseline -> HistoryChecks.betterThanBaseline(test, ear, baseline))
                    .ifPresent(flags::add);
            previous(index, ear)
                    .flatMap(previous -> HistoryChecks.worseThanPrevious(test, ear, previous))
                    .ifPresent(flags::add);
        }
        UsualHearing.around(test, others(index)).ifPresent(usual -> addComparisons(test, usual, flags));
        return flags.stream().sorted(IN_ORDER).toList();
    }

    private Optional<Audiogram> previous(int index, Ear ear) {
        for (int i = index - 1; i >= 0; i--) {
            Audiogram earlier = measures.get(i);
            for (Frequency frequency : Frequency.values()) {
                if (!(earlier.threshold(ear, frequency) instanceof Threshold.NotTested)) {
                    return Optional.of(earlier);
                }
            }
        }
        return Optional.empty();
    }

    private List<Audiogram> others(int index) {
        List<Audiogram> others = new ArrayList<>(measures);
        others.remove(index);
        return others;
    }

    /** Others are only looked up for a test that is unlike the worker's own. */
    private void addComparisons(Audiogram test, UsualHearing usual, List<ValidityFlag> flags) {
        Optional<ValidityFlag> swapped = HistoryChecks.earsLookSwapped(test, usual);
        swapped.ifPresent(flags::add);
        boolean unlikeOwn = swapped.isEmpty() && SameDayChecks.isUnlikeOwn(test, usual);
        boolean raised = SameDayChecks.isRaised(test, usual);
        if (!unlikeOwn && !raised) {
            return;
        }
        List<OthersTest> others = sameDay.on(test.date());
        if (unlikeOwn) {
            SameDayChecks.looksLikeAnotherWorkers(test, usual, others).ifPresent(flags::add);
        }
        if (raised) {
            SameDayChecks.roomNoise(others).ifPresent(flags::add);
        }
    }
}
