package org.thresholdregister.review.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.function.SerializableFunction;
import java.time.LocalDate;
import java.util.Locale;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.review.DecisionResult;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.FollowUpRow;

/** Takes down that something owed has been done: when, by whom, why. */
class EntryDialog extends Dialog {

    private final FollowUpRow row;
    private final DecisionKind kind;
    private final LocalDate testDate;
    private final DatePicker day = new DatePicker("Day");
    private final TextField by = new TextField("By");
    private final TextArea reason = new TextArea("Reason or remark");

    /**
     * @param enter enters the decision
     * @param done is told in words what changed
     */
    EntryDialog(
            FollowUpRow row,
            DecisionKind kind,
            LocalDate today,
            String signedIn,
            SerializableFunction<Decision, DecisionResult> enter,
            SerializableConsumer<String> done) {
        this.row = row;
        this.kind = kind;
        this.testDate = row.testDate().orElseThrow();
        setHeaderTitle(Words.capitalised(Words.decision(kind)));
        setWidth("min(30rem, 100%)");
        day.setLocale(Locale.ENGLISH);
        day.setI18n(new DatePicker.DatePickerI18n()
                .setDateFormats("d MMM yyyy", "yyyy-MM-dd")
                .setFirstDayOfWeek(1));
        day.setValue(today);
        day.setMax(today);
        day.setMin(testDate);
        by.setValue(signedIn);
        by.setMaxLength(DecisionService.LONGEST_BY);
        reason.setMaxLength(DecisionService.LONGEST_REASON);
        reason.setHelperText("May stay empty");
        var fields = new Div(day, by, reason);
        fields.addClassName("tr-entry-fields");
        add(new Paragraph(about()), fields);
        var save = new Button("Enter", click -> enter(enter, done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        day.focus();
    }

    private void enter(SerializableFunction<Decision, DecisionResult> enter, SerializableConsumer<String> done) {
        LocalDate decidedOn = day.getValue();
        if (decidedOn == null) {
            refuse("Give the day, such as " + Dates.onScreen(testDate) + ".");
            return;
        }
        var decision = new Decision(
                row.ears(),
                testDate,
                kind,
                decidedOn,
                by.getValue().strip(),
                reason.getValue().strip());
        switch (enter.apply(decision)) {
            case DecisionResult.Recorded() -> finish(done, inWords(decision) + " is on record now.");
            case DecisionResult.AlreadyOnRecord() ->
                finish(done, inWords(decision) + " was on record already; nothing was changed.");
            case DecisionResult.OutOfOrder(var objection) -> refuse(CaseWords.objection(objection));
            case DecisionResult.Refused(var objection) -> refuse(inWords(objection));
        }
    }

    private void finish(SerializableConsumer<String> done, String words) {
        close();
        done.accept(words);
    }

    private void refuse(String words) {
        day.setErrorMessage(words);
        day.setInvalid(true);
    }

    private String about() {
        return People.name(row.givenName(), row.familyName(), row.workerId()) + " (" + row.workerId() + "), test of "
                + Dates.onScreen(testDate) + ", " + Words.ears(row.ears()) + ". It is due by "
                + Dates.onScreen(row.dueDate()) + ", " + row.basis() + ".";
    }

    private String inWords(Decision decision) {
        return "\"" + Words.capitalised(Words.decision(kind)) + "\" for "
                + People.name(row.givenName(), row.familyName(), row.workerId()) + ", test of "
                + Dates.onScreen(testDate) + ", " + Words.ears(row.ears()) + ", on "
                + Dates.onScreen(decision.decidedOn());
    }

    private String inWords(DecisionResult.Reason objection) {
        return switch (objection) {
            case UNKNOWN_WORKER -> "There is no such worker among those that you may see. Nothing was changed.";
            case NO_SUCH_TEST -> "The worker has no test of " + Dates.onScreen(testDate) + ". Nothing was changed.";
            case BEFORE_THE_TEST -> "The day is before the test of " + Dates.onScreen(testDate) + ".";
            case IN_THE_FUTURE -> "The day is still to come.";
            case REASON_MISSING -> "This is taken down only with its reason.";
            case TEXT_TOO_LONG -> "The name or the reason is too long.";
        };
    }
}
