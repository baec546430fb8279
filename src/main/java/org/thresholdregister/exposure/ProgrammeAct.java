package org.thresholdregister.exposure;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a person did about a worker's place in the programme.
 *
 * @param on the day it counts from
 * @param twaDba the average that it rests on, in dBA
 */
public record ProgrammeAct(
        Kind kind, LocalDate on, Optional<BigDecimal> twaDba, String reason, String enteredBy, Instant enteredAt) {

    /** What was done. */
    public enum Kind {
        /** Entered the programme, on the first day at or above the action level. */
        ENTERED,
        /** Left the programme. */
        LEFT,
        /** Another average was taken over into the roster. */
        TAKEN_OVER
    }
}
