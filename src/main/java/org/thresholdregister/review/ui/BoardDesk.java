package org.thresholdregister.review.ui;

import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.review.BoardRow;
import org.thresholdregister.review.BoardRow.OfTask;
import org.thresholdregister.review.BulkService;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.TaskKey;
import org.thresholdregister.review.TaskKind;

/** Answers what is open from a list, for the pages that show one. What it does is told in words. */
@SpringComponent
class BoardDesk {

    private final DecisionService decisions;
    private final BulkService bulk;
    private final CurrentUser currentUser;
    private final Clock clock;

    BoardDesk(DecisionService decisions, BulkService bulk, CurrentUser currentUser, Clock clock) {
        this.decisions = decisions;
        this.bulk = bulk;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    Set<DecisionKind> kindsToEnter() {
        return decisions.kindsToEnter();
    }

    /** Asks for what is to be entered for the button of one row. */
    void answer(BoardRow row, SerializableConsumer<String> done) {
        if (row instanceof OfTask task) {
            if (task.kind() == TaskKind.RETEST) {
                book(List.of(task), done);
            } else {
                settle(List.of(task), done);
            }
        }
    }

    /** Asks for what is to be entered for those of these rows that the user may say to have been done. */
    void settle(List<OfTask> chosen, SerializableConsumer<String> done) {
        Set<DecisionKind> allowed = decisions.kindsToEnter();
        List<OfTask> rows = chosen.stream()
                .filter(row -> row.kind().doneBy().filter(allowed::contains).isPresent())
                .toList();
        if (rows.isEmpty()) {
            done.accept(
                    "Nothing that is chosen can be marked here: it is settled by a test, on a page of its own, or is"
                            + " another role's to enter.");
            return;
        }
        new SettleDialog(
                        rows,
                        chosen.size(),
                        LocalDate.now(clock),
                        currentUser.get().displayName(),
                        settlement -> bulk.settle(keys(rows), settlement),
                        done)
                .open();
    }

    void book(List<OfTask> rows, SerializableConsumer<String> done) {
        if (rows.stream().noneMatch(row -> row.kind() == TaskKind.RETEST)) {
            done.accept("No retest is among what is chosen. Other tests are planned on test days.");
            return;
        }
        String by = currentUser.get().displayName();
        new BookDialog(rows, LocalDate.now(clock), (day, note) -> bulk.book(keys(rows), day, by, note), done).open();
    }

    void postpone(List<OfTask> rows, SerializableConsumer<String> done) {
        new PostponeDialog(
                        rows, LocalDate.now(clock), (until, reason) -> bulk.postpone(keys(rows), until, reason), done)
                .open();
    }

    private static List<TaskKey> keys(List<OfTask> rows) {
        return rows.stream().map(OfTask::key).toList();
    }
}
