package org.thresholdregister.review.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.function.SerializableFunction;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.DayField;
import org.thresholdregister.review.BoardRow.OfTask;
import org.thresholdregister.review.BulkResult;
import org.thresholdregister.review.BulkResult.Why;
import org.thresholdregister.review.BulkService.Settlement;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.TaskKind;

/** Takes down that something owed has been done, for one worker or for many: when, by whom, how, and what shows it. */
class SettleDialog extends Dialog {

    private final List<OfTask> rows;
    private final int chosen;
    private final DatePicker day = DayField.labelled("Day");
    private final TextField by = new TextField("By");
    private final EvidenceFields evidence = new EvidenceFields();
    private final TextArea reason = new TextArea("Reason");
    private final Paragraph problem = new Paragraph();

    /**
     * @param rows at least one
     * @param chosen how many rows were chosen in all; about the others nothing can be entered
     * @param settle takes it down
     * @param done is told in words what changed
     */
    SettleDialog(
            List<OfTask> rows,
            int chosen,
            LocalDate today,
            String signedIn,
            SerializableFunction<Settlement, BulkResult> settle,
            SerializableConsumer<String> done) {
        this.rows = rows;
        this.chosen = chosen;
        Set<TaskKind> kinds = rows.stream().map(OfTask::kind).collect(Collectors.toSet());
        setHeaderTitle(title(kinds));
        setCloseOnOutsideClick(false);
        setWidth("min(34rem, 100%)");
        day.setValue(today);
        day.setMax(today);
        by.setValue(signedIn);
        by.setMaxLength(DecisionService.LONGEST_BY);
        evidence.need(kinds.contains(TaskKind.NOTICE));
        reason.setMaxLength(DecisionService.LONGEST_REASON);
        reason.setVisible(rows.stream()
                .anyMatch(row ->
                        row.kind().doneBy().filter(DecisionKind::needsReason).isPresent()));
        reason.setHelperText("It is taken down only with its reason");
        problem.addClassName("tr-message");
        problem.getElement().setAttribute("role", "alert");
        problem.setVisible(false);
        var fields = new Div(day, by, evidence, reason);
        fields.addClassName("tr-entry-fields");
        add(new Paragraph(rows.size() == 1 && chosen == 1 ? about(rows.getFirst()) : aboutMany()), fields, problem);
        var save = new Button(rows.size() == 1 ? "Enter" : "Enter for " + rows.size(), click -> enter(settle, done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        day.focus();
    }

    private static String title(Set<TaskKind> kinds) {
        return kinds.size() == 1
                ? kinds.iterator()
                        .next()
                        .doneBy()
                        .map(kind -> Words.capitalised(Words.decision(kind)))
                        .orElse("Done")
                : "Done";
    }

    private void enter(SerializableFunction<Settlement, BulkResult> settle, SerializableConsumer<String> done) {
        List.<HasValidation>of(day, reason).forEach(field -> field.setInvalid(false));
        problem.setVisible(false);
        LocalDate on = day.getValue();
        if (on == null) {
            refuse(day, "Give the day, such as 9 Mar 2026.");
        } else if (evidence.check()) {
            BulkResult result = settle.apply(new Settlement(
                    on,
                    by.getValue().strip(),
                    reason.getValue().strip(),
                    evidence.evidence().orElseThrow()));
            if (result.done().isEmpty()) {
                refuse(result);
            } else {
                close();
                done.accept(inWords(result, on));
            }
        }
    }

    private String inWords(BulkResult result, LocalDate on) {
        if (rows.size() > 1) {
            return BulkWords.result(result, "marked");
        }
        OfTask row = rows.getFirst();
        return "\"" + title(Set.of(row.kind())) + "\" for " + BoardWords.subject(row)
                + row.key()
                        .testDate()
                        .map(test -> ", test of " + Dates.onScreen(test))
                        .orElse("") + ", "
                + Words.ears(row.key().ears()) + ", on " + Dates.onScreen(on) + " is on record now.";
    }

    /** Nothing was changed; where all have the same reason, it stands beside its field. */
    private void refuse(BulkResult result) {
        List<Why> reasons =
                result.left().stream().map(BulkResult.Left::why).distinct().toList();
        if (reasons.size() == 1 && reasons.getFirst() instanceof Why.Refused(var why)) {
            switch (why) {
                case BEFORE_THE_TEST -> {
                    refuse(day, "The day is before the test of " + Dates.onScreen(latestTest()) + ".");
                    return;
                }
                case IN_THE_FUTURE -> {
                    refuse(day, "The day is still to come.");
                    return;
                }
                case REASON_MISSING -> {
                    refuse(reason, "It is taken down only with its reason.");
                    return;
                }
                default -> {}
            }
        }
        problem.setText("Nothing was changed: " + BulkWords.reasons(result.left()) + ".");
        problem.setVisible(true);
    }

    private LocalDate latestTest() {
        return rows.stream()
                .flatMap(row -> row.key().testDate().stream())
                .max(LocalDate::compareTo)
                .orElseThrow();
    }

    private static void refuse(HasValidation field, String words) {
        field.setErrorMessage(words);
        field.setInvalid(true);
    }

    private static String about(OfTask row) {
        return BoardWords.subject(row)
                + row.key()
                        .testDate()
                        .map(test -> ", test of " + Dates.onScreen(test))
                        .orElse("") + ", "
                + Words.ears(row.key().ears()) + ". "
                + row.due().map(due -> "It is due by " + Dates.onScreen(due)).orElse("It is owed without a date")
                + (row.basis().isEmpty() ? "" : ", " + row.basis()) + ".";
    }

    private String aboutMany() {
        Optional<LocalDate> first =
                rows.stream().flatMap(row -> row.due().stream()).min(LocalDate::compareTo);
        int overdue = Math.toIntExact(rows.stream()
                .filter(row -> row.due().filter(row.today()::isAfter).isPresent())
                .count());
        return (chosen == rows.size()
                        ? ""
                        : "Of " + chosen + " chosen, " + rows.size()
                                + " can be marked here; the others are settled by a"
                                + " test, on a page of their own, or by another role. ")
                + Counted.of(rows.size(), "follow-up", "follow-ups") + " of "
                + Counted.of(
                        Math.toIntExact(
                                rows.stream().map(OfTask::workerId).distinct().count()),
                        "worker",
                        "workers")
                + first.map(due -> ", the first due by " + Dates.onScreen(due)).orElse("")
                + (overdue == 0 ? "" : ", " + overdue + " overdue") + ". What is entered is taken down for each.";
    }
}
