package org.thresholdregister.letters;

import java.time.LocalDateTime;
import java.util.Optional;

/** Where and when a worker is booked for a test. A bean of this type is asked where there is one. */
public interface RetestBookings {

    /** @param place as people find it */
    record Booking(LocalDateTime at, String place) {}

    Optional<Booking> next(String workerId);
}
