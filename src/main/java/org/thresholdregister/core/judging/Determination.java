package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.shift.ThresholdShift;

/** What was determined about one ear on one test, with everything that it rests on. */
public sealed interface Determination {

    Audiogram test();

    Ear ear();

    Outcome outcome();

    /** The rule set that it was made by. */
    RuleSet ruleSet();

    /** The sum of the levels at 2000, 3000 and 4000 Hz in dB HL, never age-corrected. */
    default DecibelRange levelSum() {
        return test().levelSum(ear());
    }

    /** The comparison with the ear's baseline, where there is one. */
    Optional<ThresholdShift> shift();

    /** The ear's first baseline, or a test without an earlier one that the rule set would compare it with. */
    record BaselineTest(Audiogram test, Ear ear, RuleSet ruleSet) implements Determination {
        @Override
        public Outcome outcome() {
            return Outcome.BASELINE;
        }

        @Override
        public Optional<ThresholdShift> shift() {
            return Optional.empty();
        }
    }

    /** A test made before the ear's first baseline. */
    record BeforeBaseline(Audiogram test, Ear ear, RuleSet ruleSet) implements Determination {
        @Override
        public Outcome outcome() {
            return Outcome.BEFORE_BASELINE;
        }

        @Override
        public Optional<ThresholdShift> shift() {
            return Optional.empty();
        }
    }

    /**
     * A retest inside the window of an earlier test.
     *
     * @param resolves the test whose place it may take
     * @param comparison with the baseline of that test
     */
    record Retest(Audiogram test, Ear ear, RuleSet ruleSet, Audiogram resolves, ThresholdShift comparison)
            implements Determination {
        @Override
        public Outcome outcome() {
            return Outcome.RETEST;
        }

        @Override
        public Optional<ThresholdShift> shift() {
            return Optional.of(comparison);
        }
    }

    /**
     * A test that is judged by itself.
     *
     * @param comparison of the test itself with the baseline
     * @param resolution what came of the retest, if any
     */
    record Judged(
            Audiogram test,
            Ear ear,
            RuleSet ruleSet,
            ThresholdShift comparison,
            Resolution resolution,
            Outcome outcome,
            Recording recording,
            DueDates dueDates)
            implements Determination {
        @Override
        public Optional<ThresholdShift> shift() {
            return Optional.of(comparison);
        }

        /** The comparison that settled the outcome: the retest's where it took the test's place, else the test's own. */
        public ThresholdShift settlingComparison() {
            return switch (resolution) {
                case Resolution.ByRetest(ThresholdShift retest) -> retest;
                case Resolution.BySecondTest(ThresholdShift second) ->
                    Audiogram.CHRONOLOGICAL.compare(second.later(), test) > 0 ? second : comparison;
                case Resolution.ByTestItself ignored -> comparison;
            };
        }

        /** The audiogram that settled the outcome. */
        public Audiogram settledBy() {
            return settlingComparison().later();
        }
    }

    /** How the question that a shift opens was closed, or not. */
    sealed interface Resolution {
        /** No retest, or none that could answer for this ear. */
        record ByTestItself() implements Resolution {}

        /** A retest took the test's place for this ear. */
        record ByRetest(ThresholdShift comparison) implements Resolution {}

        /** The test before or after it confirmed the shift at the same frequency, or the one after it did not. */
        record BySecondTest(ThresholdShift comparison) implements Resolution {}
    }

    /** The dates that follow, where they apply. */
    record DueDates(Optional<LocalDate> retestBy, Optional<LocalDate> notifyBy, Optional<LocalDate> recordBy) {}
}
