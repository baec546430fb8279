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
import org.thresholdregister.review.BoardColumn;
import org.thresholdregister.review.BoardCounts;
import org.thresholdregister.review.BoardFilter;
import org.thresholdregister.review.BoardFilter.Postponed;
import org.thresholdregister.review.BoardRow;
import org.thresholdregister.review.BoardService;

/** The first page of those who act: what is most urgent, what is due, what is new, and to whom it is owed. */
@Route("today")
@PageTitle("Today · Threshold Register")
@Menu(title = "Today", order = 10)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class TodayView extends Div implements HealthRecordPage {

    private static final int MOST_PRESSING = 20;

    private final transient BoardService board;
    private final transient AlterationService alterations;
    private final transient BoardDesk desk;
    private final ResultMessage result = new ResultMessage();
    private final Div lead = new Div();
    private final Div pressing = new Div();

    TodayView(BoardService board, AlterationService alterations, BoardDesk desk) {
        this.board = board;
        this.alterations = alterations;
        this.desk = desk;
        add(new H1("Today"), lead, result, pressing);
        refresh();
    }

    private void refresh() {
        lead.removeAll();
        pressing.removeAll();
        BoardCounts counts = board.counts();
        int all = counts.total();
        int altered = alterations.count();
        if (all == 0) {
            if (altered > 0) {
                lead.add(AlterationsView.sentence(altered));
            }
            lead.add(
                    new LeadSentence("Nothing is owed to anyone on " + Dates.onScreen(counts.today()) + "."),
                    new EmptyHint(
                            "No test, retest, notice or entry on the injury log is owed in what you may see.",
                            "What is owed shows here once workers and their tests are on record.",
                            new Anchor("import", "Import a roster and tests"),
                            new Anchor("workers", "See the workers on record")));
            return;
        }
        List<BoardRow> rows = board.find(
                BoardFilter.EVERYTHING.withPostponed(Postponed.NOT_POSTPONED),
                Order.ascending(BoardColumn.DUE_DATE),
                0,
                MOST_PRESSING);
        if (!rows.isEmpty()) {
            lead.add(BoardWords.mostUrgent(rows.getFirst()));
        }
        lead.add(BoardWords.ofToday(counts));
        if (altered > 0) {
            lead.add(AlterationsView.sentence(altered));
        }
        BoardWords.news(board.news()).ifPresent(lead::add);
        int postponed = board.count(BoardFilter.EVERYTHING.withPostponed(Postponed.POSTPONED));
        if (postponed > 0) {
            lead.add(BoardWords.postponed(postponed));
        }
        lead.add(new DueTable(counts), new H2("Most pressing"));
        pressing.add(new ListTable<>(
                "Overdue first, as of " + Dates.onScreen(counts.today()),
                BoardColumns.all(desk.kindsToEnter()),
                rows,
                row -> desk.answer(row, words -> entered(words, rows.indexOf(row)))));
        pressing.add(
                new Paragraph(new Anchor(BoardAddress.ROUTE, "See all " + Counted.of(all, "follow-up", "follow-ups"))));
    }

    private void entered(String words, int place) {
        refresh();
        result.sayBeside(words, pressing, place);
    }
}
