package org.thresholdregister.core.scheduling;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The hours of a test day, and how many people can be tested in one of them.
 *
 * @param perHour people in an hour, 1 to {@value #MOST_PER_HOUR}
 * @param breaks in any order; nobody is called so that the test would run into one
 */
public record DayHours(LocalDate day, LocalTime from, LocalTime to, int perHour, List<Break> breaks) {

    public static final int MOST_PER_HOUR = 60;

    private static final int MINUTES_IN_AN_HOUR = 60;

    /** A time in which nobody is tested. */
    public record Break(LocalTime from, LocalTime to) {
        /** @throws IllegalArgumentException where it does not end after it begins */
        public Break {
            if (!to.isAfter(from)) {
                throw new IllegalArgumentException("a break ends after it begins");
            }
        }
    }

    /** @throws IllegalArgumentException where the day does not end after it begins, or nobody or too many are tested */
    public DayHours {
        if (!to.isAfter(from)) {
            throw new IllegalArgumentException("a test day ends after it begins");
        }
        if (perHour < 1 || perHour > MOST_PER_HOUR) {
            throw new IllegalArgumentException("people in an hour outside 1 to " + MOST_PER_HOUR + ": " + perHour);
        }
        breaks = List.copyOf(breaks);
    }

    /** The times at which one person each is called, spread evenly over each hour from the opening on. */
    public List<Slot> slots() {
        List<Slot> slots = new ArrayList<>();
        int opening = minutes(from);
        int closing = minutes(to);
        int number = 0;
        while (opening + begin(number + 1) <= closing) {
            int starts = opening + begin(number);
            int ends = opening + begin(number + 1);
            if (breaks.stream().noneMatch(pause -> starts < minutes(pause.to) && ends > minutes(pause.from))) {
                slots.add(new Slot(day, LocalTime.MIDNIGHT.plusMinutes(starts)));
            }
            number++;
        }
        return slots;
    }

    private int begin(int number) {
        return number * MINUTES_IN_AN_HOUR / perHour;
    }

    private static int minutes(LocalTime time) {
        return time.toSecondOfDay() / MINUTES_IN_AN_HOUR;
    }
}
