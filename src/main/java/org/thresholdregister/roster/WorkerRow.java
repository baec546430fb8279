package org.thresholdregister.roster;

import java.time.LocalDate;
import java.util.Optional;

/** A line of the list of workers. Texts that are not given are empty. */
public record WorkerRow(
        String workerId,
        String familyName,
        String givenName,
        String site,
        String department,
        String jobTitle,
        Optional<LocalDate> hireDate,
        Optional<LocalDate> endDate) {

    /** Whether the last day of employment has gone by on this day. */
    public boolean hasLeftBy(LocalDate day) {
        return endDate.filter(last -> last.isBefore(day)).isPresent();
    }
}
