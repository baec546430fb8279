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
import com.vaadin.flow.function.SerializableBiFunction;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.DayField;
import org.thresholdregister.review.DecisionResult;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.Evidence;
import org.thresholdregister.review.TestStory;

/** Asks for a decision about one of a worker's tests until it can be taken down. */
class DecisionDialog extends Dialog {

    private final Select<DecisionKind> kind = new Select<>();
    private final RadioButtonGroup<Ears> ears = new RadioButtonGroup<>("Ears");
    private final Select<LocalDate> test = new Select<>();
    private final DatePicker date = DayField.labelled("Day on which it was decided or done");
    private final TextField by = new TextField("Decided or done by");
    private final TextArea reason = new TextArea("Reason");
    private final EvidenceFields evidence = new EvidenceFields();
    private final Paragraph problem = new Paragraph();
    private final transient WorkerCases cases;
    private boolean earsWereChosen;

    /**
     * @param kinds those that the user may enter
     * @param stories the tests that it may be about
     * @param draft what is proposed
     * @param cases of the worker, from which the ears are proposed
     * @param enter takes the decision down and says what came of it
     */
    DecisionDialog(
            Collection<DecisionKind> kinds,
            List<TestStory> stories,
            Draft draft,
            WorkerCases cases,
            LocalDate today,
            String userName,
            SerializableBiFunction<Decision, Optional<Evidence>, DecisionResult> enter) {
        this.cases = cases;
        setHeaderTitle("Enter a decision");
        setCloseOnOutsideClick(false);
        setWidth("min(32rem, 100%)");
        kind.setLabel("Decision");
        kind.setItems(kinds);
        kind.setItemLabelGenerator(item -> Words.capitalised(Words.decision(item)));
        kind.addValueChangeListener(change -> {
            reason.setHelperText(reasonHint(change.getValue()));
            askForEvidence(change.getValue());
            proposeEars();
        });
        ears.setItems(Ears.values());
        ears.setItemLabelGenerator(item -> Words.capitalised(Words.ears(item)));
        ears.addValueChangeListener(change -> earsWereChosen |= change.isFromClient());
        offerTests(stories, draft.testDate());
        test.addValueChangeListener(change -> proposeEars());
        date.setValue(today);
        by.setValue(userName);
        by.setMaxLength(DecisionService.LONGEST_BY);
        by.setHelperText("Name and profession, where it was somebody else");
        reason.setMaxLength(DecisionService.LONGEST_REASON);
        reason.setHelperText(reasonHint(null));
        problem.addClassName("tr-message");
        problem.setVisible(false);
        List.<HasSize>of(kind, test, date, by, reason).forEach(HasSize::setWidthFull);
        askForEvidence(null);
        add(kind, ears, test, date, by, reason, evidence, problem);
        var save = new Button("Enter", click -> save(enter));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        draft.kind().ifPresent(kind::setValue);
        proposeEars();
        if (draft.kind().isPresent()) {
            date.focus();
        } else {
            kind.focus();
        }
    }

    /** The kind and the test that the dialog opens with. */
    record Draft(Optional<DecisionKind> kind, LocalDate testDate) {}

    /** The ears that the case calls for, until somebody chooses others. */
    private void proposeEars() {
        if (!earsWereChosen && test.getValue() != null) {
            ears.setValue(
                    kind.getValue() == null
                            ? cases.about(test.getValue()).map(CaseLife::ears).orElse(Ears.BOTH)
                            : cases.earsFor(kind.getValue(), test.getValue()));
        }
    }

    /** What was done may be shown; a notice has to be. What is decided about a test itself stands by its reason. */
    private void askForEvidence(@Nullable DecisionKind chosen) {
        evidence.setVisible(chosen != null
                && switch (chosen) {
                    case INVALID_TEST, BASELINE, BASELINE_KEPT -> false;
                    case NOT_WORK_RELATED,
                            WORK_RELATED,
                            RECORDED,
                            LINED_OUT,
                            NOTICE_GIVEN,
                            RETEST_BOOKED,
                            PROTECTOR_REFITTED,
                            TRAINED,
                            REFERRED -> true;
                });
        if (chosen == DecisionKind.NOTICE_GIVEN) {
            evidence.need(true);
        } else {
            evidence.mayStayEmpty();
        }
    }

    private static String reasonHint(@Nullable DecisionKind kind) {
        if (kind == DecisionKind.RETEST_BOOKED) {
            return "When and where the retest is booked for; may be left empty";
        }
        return kind != null && kind.needsReason() ? "Needed for this decision" : "May be left empty";
    }

    private void offerTests(List<TestStory> stories, LocalDate chosen) {
        Map<LocalDate, String> byDay = stories.stream()
                .map(TestStory::audiogram)
                .collect(Collectors.groupingBy(
                        Audiogram::date,
                        Collectors.mapping(
                                audiogram -> Words.purpose(audiogram.purpose()), Collectors.joining(" and "))));
        test.setLabel("Test");
        test.setItems(byDay.keySet().stream().sorted().toList().reversed());
        test.setItemLabelGenerator(day -> Words.capitalised(byDay.getOrDefault(day, "")) + " of " + Words.day(day));
        test.setValue(chosen);
    }

    private void save(SerializableBiFunction<Decision, Optional<Evidence>, DecisionResult> enter) {
        List.<HasValidation>of(kind, test, date, by, reason).forEach(field -> field.setInvalid(false));
        problem.setVisible(false);
        DecisionKind chosenKind = kind.getValue();
        LocalDate day = date.getValue();
        if (chosenKind == null) {
            complain(kind, "Choose what was decided.");
        } else if (day == null) {
            complain(date, "Give the day as 9 Mar 2026.");
        } else if (!evidence.isVisible() || evidence.check()) {
            var decision = new Decision(
                    ears.getValue(),
                    test.getValue(),
                    chosenKind,
                    day,
                    by.getValue().strip(),
                    reason.getValue().strip());
            switch (enter.apply(decision, evidence.isVisible() ? evidence.evidence() : Optional.empty())) {
                case DecisionResult.Recorded() -> close();
                case DecisionResult.AlreadyOnRecord() ->
                    complain("This very decision is on record already. Nothing was changed.");
                case DecisionResult.OutOfOrder(var objection) ->
                    complain(CaseWords.objection(objection) + " Nothing was changed.");
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
            case EVIDENCE_MISSING -> complain(reason, "Say by what it was done.");
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
