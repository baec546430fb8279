package org.thresholdregister.core.employment;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A time away from work between two times of work.
 *
 * @param from first day away
 * @param firstDayBack empty while the worker is still away
 */
public record Absence(Kind kind, LocalDate from, Optional<LocalDate> firstDayBack) {

    /** Away in an employment, out of the programme, or between two employments. */
    public enum Kind {
        LEAVE,
        BETWEEN_EMPLOYMENTS,
        NOT_ENROLLED
    }

    private static final int MONTHS = 6;

    /**
     * More than six consecutive months by the calendar, which 30 CFR 62.170(a)(3) asks for before a mine may take a new
     * baseline (from memory).
     */
    public boolean isMoreThanSixMonths(LocalDate asOf) {
        return firstDayBack.orElse(asOf).isAfter(from.plusMonths(MONTHS));
    }

    /** Whether a day falls into it. */
    public boolean includes(LocalDate day) {
        return !day.isBefore(from) && firstDayBack.map(day::isBefore).orElse(true);
    }
}
