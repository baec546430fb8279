package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.testing.TypedTest;
import org.thresholdregister.testing.WithdrawResult;

/** Asks why a test is to be taken out that was entered in error. */
class WithdrawDialog extends Dialog {

    private final TextArea reason = new TextArea("Why it was entered in error");

    /**
     * @param withdraw takes the test out for this reason
     * @param done told once it is out
     */
    WithdrawDialog(
            RecordedTest test, SerializableFunction<String, WithdrawResult> withdraw, SerializableRunnable done) {
        setHeaderTitle("Entered in error");
        setCloseOnOutsideClick(false);
        setWidth("min(32rem, 100%)");
        reason.setWidthFull();
        reason.setMaxLength(TypedTest.LONGEST_TEXT);
        reason.setHelperText("Such as: this was the test of another person");
        add(
                new Paragraph(
                        "The " + EntryWords.name(test) + " will count no more. It stays readable on this page, with"
                                + " your name and the reason, and everything that follows from the tests is worked out again."),
                reason);
        var take = new Button("Take it out", click -> {
            String words = switch (withdraw.apply(reason.getValue())) {
                case WITHDRAWN -> "";
                case NOT_ON_RECORD -> "This test counts no more already. Nothing was changed.";
                case REASON_MISSING -> "A test is taken out only with a reason.";
                case REASON_TOO_LONG -> "The reason is too long. Nothing was changed.";
            };
            reason.setErrorMessage(words);
            reason.setInvalid(!words.isEmpty());
            if (words.isEmpty()) {
                close();
                done.run();
            }
        });
        take.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), take);
        reason.focus();
    }
}
