package org.thresholdregister.core.validity;

import java.util.EnumSet;
import java.util.OptionalInt;
import java.util.Set;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;

/**
 * How far a test lies from a person's usual thresholds: the mean difference without its sign, over both ears. Where no
 * response leaves a threshold open, the difference is taken as small as it may be.
 *
 * @param sumDecibels of the differences
 * @param compared how many thresholds were compared
 */
public record Fit(int sumDecibels, int compared) {

    /** Below this many frequencies with numbers in both ears nothing is said. */
    private static final int FEWEST_FREQUENCIES = 4;

    /** The frequencies at which all of these have something to compare in both ears. */
    static Set<Frequency> comparable(Audiogram... audiograms) {
        Set<Frequency> comparable = EnumSet.allOf(Frequency.class);
        comparable.removeIf(frequency -> {
            for (Audiogram audiogram : audiograms) {
                if (!isBounded(audiogram.threshold(Ear.LEFT, frequency))
                        || !isBounded(audiogram.threshold(Ear.RIGHT, frequency))) {
                    return true;
                }
            }
            return false;
        });
        return comparable;
    }

    static boolean areEnough(Set<Frequency> frequencies) {
        return frequencies.size() >= FEWEST_FREQUENCIES;
    }

    private static boolean isBounded(Threshold threshold) {
        return threshold.range().lowest().isPresent();
    }

    static Fit of(Audiogram test, Audiogram usual, Set<Frequency> frequencies) {
        return of(test, usual, frequencies, false);
    }

    /** As if the ears of the test had been exchanged. */
    static Fit ofExchanged(Audiogram test, Audiogram usual, Set<Frequency> frequencies) {
        return of(test, usual, frequencies, true);
    }

    private static Fit of(Audiogram test, Audiogram usual, Set<Frequency> frequencies, boolean exchanged) {
        int sum = 0;
        for (Frequency frequency : frequencies) {
            for (Ear ear : Ear.values()) {
                Threshold tested = test.threshold(exchanged ? ear.other() : ear, frequency);
                sum += leastDifference(
                        tested.range(), usual.threshold(ear, frequency).range());
            }
        }
        return new Fit(sum, 2 * frequencies.size());
    }

    private static int leastDifference(DecibelRange one, DecibelRange other) {
        return Math.max(0, Math.max(above(one, other), above(other, one)));
    }

    private static int above(DecibelRange upper, DecibelRange lower) {
        OptionalInt least = upper.minus(lower).lowest();
        return least.isPresent() ? least.getAsInt() : 0;
    }

    /** Whether the mean difference is that many dB or more. */
    boolean isAtLeast(int decibels) {
        return sumDecibels >= decibels * compared;
    }

    /** Whether this mean difference is the smaller by that many dB or more; both compare the same thresholds. */
    boolean isCloserBy(int decibels, Fit other) {
        return other.sumDecibels - sumDecibels >= decibels * compared;
    }

    boolean isAtMostTwoThirdsOf(Fit other) {
        return 3 * sumDecibels <= 2 * other.sumDecibels;
    }

    boolean isAtMostHalfOf(Fit other) {
        return 2 * sumDecibels <= other.sumDecibels;
    }

    /** The mean difference in tenths of a dB, half up, for display. */
    public int meanTenths() {
        return (20 * sumDecibels + compared) / (2 * compared);
    }
}
