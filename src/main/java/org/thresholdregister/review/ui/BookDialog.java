package org.thresholdregister.review.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableBiFunction;
import com.vaadin.flow.function.SerializableConsumer;
import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.DayField;
import org.thresholdregister.review.BoardRow.OfTask;
import org.thresholdregister.review.BulkResult;
import org.thresholdregister.review.TaskKind;

/** Books a day for the retests among what was chosen. */
class BookDialog extends Dialog {

    /** The most characters of the note; the day is added to it. */
    private static final int LONGEST_NOTE = 500;

    private final LocalDate today;
    private final DatePicker day = DayField.labelled("Day of the retest");
    private final TextArea note = new TextArea("Time and place");

    /**
     * @param book takes the booking down
     * @param done is told in words what changed
     */
    BookDialog(
            List<OfTask> rows,
            LocalDate today,
            SerializableBiFunction<LocalDate, String, BulkResult> book,
            SerializableConsumer<String> done) {
        this.today = today;
        setHeaderTitle("Book a retest");
        setCloseOnOutsideClick(false);
        setWidth("min(30rem, 100%)");
        day.setMin(today);
        note.setMaxLength(LONGEST_NOTE);
        note.setHelperText("May stay empty");
        var fields = new Div(day, note);
        fields.addClassName("tr-entry-fields");
        add(new Paragraph(about(rows)), fields);
        var save = new Button("Book", click -> book(book, done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        day.focus();
    }

    private void book(SerializableBiFunction<LocalDate, String, BulkResult> book, SerializableConsumer<String> done) {
        LocalDate on = day.getValue();
        if (on == null || on.isBefore(today)) {
            day.setErrorMessage("Give a day from today on, such as " + Dates.onScreen(today) + ".");
            day.setInvalid(true);
            return;
        }
        BulkResult result = book.apply(on, note.getValue().strip());
        if (result.done().isEmpty()) {
            day.setErrorMessage("Nothing was changed: " + BulkWords.reasons(result.left()) + ".");
            day.setInvalid(true);
        } else {
            close();
            done.accept(BulkWords.result(result, "booked for " + Dates.onScreen(on)));
        }
    }

    private static String about(List<OfTask> rows) {
        List<OfTask> retests =
                rows.stream().filter(row -> row.kind() == TaskKind.RETEST).toList();
        return Counted.of(retests.size(), "retest", "retests") + " of " + rows.size() + " chosen. "
                + retests.stream()
                        .flatMap(row -> row.due().stream())
                        .min(LocalDate::compareTo)
                        .map(last -> "The first window closes after " + Dates.onScreen(last) + ".")
                        .orElse("Other tests are planned on test days.");
    }
}
