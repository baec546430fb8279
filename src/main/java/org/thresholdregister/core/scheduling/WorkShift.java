package org.thresholdregister.core.scheduling;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;

/**
 * The hours that people work in noise, the same every day. A day off counts as worked, so that nobody is taken for
 * rested who may not be.
 *
 * @param ends earlier than {@code starts} where the shift goes past midnight
 */
public record WorkShift(String name, LocalTime starts, LocalTime ends) {

    /** @throws IllegalArgumentException where it begins and ends at the same time */
    public WorkShift {
        if (starts.equals(ends)) {
            throw new IllegalArgumentException("a shift begins and ends at different times");
        }
    }

    /** Whether somebody of this shift is in noise then. Who comes as the shift begins has not been in it yet. */
    public boolean isAtWork(LocalDateTime time) {
        LocalTime clock = time.toLocalTime();
        boolean afterStart = clock.isAfter(starts);
        boolean beforeEnd = clock.isBefore(ends);
        return ends.isAfter(starts) ? afterStart && beforeEnd : afterStart || beforeEnd;
    }

    /** The time since the shift last ended; only outside the shift is it time away from noise. */
    public Duration sinceEnd(LocalDateTime time) {
        LocalDateTime end = time.toLocalDate().atTime(ends);
        return Duration.between(end.isAfter(time) ? end.minusDays(1) : end, time);
    }

    /** Whether somebody of this shift has been away from its noise for at least that long then. */
    public boolean isRested(LocalDateTime time, int hours) {
        return !isAtWork(time) && sinceEnd(time).compareTo(Duration.ofHours(hours)) >= 0;
    }
}
