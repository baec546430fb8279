package org.thresholdregister.rulesets.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableConsumer;
import org.thresholdregister.rulesets.Holiday;

/** Adds a day on which nobody works. */
class HolidayForm extends Div {

    HolidayForm(SerializableConsumer<Holiday> added) {
        addClassNames("tr-card", "tr-screen-only");
        var day = new DatePicker("Day");
        day.setI18n(new DatePicker.DatePickerI18n().setDateFormats("d MMM yyyy", "yyyy-MM-dd"));
        var name = new TextField("Holiday");
        name.setMaxLength(Holiday.LONGEST_NAME);
        var fields = new Div(day, name);
        fields.addClassName("tr-form");
        var button = new Button("Add the holiday", click -> {
            day.setInvalid(day.isEmpty());
            day.setErrorMessage("Choose the day.");
            name.setInvalid(name.getValue().isBlank());
            name.setErrorMessage("Give it a name.");
            if (!day.isInvalid() && !name.isInvalid()) {
                added.accept(new Holiday(day.getValue(), name.getValue().strip()));
                day.clear();
                name.clear();
            }
        });
        add(fields, button);
    }
}
