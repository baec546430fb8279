package org.thresholdregister.letters;

import java.util.Optional;
import org.springframework.stereotype.Component;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.testdays.BookingStore;

/** Takes times and places from the test days. */
@Component
class TestDayBookings implements RetestBookings {

    private final BookingStore bookings;
    private final CurrentUser currentUser;

    TestDayBookings(BookingStore bookings, CurrentUser currentUser) {
        this.bookings = bookings;
        this.currentUser = currentUser;
    }

    @Override
    public Optional<Booking> next(String workerId) {
        return bookings.next(workerId, currentUser.scope()).map(time -> new Booking(time.at(), time.place()));
    }
}
