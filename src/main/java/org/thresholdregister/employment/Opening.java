package org.thresholdregister.employment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Placement;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.roster.WorkerDetails;

/** The life that a roster row tells by itself, from which everything later goes on. */
final class Opening {

    /** Who wrote down what the roster tells. */
    static final String BY = "(roster)";

    static final String REASON = "As the roster tells it";

    private Opening() {}

    static Placement place(WorkerDetails worker) {
        return new Placement(worker.site(), worker.department(), worker.jobTitle());
    }

    /** @param today the day of the beginning where the roster gives no date at all */
    static List<DatedEvent> of(WorkerDetails worker, LocalDate today) {
        List<DatedEvent> events = new ArrayList<>();
        LocalDate earliest = Stream.concat(worker.enrolledFrom().stream(), worker.endDate().stream())
                .min(LocalDate::compareTo)
                .filter(day -> day.isBefore(today))
                .orElse(today);
        events.add(worker.hireDate()
                .map(day -> new DatedEvent(day, new WorkEvent.Hired(place(worker))))
                .orElse(new DatedEvent(earliest, new WorkEvent.Listed(place(worker)))));
        worker.enrolledFrom().ifPresent(day -> events.add(new DatedEvent(day, new WorkEvent.Enrolled())));
        worker.endDate().ifPresent(day -> events.add(new DatedEvent(day, new WorkEvent.Left())));
        return List.copyOf(events);
    }
}
