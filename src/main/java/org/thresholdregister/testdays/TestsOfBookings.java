package org.thresholdregister.testdays;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.TestSigned;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.roster.WorkerStore;

/** Checks somebody in when the test of the day is signed, and frees later times that were for the same test. */
@Component
class TestsOfBookings {

    private final BookingReader reader;
    private final WorkerStore workers;
    private final AuditTrail auditTrail;
    private final Clock clock;

    TestsOfBookings(BookingReader reader, WorkerStore workers, AuditTrail auditTrail, Clock clock) {
        this.reader = reader;
        this.workers = workers;
        this.auditTrail = auditTrail;
        this.clock = clock;
    }

    /** Part of the transaction that signs the test. Who was noted as not come has come after all. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void signed(TestSigned signed) {
        for (StoredBooking booking : reader.bookingsOfWorker(signed.workerKey())) {
            StoredTestDay day = reader.dayOf(booking);
            LocalDate date = day.date();
            boolean open = booking.state().isExpected() || booking.state() == BookingState.NO_SHOW;
            if (open && date.equals(signed.testDate())) {
                booking.become(BookingState.TESTED, "");
                note(day, booking, TestDayAction.TEST_MADE_OF_BOOKING, "");
            } else if (booking.state().isExpected()
                    && date.isAfter(signed.testDate())
                    && booking.occasion().purpose() == signed.purpose()) {
                booking.become(BookingState.REMOVED, "tested on " + signed.testDate());
                note(day, booking, TestDayAction.BOOKING_REMOVED, ", tested on " + signed.testDate());
            }
        }
    }

    private void note(StoredTestDay day, StoredBooking booking, TestDayAction action, String detail) {
        day.changed(clock.instant());
        String workerId = workers.withKeys(List.of(booking.workerKey()))
                .getFirst()
                .details()
                .workerId();
        auditTrail.record(action, "worker", workerId, "test day " + day.key() + detail);
    }
}
