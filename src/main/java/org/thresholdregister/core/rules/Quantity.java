package org.thresholdregister.core.rules;

import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

/**
 * A number that a rule looked at, with what it was made of, so that it can be made again by hand.
 *
 * @param of what was added up or looked through
 * @param frequencies over which
 * @param ear the ear, or the worse ear of a difference
 * @param earlier the earlier test of a change
 * @param total the sum in dB; of {@link Kind#LARGEST_CHANGE} the largest single change
 */
public record Quantity(Kind of, List<Frequency> frequencies, Ear ear, Optional<Audiogram> earlier, DecibelRange total) {

    /** What a quantity is made of. */
    public enum Kind {
        /** Levels of one ear, added up. */
        LEVELS,
        /** The highest of the levels of one ear. */
        HIGHEST_LEVEL,
        /** Changes of one ear since the earlier test, added up. */
        CHANGES,
        /** The largest of the changes of one ear since the earlier test. */
        LARGEST_CHANGE,
        /** The levels of one ear less those of the other, added up. */
        DIFFERENCES
    }
}
