package org.thresholdregister.testdays;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.scheduling.DayHours;

/**
 * One test day, or the days of a mobile unit's visit, as somebody plans them.
 *
 * @param lastDay the same as the first for a single day; Saturdays and Sundays between two days are left out
 * @param nurse the sign-in name of the nurse who tests; may be empty
 */
public record NewTestDays(
        String site,
        String place,
        Optional<LocalDate> firstDay,
        Optional<LocalDate> lastDay,
        Optional<LocalTime> from,
        Optional<LocalTime> to,
        Optional<Integer> perHour,
        List<DayHours.Break> breaks,
        String nurse,
        boolean mobileUnit) {

    /** The most characters of {@link #place}. */
    public static final int LONGEST_PLACE = 200;

    /** The most days planned at once; our choice. */
    public static final int MOST_DAYS = 31;

    public NewTestDays {
        breaks = List.copyOf(breaks);
    }
}
