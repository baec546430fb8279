package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.TrainingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.protection.TrainingColumn;
import org.thresholdregister.protection.TrainingRow;
import org.thresholdregister.protection.TrainingService;
import org.thresholdregister.protection.TrainingSession;
import org.thresholdregister.roster.WorkerService;

/** Who is due for the yearly training, and the trainings that were held. */
@Route(TrainingView.ROUTE)
@PageTitle("Training · Threshold Register")
@Menu(title = "Training", order = 74)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class TrainingView extends Div implements BeforeEnterObserver {

    static final String ROUTE = "training";

    private static final String SITE = "site";
    private static final String DEPARTMENT = "department";
    private static final String WHEN = "when";
    private static final int SOON_DAYS = 30;
    private static final int SESSIONS_SHOWN = 20;

    /** Whether training is owed now, or in the days to come. */
    private enum When {
        OVERDUE,
        SOON
    }

    private final transient TrainingService trainings;
    private final LocalDate today;
    private final Div lead = new Div();
    private final FilterBar filters = new FilterBar(ROUTE, "Name or number", this::refresh);
    private final ListGrid<TrainingRow, TrainingColumn> list;
    private final Div empty = new Div();
    private final Div print = new Div();
    private final Div sessions = new Div();
    private transient FilterParameters parameters = FilterParameters.NONE;

    TrainingView(TrainingService trainings, WorkerService workers, Clock clock) {
        this.trainings = trainings;
        this.today = LocalDate.now(clock);
        filters.choice(WHEN, "Due", List.of(When.values()), when -> when(when))
                .names(SITE, "Site", workers.sites())
                .names(DEPARTMENT, "Department", workers.departments());
        list = new ListGrid<>(
                "Who is to be trained",
                TrainingColumn.class,
                columns(),
                orders(),
                row -> Paths.worker(row.workerId()),
                row -> {});
        filters.add(list.order());
        var actions = new Div(new Anchor(TrainingEntryView.ROUTE, "Enter a training"), print);
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        add(new H1("Training"), lead, actions, filters, list, empty, sessions);
    }

    private static String when(When when) {
        return switch (when) {
            case OVERDUE -> "overdue";
            case SOON -> "by " + SOON_DAYS + " days from now";
        };
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        filters.show(parameters);
        refresh();
    }

    private void refresh() {
        Optional<String> site = parameters.text(SITE);
        Optional<String> department = parameters.text(DEPARTMENT);
        Optional<When> when = parameters.choice(WHEN, When.class);
        LocalDate soon = today.plusDays(SOON_DAYS);
        List<TrainingRow> here = trainings.due().stream()
                .filter(row -> site.filter(some -> !some.equals(row.site())).isEmpty())
                .filter(row -> department
                        .filter(some -> !some.equals(row.department()))
                        .isEmpty())
                .filter(row -> Fields.matches(filters.searched(), row.name() + " " + row.workerId()))
                .toList();
        List<TrainingRow> shown = here.stream()
                .filter(row -> when.map(some -> switch (some) {
                            case OVERDUE -> row.due().isBefore(today);
                            case SOON -> !row.due().isAfter(soon);
                        })
                        .orElse(true))
                .toList();
        int overdue =
                (int) here.stream().filter(row -> row.due().isBefore(today)).count();
        int bySoon = (int) here.stream().filter(row -> !row.due().isAfter(soon)).count();
        lead.removeAll();
        lead.add(new LeadSentence()
                .link(
                        Counted.of(overdue, "person is", "people are") + " overdue for training",
                        address(Optional.of(When.OVERDUE)))
                .text(", ")
                .link(bySoon + " are due by " + Words.day(soon), address(Optional.of(When.SOON)))
                .text(", of ")
                .link(Counted.of(here.size(), "person", "people"), address(Optional.empty()))
                .text(" to whom training is owed" + Place.phrase(site, department) + "."));
        here.stream()
                .map(TrainingRow::rule)
                .distinct()
                .map(TrainingWords::rule)
                .forEach(rule -> lead.add(new Paragraph(rule.withBasis())));
        list.show(
                shown.size(),
                (order, offset, limit) -> shown.stream()
                        .sorted(order.column().comparator(order.descending()))
                        .skip(offset)
                        .limit(limit)
                        .toList());
        empty.removeAll();
        if (shown.isEmpty()) {
            empty.add(new EmptyHint(
                    here.isEmpty()
                            ? "Training is owed to nobody in what you may see."
                            : "Nobody to be trained fits this choice.",
                    "It is owed to those enrolled in the programme, where the site's rule set asks for it."));
        }
        showPrint(site, department, soon, bySoon);
        showSessions(site);
    }

    private String address(Optional<When> when) {
        return parameters.withChoice(WHEN, when).pathOf(ROUTE);
    }

    private void showPrint(Optional<String> site, Optional<String> department, LocalDate until, int due) {
        print.removeAll();
        if (site.isPresent() && due > 0) {
            print.add(Downloads.link(
                    "Attendance sheet of those due by " + Words.day(until) + " (PDF)",
                    "attendance-sheet-" + today + ".pdf",
                    "application/pdf",
                    out -> out.write(trainings.sheetOfDue(site.get(), department, until))));
        } else {
            print.add(new Paragraph("Choose a site to print an attendance sheet of those who are due."));
        }
    }

    private void showSessions(Optional<String> site) {
        sessions.removeAll();
        sessions.add(new H2("Trainings held"));
        List<TrainingSession> held = trainings.sessions().stream()
                .filter(session -> site.filter(
                                some -> !some.equals(session.details().site()))
                        .isEmpty())
                .toList();
        if (held.isEmpty()) {
            sessions.add(new EmptyHint(
                    "No training is on record.",
                    "Enter one with its day, what it covered and who took part.",
                    new Anchor(TrainingEntryView.ROUTE, "Enter a training")));
            return;
        }
        if (held.size() > SESSIONS_SHOWN) {
            sessions.add(new Paragraph("The latest " + SESSIONS_SHOWN + " of " + held.size() + " are shown."));
        }
        List<ListColumn<TrainingSession, ?>> columns = List.of(
                ListColumn.unordered(
                        "Day",
                        8,
                        row -> ListCell.link(
                                Words.day(row.details().heldOn()), TrainingSessionView.ROUTE + "/" + row.key())),
                ListColumn.unordered(
                        "Site",
                        10,
                        row -> ListCell.text(Place.name(row.details().site()))),
                ListColumn.unordered(
                        "Topics",
                        12,
                        row -> ListCell.text(TrainingWords.topics(row.details().topics()))),
                ListColumn.unordered(
                        "Trainer", 10, row -> ListCell.text(row.details().trainer())),
                ListColumn.unordered("Took part", 6, row -> ListCell.figures(Integer.toString(row.present()))),
                ListColumn.unordered(
                        "Signed sheet",
                        8,
                        row -> row.sheet().isPresent()
                                ? ListCell.state(Kind.DONE, "kept")
                                : ListCell.state(Kind.OPEN, "not scanned")));
        sessions.add(new ListTable<>(
                "The latest first", columns, held.stream().limit(SESSIONS_SHOWN).toList(), row -> {}));
    }

    private List<ListColumn<TrainingRow, TrainingColumn>> columns() {
        return List.of(
                ListColumn.of(
                        "Name",
                        TrainingColumn.NAME,
                        10,
                        row -> ListCell.link(row.name(), Paths.worker(row.workerId()))
                                .withNote(row.workerId())),
                ListColumn.of(
                        "Department",
                        TrainingColumn.DEPARTMENT,
                        9,
                        row -> ListCell.text(row.department()).withNote(Place.name(row.site()))),
                ListColumn.of("Last", TrainingColumn.LAST, 9, row -> ListCell.text(TrainingWords.last(row.last()))),
                ListColumn.of("Due", TrainingColumn.DUE, 8, row -> ListCell.figures(Words.day(row.due()))),
                ListColumn.unordered(
                        "State",
                        9,
                        row -> ListCell.state(
                                row.due().isBefore(today) ? Kind.OVERDUE : Kind.OPEN,
                                Counted.daysLeft(ChronoUnit.DAYS.between(today, row.due())))));
    }

    private static Map<String, Order<TrainingColumn>> orders() {
        Map<String, Order<TrainingColumn>> orders = new LinkedHashMap<>();
        orders.put("due first", Order.ascending(TrainingColumn.DUE));
        orders.put("name", Order.ascending(TrainingColumn.NAME));
        orders.put("department", Order.ascending(TrainingColumn.DEPARTMENT));
        orders.put("trained longest ago", Order.ascending(TrainingColumn.LAST));
        return orders;
    }
}
