package org.thresholdregister.core.columnar;

import java.time.LocalDate;

/** Completed years between days of the calendar, without an object for each. */
final class CalendarDays {

    private static final int FIRST = (int) LocalDate.of(1900, 1, 1).toEpochDay();
    private static final int LAST = (int) LocalDate.of(2100, 12, 31).toEpochDay();
    private static final int DAY_BITS = 5;
    private static final int DAY_MASK = (1 << DAY_BITS) - 1;
    private static final int MONTHS_PER_YEAR = 12;

    /** For every day that is met in practice, its month counted from year 0 and its day of the month, in one. */
    private static final int[] MONTHS_AND_DAYS = new int[LAST - FIRST + 1];

    static {
        int place = 0;
        LocalDate month = LocalDate.ofEpochDay(FIRST);
        while (place < MONTHS_AND_DAYS.length) {
            int first = monthAndDay(month);
            for (int day = 0; day < month.lengthOfMonth(); day++) {
                MONTHS_AND_DAYS[place++] = first + day;
            }
            month = month.plusMonths(1);
        }
    }

    private CalendarDays() {}

    /** Month and day of the month of an epoch day, for {@link #completedYears}. */
    static int monthAndDay(int epochDay) {
        return epochDay >= FIRST && epochDay <= LAST
                ? MONTHS_AND_DAYS[epochDay - FIRST]
                : monthAndDay(LocalDate.ofEpochDay(epochDay));
    }

    private static int monthAndDay(LocalDate date) {
        int months = date.getYear() * MONTHS_PER_YEAR + date.getMonthValue() - 1;
        return months << DAY_BITS | date.getDayOfMonth();
    }

    /** As {@link java.time.Period#between} counts them; negative before the birthday of the first year. */
    static int completedYears(int birth, int then) {
        int months = (then >> DAY_BITS) - (birth >> DAY_BITS);
        int days = (then & DAY_MASK) - (birth & DAY_MASK);
        if (months > 0 && days < 0) {
            months--;
        } else if (months < 0 && days > 0) {
            months++;
        }
        return months / MONTHS_PER_YEAR;
    }
}
