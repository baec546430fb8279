package org.thresholdregister.core.rules;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/** The days besides Saturday and Sunday on which nobody works, as the site lists them. */
public record Holidays(Set<LocalDate> days) {

    public static final Holidays NONE = new Holidays(Set.of());

    public Holidays {
        days = Set.copyOf(days);
    }

    public boolean isWorkingDay(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY
                && day.getDayOfWeek() != DayOfWeek.SUNDAY
                && !days.contains(day);
    }
}
