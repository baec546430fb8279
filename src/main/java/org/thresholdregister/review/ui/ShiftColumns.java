package org.thresholdregister.review.ui;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.ValidityWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.review.ShiftColumn;
import org.thresholdregister.review.ShiftRow;

/** The columns of a list of shifts. */
final class ShiftColumns {

    private ShiftColumns() {}

    static List<ListColumn<ShiftRow, ShiftColumn>> asOf(LocalDate today) {
        return List.of(
                ListColumn.of("Worker", ShiftColumn.NAME, 9, ShiftColumns::worker),
                ListColumn.of("Test", ShiftColumn.TEST_DATE, 7, ShiftColumns::test),
                ListColumn.of(
                        "Ear",
                        ShiftColumn.EAR,
                        4,
                        row -> ListCell.text(row.ear().word())),
                ListColumn.of("Mean shift (dB)", ShiftColumn.SHIFT, 6, row -> mean(row.shiftSum())),
                ListColumn.of("Mean level (dB HL)", ShiftColumn.LEVEL, 6, row -> mean(row.levelSum())),
                ListColumn.of("Outcome", ShiftColumn.OUTCOME, 10, row -> outcome(row, today)),
                ListColumn.of("Recordable", ShiftColumn.RECORDABLE, 7, row -> recordable(row)),
                ListColumn.of("Notice by", ShiftColumn.NOTIFY_BY, 7, row -> notice(row, today)),
                ListColumn.of("Record by", ShiftColumn.RECORD_BY, 7, row -> entry(row, today)));
    }

    static Map<String, Order<ShiftColumn>> orders() {
        Map<String, Order<ShiftColumn>> orders = new LinkedHashMap<>();
        orders.put("latest test", Order.descending(ShiftColumn.TEST_DATE));
        orders.put("earliest test", Order.ascending(ShiftColumn.TEST_DATE));
        orders.put("name", Order.ascending(ShiftColumn.NAME));
        orders.put("number", Order.ascending(ShiftColumn.WORKER_ID));
        orders.put("ear", Order.ascending(ShiftColumn.EAR));
        orders.put("greatest shift", Order.descending(ShiftColumn.SHIFT));
        orders.put("greatest level", Order.descending(ShiftColumn.LEVEL));
        orders.put("outcome", Order.ascending(ShiftColumn.OUTCOME));
        orders.put("recordability", Order.ascending(ShiftColumn.RECORDABLE));
        orders.put("retest due", Order.ascending(ShiftColumn.RETEST_BY));
        orders.put("notice due", Order.ascending(ShiftColumn.NOTIFY_BY));
        orders.put("record due", Order.ascending(ShiftColumn.RECORD_BY));
        orders.put("settled first", Order.ascending(ShiftColumn.SETTLED_ON));
        orders.put("site", Order.ascending(ShiftColumn.SITE));
        orders.put("department", Order.ascending(ShiftColumn.DEPARTMENT));
        return orders;
    }

    private static ListCell worker(ShiftRow row) {
        return People.cell(row.givenName(), row.familyName(), row.workerId(), row.site(), row.department());
    }

    /** Doubts only: nearly every test that shows a shift has the note that it is worse than the one before. */
    private static ListCell test(ShiftRow row) {
        String purpose = Words.purpose(row.purpose());
        FlagCount doubts = row.flags().withoutNotes();
        return ListCell.figures(Dates.onScreen(row.testDate()))
                .withNote(doubts.isNone() ? purpose : purpose + ", " + ValidityWords.count(doubts));
    }

    private static ListCell mean(OptionalInt sum) {
        return sum.isPresent()
                ? ListCell.figures(MeanOfThree.ofSum(sum.getAsInt()))
                : ListCell.text("no single number");
    }

    private static ListCell outcome(ShiftRow row, LocalDate today) {
        Kind kind = row.outcome() == Outcome.AWAITING_RETEST ? Kind.OPEN : Kind.DONE;
        return ListCell.state(kind, Words.outcome(row.outcome())).withNote(retest(row, today));
    }

    /** Where the retest stands, and when the outcome was settled. */
    private static String retest(ShiftRow row, LocalDate today) {
        if (row.retestBy().isPresent()) {
            LocalDate last = row.retestBy().get();
            return "optional retest by " + Dates.onScreen(last) + ", "
                    + Counted.daysLeft(ChronoUnit.DAYS.between(today, last));
        }
        return row.laterRetest()
                .map(day -> "settled by the retest of " + Dates.onScreen(day))
                .or(() -> row.settledOn().map(day -> "settled by the test of " + Dates.onScreen(day)))
                .orElse("");
    }

    private static ListCell recordable(ShiftRow row) {
        return ListCell.text(Words.recordability(row.recordable()));
    }

    private static ListCell notice(ShiftRow row, LocalDate today) {
        return dated(row.notifyBy(), row.acts().noticeGivenOn().map(day -> "given on " + Dates.onScreen(day)), today);
    }

    private static ListCell entry(ShiftRow row, LocalDate today) {
        return dated(
                row.recordBy(),
                row.acts()
                        .recordedOn()
                        .map(day -> "recorded on " + Dates.onScreen(day))
                        .or(() -> row.acts().linedOutOn().map(day -> "lined out on " + Dates.onScreen(day))),
                today);
    }

    /** The last day for something, and whether it was done; what was done without a date being owed stands alone. */
    private static ListCell dated(Optional<LocalDate> by, Optional<String> done, LocalDate today) {
        return by.map(day -> ListCell.figures(Dates.onScreen(day))
                        .withNote(done.orElseGet(() -> Counted.daysLeft(ChronoUnit.DAYS.between(today, day)))))
                .or(() -> done.map(ListCell::text))
                .orElse(ListCell.EMPTY);
    }
}
