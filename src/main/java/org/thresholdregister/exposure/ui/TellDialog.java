package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.exposure.HowTold;
import org.thresholdregister.exposure.NoiseEntryProblem;
import org.thresholdregister.exposure.Told;
import org.thresholdregister.platform.ui.DayField;

/** Asks when and how people were told a result, until it is taken down. */
class TellDialog extends Dialog {

    /** @param tell takes it down and says what stands against it */
    TellDialog(
            LocalDate today, SerializableFunction<Told, Optional<NoiseEntryProblem>> tell, SerializableRunnable done) {
        setHeaderTitle("They were told");
        setWidth("min(30rem, 100%)");
        DatePicker day = DayField.labelled("Day");
        day.setValue(today);
        day.setWidthFull();
        var how = new Select<HowTold>();
        how.setLabel("How");
        how.setItems(HowTold.values());
        how.setItemLabelGenerator(item -> Words.capitalised(NoiseLabels.how(item)));
        how.setValue(HowTold.LETTER);
        how.setWidthFull();
        add(new Paragraph("This is taken down for everybody on the list."), day, how);
        var save = new Button("Take it down", click -> {
            day.setInvalid(false);
            if (day.getValue() == null) {
                Numbers.complain(day, "Give the day as 9 Mar 2026.");
                return;
            }
            tell.apply(new Told(day.getValue(), how.getValue()))
                    .ifPresentOrElse(problem -> Numbers.complain(day, NoiseLabels.problem(problem)), () -> {
                        close();
                        done.run();
                    });
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
    }
}
