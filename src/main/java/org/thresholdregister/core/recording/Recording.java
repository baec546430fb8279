package org.thresholdregister.core.recording;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.regulation.Answer;
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

    /** The total hearing level that makes a shift recordable is a mean of 25 dB, 29 CFR 1904.10(a): a sum of 75. */
    public static final int LEVEL_SUM_DB = 75;

    /** Whether levels with this sum have a mean of 25 dB HL or more. */
    public static Answer isLevelReached(DecibelRange levelSum) {
        return levelSum.isAtLeast(LEVEL_SUM_DB);
    }

    /** Nothing to record, or not yet: the shift has not been found to stand. */
    public static Recording without(Recordability answer) {
        return new Recording(answer, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * The two tests of 29 CFR 1904.10(a) on the audiogram that settles the shift.
     *
     * @param shift from the reference to the deciding test, age allowance included
     */
    public record Comparison(RecordingReference reference, ThresholdShift shift) {

        public Audiogram decidingTest() {
            return shift.later();
        }

        /** The first test: a standard threshold shift from the reference. */
        public Answer shifted() {
            return shift.isStandardThresholdShift();
        }

        /** Sum of the levels in dB HL on the deciding test, never age-corrected, 29 CFR 1904.10(b)(3). */
        public DecibelRange levelSum() {
            return decidingTest().levelSum(shift.ear());
        }

        /** The second test: a mean level of 25 dB HL or more. */
        public Answer levelReached() {
            return isLevelReached(levelSum());
        }

        /** The answer for a shift that stands, before anybody's decision on work-relatedness. */
        public Recordability forStandingShift() {
            if (reference.kind() != RecordingReference.Kind.FIRST_BASELINE
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
