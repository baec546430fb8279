package org.thresholdregister.review.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableBiFunction;
import com.vaadin.flow.function.SerializableConsumer;
import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.DayField;
import org.thresholdregister.review.BoardRow.OfTask;
import org.thresholdregister.review.BulkResult;
import org.thresholdregister.review.DecisionService;

/** Puts off what was chosen, and says what that does not change. */
class PostponeDialog extends Dialog {

    private final List<OfTask> rows;
    private final LocalDate today;
    private final DatePicker until = DayField.labelled("Until");
    private final TextArea reason = new TextArea("Reason");
    private final Paragraph legal = new Paragraph();

    /**
     * @param postpone puts them off
     * @param done is told in words what changed
     */
    PostponeDialog(
            List<OfTask> rows,
            LocalDate today,
            SerializableBiFunction<LocalDate, String, BulkResult> postpone,
            SerializableConsumer<String> done) {
        this.rows = rows;
        this.today = today;
        setHeaderTitle("Put off " + Counted.of(rows.size(), "follow-up", "follow-ups"));
        setCloseOnOutsideClick(false);
        setWidth("min(30rem, 100%)");
        until.setMin(today.plusDays(1));
        until.addValueChangeListener(change -> sayWhatTheRuleSays());
        reason.setMaxLength(DecisionService.LONGEST_REASON);
        legal.getElement().setAttribute("role", "status");
        var fields = new Div(until, reason);
        fields.addClassName("tr-entry-fields");
        add(legal, fields);
        var save = new Button("Put off", click -> save(postpone, done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        sayWhatTheRuleSays();
        until.focus();
    }

    private void sayWhatTheRuleSays() {
        LocalDate day = until.getValue();
        long passed = rows.stream()
                .filter(row -> row.due().filter(today::isAfter).isPresent())
                .count();
        long before = day == null
                ? 0
                : rows.stream()
                        .filter(row -> row.due()
                                .filter(due -> due.isBefore(day) && !due.isBefore(today))
                                .isPresent())
                        .count();
        StringBuilder words = new StringBuilder("No due date moves by this; each stays on the board.");
        if (passed > 0) {
            words.append(" Of ")
                    .append(rows.size())
                    .append(", the legal day of ")
                    .append(passed)
                    .append(" has passed already: overdue stays overdue.");
        }
        if (before > 0) {
            words.append(" Of ")
                    .append(rows.size())
                    .append(", the legal day of ")
                    .append(before)
                    .append(
                            " comes before that: it stands, and the day after it the follow-up is overdue by the rule.");
        }
        legal.setText(words.toString());
        legal.setClassName("tr-overdue", passed + before > 0);
    }

    private void save(
            SerializableBiFunction<LocalDate, String, BulkResult> postpone, SerializableConsumer<String> done) {
        until.setInvalid(false);
        reason.setInvalid(false);
        LocalDate day = until.getValue();
        if (day == null || !day.isAfter(today)) {
            until.setErrorMessage("Give a day after today, such as " + Dates.onScreen(today.plusDays(7)) + ".");
            until.setInvalid(true);
        } else if (reason.getValue().isBlank()) {
            reason.setErrorMessage("It is put off only with a reason.");
            reason.setInvalid(true);
        } else {
            BulkResult result = postpone.apply(day, reason.getValue());
            close();
            done.accept(BulkWords.result(result, "put off until " + Dates.onScreen(day)));
        }
    }
}
