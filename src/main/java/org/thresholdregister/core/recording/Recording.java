package org.thresholdregister.core.recording;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * The answer for the injury log, with what it rests on.
 *
 * @param comparison the judgement against the recording reference; absent where the shift itself already settled it
 * @param workRelatedness the latest decision on work-relatedness of this test and ear
 * @param entry the latest decision that the case was recorded or lined out
 */
public record Recording(
        Recordability answer,
        Optional<Comparison> comparison,
        Optional<Decision> workRelatedness,
        Optional<Decision> entry) {

    /** Nothing to record, or not yet: the shift has not been found to stand. */
    public static Recording without(Recordability answer) {
        return new Recording(answer, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * The tests that make a shift a case, on the audiogram that settles the shift.
     *
     * @param shift from the reference to the deciding test, age allowance included
     */
    public record Comparison(RecordingReference reference, ThresholdShift shift, RecordingRule rule) {

        public Audiogram decidingTest() {
            return shift.later();
        }

        /** The first test: a shift from the reference, as large as the rule asks. */
        public Answer shifted() {
            return switch (rule) {
                case RecordingRule.ShiftAndLevel ignored -> shift.isShift();
                case RecordingRule.LargeShift large -> shift.meets(large.criterion());
                case RecordingRule.None ignored -> throw new IllegalStateException("nothing is recorded");
            };
        }

        /** Sum of the levels in dB HL on the deciding test, never age-corrected, 29 CFR 1904.10(b)(3). */
        public DecibelRange levelSum() {
            return decidingTest().levelSum(shift.ear());
        }

        /** The second test: a mean level, where the rule asks for one. */
        public Answer levelReached() {
            return switch (rule) {
                case RecordingRule.ShiftAndLevel both ->
                    both.level().reachedByMean(levelSum(), Frequency.AVERAGED.size());
                case RecordingRule.LargeShift ignored -> Answer.YES;
                case RecordingRule.None ignored -> throw new IllegalStateException("nothing is recorded");
            };
        }

        /** The answer for a shift that stands, before anybody's decision on work-relatedness. */
        public Recordability forStandingShift() {
            if (rule instanceof RecordingRule.ShiftAndLevel
                    && reference.kind() != RecordingReference.Kind.FIRST_BASELINE
                    && (shifted() == Answer.NO || isSettledBefore())) {
                return Recordability.ALREADY_RECORDED;
            }
            return Recordability.of(shifted().and(levelReached()));
        }

        private boolean isSettledBefore() {
            LocalDate settled = decidingTest().date();
            return !settled.isAfter(reference.audiogram().date());
        }
    }
}
