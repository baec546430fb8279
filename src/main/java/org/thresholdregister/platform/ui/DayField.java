package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.datepicker.DatePicker;
import java.util.Locale;

/** Fields for a day, which read and write it as the screen does: {@code 9 Mar 2026}, or as files do. */
public final class DayField {

    private DayField() {}

    public static DatePicker labelled(String label) {
        var field = new DatePicker(label);
        field.setLocale(Locale.ENGLISH);
        field.setI18n(new DatePicker.DatePickerI18n()
                .setDateFormats("d MMM yyyy", "yyyy-MM-dd")
                .setFirstDayOfWeek(1)
                .setBadInputErrorMessage("Give the day as 9 Mar 2026."));
        return field;
    }
}
