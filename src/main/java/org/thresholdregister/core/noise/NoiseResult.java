package org.thresholdregister.core.noise;

import java.math.BigDecimal;
import java.util.Optional;
import org.thresholdregister.core.regulation.Answer;

/** What a measurement says of a day's noise, without regard to hearing protectors. */
public sealed interface NoiseResult {

    /** The dose for the action level, counted from 80 dBA. */
    NoiseDose actionDose();

    /** The dose for the limit, counted from 90 dBA; empty where it was not measured. */
    Optional<NoiseDose> limitDose();

    /** Whether the limit of Table G-16 is exceeded; undecided where the noise from 90 dBA up is not known. */
    Answer exceedsLimit();

    /** The eight-hour average for the action level; empty where nothing reaches 80 dBA. */
    default Optional<TimeWeightedAverage> average() {
        return TimeWeightedAverage.of(actionDose());
    }

    /** Whether the worker belongs to the programme: a dose of 50 percent or more (29 CFR 1910.95(c)(1)). */
    default boolean reachesActionLevel() {
        return actionDose().reaches(NoiseDose.ACTION_PERCENT);
    }

    /** Levels and the time spent in each. */
    record Levels(NoiseDay day) implements NoiseResult {
        @Override
        public NoiseDose actionDose() {
            return NoiseDose.of(day, DoseRule.OSHA_ACTION);
        }

        @Override
        public Optional<NoiseDose> limitDose() {
            return Optional.of(NoiseDose.of(day, DoseRule.OSHA_LIMIT));
        }

        @Override
        public Answer exceedsLimit() {
            return PermissibleExposure.of(day).exceeded() ? Answer.YES : Answer.NO;
        }
    }

    /**
     * What a dosimeter read over the whole shift, in percent.
     *
     * @param from80 with the threshold at 80 dBA
     * @param from90 with the threshold at 90 dBA, where the instrument gave it
     */
    record Dosimetry(BigDecimal from80, Optional<BigDecimal> from90) implements NoiseResult {

        /** @throws IllegalArgumentException where a dose is negative, or the one from 90 dBA is the greater */
        public Dosimetry {
            if (from80.signum() < 0
                    || from90.filter(dose -> dose.signum() < 0 || dose.compareTo(from80) > 0)
                            .isPresent()) {
                throw new IllegalArgumentException("the dose from 90 dBA is never greater than that from 80 dBA");
            }
        }

        @Override
        public NoiseDose actionDose() {
            return new NoiseDose(from80.doubleValue(), DoseRule.OSHA_ACTION);
        }

        @Override
        public Optional<NoiseDose> limitDose() {
            return from90.map(dose -> new NoiseDose(dose.doubleValue(), DoseRule.OSHA_LIMIT));
        }

        @Override
        public Answer exceedsLimit() {
            return limitOf(actionDose(), limitDose());
        }
    }

    /** An eight-hour average as somebody reported it, counted from 80 dBA. */
    record Average(TimeWeightedAverage twa) implements NoiseResult {
        @Override
        public NoiseDose actionDose() {
            return twa.dose(DoseRule.OSHA_ACTION);
        }

        @Override
        public Optional<TimeWeightedAverage> average() {
            return Optional.of(twa);
        }

        @Override
        public Optional<NoiseDose> limitDose() {
            return Optional.empty();
        }

        @Override
        public Answer exceedsLimit() {
            return limitOf(actionDose(), limitDose());
        }
    }

    /** The dose from 90 dBA is never greater than that from 80 dBA, which settles the answer where it is small enough. */
    private static Answer limitOf(NoiseDose from80, Optional<NoiseDose> from90) {
        return from90.map(dose -> dose.exceeds(100) ? Answer.YES : Answer.NO)
                .orElse(from80.exceeds(100) ? Answer.UNDECIDED : Answer.NO);
    }
}
