package org.thresholdregister.review.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.AcknowledgeResult;
import org.thresholdregister.review.Alteration;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.EarFinding;

/** Takes down that a person has seen to a determination that changed, and what was decided. */
class AcknowledgeDialog extends Dialog {

    private final TextArea reason = new TextArea("What was decided, and why");

    /**
     * @param acknowledge takes the reason down and says what came of it
     * @param done told once it is on record
     */
    AcknowledgeDialog(
            Alteration alteration,
            SerializableFunction<String, AcknowledgeResult> acknowledge,
            SerializableRunnable done) {
        setHeaderTitle("Acknowledge the change");
        setCloseOnOutsideClick(false);
        setWidth("min(32rem, 100%)");
        reason.setMaxLength(DecisionService.LONGEST_REASON);
        reason.setHelperText("Such as: told anew on 9 Mar 2026; or: the entry stays, the loss is the same");
        reason.setRequiredIndicatorVisible(true);
        reason.setWidthFull();
        add(
                new Paragraph("Test of " + Words.day(alteration.testDate()) + ", " + Words.ear(alteration.ear()) + ". "
                        + alteration.inWords() + "."),
                new Paragraph("Before: " + alteration.before().inWords() + "."),
                new Paragraph("Now: " + EarFinding.inWords(alteration.after()) + "."),
                reason);
        var save = new Button("Acknowledge", click -> save(acknowledge, done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        reason.focus();
    }

    private void save(SerializableFunction<String, AcknowledgeResult> acknowledge, SerializableRunnable done) {
        switch (acknowledge.apply(reason.getValue())) {
            case ACKNOWLEDGED -> {
                close();
                done.run();
            }
            case NOT_OPEN -> complain("This was acknowledged in between. Nothing was changed.");
            case REASON_MISSING -> complain("It is acknowledged only with a reason.");
            case REASON_TOO_LONG -> complain("The reason is too long.");
        }
    }

    private void complain(String words) {
        reason.setErrorMessage(words);
        reason.setInvalid(true);
    }
}
