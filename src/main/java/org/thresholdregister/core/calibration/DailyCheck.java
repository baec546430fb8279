package org.thresholdregister.core.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;

/**
 * The functional check before each day's use: a person with known, stable thresholds is tested, and the unit is listened
 * to for distorted or unwanted sounds. Levels in dB HL.
 *
 * <p>Source: 29 CFR 1910.95(h)(5)(i). A deviation of 10 dB or greater requires an acoustic calibration.
 *
 * <p>Reading: the deviation counts at any frequency tested in either ear, on either side. What a fault in the listening
 * check asks for is not said; that the unit is not used until it has been mended and checked again is common practice.
 */
public final class DailyCheck {

    public static final Citation SOURCE = new Citation("29 CFR 1910.95(h)(5)(i)");

    /** From this deviation on an acoustic calibration is required. */
    public static final int DEVIATION_DB = 10;

    private DailyCheck() {}

    /** What a check says of the unit. */
    public enum Verdict {
        PASSED,
        /** Off by 10 dB or more: an acoustic calibration is required before tests count. */
        DEVIATES,
        /** Something was heard that should not be. */
        FAULT_HEARD,
        /** Readings are missing, or nobody said what was heard. */
        INCOMPLETE;

        public boolean isFailed() {
            return this == DEVIATES || this == FAULT_HEARD;
        }
    }

    /** What was heard through the earphones. */
    public enum Listening {
        GOOD,
        FAULT,
        NOT_DONE
    }

    /** A frequency at which the reading lies 10 dB or more from the reference. */
    public record Deviation(Ear ear, Frequency frequency, Threshold reference, Threshold reading) {}

    /**
     * What was found.
     *
     * @param acousticCalibrationRequired no only where every required frequency could be compared
     */
    public record Result(Verdict verdict, Answer acousticCalibrationRequired, List<Deviation> deviations) {}

    /**
     * Compares the readings with the person's reference. 500 to 6000 Hz are asked for, as in a test; other frequencies
     * are compared where both are there.
     */
    public static Result judge(
            PerEar<Map<Frequency, Threshold>> reference,
            PerEar<Map<Frequency, Threshold>> readings,
            Listening listening) {
        List<Deviation> deviations = new ArrayList<>();
        boolean open = false;
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                Threshold before = reference.of(ear).getOrDefault(frequency, Threshold.notGiven());
                Threshold now = readings.of(ear).getOrDefault(frequency, Threshold.notGiven());
                Answer deviates = deviates(before, now);
                if (deviates == Answer.YES) {
                    deviations.add(new Deviation(ear, frequency, before, now));
                }
                open |= deviates == Answer.UNDECIDED && AppendixE.FREQUENCIES.contains(frequency);
            }
        }
        Answer required = !deviations.isEmpty() ? Answer.YES : open ? Answer.UNDECIDED : Answer.NO;
        return new Result(verdict(required, listening), required, List.copyOf(deviations));
    }

    private static Answer deviates(Threshold before, Threshold now) {
        return now.range()
                .minus(before.range())
                .isAtLeast(DEVIATION_DB)
                .or(before.range().minus(now.range()).isAtLeast(DEVIATION_DB));
    }

    private static Verdict verdict(Answer required, Listening listening) {
        if (required == Answer.YES) {
            return Verdict.DEVIATES;
        }
        if (listening == Listening.FAULT) {
            return Verdict.FAULT_HEARD;
        }
        return required == Answer.NO && listening == Listening.GOOD ? Verdict.PASSED : Verdict.INCOMPLETE;
    }
}
