package org.thresholdregister.core.shift;

import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;

/**
 * The change at one frequency, in dB; positive is worse hearing.
 *
 * @param uncorrected the later threshold less the earlier one
 * @param allowance what is taken off for aging
 * @param corrected what is left
 */
public record FrequencyShift(
        Frequency frequency,
        Threshold before,
        Threshold now,
        DecibelRange uncorrected,
        DecibelRange allowance,
        DecibelRange corrected) {

    static FrequencyShift of(Frequency frequency, Threshold before, Threshold now, DecibelRange allowance) {
        DecibelRange uncorrected = uncorrected(before, now);
        return new FrequencyShift(frequency, before, now, uncorrected, allowance, uncorrected.minus(allowance));
    }

    /** The later threshold less the earlier one, in dB. */
    public static DecibelRange uncorrected(Threshold before, Threshold now) {
        return now.range().minus(before.range());
    }
}
