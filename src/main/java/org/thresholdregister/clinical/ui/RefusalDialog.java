package org.thresholdregister.clinical.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableRunnable;
import java.time.LocalDate;
import org.thresholdregister.clinical.ClinicalResult;
import org.thresholdregister.clinical.ClinicalService;
import org.thresholdregister.core.wording.ClinicalWords;
import org.thresholdregister.platform.documents.ui.DocumentField;

/** Takes down that the worker did not want to be tested. */
class RefusalDialog extends Dialog {

    private final DatePicker day = ClinicalDialog.dayField("Day");
    private final TextArea reason = new TextArea("Reason, in the worker's words");
    private final DocumentField sheet = new DocumentField("Signed form, where there is one");

    RefusalDialog(ClinicalService clinical, String workerId, LocalDate today, SerializableRunnable done) {
        setHeaderTitle("The worker does not want to be tested");
        setCloseOnOutsideClick(false);
        setWidth("min(34rem, 100%)");
        day.setValue(today);
        reason.setMaxLength(ClinicalService.LONGEST_REASON);
        var fields = new Div(day, reason, sheet);
        fields.addClassName("tr-entry-fields");
        add(new Paragraph(ClinicalWords.AFTER_REFUSAL.withBasis()), fields);
        var save = new Button("Enter", click -> save(clinical, workerId, done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        reason.focus();
    }

    private void save(ClinicalService clinical, String workerId, SerializableRunnable done) {
        day.setInvalid(false);
        reason.setInvalid(false);
        if (day.getValue() == null) {
            day.setErrorMessage("Give the day as 9 Mar 2026.");
            day.setInvalid(true);
            return;
        }
        if (sheet.isUploading()) {
            sheet.refuse("The file is still on its way. Press Enter again once it is there.");
            return;
        }
        switch (clinical.refuse(workerId, day.getValue(), reason.getValue().strip(), sheet.document())) {
            case ClinicalResult.Kept() -> {
                close();
                done.run();
            }
            case ClinicalResult.Refused(var why) -> {
                boolean aboutTheDay = why == ClinicalResult.Reason.IN_THE_FUTURE;
                day.setErrorMessage(ClinicalReasons.inWords(why));
                day.setInvalid(aboutTheDay);
                reason.setErrorMessage(ClinicalReasons.inWords(why));
                reason.setInvalid(!aboutTheDay);
            }
        }
    }
}
