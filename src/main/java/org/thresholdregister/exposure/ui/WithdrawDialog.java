package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.Optional;
import org.thresholdregister.exposure.NewMeasurement;
import org.thresholdregister.exposure.NoiseEntryProblem;

/** Asks why a measurement is withdrawn. */
class WithdrawDialog extends Dialog {

    /** @param withdraw takes the reason and says what stands against it */
    WithdrawDialog(SerializableFunction<String, Optional<NoiseEntryProblem>> withdraw, SerializableRunnable done) {
        setHeaderTitle("Withdraw the measurement");
        setWidth("min(30rem, 100%)");
        var reason = new TextArea("Reason");
        reason.setMaxLength(NewMeasurement.LONGEST_PROCESS);
        reason.setWidthFull();
        add(new Paragraph("It will not count any more, and stays readable with the reason."), reason);
        var save = new Button("Withdraw", click -> {
            reason.setInvalid(false);
            withdraw.apply(reason.getValue().strip())
                    .ifPresentOrElse(problem -> Numbers.complain(reason, NoiseLabels.problem(problem)), () -> {
                        close();
                        done.run();
                    });
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        reason.focus();
    }
}
