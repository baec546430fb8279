package org.thresholdregister.clinical.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableRunnable;
import java.time.LocalDate;
import java.util.Locale;
import org.thresholdregister.clinical.ClinicalRecord;
import org.thresholdregister.clinical.ClinicalResult;
import org.thresholdregister.clinical.ClinicalService;
import org.thresholdregister.core.wording.Words;

/** Enters the clinical part as of a day, or a better one in the place of that day's. */
class ClinicalDialog extends Dialog {

    private final transient ClinicalService clinical;
    private final transient ClinicalRecord record;
    private final String workerId;
    private final DatePicker day = ClinicalDialog.dayField("Day");
    private final Paragraph shown = new Paragraph();
    private final ClinicalFields fields = new ClinicalFields(() -> {});
    private final TextArea reason = new TextArea("Why the entry of this day is replaced");
    private final Paragraph problem = new Paragraph();
    private final SerializableRunnable done;

    ClinicalDialog(
            ClinicalService clinical, String workerId, ClinicalRecord record, LocalDate of, SerializableRunnable done) {
        this.clinical = clinical;
        this.record = record;
        this.workerId = workerId;
        this.done = done;
        setHeaderTitle("History, ears, and what was said");
        setCloseOnOutsideClick(false);
        setWidth("min(60rem, 100%)");
        day.setValue(of);
        day.addValueChangeListener(change -> showDay());
        reason.setMaxLength(ClinicalService.LONGEST_REASON);
        reason.setHelperText("The earlier entry stays readable");
        reason.setWidthFull();
        problem.addClassName("tr-message");
        problem.getElement().setAttribute("role", "alert");
        problem.setVisible(false);
        add(day, shown, fields, reason, problem);
        var save = new Button("Enter", click -> save());
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        fields.setValue(record.toBeginWith(of));
        showDay();
        day.focus();
    }

    static DatePicker dayField(String label) {
        var field = new DatePicker(label);
        field.setLocale(Locale.ENGLISH);
        field.setI18n(new DatePicker.DatePickerI18n()
                .setDateFormats("d MMM yyyy", "yyyy-MM-dd")
                .setFirstDayOfWeek(1));
        return field;
    }

    private void showDay() {
        LocalDate on = day.getValue();
        boolean replaces = on != null && record.on(on).isPresent();
        reason.setVisible(replaces);
        shown.setText(
                replaces
                        ? "There is an entry of this day. What you enter takes its place."
                        : record.lastHistory()
                                .map(last -> "The lasting answers are those of " + Words.day(last.day())
                                        + ": confirm or change them; how the worker is today is asked anew.")
                                .orElse("Tick what is a yes. Nothing is required."));
    }

    private void save() {
        day.setInvalid(false);
        reason.setInvalid(false);
        problem.setVisible(false);
        if (day.getValue() == null) {
            day.setErrorMessage("Give the day as 9 Mar 2026.");
            day.setInvalid(true);
            return;
        }
        switch (clinical.enter(
                workerId,
                day.getValue(),
                fields.value(),
                reason.isVisible() ? reason.getValue().strip() : "")) {
            case ClinicalResult.Kept() -> {
                close();
                done.run();
            }
            case ClinicalResult.Refused(var why) -> refuse(why);
        }
    }

    private void refuse(ClinicalResult.Reason why) {
        String words = ClinicalReasons.inWords(why);
        if (fields.complain(why)) {
            return;
        }
        if (why == ClinicalResult.Reason.IN_THE_FUTURE) {
            day.setErrorMessage(words);
            day.setInvalid(true);
        } else if (why == ClinicalResult.Reason.REASON_MISSING) {
            reason.setVisible(true);
            reason.setErrorMessage(words);
            reason.setInvalid(true);
        } else {
            problem.setText(words);
            problem.setVisible(true);
        }
    }
}
