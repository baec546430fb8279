package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUpKind;

/**
 * One thing owed to one worker. Texts that are not given are empty.
 *
 * @param daysLeft days from today to the due date; negative once it is overdue
 * @param testDate the test that it follows; none for a first test
 */
public record FollowUpRow(
        String workerId,
        String familyName,
        String givenName,
        String site,
        String department,
        FollowUpKind kind,
        LocalDate dueDate,
        long daysLeft,
        Optional<LocalDate> testDate,
        Ears ears) {

    public FollowUpState state() {
        return FollowUpState.withDaysLeft(daysLeft);
    }
}
