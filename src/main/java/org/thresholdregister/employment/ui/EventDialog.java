package org.thresholdregister.employment.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Engagement;
import org.thresholdregister.core.employment.Placement;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.core.wording.WorkingLifeWords;
import org.thresholdregister.employment.EntryResult;
import org.thresholdregister.employment.WorkingLifeService;

/** Enters an event of a working life, or the right one in place of a wrong one. */
class EventDialog extends Dialog {

    /** Stores the event and says what came of it. */
    @FunctionalInterface
    interface Enter extends Serializable {
        EntryResult enter(DatedEvent event, String reason, boolean certain);
    }

    /** Told whether the record is still open to the user. */
    @FunctionalInterface
    interface Done extends Serializable {
        void done(boolean stillVisible);
    }

    private final Select<EventChoice> kind = new Select<>();
    private final DatePicker day = new DatePicker(EventChoice.MOVED.dayLabel());
    private final DatePicker until = new DatePicker("Last day of the leave");
    private final TextField site = new TextField("Site");
    private final TextField department = new TextField("Department");
    private final TextField job = new TextField("Job");
    private final Select<Engagement.Kind> engagement = new Select<>();
    private final TextField other = new TextField();
    private final RadioButtonGroup<Boolean> supervised = new RadioButtonGroup<>("Who supervises from day to day?");
    private final TextArea reason = new TextArea();
    private final Paragraph note = new Paragraph();
    private final Paragraph problem = new Paragraph();
    private final Placement now;
    private final boolean correction;
    private final Enter enter;
    private final Done done;
    private String certainOf = "";

    /**
     * @param wrong the event that is to be corrected, if any
     * @param now where the worker works today
     */
    EventDialog(Optional<DatedEvent> wrong, Placement now, LocalDate today, Enter enter, Done done) {
        this.now = now;
        this.enter = enter;
        this.done = done;
        this.correction = wrong.isPresent();
        setHeaderTitle(correction ? "Correct an entry" : "Add to the working life");
        setCloseOnOutsideClick(false);
        setWidth("min(32rem, 100%)");
        kind.setLabel("What happened");
        kind.setItems(EventChoice.values());
        kind.setItemLabelGenerator(EventChoice::label);
        List.of(day, until).forEach(EventDialog::inOurFormat);
        day.setValue(today);
        until.setHelperText("Empty while it is not known");
        site.setHelperText("As spelled in the roster");
        List.of(site, department, job, other).forEach(field -> field.setMaxLength(WorkingLifeService.LONGEST_NAME));
        engagement.setLabel("Whose worker");
        engagement.setItems(Engagement.Kind.values());
        engagement.setItemLabelGenerator(EventDialog::inWords);
        engagement.setValue(Engagement.Kind.AGENCY);
        engagement.addValueChangeListener(change -> showFields());
        supervised.setItems(true, false);
        supervised.setItemLabelGenerator(
                here -> here ? "This employer, which then records" : "The other, which then records");
        supervised.setHelperText(Engagement.BASIS.place());
        reason.setLabel(correction ? "Why the entry was wrong" : "Remark");
        reason.setHelperText(correction ? "Stays with the entry" : "May be left empty");
        reason.setMaxLength(WorkingLifeService.LONGEST_REASON);
        problem.addClassName("tr-message");
        problem.getElement().setAttribute("role", "alert");
        problem.setVisible(false);
        kind.addValueChangeListener(change -> showFields());
        site.addValueChangeListener(change -> showNote());
        day.addValueChangeListener(change -> showNote());
        var fields = new Div(kind, day, until, site, department, job, engagement, other, supervised, note, reason);
        fields.addClassName("tr-entry-fields");
        add(fields, problem);
        var save = new Button("Enter", click -> save());
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        set(now);
        kind.setValue(EventChoice.MOVED);
        wrong.ifPresent(this::set);
        kind.focus();
    }

    private static void inOurFormat(DatePicker field) {
        field.setLocale(Locale.ENGLISH);
        field.setI18n(new DatePicker.DatePickerI18n()
                .setDateFormats("d MMM yyyy", "yyyy-MM-dd")
                .setFirstDayOfWeek(1));
    }

    private static String inWords(Engagement.Kind kind) {
        return switch (kind) {
            case OWN -> "This employer's own";
            case AGENCY -> "An agency's";
            case CONTRACTOR -> "A contractor's";
        };
    }

    private void set(Placement place) {
        site.setValue(place.site());
        department.setValue(place.department());
        job.setValue(place.jobTitle());
    }

    private void set(DatedEvent wrong) {
        day.setValue(wrong.day());
        wrong.event().placement().ifPresent(this::set);
        kind.setValue(
                switch (wrong.event()) {
                    case WorkEvent.Hired hired -> EventChoice.HIRED;
                    case WorkEvent.Listed listed -> EventChoice.HIRED;
                    case WorkEvent.TakenOver takenOver -> {
                        other.setValue(takenOver.predecessor());
                        yield EventChoice.TAKEN_OVER;
                    }
                    case WorkEvent.Engaged engaged -> {
                        engagement.setValue(engaged.engagement().kind());
                        other.setValue(engaged.engagement().employer());
                        supervised.setValue(engaged.engagement().supervisedHere());
                        yield EventChoice.ENGAGED;
                    }
                    case WorkEvent.Enrolled enrolled -> EventChoice.ENROLLED;
                    case WorkEvent.EnrolmentEnded ended -> EventChoice.ENROLMENT_ENDED;
                    case WorkEvent.Moved moved -> EventChoice.MOVED;
                    case WorkEvent.LeaveBegan leave -> {
                        until.setValue(leave.until().orElse(null));
                        yield EventChoice.LEAVE_BEGAN;
                    }
                    case WorkEvent.Returned returned -> EventChoice.RETURNED;
                    case WorkEvent.Left left -> EventChoice.LEFT;
                    case WorkEvent.TransferredToSuccessor sold -> EventChoice.LEFT;
                });
    }

    private void showFields() {
        EventChoice chosen = kind.getValue();
        boolean own = engagement.getValue() == Engagement.Kind.OWN;
        day.setLabel(chosen.dayLabel());
        until.setVisible(chosen == EventChoice.LEAVE_BEGAN);
        List.of(site, department, job).forEach(field -> field.setVisible(chosen.asksForPlace()));
        engagement.setVisible(chosen == EventChoice.ENGAGED);
        supervised.setVisible(chosen == EventChoice.ENGAGED && !own);
        other.setVisible(chosen == EventChoice.TAKEN_OVER || chosen == EventChoice.ENGAGED && !own);
        other.setLabel(chosen == EventChoice.TAKEN_OVER ? "Bought from" : "Name of the agency or contractor");
        showNote();
    }

    /** What a move to another site does to who sees the record, before it is entered. */
    private void showNote() {
        boolean toAnotherSite = kind.getValue() == EventChoice.MOVED
                && day.getValue() != null
                && !site.getValue().strip().equals(now.site());
        note.setVisible(toAnotherSite);
        note.setText(
                toAnotherSite
                        ? WorkingLifeWords.movedSite(now.site(), site.getValue().strip(), day.getValue())
                                .text()
                        : "");
    }

    private Optional<WorkEvent> event() {
        Placement place = new Placement(
                site.getValue().strip(),
                department.getValue().strip(),
                job.getValue().strip());
        String name = other.getValue().strip();
        return switch (kind.getValue()) {
            case MOVED -> Optional.of(new WorkEvent.Moved(place));
            case HIRED -> Optional.of(new WorkEvent.Hired(place));
            case TAKEN_OVER -> Optional.of(new WorkEvent.TakenOver(name, place));
            case ENROLLED -> Optional.of(new WorkEvent.Enrolled());
            case ENROLMENT_ENDED -> Optional.of(new WorkEvent.EnrolmentEnded());
            case LEAVE_BEGAN -> Optional.of(new WorkEvent.LeaveBegan(Optional.ofNullable(until.getValue())));
            case RETURNED -> Optional.of(new WorkEvent.Returned());
            case LEFT -> Optional.of(new WorkEvent.Left());
            case ENGAGED -> engagedBy(name);
        };
    }

    private Optional<WorkEvent> engagedBy(String name) {
        if (engagement.getValue() == Engagement.Kind.OWN) {
            return Optional.of(new WorkEvent.Engaged(Engagement.OWN));
        }
        if (name.isEmpty()) {
            complain(other, "Give the name of the agency or contractor.");
            return Optional.empty();
        }
        if (supervised.getValue() == null) {
            complain(supervised, "Say who supervises: it decides on whose log a case goes.");
            return Optional.empty();
        }
        return Optional.of(new WorkEvent.Engaged(new Engagement(engagement.getValue(), name, supervised.getValue())));
    }

    private void save() {
        List.<HasValidation>of(day, until, site, other, supervised, reason).forEach(field -> field.setInvalid(false));
        problem.setVisible(false);
        LocalDate on = day.getValue();
        if (on == null) {
            complain(day, "Give the day as 9 Mar 2026.");
            return;
        }
        event().ifPresent(event -> answer(enter.enter(
                new DatedEvent(on, event),
                reason.getValue().strip(),
                certainOf.equals(site.getValue().strip()) && !certainOf.isEmpty())));
    }

    private void answer(EntryResult result) {
        switch (result) {
            case EntryResult.Entered(boolean stillVisible) -> {
                close();
                done.done(stillVisible);
            }
            case EntryResult.Misfit(var found, boolean ofThis) ->
                complain(
                        day,
                        ofThis
                                ? WorkingLifeWords.inconsistency(found.kind())
                                : "Then the entry of " + Words.day(found.about().day()) + " would no longer fit. "
                                        + WorkingLifeWords.inconsistency(found.kind()));
            case EntryResult.SiteNotKnown(var name) -> {
                certainOf = name;
                complain(
                        site,
                        "Nobody works at “" + name
                                + "” yet. Mend the spelling, or press Enter again if the site is new.");
            }
            case EntryResult.Refused(var why) -> refuse(why);
        }
    }

    private void refuse(EntryResult.Reason why) {
        switch (why) {
            case UNKNOWN_WORKER -> complain("This record is not open to you any more. Nothing was changed.");
            case NO_SUCH_ENTRY ->
                complain("This entry has been corrected meanwhile. Nothing was changed; open the page again.");
            case IN_THE_FUTURE ->
                complain(day, "This day has not come yet. Only a leave and a last day are entered ahead.");
            case BEFORE_ANYONE_LIVED -> complain(day, "This is before 1900.");
            case REASON_MISSING -> complain(reason, "A correction is taken down only with its reason.");
            case NAME_MISSING -> complain(other, "Give the name.");
            case TEXT_TOO_LONG -> complain("One of the texts is too long. Nothing was changed.");
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
