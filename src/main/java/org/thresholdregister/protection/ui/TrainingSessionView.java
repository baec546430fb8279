package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.TrainingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.documents.ui.DocumentField;
import org.thresholdregister.platform.documents.ui.DocumentLink;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.protection.NewSession;
import org.thresholdregister.protection.TrainingResult;
import org.thresholdregister.protection.TrainingService;
import org.thresholdregister.protection.TrainingService.Person;
import org.thresholdregister.protection.TrainingSession;
import org.thresholdregister.protection.TrainingSession.Attendant;

/** One training: what it covered, who took part, and the signed sheet. */
@Route(TrainingSessionView.ROUTE)
@PageTitle("A training · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class TrainingSessionView extends Div implements HasUrlParameter<Long> {

    static final String ROUTE = "training-session";

    private final transient TrainingService trainings;

    TrainingSessionView(TrainingService trainings) {
        this.trainings = trainings;
    }

    @Override
    public void setParameter(BeforeEvent event, Long key) {
        show(key);
    }

    private void show(long key) {
        removeAll();
        trainings
                .session(key)
                .ifPresentOrElse(
                        this::show,
                        () -> add(
                                new H1("No training to show"),
                                new EmptyHint(
                                        "No training of this number is among those of your sites.",
                                        "Look it up in the list.",
                                        new Anchor(TrainingView.ROUTE, "Go to training"))));
    }

    private void show(TrainingSession session) {
        NewSession details = session.details();
        var actions = new Div(
                Downloads.link(
                        "Attendance sheet to sign (PDF)",
                        "attendance-sheet-" + details.heldOn() + ".pdf",
                        "application/pdf",
                        out -> out.write(trainings.sheetToSign(session.key()).orElse(new byte[0]))),
                new Anchor(TrainingView.ROUTE, "All trainings"));
        session.sheet()
                .ifPresent(sheet -> actions.add(DocumentLink.of(
                        "Signed sheet",
                        sheet,
                        document -> trainings.signedSheet(session.key()).orElse(new byte[0]))));
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        add(
                new H1("Training of " + Words.day(details.heldOn())),
                new LeadSentence(Counted.of(session.present(), "person", "people") + " took part; it covered "
                        + TrainingWords.topics(details.topics()) + "."),
                actions,
                facts(details),
                topics(details),
                new H2("Who took part"));
        if (session.attendants().isEmpty()) {
            add(new EmptyHint("Nobody is on the list.", "Add those who took part below."));
        } else {
            add(new ListTable<>("By name", columns(), session.attendants(), attendant -> withdraw(session, attendant)));
        }
        add(addPeople(session), keepSheet(session));
    }

    private static DescriptionList facts(NewSession details) {
        var facts = new DescriptionList();
        facts.addClassName("tr-facts");
        fact(facts, "Site", Place.name(details.site()));
        fact(facts, "Trainer", details.trainer());
        fact(facts, "Language", language(details.language()));
        fact(facts, "Length", Counted.of(details.minutes(), "minute", "minutes"));
        if (!details.materials().isEmpty()) {
            fact(facts, "Materials", details.materials());
        }
        if (details.certified()) {
            fact(facts, "Certified", "Date and kind are certified [30 CFR 62.180]");
        }
        return facts;
    }

    private static UnorderedList topics(NewSession details) {
        return new UnorderedList(details.topics().stream()
                .sorted()
                .map(topic -> new ListItem(Words.capitalised(TrainingWords.topic(topic)) + ". ["
                        + topic.basis().place() + "]"))
                .toArray(ListItem[]::new));
    }

    private static void fact(DescriptionList facts, String term, String words) {
        facts.add(new Div(new DescriptionList.Term(term), new DescriptionList.Description(words)));
    }

    static String language(String code) {
        return switch (code) {
            case "en" -> "English";
            case "es" -> "Spanish";
            default -> code;
        };
    }

    private static List<ListColumn<Attendant, ?>> columns() {
        return List.of(
                ListColumn.unordered(
                        "Name",
                        12,
                        row -> ListCell.link(row.name(), Paths.worker(row.workerId()))
                                .withNote(row.workerId())),
                ListColumn.unordered("Department", 10, row -> ListCell.text(row.department())),
                ListColumn.unordered(
                        "State",
                        10,
                        row -> row.counts()
                                ? ListCell.text("took part")
                                : ListCell.text("entered by mistake").withNote(row.withdrawn())),
                ListColumn.unordered(
                        "",
                        8,
                        row -> row.counts()
                                ? ListCell.action(
                                        "Entered by mistake", "Say that " + row.name() + " was entered by mistake")
                                : ListCell.EMPTY));
    }

    private void withdraw(TrainingSession session, Attendant attendant) {
        new ReasonDialog(
                        "Entered by mistake",
                        attendant.name() + " did not take part. The entry stays readable and counts no more. What was"
                                + " entered in a case stays.",
                        "Withdraw",
                        reason -> trainings.withdrawAttendance(session.key(), attendant.key(), reason),
                        () -> show(session.key()))
                .open();
    }

    private Div addPeople(TrainingSession session) {
        Set<String> there = session.attendants().stream()
                .filter(Attendant::counts)
                .map(Attendant::workerId)
                .collect(Collectors.toSet());
        var people = new MultiSelectComboBox<Person>("People to add");
        people.setItems(trainings.people(session.details().site(), Optional.empty()).stream()
                .filter(person -> !there.contains(person.workerId()))
                .toList());
        people.setItemLabelGenerator(person -> person.name() + " (" + person.workerId() + ")");
        people.setWidthFull();
        var message = Fields.message();
        var add = new Button("Add them", click -> {
            Fields.clear(message, people);
            if (people.getValue().isEmpty()) {
                Fields.complain(people, "Choose who took part.");
                return;
            }
            switch (trainings.addAttendants(
                    session.key(),
                    people.getValue().stream().map(Person::workerId).toList())) {
                case TrainingResult.Entered entered -> {
                    Notification.show("They are on the list."
                            + (entered.casesMovedOn() == 0
                                    ? ""
                                    : " Training is entered in the cases of "
                                            + Counted.of(entered.casesMovedOn(), "worker", "workers") + "."));
                    show(session.key());
                }
                case TrainingResult.NotEntered(var problem) -> {
                    message.setText(ProblemWords.of(problem));
                    message.setVisible(true);
                }
            }
        });
        var card = new Div(new H3("Add people who took part"), people, message, add);
        card.addClassNames("tr-card", "tr-screen-only");
        return card;
    }

    private Div keepSheet(TrainingSession session) {
        var sheet = new DocumentField("Signed sheet, scanned");
        var message = Fields.message();
        var keep = new Button("Keep the sheet", click -> {
            Fields.clear(message);
            if (sheet.document().isEmpty()) {
                sheet.refuse("Choose the scanned sheet first.");
                return;
            }
            trainings
                    .keepSheet(session.key(), sheet.document().get())
                    .ifPresentOrElse(
                            problem -> {
                                message.setText(ProblemWords.of(problem));
                                message.setVisible(true);
                            },
                            () -> {
                                Notification.show("The sheet is kept.");
                                show(session.key());
                            });
        });
        var paragraph = new Paragraph(
                session.sheet().isPresent()
                        ? "A later sheet takes the place of the one that is kept; the earlier stays in the register."
                        : "Print the attendance sheet, have it signed, and keep the scan here.");
        var card = new Div(new H3("The signed sheet"), paragraph, sheet, message, keep);
        card.addClassNames("tr-card", "tr-screen-only");
        return card;
    }
}
