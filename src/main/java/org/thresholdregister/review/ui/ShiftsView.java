package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.ShiftColumn;
import org.thresholdregister.review.ShiftCounts;
import org.thresholdregister.review.ShiftFilter;
import org.thresholdregister.review.ShiftReviewService;
import org.thresholdregister.review.ShiftRow;
import org.thresholdregister.roster.WorkerService;

/** The shifts of a year, ear by ear, for review. */
@Route(ShiftAddress.ROUTE)
@PageTitle("Shifts · Threshold Register")
@Menu(title = "Shifts", order = 30)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class ShiftsView extends Div implements HealthRecordPage, BeforeEnterObserver {
    private static final List<Recordability> RECORDABILITIES =
            List.copyOf(EnumSet.complementOf(EnumSet.of(Recordability.NOT_ASKED)));

    private static final List<Outcome> OUTCOMES =
            List.of(Outcome.CONFIRMED, Outcome.NOT_CONFIRMED, Outcome.AWAITING_RETEST);

    private final transient ShiftReviewService shifts;
    private final int thisYear;
    private final Div lead = new Div();
    private final FilterBar filters = new FilterBar(ShiftAddress.ROUTE, "Name or number", this::refresh);
    private final ListGrid<ShiftRow, ShiftColumn> list;
    private final Div empty = new Div();
    private transient FilterParameters parameters = FilterParameters.NONE;

    ShiftsView(ShiftReviewService shifts, WorkerService workers, Clock clock) {
        this.shifts = shifts;
        LocalDate today = LocalDate.now(clock);
        thisYear = today.getYear();
        var years = new TreeSet<>(shifts.years());
        years.add(thisYear);
        filters.years(ShiftAddress.YEAR, "Year", List.copyOf(years.descendingSet()), thisYear)
                .choice(ShiftAddress.OUTCOME, "Outcome", OUTCOMES, Words::outcome)
                .choice(ShiftAddress.RECORDABLE, "Recordable", RECORDABILITIES, Words::recordability)
                .names(ShiftAddress.SITE, "Site", workers.sites())
                .names(ShiftAddress.DEPARTMENT, "Department", workers.departments());
        list = new ListGrid<>(
                "Shifts",
                ShiftColumn.class,
                ShiftColumns.asOf(today),
                ShiftColumns.orders(),
                row -> Paths.worker(row.workerId()),
                row -> {});
        var caution = new Paragraph(Words.CAUTION + " Each ear counts for itself; the summary of the year counts a"
                + " person with both ears on one day once.");
        caution.addClassName("tr-caution");
        list.orderedByAddress(ShiftAddress.ROUTE);
        filters.add(list.order());
        add(new H1("Shifts"), lead, caution, filters, list, empty);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        filters.show(parameters);
        list.show(parameters);
        refresh();
    }

    private void refresh() {
        ShiftFilter filter = ShiftAddress.filter(parameters, thisYear, filters.searched());
        ShiftFilter ofYear = ShiftAddress.withoutOutcome(filter);
        ShiftCounts counts = shifts.counts(ofYear);
        int shown = filter.equals(ofYear) ? counts.total() : shifts.count(filter);
        lead.removeAll();
        lead.add(ShiftSentence.of(ofYear, counts));
        list.show(shown, (order, offset, limit) -> shifts.find(filter, order, offset, limit));
        empty.removeAll();
        if (shown == 0) {
            empty.add(emptyHint(filter, counts.total()));
        }
    }

    private static EmptyHint emptyHint(ShiftFilter filter, int ofYear) {
        return ofYear > 0
                ? new EmptyHint(
                        "No shift fits this filter.",
                        "Choose less, or see all of the year.",
                        new Anchor(
                                ShiftAddress.of(ShiftFilter.ofYear(filter.year()), Optional.empty(), Optional.empty()),
                                "See all shifts of " + filter.year()))
                : new EmptyHint(
                        "No test of " + filter.year() + " that you may see shows a standard threshold shift.",
                        "Choose another year or site, or see the workers on record.",
                        new Anchor("workers", "See the workers on record"));
    }
}
