package org.thresholdregister.core.columnar;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Completed years between days of the calendar, without an object for each. */
final class CalendarDays {

    private static final LocalDate FIRST_MONTH = LocalDate.of(1900, 1, 1);
    private static final LocalDate END = LocalDate.of(2101, 1, 1);
    private static final int MONTHS_PER_YEAR = 12;
    private static final int DAYS_OF_400_YEARS = 146_097;
    private static final int DAY_BITS = 5;
    private static final int DAY_MASK = (1 << DAY_BITS) - 1;

    /** The days on which the months begin in which people are born and tested. */
    private static final int[] MONTHS = monthStarts();

    private CalendarDays() {}

    private static int[] monthStarts() {
        int[] starts = new int[(int) ChronoUnit.MONTHS.between(FIRST_MONTH, END) + 1];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = (int) FIRST_MONTH.plusMonths(i).toEpochDay();
        }
        return starts;
    }

    /** The month, counted from year 0, and the day of the month in one, for {@link #completedYears}. */
    static int monthAndDay(int epochDay) {
        if (epochDay < MONTHS[0] || epochDay >= MONTHS[MONTHS.length - 1]) {
            LocalDate date = LocalDate.ofEpochDay(epochDay);
            return monthAndDay(monthOf(date), date.getDayOfMonth());
        }
        // Months of the mean length come within one of the right one.
        int month = (int) ((long) (epochDay - MONTHS[0]) * (400 * MONTHS_PER_YEAR) / DAYS_OF_400_YEARS);
        while (MONTHS[month] > epochDay) {
            month--;
        }
        while (MONTHS[month + 1] <= epochDay) {
            month++;
        }
        return monthAndDay(monthOf(FIRST_MONTH) + month, epochDay - MONTHS[month] + 1);
    }

    private static int monthOf(LocalDate date) {
        return date.getYear() * MONTHS_PER_YEAR + date.getMonthValue() - 1;
    }

    private static int monthAndDay(int month, int dayOfMonth) {
        return month << DAY_BITS | dayOfMonth;
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
