package org.thresholdregister.core.meaning.impairment;

import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;

/** A step of a scale of hearing. The steps of a scale stand in order, the best hearing first. */
public sealed interface Grade {

    /** Whether hearing at this mean level has come to this grade or to a worse one. */
    Answer isReached(DecibelMean mean);

    /** The grades of the World Health Organization of 2021, by the better ear. */
    enum Who2021 implements Grade {
        NORMAL(Integer.MIN_VALUE),
        MILD(20),
        MODERATE(35),
        MODERATELY_SEVERE(50),
        SEVERE(65),
        PROFOUND(80),
        COMPLETE(95);

        private final int fromDecibels;

        Who2021(int fromDecibels) {
            this.fromDecibels = fromDecibels;
        }

        @Override
        public Answer isReached(DecibelMean mean) {
            return this == NORMAL ? Answer.YES : mean.isAtLeast(fromDecibels);
        }
    }

    /**
     * The grades of the World Health Organization of 1991, by the better ear. They are printed in whole dB; a mean
     * between two of them belongs to the upper grade: over 25 dB is slight.
     */
    enum Who1991 implements Grade {
        NONE(Integer.MIN_VALUE),
        SLIGHT(25),
        MODERATE(40),
        SEVERE(60),
        PROFOUND(80);

        private final int aboveDecibels;

        Who1991(int aboveDecibels) {
            this.aboveDecibels = aboveDecibels;
        }

        @Override
        public Answer isReached(DecibelMean mean) {
            return this == NONE ? Answer.YES : mean.isAbove(aboveDecibels);
        }
    }

    /** The degrees of Clark 1981, which ASHA took up, for each ear. Whole dB as for {@link Who1991}. */
    enum Clark1981 implements Grade {
        NORMAL(Integer.MIN_VALUE),
        SLIGHT(15),
        MILD(25),
        MODERATE(40),
        MODERATELY_SEVERE(55),
        SEVERE(70),
        PROFOUND(90);

        private final int aboveDecibels;

        Clark1981(int aboveDecibels) {
            this.aboveDecibels = aboveDecibels;
        }

        @Override
        public Answer isReached(DecibelMean mean) {
            return this == NORMAL ? Answer.YES : mean.isAbove(aboveDecibels);
        }
    }
}
