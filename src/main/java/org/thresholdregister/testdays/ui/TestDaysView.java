package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.roster.WorkerService;
import org.thresholdregister.testdays.DueTestFilter;
import org.thresholdregister.testdays.DueTestService;
import org.thresholdregister.testdays.PlannedDays;
import org.thresholdregister.testdays.TestDayCounts;
import org.thresholdregister.testdays.TestDayService;
import org.thresholdregister.testdays.TestSiteService;

/** The days on which tests are made. */
@Route(TestDayPaths.DAYS)
@PageTitle("Test days · Threshold Register")
@Menu(title = "Test days", order = 17)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class TestDaysView extends Div implements BeforeEnterObserver {

    /** How many days ahead the first sentence looks. */
    private static final int DAYS_AHEAD = 30;

    private final transient TestDayService days;
    private final transient DueTestService due;
    private final LocalDate today;
    private final Div content = new Div();

    TestDaysView(
            TestDayService days,
            DueTestService due,
            TestSiteService sites,
            WorkerService workers,
            CurrentUser currentUser,
            Clock clock) {
        this.days = days;
        this.due = due;
        this.today = LocalDate.now(clock);
        var links = new Div(
                new Anchor(TestDayPaths.DUE, "Who is due"),
                new Anchor(TestDayPaths.SHIFTS, "Work shifts"),
                new Anchor(TestDayPaths.WAITING, "Protectors until the baseline"),
                new Anchor(TestDayPaths.CALENDAR, "Calendar"));
        links.addClassName("tr-page-actions");
        add(new H1("Test days"), content, links);
        if (currentUser.role() == Role.NURSE) {
            add(
                    new H2("Plan a test day"),
                    new PlanDaysForm(workers.sites(), sites::of, currentUser.username(), planned -> {
                        PlannedDays result = days.plan(planned);
                        if (result instanceof PlannedDays.Stored stored) {
                            UI.getCurrent().navigate(TestDayPaths.day(stored.firstKey()));
                        }
                        return result;
                    }));
        }
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        List<TestDayCounts> all = days.days();
        long withoutTime = due.find(DueTestFilter.all(today.plusDays(DAYS_AHEAD))).stream()
                .filter(person -> person.booking().isEmpty())
                .map(person -> person.worker().workerId())
                .distinct()
                .count();
        content.removeAll();
        content.add(lead(all, Math.toIntExact(withoutTime)));
        content.add(
                all.isEmpty()
                        ? new EmptyHint(
                                "No test day is planned.",
                                "A nurse plans a day below; then those who are due can be proposed for it.")
                        : new ListTable<>("Days to come first", columns(), all, row -> {}));
    }

    private LeadSentence lead(List<TestDayCounts> all, int withoutTime) {
        List<TestDayCounts> ahead = all.stream()
                .filter(row -> !row.day().cancelled() && !row.day().date().isBefore(today))
                .toList();
        var lead = new LeadSentence();
        if (ahead.isEmpty()) {
            lead.text("No test day is ahead; ");
        } else {
            TestDayCounts next = ahead.getFirst();
            lead.link(
                            SchedulingWords.people(next.day().date(), next.people(), next.retests()),
                            TestDayPaths.day(next.day().key()))
                    .text(
                            ahead.size() == 1
                                    ? ", the only day ahead; "
                                    : ", the first of " + ahead.size() + " days ahead; ");
        }
        return lead.link(
                        Counted.of(withoutTime, "person", "people") + " due within " + DAYS_AHEAD + " days",
                        TestDayPaths.DUE + "?booked=without-a-time")
                .text(withoutTime == 1 ? " has no time yet." : " have no time yet.");
    }

    private List<ListColumn<TestDayCounts, ?>> columns() {
        return List.of(
                ListColumn.unordered(
                        "Day",
                        10,
                        row -> ListCell.link(
                                        SchedulingWords.day(row.day().date()),
                                        TestDayPaths.day(row.day().key()))
                                .withNote(SchedulingWords.time(row.day().hours().from()) + " to "
                                        + SchedulingWords.time(row.day().hours().to()))),
                ListColumn.unordered(
                        "Place",
                        12,
                        row -> ListCell.text(row.day().place())
                                .withNote(row.day().site() + (row.day().mobileUnit() ? ", mobile unit" : ""))),
                ListColumn.unordered("People", 5, row -> ListCell.figures(Integer.toString(row.people()))),
                ListColumn.unordered("Retests", 5, row -> ListCell.figures(Integer.toString(row.retests()))),
                ListColumn.unordered("Free times", 5, row -> ListCell.figures(Integer.toString(row.freeTimes()))),
                ListColumn.unordered("State", 10, this::state));
    }

    private ListCell state(TestDayCounts row) {
        if (row.day().cancelled()) {
            return ListCell.state(StateBadge.Kind.DONE, "called off");
        }
        if (row.day().date().isBefore(today)) {
            return ListCell.state(StateBadge.Kind.DONE, "over");
        }
        return row.proposed() > 0
                ? ListCell.state(StateBadge.Kind.UNDECIDED, row.proposed() + " not confirmed")
                : row.people() == 0
                        ? ListCell.state(StateBadge.Kind.OPEN, "empty")
                        : ListCell.state(StateBadge.Kind.OPEN, "confirmed");
    }
}
