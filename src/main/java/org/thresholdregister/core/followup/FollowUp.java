package org.thresholdregister.core.followup;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ears;

/**
 * One thing that is owed and not done.
 *
 * @param testDate the day of the test that it follows; none for a first test
 */
public record FollowUp(FollowUpKind kind, LocalDate dueDate, Optional<LocalDate> testDate, Ears ears) {

    public boolean isOverdue(LocalDate asOf) {
        return dueDate.isBefore(asOf);
    }
}
