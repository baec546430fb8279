package org.thresholdregister.core.meaning.impairment;

import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.regulation.Answer;

/** One test's place on a scale that describes how well people hear. */
public sealed interface Grading extends Meaning {

    /**
     * WHO 2021: the better ear's mean of 500, 1000, 2000 and 4000 Hz.
     *
     * @param unilateral better ear under 20 dB and worse ear at 35 dB or more
     */
    record Who2021(GradeRange<Grade.Who2021> grade, DecibelMean betterEar, Answer unilateral) implements Grading {

        private static final Basis BASIS = Basis.lookedUp("WHO, World report on hearing, 2021, table 1.3");
        private static final int NORMAL_UNDER_DB = 20;
        private static final int UNILATERAL_FROM_DB = 35;

        static Who2021 of(Audiogram test) {
            PerEar<DecibelMean> ears = whoMeans(test);
            DecibelMean better = ears.left().min(ears.right());
            return new Who2021(
                    GradeRange.of(better, Grade.Who2021.values()),
                    better,
                    isWorseAlone(ears, Ear.LEFT).or(isWorseAlone(ears, Ear.RIGHT)));
        }

        private static Answer isWorseAlone(PerEar<DecibelMean> ears, Ear worse) {
            Answer otherIsNormal =
                    ears.of(worse.other()).isAtLeast(NORMAL_UNDER_DB).not();
            return ears.of(worse).isAtLeast(UNILATERAL_FROM_DB).and(otherIsNormal);
        }

        @Override
        public Basis basis() {
            return BASIS;
        }
    }

    /**
     * WHO 1991: the better ear's mean of 500, 1000, 2000 and 4000 Hz.
     *
     * @param disabling in adults, a mean over 40 dB
     */
    record Who1991(GradeRange<Grade.Who1991> grade, DecibelMean betterEar, Answer disabling) implements Grading {

        private static final Basis BASIS = Basis.unverified("WHO 1991, grades of hearing impairment");
        private static final int DISABLING_ABOVE_DB = 40;

        static Who1991 of(Audiogram test) {
            PerEar<DecibelMean> ears = whoMeans(test);
            DecibelMean better = ears.left().min(ears.right());
            return new Who1991(
                    GradeRange.of(better, Grade.Who1991.values()), better, better.isAbove(DISABLING_ABOVE_DB));
        }

        @Override
        public Basis basis() {
            return BASIS;
        }
    }

    /**
     * Clark 1981: each ear's mean. Reading: the source grades a pure-tone average; we take 500, 1000 and 2000 Hz, which
     * is common practice.
     */
    record Clark1981(PerEar<GradeRange<Grade.Clark1981>> grade, PerEar<DecibelMean> mean) implements Grading {

        /** What is averaged. */
        public static final List<Frequency> FREQUENCIES =
                List.of(Frequency.HZ_500, Frequency.HZ_1000, Frequency.HZ_2000);

        private static final Basis BASIS = Basis.lookedUp("Clark 1981, as taken up by ASHA");

        static Clark1981 of(Audiogram test) {
            PerEar<DecibelMean> mean = PerEar.from(ear -> DecibelMean.level(test, ear, FREQUENCIES));
            return new Clark1981(PerEar.from(ear -> GradeRange.of(mean.of(ear), Grade.Clark1981.values())), mean);
        }

        @Override
        public Basis basis() {
            return BASIS;
        }
    }

    /** What both scales of the WHO average. */
    List<Frequency> WHO_FREQUENCIES =
            List.of(Frequency.HZ_500, Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_4000);

    private static PerEar<DecibelMean> whoMeans(Audiogram test) {
        return PerEar.from(ear -> DecibelMean.level(test, ear, WHO_FREQUENCIES));
    }

    /** On each scale, the newest first. */
    static List<Grading> all(Audiogram test) {
        return List.of(Who2021.of(test), Who1991.of(test), Clark1981.of(test));
    }

    @Override
    default List<Caveat> isNot() {
        return List.of(Caveat.NO_DIAGNOSIS, Caveat.NO_COMPENSATION_DECISION, Caveat.NO_PROGRAMME_CRITERION);
    }
}
