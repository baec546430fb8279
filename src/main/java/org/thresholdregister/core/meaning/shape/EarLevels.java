package org.thresholdregister.core.meaning.shape;

import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;

/** The levels of one ear, as far as they are known. */
record EarLevels(Audiogram test, Ear ear) {

    DecibelRange at(Frequency frequency) {
        return test.threshold(ear, frequency).range();
    }

    /** Whether hearing is worse at the one frequency than at the other by that many dB or more. */
    Answer isWorse(Frequency here, Frequency there, int decibels) {
        return at(here).minus(at(there)).isAtLeast(decibels);
    }

    DecibelRange worstNotched() {
        return at(Frequency.HZ_3000).max(at(Frequency.HZ_4000)).max(at(Frequency.HZ_6000));
    }

    /** Mean of 2000, 3000 and 4000 Hz less the mean of 1000 and 8000 Hz, brought to sixths. */
    DecibelMean notchIndex() {
        DecibelRange middle = test.levelSum(ear);
        DecibelRange ends = at(Frequency.HZ_1000).plus(at(Frequency.HZ_8000));
        return new DecibelMean(middle.times(2).minus(ends.times(3)), 6);
    }
}
