package org.thresholdregister.review.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.ProposalWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.review.ProposalColumn;
import org.thresholdregister.review.ProposalRow;

/** The columns of a list of baseline proposals. */
final class ProposalColumns {

    private ProposalColumns() {}

    static List<ListColumn<ProposalRow, ProposalColumn>> all() {
        return List.of(
                ListColumn.of("Worker", ProposalColumn.NAME, 10, ProposalColumns::worker),
                ListColumn.of(
                        "Ear",
                        ProposalColumn.EAR,
                        4,
                        row -> ListCell.text(row.ear().word())),
                ListColumn.of("Proposed for a", ProposalColumn.KIND, 8, ProposalColumns::kind),
                ListColumn.of(
                        "Baseline now", ProposalColumn.FROM, 6, row -> ListCell.figures(Dates.onScreen(row.from()))),
                ListColumn.of(
                        "Proposed baseline", ProposalColumn.TO, 6, row -> ListCell.figures(Dates.onScreen(row.to()))),
                ListColumn.unordered("Rests on the tests of", 7, ProposalColumns::evidence),
                ListColumn.of("Open for", ProposalColumn.OPEN_SINCE, 8, ProposalColumns::age));
    }

    static Map<String, Order<ProposalColumn>> orders() {
        Map<String, Order<ProposalColumn>> orders = new LinkedHashMap<>();
        orders.put("open longest", Order.ascending(ProposalColumn.OPEN_SINCE));
        orders.put("newest", Order.descending(ProposalColumn.OPEN_SINCE));
        orders.put("name", Order.ascending(ProposalColumn.NAME));
        orders.put("number", Order.ascending(ProposalColumn.WORKER_ID));
        orders.put("site", Order.ascending(ProposalColumn.SITE));
        orders.put("department", Order.ascending(ProposalColumn.DEPARTMENT));
        return orders;
    }

    private static ListCell worker(ProposalRow row) {
        return People.cell(row.givenName(), row.familyName(), row.workerId(), row.site(), row.department());
    }

    private static ListCell kind(ProposalRow row) {
        return ListCell.link(
                Words.capitalised(ProposalWording.kind(row.kind())), ProposalAddress.of(row.workerId(), row.ear()));
    }

    private static ListCell evidence(ProposalRow row) {
        return ListCell.figures(Dates.onScreen(row.firstTest())).withNote("and " + Dates.onScreen(row.secondTest()));
    }

    private static ListCell age(ProposalRow row) {
        return ListCell.state(Kind.OPEN, Counted.of(Math.toIntExact(row.daysOpen()), "day", "days"))
                .withNote("since " + Dates.onScreen(row.secondTest()));
    }
}
