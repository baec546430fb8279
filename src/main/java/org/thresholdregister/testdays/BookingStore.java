package org.thresholdregister.testdays;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.WorkerStore;

/**
 * Bookings, for the services of other features. It checks no role: the service that calls it does, and screens never
 * call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class BookingStore {

    /** @param place room or stand, as people are told it */
    public record NextTime(LocalDateTime at, String place) {}

    private final BookingReader reader;
    private final WorkerStore workers;
    private final Clock clock;

    BookingStore(BookingReader reader, WorkerStore workers, Clock clock) {
        this.reader = reader;
        this.workers = workers;
        this.clock = clock;
    }

    /** The next confirmed time of a worker from today on. */
    public Optional<NextTime> next(String workerId, SiteScope scope) {
        LocalDate today = LocalDate.now(clock);
        return workers.find(workerId, scope)
                .flatMap(worker -> reader.bookingsOfWorker(worker.key()).stream()
                        .filter(booking -> booking.state() == BookingState.CONFIRMED)
                        .map(booking -> {
                            TestDay day = reader.dayOf(booking).toTestDay();
                            return new NextTime(day.date().atTime(booking.startsAt()), day.place());
                        })
                        .filter(time -> !time.at().toLocalDate().isBefore(today))
                        .min(Comparator.comparing(NextTime::at)));
    }
}
