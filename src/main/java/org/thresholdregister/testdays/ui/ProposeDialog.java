package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.function.SerializableConsumer;
import java.time.LocalDate;
import org.thresholdregister.platform.ui.DayField;

/** Asks up to which day people are to be taken in. */
class ProposeDialog extends Dialog {

    /** How far ahead of the test day people are taken in, unless another day is given; our choice. */
    private static final int DAYS_AHEAD = 30;

    ProposeDialog(LocalDate testDay, SerializableConsumer<LocalDate> propose) {
        setHeaderTitle("Propose who comes");
        setWidth("min(30rem, 100%)");
        DatePicker dueBy = DayField.labelled("Take in who is due by");
        dueBy.setValue(testDay.plusDays(DAYS_AHEAD));
        add(
                new Paragraph(
                        "The free times are filled by urgency, retests first. Whoever is on the list already stays,"
                                + " and nothing is confirmed by it."),
                dueBy);
        var button = new Button("Propose", click -> {
            dueBy.setErrorMessage("Choose the day.");
            dueBy.setInvalid(dueBy.isEmpty());
            if (!dueBy.isEmpty()) {
                close();
                propose.accept(dueBy.getValue());
            }
        });
        button.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), button);
        dueBy.focus();
    }
}
