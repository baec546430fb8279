package org.thresholdregister.employment;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.employment.DatedEvent;

/**
 * One line of a working life.
 *
 * @param event empty where the line takes an earlier one back
 * @param inForce false for a line that a later one corrects or takes back, and for one that takes another back
 * @param correction whether it takes the place of an earlier line
 * @param enteredAt empty where the line is what the roster tells and nobody has written it down yet
 */
public record LifeEntry(
        Optional<DatedEvent> event,
        LocalDate day,
        boolean inForce,
        boolean correction,
        String reason,
        String enteredBy,
        Optional<Instant> enteredAt) {}
