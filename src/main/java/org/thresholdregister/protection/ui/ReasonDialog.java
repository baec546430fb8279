package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.protection.ProtectionProblem;
import org.thresholdregister.protection.WorkerProtectionService;

/** Asks why an entry is withdrawn or a protector retired, until it is taken down. */
class ReasonDialog extends Dialog {

    /**
     * @param enter takes the reason and says what stands against it
     * @param done runs once it is on record
     */
    ReasonDialog(
            String title,
            String what,
            String button,
            SerializableFunction<String, Optional<ProtectionProblem>> enter,
            SerializableRunnable done) {
        setHeaderTitle(title);
        setWidth("min(30rem, 100%)");
        var reason = new TextArea("Reason");
        reason.setMaxLength(WorkerProtectionService.LONGEST_REASON);
        reason.setWidthFull();
        var message = Fields.message();
        add(new Paragraph(what), reason, message);
        var save = new Button(button, click -> {
            Fields.clear(message, reason);
            Optional<ProtectionProblem> problem = enter.apply(reason.getValue().strip());
            problem.ifPresentOrElse(
                    some -> Fields.show(some, Map.of(ProtectionProblem.REASON_MISSING, reason), message), () -> {
                        close();
                        done.run();
                    });
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        reason.focus();
    }
}
