package org.thresholdregister.core.columnar;

import java.util.function.ToIntFunction;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.regulation.Answer;

/**
 * The arithmetic of {@link DecibelRange} on two {@code int}s, the lowest and the highest possible value in dB. An end
 * without a bound is a number so far out that adding and subtracting a few others keeps it beyond every limit, so that
 * no step needs to ask.
 */
final class Ranges {

    /** This far out, an end has no bound. */
    static final int UNBOUNDED = 1 << 24;

    private static final int[] LOWEST = ends(range -> range.lowest().orElse(-UNBOUNDED));
    private static final int[] HIGHEST = ends(range -> range.highest().orElse(UNBOUNDED));

    private Ranges() {}

    private static int[] ends(ToIntFunction<DecibelRange> end) {
        int[] ends = new int[ThresholdCode.COUNT];
        for (short code = 0; code < ends.length; code++) {
            ends[code] = end.applyAsInt(ThresholdCode.threshold(code).range());
        }
        return ends;
    }

    /** The lowest hearing level that a threshold of this code leaves possible. */
    static int lowest(short code) {
        return LOWEST[code];
    }

    static int highest(short code) {
        return HIGHEST[code];
    }

    /** Whether there is just one value, and no end is open. */
    static boolean isPlain(int lowest, int highest) {
        return lowest == highest;
    }

    static Answer isAtLeast(int lowest, int highest, int limit) {
        return lowest >= limit ? Answer.YES : highest < limit ? Answer.NO : Answer.UNDECIDED;
    }
}
