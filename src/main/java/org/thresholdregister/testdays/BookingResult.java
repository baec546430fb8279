package org.thresholdregister.testdays;

/** What came of a change to a booking. */
public enum BookingResult {
    DONE,
    /** There is no such day, booking or worker among those that the user may see. */
    UNKNOWN,
    /** Somebody else has the time, or the day has no such time. */
    TIME_NOT_FREE,
    /** The worker has another time already. */
    BOOKED_ALREADY,
    /** The worker belongs to another site. */
    ANOTHER_SITE,
    /** The worker is due for no test of this kind. */
    NOT_DUE,
    /** The test would come after the last day on which it counts. */
    TOO_LATE,
    /** The day has gone by, or was called off. */
    DAY_OVER,
    /** The day is still to come. */
    DAY_TO_COME,
    /** The booking is past the point where this could be done. */
    SETTLED,
    /** It is taken down only with its reason. */
    REASON_MISSING,
    /** Hours away from noise are between 0 and 9999. */
    HOURS_OUT_OF_RANGE
}
