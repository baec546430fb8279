package org.thresholdregister.core.shift;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;

/**
 * One ear's change from an earlier audiogram to a later one, less the allowance for aging, with the criterion that says
 * whether it is a shift. An improvement counts as a negative change and is not cut off at nothing.
 *
 * @param frequencies the changes at 2000, 3000 and 4000 Hz, and at any other frequency of the criterion, from low to
 *     high
 */
public record ThresholdShift(
        Ear ear,
        Audiogram earlier,
        Audiogram later,
        AgeAllowance allowance,
        ShiftCriterion criterion,
        List<FrequencyShift> frequencies) {

    /**
     * A standard threshold shift: a mean of 10 dB or more at 2000, 3000 and 4000 Hz, 29 CFR 1910.95(g)(10)(i), 30 CFR
     * 62.101 and 49 CFR 227.5.
     */
    public static final ShiftCriterion.Mean STANDARD =
            new ShiftCriterion.Mean(Frequency.AVERAGED, Limit.atLeast(10), Direction.WORSE);

    public static ThresholdShift between(
            Ear ear, Audiogram earlier, Audiogram later, AgeAllowance allowance, ShiftCriterion criterion) {
        List<Frequency> looked = criterion.frequencies().equals(Frequency.AVERAGED)
                ? Frequency.AVERAGED
                : Stream.concat(Frequency.AVERAGED.stream(), criterion.frequencies().stream())
                        .distinct()
                        .sorted()
                        .toList();
        List<FrequencyShift> shifts = new ArrayList<>(looked.size());
        for (Frequency frequency : looked) {
            shifts.add(FrequencyShift.of(
                    frequency,
                    earlier.threshold(ear, frequency),
                    later.threshold(ear, frequency),
                    allowance.at(frequency)));
        }
        return new ThresholdShift(ear, earlier, later, allowance, criterion, List.copyOf(shifts));
    }

    /** Whether this is a shift by the criterion, after the allowance. */
    public Answer isShift() {
        return criterion.metBy(frequency -> at(frequency).corrected());
    }

    /** Whether it would be one if no allowance for aging were made. */
    public Answer isShiftWithoutAllowance() {
        return criterion.metBy(frequency -> at(frequency).uncorrected());
    }

    /**
     * Whether this and another test of the ear show the shift together: where the criterion looks for any frequency, at
     * one and the same frequency.
     */
    public Answer isShiftTogetherWith(ThresholdShift other) {
        if (criterion instanceof ShiftCriterion.AnyFrequency any) {
            return Answer.anyOf(any.frequencies().stream()
                    .map(frequency -> any.metAt(at(frequency).corrected())
                            .and(any.metAt(other.at(frequency).corrected()))));
        }
        return isShift().and(other.isShift());
    }

    /** Whether the same change is a shift by another criterion over the same frequencies. */
    public Answer meets(ShiftCriterion other) {
        return other.metBy(frequency -> at(frequency).corrected());
    }

    /** @throws IllegalArgumentException for a frequency that neither the mean nor the criterion looks at */
    public FrequencyShift at(Frequency frequency) {
        for (FrequencyShift shift : frequencies) {
            if (shift.frequency() == frequency) {
                return shift;
            }
        }
        throw new IllegalArgumentException("not compared: " + frequency);
    }

    /** The sum of the changes at 2000, 3000 and 4000 Hz in dB, after the allowance. */
    public DecibelRange sum() {
        return sumOf(FrequencyShift::corrected);
    }

    /** The sum of the changes at 2000, 3000 and 4000 Hz in dB, before the allowance. */
    public DecibelRange uncorrectedSum() {
        return sumOf(FrequencyShift::uncorrected);
    }

    private DecibelRange sumOf(Function<FrequencyShift, DecibelRange> part) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : Frequency.AVERAGED) {
            sum = sum.plus(part.apply(at(frequency)));
        }
        return sum;
    }
}
