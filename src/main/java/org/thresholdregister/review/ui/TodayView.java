package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.review.AlterationService;
import org.thresholdregister.review.DueCounts;
import org.thresholdregister.review.FollowUpColumn;
import org.thresholdregister.review.FollowUpFilter;
import org.thresholdregister.review.FollowUpRow;
import org.thresholdregister.review.TodayService;

/** The first page of those who act: what is overdue, what is due, and to whom. */
@Route("today")
@PageTitle("Today · Threshold Register")
@Menu(title = "Today", order = 10)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class TodayView extends Div implements HealthRecordPage {

    private static final int MOST_PRESSING = 20;

    private final transient TodayService today;
    private final transient AlterationService alterations;
    private final transient FollowUpDesk desk;
    private final ResultMessage result = new ResultMessage();
    private final Div page = new Div();

    TodayView(TodayService today, AlterationService alterations, FollowUpDesk desk) {
        this.today = today;
        this.alterations = alterations;
        this.desk = desk;
        add(new H1("Today"), result, page);
        refresh();
    }

    private void refresh() {
        page.removeAll();
        int altered = alterations.count();
        if (altered > 0) {
            page.add(AlterationsView.sentence(altered));
        }
        DueCounts counts = today.counts();
        int all = counts.total();
        if (all == 0) {
            page.add(
                    new LeadSentence("Nothing is owed to anyone on " + Dates.onScreen(counts.today()) + "."),
                    new EmptyHint(
                            "No test, retest, notice or entry on the injury log is owed in what you may see.",
                            "What is owed shows here once workers and their tests are on record.",
                            new Anchor("import", "Import a roster and tests"),
                            new Anchor("workers", "See the workers on record")));
            return;
        }
        page.add(FollowUpWords.ofToday(counts), new DueTable(counts), new H2("Most pressing"));
        List<FollowUpRow> rows =
                today.find(FollowUpFilter.EVERYTHING, Order.ascending(FollowUpColumn.DUE_DATE), 0, MOST_PRESSING);
        page.add(new ListTable<>(
                "Overdue first, as of " + Dates.onScreen(counts.today()),
                FollowUpColumns.all(desk.kindsToEnter()),
                rows,
                row -> desk.answer(row, this::entered)));
        page.add(new Paragraph(
                new Anchor(FollowUpAddress.ROUTE, "See all " + Counted.of(all, "follow-up", "follow-ups"))));
    }

    private void entered(String words) {
        refresh();
        result.say(words);
    }
}
