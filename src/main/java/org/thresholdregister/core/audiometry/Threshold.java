package org.thresholdregister.core.audiometry;

import java.util.Optional;

/**
 * What a test found at one ear and frequency. Only {@link Measured} is a number; the others say what is known instead,
 * and {@link #range()} says which levels they leave possible.
 */
public sealed interface Threshold {

    /** The step of the usual test procedure in dB (common practice): the threshold lies at least this far above the
     * last level that was not heard. */
    int STEP_DB = 5;

    /** The levels in dB HL that this finding leaves possible. */
    DecibelRange range();

    /** Heard at this level and not at the step below. */
    record Measured(HearingLevel level) implements Threshold {
        private static final Measured[] CACHE = new Measured[HearingLevel.HIGHEST_DB - HearingLevel.LOWEST_DB + 1];

        static {
            for (int i = 0; i < CACHE.length; i++) {
                CACHE[i] = new Measured(new HearingLevel(i + HearingLevel.LOWEST_DB));
            }
        }

        @Override
        public DecibelRange range() {
            return DecibelRange.exactly(level.decibels());
        }
    }

    /**
     * Not heard at the loudest tone presented. With the limit given, the threshold is {@value Threshold#STEP_DB} dB
     * above it or more, with no upper bound; without it, nothing can be said.
     */
    record NoResponse(Optional<HearingLevel> limit) implements Threshold {
        private static final NoResponse LIMIT_NOT_GIVEN = new NoResponse(Optional.empty());

        @Override
        public DecibelRange range() {
            return limit.map(level -> DecibelRange.atLeast(level.decibels() + STEP_DB))
                    .orElse(DecibelRange.UNKNOWN);
        }
    }

    /** Not measured, for this reason. */
    record NotTested(Reason reason) implements Threshold {

        /** Why there is no measurement, as the record gives it. */
        public enum Reason {
            /** The record says nothing. */
            NOT_GIVEN,
            /** The record says that the frequency was left out. */
            DID_NOT_TEST,
            /** The record says that the frequency could not be tested. */
            COULD_NOT_TEST
        }

        private static final NotTested[] CACHE = {
            new NotTested(Reason.NOT_GIVEN), new NotTested(Reason.DID_NOT_TEST), new NotTested(Reason.COULD_NOT_TEST)
        };

        @Override
        public DecibelRange range() {
            return DecibelRange.UNKNOWN;
        }
    }

    /** @throws IllegalArgumentException for a level outside the range of {@link HearingLevel} */
    static Threshold measured(int decibels) {
        if (!HearingLevel.isInRange(decibels)) {
            return new Measured(new HearingLevel(decibels));
        }
        return Measured.CACHE[decibels - HearingLevel.LOWEST_DB];
    }

    /** @throws IllegalArgumentException for a limit outside the range of {@link HearingLevel} */
    static Threshold noResponseAt(int limitDecibels) {
        return new NoResponse(Optional.of(new HearingLevel(limitDecibels)));
    }

    static Threshold noResponse() {
        return NoResponse.LIMIT_NOT_GIVEN;
    }

    static Threshold notTested(NotTested.Reason reason) {
        return NotTested.CACHE[reason.ordinal()];
    }

    static Threshold notGiven() {
        return notTested(NotTested.Reason.NOT_GIVEN);
    }
}
