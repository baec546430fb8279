package org.thresholdregister.core.employment;

import java.time.LocalDate;
import java.util.Optional;

/** How a worker stands to the employer on a day. */
public sealed interface Standing {

    /** Before anything is known of an employment. */
    record NotYetEmployed() implements Standing {}

    record Employed() implements Standing {}

    /** @param until the last day of the leave, where it is known */
    record OnLeave(LocalDate since, Optional<LocalDate> until) implements Standing {}

    record HasLeft(LocalDate lastDay) implements Standing {}

    record WithSuccessor(LocalDate lastDay, String successor) implements Standing {}

    /** Whether there is an employment on the day, at work or on leave. */
    default boolean isEmployed() {
        return this instanceof Employed || this instanceof OnLeave;
    }
}
