package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.ui.WorkerSection;
import org.thresholdregister.testdays.Booking;
import org.thresholdregister.testdays.BookingService;

/** The times that a worker has been given, on the worker's page. */
@org.springframework.stereotype.Component
class BookingSection implements WorkerSection {

    private static final int PLACE = 20;

    private final BookingService bookings;
    private final CurrentUser currentUser;

    BookingSection(BookingService bookings, CurrentUser currentUser) {
        this.bookings = bookings;
        this.currentUser = currentUser;
    }

    @Override
    public int place() {
        return PLACE;
    }

    @Override
    public Optional<Component> of(WorkerRecord record) {
        List<Booking> all = bookings.ofWorker(record.details().workerId());
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section(
                        new H2("Booked tests"), new ListTable<>("The latest first", columns(), all, row -> {})));
    }

    @Override
    public List<Anchor> actions(WorkerRecord record) {
        return currentUser.role() == Role.NURSE
                ? List.of(new Anchor(TestDayPaths.book(record.details().workerId()), "Book a test"))
                : List.of();
    }

    private static List<ListColumn<Booking, ?>> columns() {
        return List.of(
                ListColumn.unordered(
                        "Day",
                        10,
                        row -> ListCell.link(SchedulingWords.day(row.date()), TestDayPaths.day(row.dayKey()))
                                .withNote(SchedulingWords.time(row.starts()))),
                ListColumn.unordered("What for", 8, row -> ListCell.text(SchedulingWords.occasion(row.occasion()))),
                ListColumn.unordered(
                        "Before the test",
                        12,
                        row -> ListCell.text(SchedulingWords.quiet(row.quiet(), row.quietHours()))),
                ListColumn.unordered(
                        "State",
                        8,
                        row -> ListCell.state(BookingWords.kind(row.state()), BookingWords.state(row.state()))
                                .withNote(row.note())));
    }
}
