package org.thresholdregister.letters.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.function.SerializableBiConsumer;
import java.time.LocalDate;
import java.util.Locale;
import org.thresholdregister.letters.LetterMethod;

/** Asks when and how letters were given. */
class GivenDialog extends Dialog {

    GivenDialog(int letters, LocalDate today, SerializableBiConsumer<LocalDate, LetterMethod> given) {
        setHeaderTitle(letters == 1 ? "Mark 1 letter as given" : "Mark " + letters + " letters as given");
        setWidth("min(30rem, 100%)");
        var day = new DatePicker("Day");
        day.setLocale(Locale.ENGLISH);
        day.setI18n(new DatePicker.DatePickerI18n()
                .setDateFormats("d MMM yyyy", "yyyy-MM-dd")
                .setFirstDayOfWeek(1));
        day.setValue(today);
        day.setMax(today);
        var method = new Select<LetterMethod>();
        method.setLabel("How");
        method.setItems(LetterMethod.values());
        method.setItemLabelGenerator(LetterMethod::words);
        method.setValue(LetterMethod.HANDED_OVER);
        var fields = new Div(day, method);
        fields.addClassName("tr-entry-fields");
        add(fields);
        var save = new Button("Mark as given", click -> {
            LocalDate chosen = day.getValue();
            if (chosen == null || chosen.isAfter(today)) {
                day.setErrorMessage("Give today or an earlier day.");
                day.setInvalid(true);
                return;
            }
            close();
            given.accept(chosen, method.getValue());
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
    }
}
