package org.thresholdregister.roster.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
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
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.roster.WorkerColumn;
import org.thresholdregister.roster.WorkerFilter;
import org.thresholdregister.roster.WorkerFilter.Status;
import org.thresholdregister.roster.WorkerRow;
import org.thresholdregister.roster.WorkerService;

/** All workers on the roster, to be found and opened. */
@Route(WorkerAddress.ROUTE)
@PageTitle("Workers · Threshold Register")
@Menu(title = "Workers", order = 20)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class WorkersView extends Div implements HealthRecordPage, BeforeEnterObserver {

    private final transient WorkerService workers;
    private final Div lead = new Div();
    private final FilterBar filters = new FilterBar(WorkerAddress.ROUTE, "Name or number", this::refresh);
    private final ListGrid<WorkerRow, WorkerColumn> list;
    private final Div empty = new Div();
    private transient FilterParameters parameters = FilterParameters.NONE;

    WorkersView(WorkerService workers, Clock clock) {
        this.workers = workers;
        filters.choice(WorkerAddress.STATUS, "Status", List.of(Status.ACTIVE, Status.LEFT), WorkerWords::status)
                .names(WorkerAddress.SITE, "Site", workers.sites())
                .names(WorkerAddress.DEPARTMENT, "Department", workers.departments());
        list = new ListGrid<>(
                "Workers",
                WorkerColumn.class,
                WorkerColumns.asOf(LocalDate.now(clock)),
                WorkerColumns.orders(),
                row -> Paths.worker(row.workerId()),
                row -> {});
        list.orderedByAddress(WorkerAddress.ROUTE);
        filters.add(list.order());
        add(new H1("Workers"), lead, filters, list, empty);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        filters.show(parameters);
        list.show(parameters);
        refresh();
    }

    private void refresh() {
        WorkerFilter filter = WorkerAddress.filter(parameters, filters.searched());
        int shown = workers.count(filter);
        int active = workers.count(WorkerAddress.withStatus(filter, Status.ACTIVE));
        int left = workers.count(WorkerAddress.withStatus(filter, Status.LEFT));
        lead.removeAll();
        lead.add(WorkerWords.sentence(filter, active, left));
        list.show(shown, (order, offset, limit) -> workers.find(filter, order, offset, limit));
        empty.removeAll();
        if (shown == 0) {
            empty.add(emptyHint());
        }
    }

    private EmptyHint emptyHint() {
        int all = workers.count(WorkerFilter.EVERYONE);
        return all == 0
                ? new EmptyHint(
                        "No worker is on record in what you may see.",
                        "Workers show here once a roster has been imported.",
                        new Anchor("import", "Import a roster"))
                : new EmptyHint(
                        "No worker fits this search.",
                        "Type fewer letters, choose less, or see them all.",
                        new Anchor(WorkerAddress.ROUTE, "See all " + Counted.of(all, "worker", "workers")));
    }
}
