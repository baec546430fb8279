package org.thresholdregister.core.recording;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;

/**
 * An audiogram that a shift may be measured from for the injury log, 29 CFR 1904.10(b)(2)(i): the ear's first baseline
 * until there is a recordable case, then the audiogram of the last one; or a baseline revised for better hearing,
 * which is the more protective. A baseline revised for a lasting shift that was no case is none.
 *
 * @param endsOn the day from which it no longer counts, because the case was lined out
 */
public record RecordingReference(Kind kind, Audiogram audiogram, Optional<LocalDate> endsOn) {

    /** Where the reference comes from. */
    public enum Kind {
        FIRST_BASELINE,
        IMPROVED_BASELINE,
        RECORDABLE_CASE
    }

    boolean countsOn(LocalDate day) {
        return endsOn.isEmpty() || day.isBefore(endsOn.get());
    }
}
