package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.review.AlterationColumn;
import org.thresholdregister.review.AlterationRow;
import org.thresholdregister.review.AlterationService;
import org.thresholdregister.review.EarFinding;

/** The determinations that changed after a notice was given or a case recorded, until a person has seen to each. */
@Route(AlterationsView.ROUTE)
@PageTitle("Changed after a notice or an entry · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class AlterationsView extends Div implements HealthRecordPage, BeforeEnterObserver {

    static final String ROUTE = "changed-after";

    private final transient AlterationService alterations;
    private final ResultMessage result = new ResultMessage();
    private final Div lead = new Div();
    private final ListGrid<AlterationRow, AlterationColumn> list;
    private final Div empty = new Div();

    AlterationsView(AlterationService alterations) {
        this.alterations = alterations;
        list = new ListGrid<>(
                "Determinations that changed",
                AlterationColumn.class,
                columns(),
                orders(),
                row -> Paths.worker(row.workerId()),
                this::ask);
        list.orderedByAddress(ROUTE);
        var caution =
                new Paragraph("What was sent or recorded stands as it was. Whether the worker is told anew, an entry"
                        + " is made or one is lined out, a person decides.");
        caution.addClassName("tr-caution");
        add(new H1("Changed after a notice or an entry"), lead, caution, result, list.order(), list, empty);
        refresh();
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        list.show(FilterParameters.of(event.getLocation()));
    }

    /** {@code 3 determinations have changed after a notice was given or a case recorded: a person decides.} */
    static LeadSentence sentence(int altered) {
        return new LeadSentence()
                .link(Counted.of(altered, "determination has", "determinations have") + " changed", ROUTE)
                .text(" after a notice was given or a case recorded: a person decides.");
    }

    private void refresh() {
        int count = alterations.count();
        lead.removeAll();
        lead.add(
                count == 0
                        ? new LeadSentence("Nothing has changed that a notice was given or a case recorded on.")
                        : sentence(count));
        list.show(count, alterations::find);
        empty.removeAll();
        if (count == 0) {
            empty.add(new EmptyHint(
                    "Every such change that you may see has been acknowledged, or there was none.",
                    "What was acknowledged stands on the worker's page.",
                    new Anchor("today", "See what is due today")));
        }
    }

    private void ask(AlterationRow row) {
        new AcknowledgeDialog(
                        row.alteration(),
                        reason -> alterations.acknowledge(
                                row.workerId(), row.alteration().key(), reason),
                        () -> {
                            refresh();
                            result.say("Acknowledged for "
                                    + People.name(row.givenName(), row.familyName(), row.workerId()) + ".");
                        })
                .open();
    }

    private static List<ListColumn<AlterationRow, AlterationColumn>> columns() {
        return List.of(
                ListColumn.of(
                        "Worker",
                        AlterationColumn.NAME,
                        9,
                        row -> People.cell(
                                row.givenName(), row.familyName(), row.workerId(), row.site(), row.department())),
                ListColumn.of("Test", AlterationColumn.TEST_DATE, 6, AlterationsView::test),
                ListColumn.unordered(
                        "Before", 10, row -> finding(row.alteration().before())),
                ListColumn.unordered(
                        "Now",
                        10,
                        row -> row.alteration()
                                .after()
                                .map(AlterationsView::finding)
                                .orElse(ListCell.text("Not judged"))),
                ListColumn.of(
                        "State",
                        AlterationColumn.ALTERED_ON,
                        11,
                        row -> ListCell.state(Kind.OPEN, row.alteration().inWords())),
                ListColumn.unordered("", 6, AlterationsView::action));
    }

    private static Map<String, Order<AlterationColumn>> orders() {
        Map<String, Order<AlterationColumn>> orders = new LinkedHashMap<>();
        orders.put("open longest", Order.ascending(AlterationColumn.ALTERED_ON));
        orders.put("newest", Order.descending(AlterationColumn.ALTERED_ON));
        orders.put("name", Order.ascending(AlterationColumn.NAME));
        orders.put("number", Order.ascending(AlterationColumn.WORKER_ID));
        orders.put("site", Order.ascending(AlterationColumn.SITE));
        orders.put("department", Order.ascending(AlterationColumn.DEPARTMENT));
        return orders;
    }

    private static ListCell test(AlterationRow row) {
        return ListCell.figures(Dates.onScreen(row.alteration().testDate()))
                .withNote(Words.ear(row.alteration().ear()));
    }

    private static ListCell finding(EarFinding finding) {
        return ListCell.text(Words.capitalised(finding.answer())).withNote(finding.comparison());
    }

    private static ListCell action(AlterationRow row) {
        return row.alteration().mayAcknowledge()
                ? ListCell.action("Acknowledge", "Acknowledge, " + row.workerId())
                : ListCell.text("for a safety officer");
    }
}
