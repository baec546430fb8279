package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.shared.HasValidationProperties;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.function.SerializableRunnable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.DayField;
import org.thresholdregister.testing.EntryProblem;
import org.thresholdregister.testing.Suggestions;
import org.thresholdregister.testing.TypedTest;
import org.thresholdregister.testing.TypedThresholds;

/** Everything of a test but its thresholds: when, what for, by whom, with what. */
class FactFields extends Section {

    private static final int KEPT_AFTER_MILLISECONDS = 400;

    private final DatePicker date = DayField.labelled("Day of the test");
    private final Select<TestPurpose> purpose = new Select<>();
    private final TextField hours = new TextField("Hours away from noise");
    private final Select<Boolean> protectors = new Select<>();
    private final ComboBox<String> tester;
    private final ComboBox<String> instrument;
    private final ComboBox<String> transducer;
    private final ComboBox<String> room;
    private final TextArea remark = new TextArea("Remark");
    private final TextArea reason = new TextArea("Why the test on record is wrong");
    private final SerializableRunnable changed;

    /** @param changed told whenever something was typed or chosen */
    FactFields(
            TypedTest typed,
            Suggestions suggestions,
            boolean asksReason,
            LocalDate today,
            SerializableRunnable changed) {
        this.changed = changed;
        date.setMax(today);
        date.setManualValidation(true);
        purpose.setLabel("Purpose");
        purpose.setItems(TestPurpose.values());
        purpose.setItemLabelGenerator(item -> Words.capitalised(Words.purpose(item)));
        hours.setMaxLength(TypedTest.LONGEST_HOURS);
        protectors.setLabel("Protectors worn instead of quiet");
        protectors.setItems(true, false);
        protectors.setEmptySelectionAllowed(true);
        protectors.setEmptySelectionCaption("Not said");
        protectors.setItemLabelGenerator(
                worn -> Optional.ofNullable(worn).map(yes -> yes ? "Yes" : "No").orElse("Not said"));
        remark.setMaxLength(TypedTest.LONGEST_TEXT);
        reason.setMaxLength(TypedTest.LONGEST_TEXT);
        reason.setHelperText("Needed; it stays beside the test that is superseded");
        tester = named("Tester", suggestions.testers(), typed.tester());
        instrument = named("Instrument", suggestions.instruments(), typed.instrument());
        transducer = named("Transducer", suggestions.transducers(), typed.transducer());
        room = named("Room", suggestions.rooms(), typed.room());
        date.setValue(typed.date().orElse(null));
        purpose.setValue(typed.purpose().orElse(null));
        hours.setValue(typed.hours());
        protectors.setValue(typed.protectorsWorn().orElse(null));
        remark.setValue(typed.remark());
        reason.setValue(typed.reason());
        Stream.of(hours, remark, reason).forEach(field -> {
            field.setValueChangeMode(ValueChangeMode.LAZY);
            field.setValueChangeTimeout(KEPT_AFTER_MILLISECONDS);
        });
        List.<HasValue<?, ?>>of(date, purpose, hours, protectors, tester, instrument, transducer, room, remark, reason)
                .forEach(field -> field.addValueChangeListener(change -> told(change.isFromClient())));
        var form = new Div(date, purpose, hours, protectors, tester, instrument, transducer, room, remark);
        form.addClassName("tr-form");
        remark.addClassName("tr-wide");
        reason.addClassName("tr-wide");
        if (asksReason) {
            form.addComponentAsFirst(reason);
        }
        add(new H2("How it was made"), form);
    }

    private ComboBox<String> named(String label, List<String> names, String typed) {
        var field = new ComboBox<String>(label);
        field.setItems(Stream.concat(names.stream(), Stream.of(typed))
                .filter(name -> !name.isEmpty())
                .distinct()
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .toList());
        field.setAllowCustomValue(true);
        field.setClearButtonVisible(true);
        field.setValue(typed.isEmpty() ? null : typed);
        field.addCustomValueSetListener(custom -> {
            boolean fits = custom.getDetail().length() <= TypedTest.LONGEST_NAME;
            complain(field, fits ? "" : "At most " + TypedTest.LONGEST_NAME + " characters.");
            if (fits) {
                field.setValue(custom.getDetail());
                changed.run();
            }
        });
        return field;
    }

    private void told(boolean byHand) {
        if (byHand) {
            changed.run();
        }
    }

    /** What is typed, with these thresholds. */
    TypedTest typed(TypedThresholds thresholds, String limit) {
        return new TypedTest(
                thresholds,
                limit,
                date.getOptionalValue(),
                purpose.getOptionalValue(),
                hours.getValue(),
                protectors.getOptionalValue(),
                tester.getOptionalValue().orElse(""),
                instrument.getOptionalValue().orElse(""),
                transducer.getOptionalValue().orElse(""),
                room.getOptionalValue().orElse(""),
                remark.getValue(),
                reason.getValue());
    }

    /**
     * Puts words beside the fields that cannot stand.
     *
     * @param whenSigning whether also beside those that are still empty
     */
    void show(List<EntryProblem> problems, boolean whenSigning) {
        complain(date, words(problems, whenSigning, date));
        complain(purpose, words(problems, whenSigning, purpose));
        complain(hours, words(problems, whenSigning, hours));
        complain(tester, words(problems, whenSigning, tester));
        complain(reason, words(problems, whenSigning, reason));
    }

    private String words(List<EntryProblem> problems, boolean whenSigning, HasValue<?, ?> field) {
        return problems.stream()
                .filter(problem -> field(problem.kind()).filter(field::equals).isPresent()
                        && (whenSigning || !isMissing(problem.kind())))
                .map(EntryWords::problem)
                .findFirst()
                .orElse("");
    }

    /** The field that a problem stands beside, where it is one of these. */
    private Optional<HasValue<?, ?>> field(EntryProblem.Kind kind) {
        return switch (kind) {
            case DATE_MISSING, DATE_TO_COME, DATE_BEFORE_BIRTH -> Optional.of(date);
            case PURPOSE_MISSING, ON_RECORD -> Optional.of(purpose);
            case NO_HOURS -> Optional.of(hours);
            case TESTER_MISSING -> Optional.of(tester);
            case REASON_MISSING -> Optional.of(reason);
            case NO_THRESHOLD, NOTHING_TYPED, SUPERSEDED_MEANWHILE -> Optional.empty();
        };
    }

    private static boolean isMissing(EntryProblem.Kind kind) {
        return switch (kind) {
            case NOTHING_TYPED, PURPOSE_MISSING, TESTER_MISSING, REASON_MISSING -> true;
            case NO_THRESHOLD,
                    DATE_MISSING,
                    DATE_TO_COME,
                    DATE_BEFORE_BIRTH,
                    ON_RECORD,
                    NO_HOURS,
                    SUPERSEDED_MEANWHILE -> false;
        };
    }

    private static void complain(HasValidationProperties field, String words) {
        field.setErrorMessage(words);
        field.setInvalid(!words.isEmpty());
    }
}
