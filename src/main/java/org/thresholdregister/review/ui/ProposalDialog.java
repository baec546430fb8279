package org.thresholdregister.review.ui;

import com.vaadin.flow.component.HasSize;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableFunction;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.decision.Profession;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.BaselineProposalService;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.OpenedProposal;
import org.thresholdregister.review.ProposalAnswer;
import org.thresholdregister.review.ProposalResult;
import org.thresholdregister.review.ProposalResult.Objection;

/** Takes down a professional's answer to a baseline proposal, and says first what it will change. */
class ProposalDialog extends Dialog {

    private final transient BaselineChange proposal;
    private final boolean accepted;
    private final SerializableFunction<ProposalAnswer, List<String>> outlook;
    private final SerializableFunction<ProposalAnswer, ProposalResult> answer;
    private final TextField name = new TextField("Decided by");
    private final Select<Profession> profession = new Select<>();
    private final DatePicker day = new DatePicker("Day of the decision");
    private final TextArea reason = new TextArea("Reason");
    private final Div changes = new Div();
    private final Paragraph problem = new Paragraph();

    /**
     * @param outlook says what the answer would change
     * @param answer takes the answer down and says what came of it
     */
    ProposalDialog(
            OpenedProposal opened,
            boolean accepted,
            SerializableFunction<ProposalAnswer, List<String>> outlook,
            SerializableFunction<ProposalAnswer, ProposalResult> answer) {
        this.proposal = opened.about().proposal();
        this.accepted = accepted;
        this.outlook = outlook;
        this.answer = answer;
        setHeaderTitle(accepted ? "Accept the proposed baseline" : "Decline the proposed baseline");
        setCloseOnOutsideClick(false);
        setWidth("min(34rem, 100%)");
        name.setMaxLength(BaselineProposalService.LONGEST_NAME);
        name.setHelperText("The professional's name");
        profession.setLabel("Profession");
        profession.setItems(Profession.values());
        profession.setItemLabelGenerator(item -> Words.capitalised(item.word()));
        day.setLocale(Locale.ENGLISH);
        day.setI18n(new DatePicker.DatePickerI18n().setDateFormats("d MMM yyyy", "yyyy-MM-dd"));
        day.setValue(opened.record().asOf());
        day.addValueChangeListener(change -> showChanges());
        reason.setMaxLength(DecisionService.LONGEST_REASON);
        reason.setHelperText("Specific and concrete, as it would be read years later");
        List.<HasValue<?, ?>>of(name, profession, day, reason)
                .forEach(field -> field.setRequiredIndicatorVisible(true));
        List.<HasSize>of(name, profession, day, reason).forEach(HasSize::setWidthFull);
        changes.addClassName("tr-card");
        changes.getElement().setAttribute("aria-live", "polite");
        problem.addClassName("tr-message");
        problem.setVisible(false);
        add(name, profession, day, reason, changes, problem);
        var save = new Button(accepted ? "Accept" : "Decline", click -> save());
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        showChanges();
        name.focus();
    }

    private ProposalAnswer given(LocalDate decidedOn) {
        return new ProposalAnswer(
                proposal.ear(),
                proposal.to().date(),
                accepted,
                decidedOn,
                name.getValue(),
                profession.getOptionalValue(),
                reason.getValue());
    }

    private void showChanges() {
        changes.removeAll();
        changes.setVisible(!day.isEmpty());
        day.getOptionalValue()
                .ifPresent(decidedOn -> changes.add(
                        new Paragraph("What this will change:"),
                        new UnorderedList(outlook.apply(given(decidedOn)).stream()
                                .map(ListItem::new)
                                .toArray(ListItem[]::new))));
    }

    private void save() {
        List.<HasValidation>of(name, profession, day, reason).forEach(field -> field.setInvalid(false));
        problem.setVisible(false);
        LocalDate decidedOn = day.getValue();
        if (decidedOn == null) {
            complain(day, "Give the day as 9 Mar 2026.");
            return;
        }
        switch (answer.apply(given(decidedOn))) {
            case ProposalResult.Answered() -> close();
            case ProposalResult.Refused(Objection objection) -> refuse(objection);
        }
    }

    private void refuse(Objection objection) {
        switch (objection) {
            case NO_SUCH_PROPOSAL -> {
                problem.setText("This proposal is not open any more: it was answered in between, or the tests have"
                        + " changed. Nothing was changed.");
                problem.setVisible(true);
            }
            case PROFESSIONAL_MISSING -> {
                if (name.getValue().isBlank()) {
                    complain(name, "Name the audiologist, otolaryngologist or physician who decided.");
                }
                if (profession.isEmpty()) {
                    complain(profession, "Choose the profession.");
                }
            }
            case REASON_MISSING -> complain(reason, "An answer is taken down only with its reason.");
            case BEFORE_THE_EVIDENCE ->
                complain(
                        day,
                        "This is before the test of "
                                + Words.day(proposal.after().date()) + ", on which the proposal rests.");
            case IN_THE_FUTURE -> complain(day, "This day has not come yet.");
            case TEXT_TOO_LONG -> complain(reason, "The reason or the name is too long.");
        }
    }

    private static void complain(HasValidation field, String words) {
        field.setErrorMessage(words);
        field.setInvalid(true);
    }
}
