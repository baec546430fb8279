package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.testdays.Booking;
import org.thresholdregister.testdays.BookingResult;
import org.thresholdregister.testdays.BookingService;

/** Notes that somebody has come, and asks about the hours before. */
class ArrivalDialog extends Dialog {

    ArrivalDialog(Booking booking, BookingService bookings, SerializableRunnable done) {
        setHeaderTitle(booking.name() + " has arrived");
        setWidth("min(30rem, 100%)");
        var hours = new BigDecimalField("Hours since workplace noise");
        hours.setLocale(Locale.ENGLISH);
        hours.setHelperText("May stay empty");
        var protectors = new RadioButtonGroup<Boolean>("Protectors worn in all noise of these hours");
        protectors.setItems(List.of(true, false));
        protectors.setItemLabelGenerator(worn -> worn ? "yes" : "no");
        var fields = new Div(hours, protectors);
        fields.addClassName("tr-entry-fields");
        add(new Paragraph(SchedulingWords.quiet(booking.quiet(), booking.quietHours())), fields);
        var button = new Button("Arrived", click -> {
            BookingResult result = bookings.arrive(
                    booking.key(),
                    new BookingService.Arrival(Optional.ofNullable(hours.getValue()), protectors.getOptionalValue()));
            if (result == BookingResult.DONE) {
                close();
                done.run();
            } else {
                hours.setErrorMessage(BookingWords.objection(result));
                hours.setInvalid(true);
            }
        });
        button.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), button);
        hours.focus();
    }
}
