package org.thresholdregister.review.ui;

import com.vaadin.flow.component.HasSize;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableFunction;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.DecisionResult;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.TestStory;

/** Asks for a decision about one of a worker's tests until it can be taken down. */
class DecisionDialog extends Dialog {

    private final Select<DecisionKind> kind = new Select<>();
    private final RadioButtonGroup<Ears> ears = new RadioButtonGroup<>("Ears");
    private final Select<LocalDate> test = new Select<>();
    private final DatePicker date = new DatePicker("Day of the decision");
    private final TextField by = new TextField("Decided by");
    private final TextArea reason = new TextArea("Reason");
    private final Paragraph problem = new Paragraph();

    /**
     * @param kinds those that the user may enter
     * @param choice the test that is looked at is the one proposed
     * @param enter takes the decision down and says what came of it
     */
    DecisionDialog(
            Collection<DecisionKind> kinds,
            TestChoice choice,
            LocalDate today,
            String userName,
            SerializableFunction<Decision, DecisionResult> enter) {
        setHeaderTitle("Enter a decision");
        setCloseOnOutsideClick(false);
        setWidth("min(32rem, 100%)");
        kind.setLabel("Decision");
        kind.setItems(kinds);
        kind.setItemLabelGenerator(item -> Words.capitalised(Words.decision(item)));
        kind.addValueChangeListener(change -> reason.setHelperText(
                change.getValue() != null && change.getValue().needsReason()
                        ? "Needed for this decision"
                        : "May be left empty"));
        ears.setItems(Ears.values());
        ears.setItemLabelGenerator(item -> Words.capitalised(Words.ears(item)));
        ears.setValue(Ears.BOTH);
        offerTests(choice);
        date.setLocale(Locale.ENGLISH);
        date.setI18n(new DatePicker.DatePickerI18n().setDateFormats("d MMM yyyy", "yyyy-MM-dd"));
        date.setValue(today);
        by.setValue(userName);
        by.setMaxLength(DecisionService.LONGEST_BY);
        by.setHelperText("Name and profession, where it was somebody else");
        reason.setMaxLength(DecisionService.LONGEST_REASON);
        reason.setHelperText("May be left empty");
        problem.addClassName("tr-message");
        problem.setVisible(false);
        List.<HasSize>of(kind, test, date, by, reason).forEach(HasSize::setWidthFull);
        add(kind, ears, test, date, by, reason, problem);
        var save = new Button("Enter", click -> save(enter));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        kind.focus();
    }

    private void offerTests(TestChoice choice) {
        Map<LocalDate, String> byDay = choice.stories().stream()
                .map(TestStory::audiogram)
                .collect(Collectors.groupingBy(
                        Audiogram::date,
                        Collectors.mapping(
                                audiogram -> Words.purpose(audiogram.purpose()), Collectors.joining(" and "))));
        test.setLabel("Test");
        test.setItems(byDay.keySet().stream().sorted().toList().reversed());
        test.setItemLabelGenerator(day -> Words.capitalised(byDay.getOrDefault(day, "")) + " of " + Words.day(day));
        test.setValue(choice.chosen().audiogram().date());
    }

    private void save(SerializableFunction<Decision, DecisionResult> enter) {
        List.<HasValidation>of(kind, test, date, by, reason).forEach(field -> field.setInvalid(false));
        problem.setVisible(false);
        DecisionKind chosenKind = kind.getValue();
        LocalDate day = date.getValue();
        if (chosenKind == null) {
            complain(kind, "Choose what was decided.");
        } else if (day == null) {
            complain(date, "Give the day as 9 Mar 2026.");
        } else {
            switch (enter.apply(new Decision(
                    ears.getValue(),
                    test.getValue(),
                    chosenKind,
                    day,
                    by.getValue().strip(),
                    reason.getValue().strip()))) {
                case DecisionResult.Recorded() -> close();
                case DecisionResult.AlreadyOnRecord() ->
                    complain("This very decision is on record already. Nothing was changed.");
                case DecisionResult.Refused(var why) -> refuse(why);
            }
        }
    }

    private void refuse(DecisionResult.Reason why) {
        switch (why) {
            case UNKNOWN_WORKER -> complain("This record is not open to you any more. Nothing was changed.");
            case NO_SUCH_TEST -> complain(test, "There is no test of that day on record.");
            case BEFORE_THE_TEST -> complain(date, "This is before the test that it is about.");
            case IN_THE_FUTURE -> complain(date, "This day has not come yet.");
            case REASON_MISSING -> complain(reason, "This decision is taken down only with its reason.");
            case TEXT_TOO_LONG -> complain("The reason or the name is too long. Nothing was changed.");
        }
    }

    private static void complain(HasValidation field, String words) {
        field.setErrorMessage(words);
        field.setInvalid(true);
    }

    private void complain(String words) {
        problem.setText(words);
        problem.setVisible(true);
    }
}
