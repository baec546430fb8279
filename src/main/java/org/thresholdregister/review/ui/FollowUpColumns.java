package org.thresholdregister.review.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.review.FollowUpColumn;
import org.thresholdregister.review.FollowUpRow;
import org.thresholdregister.review.FollowUpState;

/** The columns of a list of follow-ups. */
final class FollowUpColumns {

    private FollowUpColumns() {}

    static List<ListColumn<FollowUpRow, FollowUpColumn>> all(Set<DecisionKind> allowed) {
        return List.of(
                ListColumn.of("Worker", FollowUpColumn.NAME, 10, FollowUpColumns::worker),
                ListColumn.of("Owed", FollowUpColumn.KIND, 11, FollowUpColumns::owed),
                ListColumn.of("Due", FollowUpColumn.DUE_DATE, 10, FollowUpColumns::due),
                ListColumn.of("After test of", FollowUpColumn.TEST_DATE, 8, FollowUpColumns::test),
                ListColumn.of("Site", FollowUpColumn.SITE, 8, row -> ListCell.text(row.site())),
                ListColumn.of("Department", FollowUpColumn.DEPARTMENT, 7, row -> ListCell.text(row.department())),
                ListColumn.unordered("", 8, row -> action(row, allowed)));
    }

    static Map<String, Order<FollowUpColumn>> orders() {
        Map<String, Order<FollowUpColumn>> orders = new LinkedHashMap<>();
        orders.put("most pressing", Order.ascending(FollowUpColumn.DUE_DATE));
        orders.put("least pressing", Order.descending(FollowUpColumn.DUE_DATE));
        orders.put("name", Order.ascending(FollowUpColumn.NAME));
        orders.put("number", Order.ascending(FollowUpColumn.WORKER_ID));
        orders.put("site", Order.ascending(FollowUpColumn.SITE));
        orders.put("department", Order.ascending(FollowUpColumn.DEPARTMENT));
        return orders;
    }

    private static ListCell worker(FollowUpRow row) {
        return People.cell(row.givenName(), row.familyName(), row.workerId());
    }

    private static ListCell owed(FollowUpRow row) {
        return ListCell.text(Words.followUp(row.kind())).withNote(row.basis().place());
    }

    private static ListCell due(FollowUpRow row) {
        Kind kind = row.state() == FollowUpState.OVERDUE ? Kind.OVERDUE : Kind.OPEN;
        return ListCell.state(kind, Counted.daysLeft(row.daysLeft())).withNote(Dates.onScreen(row.dueDate()));
    }

    private static ListCell test(FollowUpRow row) {
        return row.testDate()
                .map(day -> ListCell.figures(Dates.onScreen(day)).withNote(ears(row)))
                .orElse(ListCell.text("no test yet"));
    }

    /** A test is owed to the worker, not to an ear. */
    private static String ears(FollowUpRow row) {
        return switch (row.kind()) {
            case RETEST, NOTICE, RECORD -> Words.ears(row.ears());
            case ANNUAL_TEST, BASELINE_TEST -> row.ears() == Ears.BOTH ? "" : Words.ears(row.ears());
        };
    }

    private static ListCell action(FollowUpRow row, Set<DecisionKind> allowed) {
        return FollowUpEntry.settling(row, allowed)
                .map(FollowUpEntry::button)
                .map(words -> ListCell.action(words, words + ", " + row.workerId()))
                .orElse(ListCell.EMPTY);
    }
}
