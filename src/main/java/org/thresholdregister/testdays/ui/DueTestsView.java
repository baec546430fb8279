package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.WorkShift;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.roster.WorkerService;
import org.thresholdregister.testdays.DuePerson;
import org.thresholdregister.testdays.DueTestColumn;
import org.thresholdregister.testdays.DueTestFilter;
import org.thresholdregister.testdays.DueTestService;
import org.thresholdregister.testdays.WorkShiftService;

/** Everybody who is due for a test, to be narrowed down and booked. */
@Route(TestDayPaths.DUE)
@PageTitle("Due tests · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class DueTestsView extends Div implements HealthRecordPage, BeforeEnterObserver {

    private static final String DUE_BY = "due-by";
    private static final String OCCASION = "for";
    private static final String BOOKED = "booked";
    private static final String SITE = "site";
    private static final String DEPARTMENT = "department";
    private static final String SHIFT = "shift";

    /** How far ahead the list looks unless the address says otherwise; our choice. */
    private static final int DAYS_AHEAD = 30;

    private final transient DueTestService due;
    private final LocalDate today;
    private final FilterBar filters = new FilterBar(TestDayPaths.DUE, "Name or number", this::refresh);
    private final Div lead = new Div();
    private final Div empty = new Div();
    private final ListGrid<DuePerson, DueTestColumn> list;
    private transient FilterParameters parameters = FilterParameters.NONE;

    DueTestsView(
            DueTestService due, WorkerService workers, WorkShiftService shifts, CurrentUser currentUser, Clock clock) {
        this.due = due;
        this.today = LocalDate.now(clock);
        List<String> shiftNames = Stream.concat(
                        Stream.of(""),
                        shifts.shifts().stream().map(shift -> shift.shift().name()))
                .distinct()
                .toList();
        filters.day(DUE_BY, "Due by")
                .choice(OCCASION, "For", List.of(Occasion.values()), SchedulingWords::occasion)
                .choice(BOOKED, "Booked", List.of(DueTestFilter.Booked.values()), BookingWords::booked)
                .names(SITE, "Site", workers.sites())
                .names(DEPARTMENT, "Department", workers.departments())
                .names(SHIFT, "Shift", shiftNames);
        boolean mayBook = currentUser.role() == Role.NURSE;
        list = new ListGrid<>(
                "Due tests",
                DueTestColumn.class,
                columns(mayBook),
                orders(),
                row -> mayBook
                        ? TestDayPaths.book(row.worker().workerId())
                        : Paths.worker(row.worker().workerId()),
                row -> {});
        filters.add(list.order());
        add(new H1("Due tests"), lead, filters, list, empty);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        filters.show(parameters);
        refresh();
    }

    private DueTestFilter filter() {
        return new DueTestFilter(
                parameters.day(DUE_BY).orElse(today.plusDays(DAYS_AHEAD)),
                parameters.choice(OCCASION, Occasion.class),
                parameters.choice(BOOKED, DueTestFilter.Booked.class),
                parameters.text(SITE),
                parameters.text(DEPARTMENT),
                parameters.text(SHIFT),
                filters.searched());
    }

    private void refresh() {
        DueTestFilter filter = filter();
        List<DuePerson> people = due.find(filter);
        long overdue = people.stream()
                .filter(person -> person.due().lastDay().isBefore(today))
                .count();
        lead.removeAll();
        lead.add(new LeadSentence(Counted.of(people.size(), "test is", "tests are") + " due by "
                + Words.day(filter.dueBy()) + " among those shown, " + (overdue == 0 ? "none" : overdue)
                + " of them past the last day."));
        list.show(
                people.size(),
                (order, offset, limit) -> people.stream()
                        .sorted(order.column().in(order.descending()))
                        .skip(offset)
                        .limit(limit)
                        .toList());
        empty.removeAll();
        if (people.isEmpty()) {
            empty.add(new EmptyHint(
                    "No test is due that fits this filter.",
                    "Choose less, or a later day.",
                    new Anchor(TestDayPaths.DUE, "See all that are due within " + DAYS_AHEAD + " days")));
        }
    }

    private static Map<String, Order<DueTestColumn>> orders() {
        Map<String, Order<DueTestColumn>> orders = new LinkedHashMap<>();
        orders.put("most urgent", Order.ascending(DueTestColumn.URGENCY));
        orders.put("name", Order.ascending(DueTestColumn.NAME));
        orders.put("department", Order.ascending(DueTestColumn.DEPARTMENT));
        return orders;
    }

    private List<ListColumn<DuePerson, DueTestColumn>> columns(boolean mayBook) {
        return List.of(
                ListColumn.of(
                        "Worker",
                        DueTestColumn.NAME,
                        10,
                        row -> ListCell.link(
                                        row.name(), Paths.worker(row.worker().workerId()))
                                .withNote(row.worker().workerId())),
                ListColumn.unordered(
                        "Due",
                        11,
                        row -> ListCell.text(SchedulingWords.occasion(row.due().occasion()))
                                .withNote(row.due().basis().place())),
                ListColumn.of("In time until", DueTestColumn.URGENCY, 9, this::lastDay),
                ListColumn.unordered(
                        "Shift",
                        7,
                        row -> ListCell.text(
                                row.due().shift().map(WorkShift::name).orElse("not known"))),
                ListColumn.of(
                        "Department",
                        DueTestColumn.DEPARTMENT,
                        8,
                        row -> ListCell.text(row.worker().department())
                                .withNote(row.worker().site())),
                ListColumn.unordered("Booked", 10, row -> booked(row, mayBook)));
    }

    private ListCell lastDay(DuePerson row) {
        long left = row.due().daysLeft(today);
        return ListCell.state(left < 0 ? StateBadge.Kind.OVERDUE : StateBadge.Kind.OPEN, Counted.daysLeft(left))
                .withNote(Words.day(row.due().lastDay()));
    }

    private static ListCell booked(DuePerson row, boolean mayBook) {
        String missed = SchedulingWords.missed(row.due().missed());
        return row.booking()
                .map(time -> ListCell.link(Words.day(time.date()), TestDayPaths.day(time.dayKey())))
                .orElse(
                        mayBook
                                ? ListCell.link(
                                        "Book a test",
                                        TestDayPaths.book(row.worker().workerId()))
                                : ListCell.text("no time yet"))
                .withNote(missed);
    }
}
