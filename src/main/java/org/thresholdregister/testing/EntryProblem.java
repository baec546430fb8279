package org.thresholdregister.testing;

import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

/**
 * Something that keeps a typed test from being signed.
 *
 * @param threshold which threshold it is about, where it is about one
 */
public record EntryProblem(Kind kind, Optional<Place> threshold) {

    /** What is wrong. */
    public enum Kind {
        /** Not a whole number, nor one of the marks for a threshold without one, or outside -10 to 120 dB HL. */
        NO_THRESHOLD,
        /** There is no threshold at all. */
        NOTHING_TYPED,
        DATE_MISSING,
        DATE_TO_COME,
        DATE_BEFORE_BIRTH,
        PURPOSE_MISSING,
        /** The worker has a test of this day and purpose on record. */
        ON_RECORD,
        NO_HOURS,
        TESTER_MISSING,
        REASON_MISSING,
        /** The test that it was to supersede counts no more. */
        SUPERSEDED_MEANWHILE
    }

    /** A threshold of an ear, or its second reading at 1000 Hz. */
    public record Place(Ear ear, Frequency frequency, boolean isRepeat) {}

    static EntryProblem of(Kind kind) {
        return new EntryProblem(kind, Optional.empty());
    }
}
