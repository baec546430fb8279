package org.thresholdregister.review;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** How pressing something owed is on a day. Each falls into just one. */
public enum DueState {
    /** The day it was due has gone by. */
    OVERDUE(Long.MIN_VALUE, -1),
    /** Due today or within the next seven days. */
    WITHIN_7_DAYS(0, 7),
    /** Due in eight to thirty days. */
    WITHIN_30_DAYS(8, 30),
    /** Due after that. */
    LATER(31, Long.MAX_VALUE),
    /** The rule gives no date. */
    WITHOUT_DATE(Long.MAX_VALUE, Long.MAX_VALUE);

    private final long fewestDaysLeft;
    private final long mostDaysLeft;

    DueState(long fewestDaysLeft, long mostDaysLeft) {
        this.fewestDaysLeft = fewestDaysLeft;
        this.mostDaysLeft = mostDaysLeft;
    }

    /** The state on a day of what is due on another, or has no date. */
    public static DueState of(Optional<LocalDate> due, LocalDate today) {
        return due.map(day -> withDaysLeft(ChronoUnit.DAYS.between(today, day))).orElse(WITHOUT_DATE);
    }

    /** The state on a day with that many days left; a negative number is days overdue. */
    public static DueState withDaysLeft(long daysLeft) {
        for (DueState state : values()) {
            if (daysLeft <= state.mostDaysLeft) {
                return state;
            }
        }
        throw new IllegalStateException("every number of days has a state");
    }

    /** @throws IllegalStateException for what has no date */
    LocalDate firstDueDate(LocalDate today) {
        dated();
        return fewestDaysLeft == Long.MIN_VALUE ? LocalDate.of(1, 1, 1) : today.plusDays(fewestDaysLeft);
    }

    /** @throws IllegalStateException for what has no date */
    LocalDate lastDueDate(LocalDate today) {
        dated();
        return mostDaysLeft == Long.MAX_VALUE ? LocalDate.of(9999, 12, 31) : today.plusDays(mostDaysLeft);
    }

    private void dated() {
        if (this == WITHOUT_DATE) {
            throw new IllegalStateException("without a date");
        }
    }
}
