package org.thresholdregister.review;

import java.time.LocalDate;

/** How pressing something owed is on a day. Each falls into just one. */
public enum FollowUpState {
    /** The day it was due has gone by. */
    OVERDUE(Long.MIN_VALUE, -1),
    /** Due today or within the next seven days. */
    WITHIN_7_DAYS(0, 7),
    /** Due in eight to thirty days. */
    WITHIN_30_DAYS(8, 30),
    /** Due after that. */
    LATER(31, Long.MAX_VALUE);

    private final long fewestDaysLeft;
    private final long mostDaysLeft;

    FollowUpState(long fewestDaysLeft, long mostDaysLeft) {
        this.fewestDaysLeft = fewestDaysLeft;
        this.mostDaysLeft = mostDaysLeft;
    }

    /** The state on a day with that many days left; a negative number is days overdue. */
    public static FollowUpState withDaysLeft(long daysLeft) {
        for (FollowUpState state : values()) {
            if (daysLeft <= state.mostDaysLeft) {
                return state;
            }
        }
        throw new IllegalStateException("every number of days has a state");
    }

    LocalDate firstDueDate(LocalDate today) {
        return fewestDaysLeft == Long.MIN_VALUE ? LocalDate.of(1, 1, 1) : today.plusDays(fewestDaysLeft);
    }

    LocalDate lastDueDate(LocalDate today) {
        return mostDaysLeft == Long.MAX_VALUE ? LocalDate.of(9999, 12, 31) : today.plusDays(mostDaysLeft);
    }
}
