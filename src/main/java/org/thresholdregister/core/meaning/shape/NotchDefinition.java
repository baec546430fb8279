package org.thresholdregister.core.meaning.shape;

import static org.thresholdregister.core.audiometry.Frequency.HZ_1000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_2000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_3000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_4000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_500;
import static org.thresholdregister.core.audiometry.Frequency.HZ_6000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_8000;

import java.util.List;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;

/**
 * A published definition of a high-frequency notch or bulge in one ear. Definitions disagree, so that none is shown
 * without its name. Each compares with 8000 Hz.
 */
public enum NotchDefinition {
    /**
     * Requirement R3(a): at 3000, 4000 or 6000 Hz 10 dB or more worse than at 1000 or 2000 Hz, and than at 6000 or 8000
     * Hz; at 6000 Hz, than at 8000 Hz.
     */
    COLES_LUTMAN_BUFFIN_2000(Basis.unverified("Coles, Lutman and Buffin 2000, requirement R3(a)")) {
        @Override
        Answer find(EarLevels levels) {
            Answer found = Answer.NO;
            for (Frequency notch : NOTCHED) {
                Answer below = levels.isWorse(notch, HZ_1000, 10).or(levels.isWorse(notch, HZ_2000, 10));
                Answer above = levels.isWorse(notch, HZ_8000, 10);
                if (notch != HZ_6000) {
                    above = above.or(levels.isWorse(notch, HZ_6000, 10));
                }
                found = found.or(below.and(above));
            }
            return found;
        }
    },
    /** 500 and 1000 Hz at 15 dB or better, a depth of 15 dB below them and a recovery of 10 dB at 8000 Hz. */
    NISKAR_2001(Basis.unverified("Niskar and others 2001")) {
        @Override
        Answer find(EarLevels levels) {
            DecibelRange low = levels.at(HZ_500).max(levels.at(HZ_1000));
            DecibelRange deepest = levels.worstNotched();
            return low.isAtLeast(16)
                    .not()
                    .and(deepest.minus(low).isAtLeast(15))
                    .and(deepest.minus(levels.at(HZ_8000)).isAtLeast(10));
        }
    },
    /** A depth of 15 dB below the mean of 500 and 1000 Hz and a recovery of 5 dB at 8000 Hz. */
    HOFFMAN_2006(Basis.unverified("Hoffman and others 2006")) {
        @Override
        Answer find(EarLevels levels) {
            DecibelRange deepest = levels.worstNotched();
            DecibelRange low = levels.at(HZ_500).plus(levels.at(HZ_1000));
            return new DecibelMean(deepest.times(2).minus(low), 2)
                    .isAtLeast(15)
                    .and(deepest.minus(levels.at(HZ_8000)).isAtLeast(5));
        }
    },
    /** The mean of 2000, 3000 and 4000 Hz less the mean of 1000 and 8000 Hz is more than nothing: a bulge. */
    NOTCH_INDEX(Basis.lookedUp("Dobie and Rabinowitz, notch index")) {
        @Override
        Answer find(EarLevels levels) {
            return levels.notchIndex().isAbove(0);
        }
    },
    /** At 3000, 4000 or 6000 Hz 10 dB or more worse than at 2000 Hz and than at 8000 Hz. */
    WILSON_MCARDLE_2013(Basis.lookedUp("Wilson and McArdle 2013")) {
        @Override
        Answer find(EarLevels levels) {
            Answer found = Answer.NO;
            for (Frequency notch : NOTCHED) {
                found = found.or(levels.isWorse(notch, HZ_2000, 10).and(levels.isWorse(notch, HZ_8000, 10)));
            }
            return found;
        }
    };

    /** Where a notch is looked for. */
    static final List<Frequency> NOTCHED = List.of(HZ_3000, HZ_4000, HZ_6000);

    private final Basis basis;

    NotchDefinition(Basis basis) {
        this.basis = basis;
    }

    public Basis basis() {
        return basis;
    }

    /** Whether the ear has this shape, as far as its levels say. */
    abstract Answer find(EarLevels levels);
}
