package org.thresholdregister.core.audiometry;

import java.util.Objects;
import java.util.OptionalInt;
import org.thresholdregister.core.regulation.Answer;

/**
 * All the whole-dB values that a quantity may have, given what was measured: a level, a shift, or a sum of them. A
 * plain number is a range of one value; an end without a bound is truly open. Arithmetic keeps every value that the
 * operands allow, so that a comparison is a yes or a no only where all of them agree.
 */
public final class DecibelRange {

    /** Any value at all. */
    public static final DecibelRange UNKNOWN = new DecibelRange(false, 0, false, 0);

    private final boolean boundedBelow;
    private final int lowest;
    private final boolean boundedAbove;
    private final int highest;

    private DecibelRange(boolean boundedBelow, int lowest, boolean boundedAbove, int highest) {
        this.boundedBelow = boundedBelow;
        this.lowest = lowest;
        this.boundedAbove = boundedAbove;
        this.highest = highest;
    }

    public static DecibelRange exactly(int decibels) {
        return new DecibelRange(true, decibels, true, decibels);
    }

    /** That many dB or more, with no upper bound. */
    public static DecibelRange atLeast(int decibels) {
        return new DecibelRange(true, decibels, false, 0);
    }

    /** That many dB or less, with no lower bound. */
    public static DecibelRange atMost(int decibels) {
        return new DecibelRange(false, 0, true, decibels);
    }

    public DecibelRange plus(DecibelRange other) {
        return new DecibelRange(
                boundedBelow && other.boundedBelow,
                boundedBelow && other.boundedBelow ? lowest + other.lowest : 0,
                boundedAbove && other.boundedAbove,
                boundedAbove && other.boundedAbove ? highest + other.highest : 0);
    }

    public DecibelRange minus(DecibelRange other) {
        return new DecibelRange(
                boundedBelow && other.boundedAbove,
                boundedBelow && other.boundedAbove ? lowest - other.highest : 0,
                boundedAbove && other.boundedBelow,
                boundedAbove && other.boundedBelow ? highest - other.lowest : 0);
    }

    /** That many times the quantity; {@code factor} is positive. */
    public DecibelRange times(int factor) {
        return new DecibelRange(boundedBelow, lowest * factor, boundedAbove, highest * factor);
    }

    /** The larger of two quantities. */
    public DecibelRange max(DecibelRange other) {
        return other.negated().min(negated()).negated();
    }

    /** The smaller of two quantities. */
    public DecibelRange min(DecibelRange other) {
        boolean below = boundedBelow && other.boundedBelow;
        boolean above = boundedAbove && other.boundedAbove;
        return new DecibelRange(
                below,
                below ? Math.min(lowest, other.lowest) : 0,
                boundedAbove || other.boundedAbove,
                // An end without a bound holds 0, so that the sum is the other one's end.
                above ? Math.min(highest, other.highest) : highest + other.highest);
    }

    /** The quantity where every value under {@code least} counts as {@code least}, every one over {@code most} as that. */
    public DecibelRange limitedTo(int least, int most) {
        return new DecibelRange(
                true,
                boundedBelow ? Math.clamp(lowest, least, most) : least,
                true,
                boundedAbove ? Math.clamp(highest, least, most) : most);
    }

    private DecibelRange negated() {
        return new DecibelRange(boundedAbove, -highest, boundedBelow, -lowest);
    }

    /** Whether the quantity is that many dB or more. */
    public Answer isAtLeast(int decibels) {
        if (boundedBelow && lowest >= decibels) {
            return Answer.YES;
        }
        return boundedAbove && highest < decibels ? Answer.NO : Answer.UNDECIDED;
    }

    /** The plain number, where there is just one. */
    public OptionalInt exact() {
        return boundedBelow && boundedAbove && lowest == highest ? OptionalInt.of(lowest) : OptionalInt.empty();
    }

    public OptionalInt lowest() {
        return boundedBelow ? OptionalInt.of(lowest) : OptionalInt.empty();
    }

    public OptionalInt highest() {
        return boundedAbove ? OptionalInt.of(highest) : OptionalInt.empty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DecibelRange that
                && boundedBelow == that.boundedBelow
                && lowest == that.lowest
                && boundedAbove == that.boundedAbove
                && highest == that.highest;
    }

    @Override
    public int hashCode() {
        return Objects.hash(boundedBelow, lowest, boundedAbove, highest);
    }

    @Override
    public String toString() {
        return (boundedBelow ? lowest : "..") + " to " + (boundedAbove ? highest : "..") + " dB";
    }
}
