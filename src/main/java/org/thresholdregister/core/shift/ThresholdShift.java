package org.thresholdregister.core.shift;

import java.util.List;
import java.util.function.Function;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;

/**
 * One ear's change from an earlier audiogram to a later one at 2000, 3000 and 4000 Hz, less the allowance for aging.
 * An improvement counts as a negative shift and is not cut off at nothing.
 */
public record ThresholdShift(
        Ear ear, Audiogram earlier, Audiogram later, AgeAllowance allowance, List<FrequencyShift> frequencies) {

    /**
     * A standard threshold shift is a mean of 10 dB or more at three frequencies, 29 CFR 1910.95(g)(10)(i). The sum is
     * compared, so that a mean of 9.67 is never rounded into a shift.
     */
    public static final int STANDARD_SHIFT_SUM_DB = 30;

    public static ThresholdShift between(Ear ear, Audiogram earlier, Audiogram later, AgeAllowance allowance) {
        return new ThresholdShift(
                ear,
                earlier,
                later,
                allowance,
                List.of(
                        at(Frequency.HZ_2000, ear, earlier, later, allowance),
                        at(Frequency.HZ_3000, ear, earlier, later, allowance),
                        at(Frequency.HZ_4000, ear, earlier, later, allowance)));
    }

    private static FrequencyShift at(
            Frequency frequency, Ear ear, Audiogram earlier, Audiogram later, AgeAllowance allowance) {
        return FrequencyShift.of(
                frequency, earlier.threshold(ear, frequency), later.threshold(ear, frequency), allowance.at(frequency));
    }

    /** The sum of the three shifts in dB, after the allowance. */
    public DecibelRange sum() {
        return sumOf(FrequencyShift::corrected);
    }

    /** The sum of the three shifts in dB, before the allowance. */
    public DecibelRange uncorrectedSum() {
        return sumOf(FrequencyShift::uncorrected);
    }

    /** Whether this is a standard threshold shift for the worse. */
    public Answer isStandardThresholdShift() {
        return sum().isAtLeast(STANDARD_SHIFT_SUM_DB);
    }

    /** Whether it would be one if no allowance for aging were made. */
    public Answer isShiftWithoutAllowance() {
        return uncorrectedSum().isAtLeast(STANDARD_SHIFT_SUM_DB);
    }

    private DecibelRange sumOf(Function<FrequencyShift, DecibelRange> part) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (FrequencyShift shift : frequencies) {
            sum = sum.plus(part.apply(shift));
        }
        return sum;
    }
}
