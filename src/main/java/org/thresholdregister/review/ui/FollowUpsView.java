package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.DueCounts;
import org.thresholdregister.review.FollowUpColumn;
import org.thresholdregister.review.FollowUpFilter;
import org.thresholdregister.review.FollowUpRow;
import org.thresholdregister.review.FollowUpState;
import org.thresholdregister.review.TodayService;
import org.thresholdregister.roster.WorkerService;

/** All that is owed, to be narrowed down, ordered and answered. */
@Route(FollowUpAddress.ROUTE)
@PageTitle("Follow-ups · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class FollowUpsView extends Div implements HealthRecordPage, BeforeEnterObserver {

    private final transient TodayService today;
    private final ResultMessage result = new ResultMessage();
    private final Div lead = new Div();
    private final FilterBar filters = new FilterBar(FollowUpAddress.ROUTE, "Name or number", this::refresh);
    private final ListGrid<FollowUpRow, FollowUpColumn> list;
    private final Div empty = new Div();
    private transient FilterParameters parameters = FilterParameters.NONE;

    FollowUpsView(TodayService today, WorkerService workers, FollowUpDesk desk) {
        this.today = today;
        filters.choice(FollowUpAddress.KIND, "Owed", List.of(FollowUpKind.values()), Words::followUp)
                .choice(FollowUpAddress.STATE, "Due", List.of(FollowUpState.values()), FollowUpWords::state)
                .names(FollowUpAddress.SITE, "Site", workers.sites())
                .names(FollowUpAddress.DEPARTMENT, "Department", workers.departments());
        list = new ListGrid<>(
                "Follow-ups",
                FollowUpColumn.class,
                FollowUpColumns.all(desk.kindsToEnter()),
                FollowUpColumns.orders(),
                row -> Paths.worker(row.workerId()),
                row -> desk.answer(row, this::entered));
        filters.add(list.order());
        add(new H1("Follow-ups"), lead, result, filters, list, empty);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        filters.show(parameters);
        result.say("");
        refresh();
    }

    private void refresh() {
        FollowUpFilter filter = FollowUpAddress.filter(parameters, filters.searched());
        int shown = today.count(filter);
        DueCounts counts = today.counts();
        int all = counts.total();
        lead.removeAll();
        lead.add(
                filter.equals(FollowUpFilter.EVERYTHING)
                        ? FollowUpWords.ofAll(counts)
                        : FollowUpWords.ofSome(filter, shown, all));
        list.show(shown, (order, offset, limit) -> today.find(filter, order, offset, limit));
        empty.removeAll();
        if (shown == 0) {
            empty.add(
                    all == 0
                            ? new EmptyHint(
                                    "Nothing is owed to anyone that you may see.",
                                    "What is owed shows here once workers and their tests are on record.")
                            : new EmptyHint(
                                    "Nothing is owed that fits this filter.",
                                    "Choose less, or see them all.",
                                    new Anchor(
                                            FollowUpAddress.ROUTE,
                                            "See all " + Counted.of(all, "follow-up", "follow-ups"))));
        }
    }

    private void entered(String words) {
        refresh();
        result.say(words);
    }
}
