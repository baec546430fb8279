package org.thresholdregister.core.rules;

import java.time.LocalDate;

/** How long a duty may take, counted from the day after the one that starts it. */
public sealed interface Deadline {

    /** The last day. */
    LocalDate after(LocalDate start, Holidays holidays);

    /** So many days, weekends and holidays included. */
    record CalendarDays(int days) implements Deadline {
        @Override
        public LocalDate after(LocalDate start, Holidays holidays) {
            return start.plusDays(days);
        }
    }

    /** So many days from Monday to Friday that are no holidays. */
    record WorkingDays(int days) implements Deadline {
        @Override
        public LocalDate after(LocalDate start, Holidays holidays) {
            LocalDate day = start;
            for (int counted = 0; counted < days; ) {
                day = day.plusDays(1);
                if (holidays.isWorkingDay(day)) {
                    counted++;
                }
            }
            return day;
        }
    }

    /** So many calendar months: the same day of the month, or the month's last. */
    record Months(int months) implements Deadline {
        @Override
        public LocalDate after(LocalDate start, Holidays holidays) {
            return start.plusMonths(months);
        }
    }
}
