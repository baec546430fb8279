package org.thresholdregister.core.recording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.rules.RuleSets;

/** 29 CFR 1904.10(a): a mean of 25 dB or more above audiometric zero, which is a sum of 75; nothing is rounded. */
class RecordingTest {

    @Test
    void aMeanOf25IsReachedAndOneOf24Point67IsNot() {
        assertThat(isLevelReached(DecibelRange.exactly(75))).isEqualTo(Answer.YES);
        assertThat(isLevelReached(DecibelRange.exactly(74))).isEqualTo(Answer.NO);
    }

    @Test
    void anOpenLevelIsReachedOnlyFromItsLowestValueOn() {
        assertThat(isLevelReached(DecibelRange.atLeast(75))).isEqualTo(Answer.YES);
        assertThat(isLevelReached(DecibelRange.atLeast(74))).isEqualTo(Answer.UNDECIDED);
        assertThat(isLevelReached(DecibelRange.UNKNOWN)).isEqualTo(Answer.UNDECIDED);
    }

    @Test
    void bothTestsMustBeMetAndEitherFailingIsEnough() {
        for (Answer one : Answer.values()) {
            for (Answer other : Answer.values()) {
                Answer expected = one == Answer.NO || other == Answer.NO
                        ? Answer.NO
                        : one == Answer.YES && other == Answer.YES ? Answer.YES : Answer.UNDECIDED;
                assertThat(one.and(other)).as(one + " and " + other).isEqualTo(expected);
            }
        }
    }

    private static Answer isLevelReached(DecibelRange levelSum) {
        return ((RecordingRule.ShiftAndLevel) RuleSets.OSHA.recording()).level().reachedByMean(levelSum, 3);
    }
}
