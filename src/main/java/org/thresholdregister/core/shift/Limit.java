package org.thresholdregister.core.shift;

import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.regulation.Answer;

/**
 * The size in dB from which a rule speaks. Means are never divided: the sum is compared with the limit times the
 * number of values, so that 9.67 never becomes 10.
 */
public record Limit(int decibels, Comparison comparison) {

    /** Whether the limit itself is inside the rule. With steps of 5 dB it often matters. */
    public enum Comparison {
        AT_LEAST,
        MORE_THAN
    }

    public static Limit atLeast(int decibels) {
        return new Limit(decibels, Comparison.AT_LEAST);
    }

    public static Limit moreThan(int decibels) {
        return new Limit(decibels, Comparison.MORE_THAN);
    }

    /** Whether a single value reaches it. */
    public Answer reachedBy(DecibelRange value) {
        return reachedByMean(value, 1);
    }

    /** Whether the mean of {@code count} values with this sum reaches it. */
    public Answer reachedByMean(DecibelRange sum, int count) {
        return sum.isAtLeast(leastSum(count));
    }

    /** The least sum in dB of so many values whose mean reaches it. */
    public int leastSum(int count) {
        int limitSum = decibels * count;
        return comparison == Comparison.AT_LEAST ? limitSum : limitSum + 1;
    }
}
