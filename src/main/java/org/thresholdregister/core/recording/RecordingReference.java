package org.thresholdregister.core.recording;

import org.thresholdregister.core.audiometry.Audiogram;

/**
 * An audiogram that a shift may be measured from for the injury log, 29 CFR 1904.10(b)(2)(i): the ear's first baseline
 * until there is a recordable case, then the audiogram of the last one; or a baseline revised for better hearing,
 * which is the more protective. A case that was lined out is none, and a baseline revised for a lasting shift that was no case is none.
 */
public record RecordingReference(Kind kind, Audiogram audiogram) {

    /** Where the reference comes from. */
    public enum Kind {
        FIRST_BASELINE,
        IMPROVED_BASELINE,
        RECORDABLE_CASE
    }
}
