package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.Optional;

/** Fields of numbers, and how a form says what is wrong. */
final class Numbers {

    private Numbers() {}

    static TextField field(String label) {
        var field = new TextField(label);
        field.setAllowedCharPattern("[0-9.,]");
        field.setMaxLength(7);
        return field;
    }

    /** The number in the field; empty where it holds none. */
    static Optional<BigDecimal> of(TextField field) {
        return Optional.of(field.getValue().strip().replace(',', '.'))
                .filter(typed -> typed.matches("\\d{1,4}(\\.\\d{1,2})?"))
                .map(BigDecimal::new);
    }

    /** Whether the field holds a number up to the highest, or nothing where it need not; else it says so beside it. */
    static boolean fits(TextField field, int highest, boolean needed) {
        boolean fits = field.isEmpty()
                ? !needed
                : of(field)
                        .filter(value -> value.compareTo(BigDecimal.valueOf(highest)) <= 0)
                        .isPresent();
        field.setInvalid(false);
        if (!fits) {
            complain(field, "A number from 0 to " + highest + ", with two decimals at most.");
        }
        return fits;
    }

    static void complain(HasValidation field, String words) {
        field.setErrorMessage(words);
        field.setInvalid(true);
    }

    static Paragraph message() {
        var message = new Paragraph();
        message.addClassName("tr-message");
        message.getElement().setAttribute("role", "alert");
        message.setVisible(false);
        return message;
    }
}
