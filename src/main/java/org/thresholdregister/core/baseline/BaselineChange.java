package org.thresholdregister.core.baseline;

import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;

/**
 * A move of one ear's baseline, proposed or decided.
 *
 * @param completedBy the last test judged on the old baseline; tests after it are compared with the new one
 * @param from the old baseline
 * @param to the new baseline
 * @param evidence the days of the tests that it rests on
 */
public record BaselineChange(
        Ear ear, Kind kind, Audiogram completedBy, Audiogram from, Audiogram to, List<LocalDate> evidence) {

    /** Why the baseline moves. */
    public enum Kind {
        /** Hearing was better on two tests running. */
        PERSISTENT_IMPROVEMENT,
        /** A standard threshold shift lasted. */
        PERSISTENT_SHIFT,
        /** A person chose another audiogram. */
        DECIDED
    }

    /** Whether the new baseline shows better hearing than the old one: a lower sum of plain levels. */
    public boolean isForBetterHearing() {
        return switch (kind) {
            case PERSISTENT_IMPROVEMENT -> true;
            case PERSISTENT_SHIFT -> false;
            case DECIDED -> {
                var before = from.levelSum(ear).exact();
                var after = to.levelSum(ear).exact();
                yield before.isPresent() && after.isPresent() && after.getAsInt() < before.getAsInt();
            }
        };
    }
}
