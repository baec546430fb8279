package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.protection.Issue;
import org.thresholdregister.protection.ProtectionProblem;

/** Asks how and when a protector went out of use, until it can be taken down. */
class EndDialog extends Dialog {

    EndDialog(
            Issue issue,
            LocalDate today,
            SerializableFunction<Issue.End, Optional<ProtectionProblem>> end,
            SerializableRunnable done) {
        setHeaderTitle(issue.product().details().name() + " out of use");
        setWidth("min(28rem, 100%)");
        var how = new Select<Issue.How>();
        how.setLabel("What became of it");
        how.setItems(Issue.How.values());
        how.setItemLabelGenerator(item -> Words.capitalised(WearingWords.how(item)));
        how.setValue(Issue.How.REPLACED);
        how.setWidthFull();
        DatePicker day = Fields.day("On", today);
        day.setWidthFull();
        var message = Fields.message();
        add(how, day, message);
        var save = new Button("Take down", click -> {
            Fields.clear(message, day);
            if (day.getValue() == null) {
                Fields.complain(day, "Give the day as 9 Mar 2026.");
                return;
            }
            end.apply(new Issue.End(day.getValue(), how.getValue()))
                    .ifPresentOrElse(
                            problem -> Fields.show(
                                    problem,
                                    Map.of(
                                            ProtectionProblem.IN_THE_FUTURE, day,
                                            ProtectionProblem.BEFORE_IT_BEGAN, day),
                                    message),
                            () -> {
                                close();
                                done.run();
                            });
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
    }
}
