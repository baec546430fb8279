package org.thresholdregister.platform.duty;

import java.time.LocalDate;
import org.thresholdregister.core.regulation.Citation;

/**
 * Something to be done by a day, other than the follow-up of a test.
 *
 * @param kind what kind of thing, in words, the same for all of a kind: {@code yearly acoustic calibration}
 * @param subject whom or what it is about, as a list shows it
 * @param site where, empty where no site is given
 * @param due the last day on which it is in time
 * @param basis the paragraph that makes it due, or where common practice is written down
 * @param address the page where it is done, relative to the application
 */
public record OpenDuty(String kind, Subject subject, String site, LocalDate due, Citation basis, String address) {

    /** Whom or what a duty is about. */
    public sealed interface Subject {
        /** A worker, by the plant's number; the name is for the screen alone. */
        record OfWorker(String workerId, String name) implements Subject {}

        /** An instrument, a room, a tester, an area, a department: anything that is nobody's health record. */
        record OfThing(String name) implements Subject {}
    }

    /** Whether the last day has passed. */
    public boolean overdue(LocalDate today) {
        return due.isBefore(today);
    }
}
