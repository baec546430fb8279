package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.platform.query.SearchText;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.protection.ProtectionProblem;

/** Pieces that the forms of this feature share. */
final class Fields {

    private Fields() {}

    static DatePicker day(String label, LocalDate value) {
        var field = new DatePicker(label);
        field.setLocale(Locale.ENGLISH);
        field.setI18n(new DatePicker.DatePickerI18n().setDateFormats("d MMM yyyy", "yyyy-MM-dd"));
        field.setValue(value);
        return field;
    }

    static ComboBox<String> site(List<String> sites) {
        var field = new ComboBox<String>("Site", sites);
        field.setItemLabelGenerator(Place::name);
        if (sites.size() == 1) {
            field.setValue(sites.getFirst());
        }
        return field;
    }

    static Paragraph message() {
        var message = new Paragraph();
        message.addClassName("tr-message");
        message.getElement().setAttribute("role", "alert");
        message.setVisible(false);
        return message;
    }

    /** Says what is wrong beside its field, or in the message where it is about no single field. */
    static void show(ProtectionProblem problem, Map<ProtectionProblem, HasValidation> fields, Paragraph message) {
        HasValidation field = fields.get(problem);
        if (field != null) {
            complain(field, ProblemWords.of(problem));
        } else {
            message.setText(ProblemWords.of(problem));
            message.setVisible(true);
        }
    }

    static void clear(Paragraph message, HasValidation... fields) {
        message.setVisible(false);
        for (HasValidation field : fields) {
            field.setInvalid(false);
        }
    }

    static void complain(HasValidation field, String words) {
        field.setErrorMessage(words);
        field.setInvalid(true);
    }

    /** Whether the text holds each of the typed words, whatever their case and accents. */
    static boolean matches(String typed, String text) {
        String folded = SearchText.fold(text);
        return Arrays.stream(SearchText.fold(typed).split(" ")).allMatch(folded::contains);
    }

    /** A number of dB as it was typed: empty where nothing was; false in the field where it is none. */
    static Optional<BigDecimal> decibels(String text) {
        return Optional.of(text.strip().replace(',', '.'))
                .filter(typed -> typed.matches("\\d{1,3}(\\.\\d)?"))
                .map(BigDecimal::new);
    }

    /** Whether the field holds nothing or a number of 0 to the highest; otherwise it says so beside it. */
    static boolean isDecibels(TextField field, int highest) {
        boolean fits = field.isEmpty()
                || decibels(field.getValue())
                        .filter(value -> value.compareTo(BigDecimal.valueOf(highest)) <= 0)
                        .isPresent();
        if (!fits) {
            complain(field, "A number from 0 to " + highest + ", with one decimal at most.");
        } else {
            field.setInvalid(false);
        }
        return fits;
    }
}
