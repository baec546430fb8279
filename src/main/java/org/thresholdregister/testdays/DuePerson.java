package org.thresholdregister.testdays;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.scheduling.DueTest;
import org.thresholdregister.roster.WorkerDetails;

/**
 * Somebody who is due for a test.
 *
 * @param afterTest the test that it follows; none for a first test
 * @param booking the time already given, where there is one
 */
public record DuePerson(
        long workerKey,
        WorkerDetails worker,
        DueTest due,
        Optional<LocalDate> afterTest,
        Ears ears,
        Optional<BookedTime> booking) {

    /** When and on which test day somebody is booked. */
    public record BookedTime(long dayKey, LocalDate date) {}

    /** The name, or the number where no name is on file. */
    public String name() {
        String name = (worker.givenName() + " " + worker.familyName()).strip();
        return name.isEmpty() ? worker.workerId() : name;
    }
}
