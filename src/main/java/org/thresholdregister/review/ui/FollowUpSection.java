package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.review.BoardRow.OfTask;
import org.thresholdregister.review.Postponement;
import org.thresholdregister.review.WorkerRecord;

/** What is owed to the worker, by when, and by which paragraph. */
class FollowUpSection extends Section {

    static final String ID = "owed";

    /** @param open the tasks of the worker, some of which may be booked or put off */
    FollowUpSection(WorkerRecord record, List<OfTask> open) {
        setId(ID);
        add(new H2("What is owed"));
        List<FollowUp> followUps = record.judgement().followUps();
        Optional<String> withoutDate = CaseWords.owedWithoutDate(record.cases());
        withoutDate.ifPresent(words -> add(new Paragraph(
                new Anchor(Paths.worker(record.details().workerId()) + "#" + CaseSection.ID, words), new Text("."))));
        open.stream()
                .filter(task -> !task.booked().isEmpty())
                .forEach(task ->
                        add(new Paragraph(Words.capitalised(BoardWords.task(task.kind())) + ": " + task.booked())));
        open.forEach(task -> task.postponed().ifPresent(putOff -> add(new Paragraph(putOff(task, putOff)))));
        if (followUps.isEmpty()) {
            add(new EmptyHint(
                    withoutDate.isPresent()
                            ? "Nothing with a date is owed to this worker."
                            : "Nothing is owed to this worker.",
                    "A test, a shift or a return to work brings the next date."));
            return;
        }
        List<ListColumn<FollowUp, ?>> columns = List.of(
                ListColumn.unordered("Owed", 11, owed -> text(Words.capitalised(Words.followUp(owed.kind())))),
                ListColumn.unordered("Ears", 6, owed -> text(Words.ears(owed.ears()))),
                ListColumn.unordered(
                        "After the test of",
                        8,
                        owed -> text(owed.testDate().map(Words::day).orElse(""))),
                ListColumn.unordered("Due", 7, owed -> text(Words.day(owed.dueDate()))),
                ListColumn.unordered("State", 9, owed -> state(owed, record)),
                ListColumn.unordered(
                        "Paragraph",
                        10,
                        owed -> text(
                                record.ruleSet().paragraph(owed.kind().step()).place())));
        add(new ListTable<>("By calendar days, the most pressing first", columns, followUps, owed -> {}));
    }

    private static String putOff(OfTask task, Postponement putOff) {
        return Words.capitalised(BoardWords.task(task.kind())) + ", put off on " + Words.day(putOff.on()) + " by "
                + putOff.by() + " until " + Words.day(putOff.until()) + ": " + putOff.reason()
                + (putOff.reason().endsWith(".") ? "" : ".")
                + task.due()
                        .map(day -> " By the rule it is due on " + Words.day(day) + " all the same.")
                        .orElse("");
    }

    private static ListCell text(String words) {
        return ListCell.text(words);
    }

    private static ListCell state(FollowUp owed, WorkerRecord record) {
        return ListCell.state(
                owed.isOverdue(record.asOf()) ? Kind.OVERDUE : Kind.OPEN,
                Counted.daysLeft(ChronoUnit.DAYS.between(record.asOf(), owed.dueDate())));
    }
}
