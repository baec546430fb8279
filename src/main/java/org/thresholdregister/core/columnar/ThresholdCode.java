package org.thresholdregister.core.columnar;

import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;

/**
 * A {@link Threshold} in a {@code short}, with every distinction kept. The codes are for memory only: nothing stores
 * them. Nothing said of a threshold is code 0, so that an array that nobody filled holds no level.
 */
public final class ThresholdCode {

    /** The thresholds of one audiogram: both ears at every {@link Frequency}. */
    public static final int PER_AUDIOGRAM = Ear.values().length * Frequency.values().length;

    public static final short NOT_GIVEN = 0;
    public static final short DID_NOT_TEST = 1;
    public static final short COULD_NOT_TEST = 2;
    /** No response, and the level not given. */
    public static final short NO_RESPONSE = 3;

    private static final int LEVELS = HearingLevel.HIGHEST_DB - HearingLevel.LOWEST_DB + 1;
    private static final int FIRST_MEASURED = NO_RESPONSE + 1;
    private static final int FIRST_NO_RESPONSE_AT = FIRST_MEASURED + LEVELS;

    /** How many codes there are; they begin with 0. */
    static final int COUNT = FIRST_NO_RESPONSE_AT + LEVELS;

    private static final Threshold[] THRESHOLDS = thresholds();

    private ThresholdCode() {}

    /**
     * Heard at this hearing level in dB HL.
     *
     * @throws IllegalArgumentException for a level outside the range of {@link HearingLevel}
     */
    public static short measured(int decibels) {
        return (short) (FIRST_MEASURED + step(decibels));
    }

    /**
     * Not heard at this hearing level in dB HL, the loudest presented.
     *
     * @throws IllegalArgumentException for a level outside the range of {@link HearingLevel}
     */
    public static short noResponseAt(int limitDecibels) {
        return (short) (FIRST_NO_RESPONSE_AT + step(limitDecibels));
    }

    private static int step(int decibels) {
        if (!HearingLevel.isInRange(decibels)) {
            throw new IllegalArgumentException("no hearing level");
        }
        return decibels - HearingLevel.LOWEST_DB;
    }

    public static short of(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured(HearingLevel level) -> measured(level.decibels());
            case Threshold.NoResponse(var limit) ->
                limit.isPresent() ? noResponseAt(limit.get().decibels()) : NO_RESPONSE;
            case Threshold.NotTested(Reason reason) ->
                switch (reason) {
                    case NOT_GIVEN -> NOT_GIVEN;
                    case DID_NOT_TEST -> DID_NOT_TEST;
                    case COULD_NOT_TEST -> COULD_NOT_TEST;
                };
        };
    }

    /** @throws IllegalArgumentException for a number that is no code */
    public static Threshold threshold(short code) {
        if (!isCode(code)) {
            throw new IllegalArgumentException("no threshold code");
        }
        return THRESHOLDS[code];
    }

    /** Where a threshold stands among the {@value #PER_AUDIOGRAM} of an audiogram: the left ear first, low to high. */
    public static int place(Ear ear, Frequency frequency) {
        return ear.ordinal() * (PER_AUDIOGRAM / 2) + frequency.ordinal();
    }

    static boolean isCode(short code) {
        return code >= 0 && code < COUNT;
    }

    private static Threshold[] thresholds() {
        Threshold[] thresholds = new Threshold[COUNT];
        thresholds[NOT_GIVEN] = Threshold.notTested(Reason.NOT_GIVEN);
        thresholds[DID_NOT_TEST] = Threshold.notTested(Reason.DID_NOT_TEST);
        thresholds[COULD_NOT_TEST] = Threshold.notTested(Reason.COULD_NOT_TEST);
        thresholds[NO_RESPONSE] = Threshold.noResponse();
        for (int level = HearingLevel.LOWEST_DB; level <= HearingLevel.HIGHEST_DB; level++) {
            thresholds[measured(level)] = Threshold.measured(level);
            thresholds[noResponseAt(level)] = Threshold.noResponseAt(level);
        }
        return thresholds;
    }
}
