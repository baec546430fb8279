package org.thresholdregister.review.ui;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.review.BoardColumn;
import org.thresholdregister.review.BoardRow;
import org.thresholdregister.review.BoardRow.OfDuty;
import org.thresholdregister.review.BoardRow.OfTask;
import org.thresholdregister.review.DueState;
import org.thresholdregister.review.TaskKind;

/** The columns of the board, and of the sheet that is downloaded of it. */
final class BoardColumns {

    static final List<String> SHEET = List.of(
            "worker_id",
            "name",
            "site",
            "department",
            "owed",
            "due_date",
            "state",
            "paragraph",
            "test_date",
            "ears",
            "open_since",
            "booked",
            "put_off_until",
            "why_put_off");

    private BoardColumns() {}

    static List<ListColumn<BoardRow, BoardColumn>> all(Set<DecisionKind> allowed) {
        return List.of(
                ListColumn.of("For", BoardColumn.NAME, 10, BoardColumns::subject),
                ListColumn.of("Owed", BoardColumn.KIND, 11, BoardColumns::owed),
                ListColumn.of("Due", BoardColumn.DUE_DATE, 10, BoardColumns::due),
                ListColumn.of("After test of", BoardColumn.TEST_DATE, 8, BoardColumns::test),
                ListColumn.of("Site", BoardColumn.SITE, 8, row -> ListCell.text(row.site())),
                ListColumn.of("Department", BoardColumn.DEPARTMENT, 7, row -> ListCell.text(department(row))),
                ListColumn.unordered("", 8, row -> action(row, allowed)));
    }

    static Map<String, Order<BoardColumn>> orders() {
        Map<String, Order<BoardColumn>> orders = new LinkedHashMap<>();
        orders.put("most pressing", Order.ascending(BoardColumn.DUE_DATE));
        orders.put("least pressing", Order.descending(BoardColumn.DUE_DATE));
        orders.put("open longest", Order.ascending(BoardColumn.OPEN_SINCE));
        orders.put("name", Order.ascending(BoardColumn.NAME));
        orders.put("number", Order.ascending(BoardColumn.WORKER_ID));
        orders.put("site", Order.ascending(BoardColumn.SITE));
        orders.put("department", Order.ascending(BoardColumn.DEPARTMENT));
        return orders;
    }

    /** The words of the button that says a task has been done, or books it; empty where the user has none. */
    static Optional<String> button(TaskKind kind, Set<DecisionKind> allowed) {
        Optional<DecisionKind> entered =
                kind == TaskKind.RETEST ? Optional.of(DecisionKind.RETEST_BOOKED) : kind.doneBy();
        return entered.filter(allowed::contains).map(decision -> switch (decision) {
            case RETEST_BOOKED -> "Book";
            case NOTICE_GIVEN -> "Notice given";
            case RECORDED -> "Case recorded";
            case LINED_OUT -> "Lined out";
            case PROTECTOR_REFITTED -> "Protectors fitted";
            case TRAINED -> "Trained";
            default -> throw new IllegalStateException("settles no task: " + decision);
        });
    }

    static List<String> sheetRow(BoardRow row) {
        return switch (row) {
            case OfTask task ->
                List.of(
                        task.workerId(),
                        (task.givenName() + " " + task.familyName()).strip(),
                        task.site(),
                        task.department(),
                        BoardWords.task(task.kind()),
                        day(task.due()),
                        BoardWords.due(row),
                        task.basis(),
                        day(task.key().testDate()),
                        ears(task),
                        Dates.inFile(task.openSince()),
                        task.booked(),
                        day(task.postponed().map(putOff -> putOff.until())),
                        task.postponed().map(putOff -> putOff.reason()).orElse(""));
            case OfDuty(var duty, var today) ->
                List.of(
                        duty.subject() instanceof OpenDuty.Subject.OfWorker worker ? worker.workerId() : "",
                        switch (duty.subject()) {
                            case OpenDuty.Subject.OfWorker(var number, var name) -> name;
                            case OpenDuty.Subject.OfThing(var name) -> name;
                        },
                        duty.site(),
                        "",
                        duty.kind(),
                        day(row.due()),
                        BoardWords.due(row),
                        row.basis(),
                        "",
                        "",
                        "",
                        "",
                        "",
                        "");
        };
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(Dates::inFile).orElse("");
    }

    private static ListCell subject(BoardRow row) {
        return switch (row) {
            case OfTask task -> People.cell(task.givenName(), task.familyName(), task.workerId());
            case OfDuty(var duty, var today) ->
                switch (duty.subject()) {
                    case OpenDuty.Subject.OfWorker(var number, var name) ->
                        ListCell.link(name.isBlank() ? number : name, Paths.worker(number))
                                .withNote(number);
                    case OpenDuty.Subject.OfThing(var name) -> ListCell.link(name, duty.address());
                };
        };
    }

    private static ListCell owed(BoardRow row) {
        String words = BoardWords.kind(row);
        String path = BoardWords.path(row);
        boolean ofItsOwnPage = switch (row) {
            case OfTask task -> !path.equals(Paths.worker(task.workerId()));
            case OfDuty(var duty, var today) -> duty.subject() instanceof OpenDuty.Subject.OfWorker;
        };
        return (ofItsOwnPage ? ListCell.link(words, path) : ListCell.text(words)).withNote(row.basis());
    }

    private static ListCell due(BoardRow row) {
        Kind kind = row.state() == DueState.OVERDUE ? Kind.OVERDUE : Kind.OPEN;
        String when = switch (row) {
            case OfTask task ->
                task.due().map(Dates::onScreen).orElseGet(() -> "open since " + Dates.onScreen(task.openSince()))
                        + (task.booked().isEmpty() ? "" : "; " + uncapitalised(task.booked()))
                        + task.postponed()
                                .map(putOff ->
                                        "; put off until " + Dates.onScreen(putOff.until()) + ": " + putOff.reason())
                                .orElse("");
            case OfDuty(var duty, var today) -> Dates.onScreen(duty.due());
        };
        return ListCell.state(kind, BoardWords.due(row)).withNote(when);
    }

    private static String uncapitalised(String sentence) {
        return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private static ListCell test(BoardRow row) {
        return switch (row) {
            case OfTask task ->
                task.key()
                        .testDate()
                        .map(day -> ListCell.figures(Dates.onScreen(day)).withNote(ears(task)))
                        .orElse(ListCell.text("no test yet"));
            case OfDuty duty -> ListCell.EMPTY;
        };
    }

    /** A test is owed to the worker, not to an ear. */
    private static String ears(OfTask row) {
        return switch (row.kind()) {
            case ANNUAL_TEST, BASELINE_TEST ->
                row.key().ears() == Ears.BOTH ? "" : Words.ears(row.key().ears());
            default -> Words.ears(row.key().ears());
        };
    }

    private static String department(BoardRow row) {
        return row instanceof OfTask task ? task.department() : "";
    }

    private static ListCell action(BoardRow row, Set<DecisionKind> allowed) {
        return row instanceof OfTask task
                ? button(task.kind(), allowed)
                        .map(words -> ListCell.action(words, words + ", " + task.workerId()))
                        .orElse(ListCell.EMPTY)
                : ListCell.EMPTY;
    }
}
