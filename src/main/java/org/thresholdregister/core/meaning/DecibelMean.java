package org.thresholdregister.core.meaning;

import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;

/**
 * The mean of so many whole-dB values, kept as their sum so that it is compared without rounding: levels in dB HL, or
 * differences in dB.
 *
 * @param count how many values the sum adds up, at least one
 */
public record DecibelMean(DecibelRange sum, int count) {

    public DecibelMean {
        if (count < 1) {
            throw new IllegalArgumentException("a mean of " + count + " values");
        }
    }

    /** The mean hearing level of one ear at these frequencies. */
    public static DecibelMean level(Audiogram test, Ear ear, List<Frequency> frequencies) {
        return new DecibelMean(sum(test, ear, frequencies), frequencies.size());
    }

    /** The mean of all the levels of both ears at these frequencies, which is one mean of twice as many numbers. */
    public static DecibelMean levelOfBothEars(Audiogram test, List<Frequency> frequencies) {
        return new DecibelMean(
                sum(test, Ear.LEFT, frequencies).plus(sum(test, Ear.RIGHT, frequencies)), 2 * frequencies.size());
    }

    private static DecibelRange sum(Audiogram test, Ear ear, List<Frequency> frequencies) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : frequencies) {
            sum = sum.plus(test.threshold(ear, frequency).range());
        }
        return sum;
    }

    /**
     * By how much this mean is larger than another of as many values.
     *
     * @throws IllegalArgumentException where the other has a different number of values
     */
    public DecibelMean minus(DecibelMean other) {
        requireSameCount(other);
        return new DecibelMean(sum.minus(other.sum), count);
    }

    /** The smaller of two means of as many values: the better ear's level. */
    public DecibelMean min(DecibelMean other) {
        requireSameCount(other);
        return new DecibelMean(sum.min(other.sum), count);
    }

    private void requireSameCount(DecibelMean other) {
        if (other.count != count) {
            throw new IllegalArgumentException("a mean of " + count + " beside a mean of " + other.count);
        }
    }

    public Answer isAtLeast(int decibels) {
        return sum.isAtLeast(decibels * count);
    }

    /** Strictly more than that many dB. */
    public Answer isAbove(int decibels) {
        return sum.isAtLeast(decibels * count + 1);
    }
}
