package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.training.TrainingTopic;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.TrainingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.protection.NewSession;
import org.thresholdregister.protection.ProtectionProblem;
import org.thresholdregister.protection.TrainingResult;
import org.thresholdregister.protection.TrainingService;
import org.thresholdregister.protection.TrainingService.Person;
import org.thresholdregister.roster.WorkerService;

/** Takes down a training that was held, and who took part. */
@Route(TrainingEntryView.ROUTE)
@PageTitle("Enter a training · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class TrainingEntryView extends Div {

    static final String ROUTE = "training-entry";

    private static final int USUAL_MINUTES = 45;

    private final transient TrainingService trainings;
    private final ComboBox<String> site;
    private final DatePicker day;
    private final CheckboxGroup<TrainingTopic> topics = new CheckboxGroup<>("What it covered");
    private final TextField trainer = new TextField("Trainer");
    private final Select<String> language = new Select<>();
    private final IntegerField minutes = new IntegerField("Minutes");
    private final TextArea materials = new TextArea("Materials");
    private final Checkbox certified = new Checkbox("Date and kind of training are certified (30 CFR 62.180)");
    private final ComboBox<String> department;
    private final MultiSelectComboBox<Person> people = new MultiSelectComboBox<>("Who took part");
    private final Paragraph message = Fields.message();

    TrainingEntryView(TrainingService trainings, WorkerService workers, Clock clock) {
        this.trainings = trainings;
        site = Fields.site(workers.sites());
        day = Fields.day("Day", LocalDate.now(clock));
        topics.setItems(TrainingTopic.values());
        topics.setItemLabelGenerator(topic -> Words.capitalised(TrainingWords.topic(topic)));
        topics.setHelperText("29 CFR 1910.95(k)(3)(i) to (iii); the year runs from the day by which all were covered");
        topics.addClassName("tr-wide");
        trainer.setMaxLength(NewSession.LONGEST_TRAINER);
        language.setLabel("Language");
        language.setItems("en", "es");
        language.setItemLabelGenerator(TrainingSessionView::language);
        language.setValue("en");
        minutes.setValue(USUAL_MINUTES);
        materials.setMaxLength(NewSession.LONGEST_MATERIALS);
        materials.setHelperText("What was shown or handed out");
        materials.addClassName("tr-wide");
        department = new ComboBox<>("Add a whole department", workers.departments());
        department.setItemLabelGenerator(Place::name);
        department.addValueChangeListener(change -> {
            if (change.isFromClient()) {
                addDepartment();
            }
        });
        people.setItemLabelGenerator(person -> person.name() + " (" + person.workerId() + ")"
                + (person.department().isEmpty() ? "" : ", " + person.department()));
        people.addClassName("tr-wide");
        people.setWidthFull();
        site.addValueChangeListener(change -> offerPeople());
        offerPeople();
        var form = new Div(site, day, trainer, language, minutes, topics, materials, certified, department, people);
        form.addClassName("tr-form");
        var save = new Button("Enter the training", click -> save());
        save.addThemeVariants(ButtonVariant.PRIMARY);
        var card = new Div(form, message, save);
        card.addClassName("tr-card");
        add(
                new H1("Enter a training"),
                new LeadSentence("A training that was held, what it covered and who took part. Where a case owes its"
                        + " worker training in protectors, it is entered there too."),
                card,
                new Anchor(TrainingView.ROUTE, "Back to training"));
    }

    private void offerPeople() {
        people.setItems(site.getOptionalValue()
                .map(some -> trainings.people(some, Optional.empty()))
                .orElse(List.of()));
    }

    private void addDepartment() {
        if (site.getValue() != null && department.getValue() != null) {
            Set<Person> more = new LinkedHashSet<>(people.getValue());
            more.addAll(trainings.people(site.getValue(), Optional.of(department.getValue())));
            people.setValue(more);
            department.clear();
        }
    }

    private void save() {
        Fields.clear(message, site, day, topics, trainer, minutes, people);
        if (site.getValue() == null) {
            Fields.complain(site, ProblemWords.of(ProtectionProblem.SITE_NOT_OPEN));
            return;
        }
        if (day.getValue() == null) {
            Fields.complain(day, "Give the day as 9 Mar 2026.");
            return;
        }
        var session = new NewSession(
                site.getValue(),
                day.getValue(),
                topics.getValue(),
                trainer.getValue().strip(),
                language.getValue(),
                minutes.getOptionalValue().orElse(0),
                materials.getValue().strip(),
                certified.getValue());
        List<String> present = people.getValue().stream().map(Person::workerId).toList();
        switch (trainings.add(session, present)) {
            case TrainingResult.Entered(long key, int moved) -> {
                Notification.show("The training is on record with "
                        + Counted.of(present.size(), "person", "people") + "."
                        + (moved == 0
                                ? ""
                                : " Training is entered in the cases of " + Counted.of(moved, "worker", "workers")
                                        + "."));
                UI.getCurrent().navigate(TrainingSessionView.ROUTE + "/" + key);
            }
            case TrainingResult.NotEntered(ProtectionProblem problem) ->
                Fields.show(
                        problem,
                        Map.of(
                                ProtectionProblem.SITE_NOT_OPEN, site,
                                ProtectionProblem.IN_THE_FUTURE, day,
                                ProtectionProblem.TOPICS_MISSING, topics,
                                ProtectionProblem.TRAINER_MISSING, trainer,
                                ProtectionProblem.MINUTES_OUT_OF_RANGE, minutes,
                                ProtectionProblem.UNKNOWN_WORKER, people),
                        message);
        }
    }
}
