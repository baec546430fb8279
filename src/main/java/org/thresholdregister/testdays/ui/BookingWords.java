package org.thresholdregister.testdays.ui;

import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.testdays.Booking;
import org.thresholdregister.testdays.BookingResult;
import org.thresholdregister.testdays.BookingState;
import org.thresholdregister.testdays.DueTestFilter;

/** What the pages of test days say of bookings. */
final class BookingWords {

    private BookingWords() {}

    static String state(BookingState state) {
        return switch (state) {
            case PROPOSED -> "proposed";
            case CONFIRMED -> "confirmed";
            case ARRIVED -> "arrived";
            case TESTED -> "tested";
            case NO_SHOW -> "did not come";
            case REFUSED -> "refused";
            case REMOVED -> "taken off";
        };
    }

    static StateBadge.Kind kind(BookingState state) {
        return switch (state) {
            case PROPOSED -> StateBadge.Kind.UNDECIDED;
            case CONFIRMED, ARRIVED -> StateBadge.Kind.OPEN;
            case NO_SHOW -> StateBadge.Kind.OVERDUE;
            case TESTED, REFUSED, REMOVED -> StateBadge.Kind.DONE;
        };
    }

    static String booked(DueTestFilter.Booked booked) {
        return switch (booked) {
            case WITHOUT_A_TIME -> "without a time";
            case WITH_A_TIME -> "with a time";
            case MISSED -> "did not come before";
        };
    }

    /** What was answered on arrival, such as {@code 15 h since noise, protectors worn}; empty where nothing was. */
    static String arrival(Booking booking) {
        String hours = booking.hoursSinceNoise()
                .map(number -> number.stripTrailingZeros().toPlainString() + " h since noise")
                .orElse("");
        String protectors = booking.protectorsWorn()
                .map(worn -> worn ? "protectors worn" : "no protectors worn")
                .orElse("");
        return hours + (hours.isEmpty() || protectors.isEmpty() ? "" : ", ") + protectors;
    }

    /** What stands against a change. */
    static String objection(BookingResult result) {
        return switch (result) {
            case DONE -> "";
            case UNKNOWN -> "This is not among what you may see. Nothing was changed.";
            case TIME_NOT_FREE -> "Somebody else has this time now. Nothing was changed; choose another.";
            case BOOKED_ALREADY -> "This person has a time already. Move that one, or take it off first.";
            case ANOTHER_SITE -> "The day and the person belong to different sites. Nothing was changed.";
            case NOT_DUE -> "This person is due for no test of this kind. Nothing was changed.";
            case TOO_LATE -> "The test would come after the last day on which it counts. Choose an earlier day.";
            case DAY_OVER -> "The day has gone by or was called off. Nothing was changed.";
            case DAY_TO_COME -> "The day is still to come. Nothing was changed.";
            case SETTLED -> "This booking is settled already. Nothing was changed.";
            case REASON_MISSING -> "Say why, in 500 characters or fewer: it stays with the booking.";
            case HOURS_OUT_OF_RANGE -> "Give the hours as a number from 0 to 9999, or leave them empty.";
        };
    }
}
