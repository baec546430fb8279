package org.thresholdregister.testdays;

import java.time.LocalDate;
import org.thresholdregister.core.scheduling.DayHours;

/**
 * A day on which tests are made at a site.
 *
 * @param visit the days that were planned together have the same
 * @param place room or stand, as people are told it
 * @param nurse the sign-in name of the nurse who tests; empty where it is open
 */
public record TestDay(
        long key,
        long visit,
        String site,
        String place,
        DayHours hours,
        String nurse,
        boolean mobileUnit,
        boolean cancelled) {

    public LocalDate date() {
        return hours.day();
    }
}
