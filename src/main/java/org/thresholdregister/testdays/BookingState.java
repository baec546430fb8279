package org.thresholdregister.testdays;

import java.util.EnumSet;
import java.util.Set;

/** What became of a booking. */
public enum BookingState {
    /** In the plan, and nobody has been told. */
    PROPOSED,
    /** The person is called. */
    CONFIRMED,
    ARRIVED,
    /** The test is signed. */
    TESTED,
    NO_SHOW,
    REFUSED,
    /** Taken off the day. */
    REMOVED;

    private static final Set<BookingState> HOLDING = EnumSet.of(PROPOSED, CONFIRMED, ARRIVED, TESTED);

    private static final Set<BookingState> EXPECTED = EnumSet.of(PROPOSED, CONFIRMED, ARRIVED);

    /** Whether nobody else can have the time. */
    public boolean holdsItsTime() {
        return HOLDING.contains(this);
    }

    /** Whether the test is still to be made. */
    public boolean isExpected() {
        return EXPECTED.contains(this);
    }

    static Set<BookingState> expected() {
        return EXPECTED;
    }
}
