package org.thresholdregister.clinical.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.clinical.ClinicalEntry;
import org.thresholdregister.clinical.ClinicalRecord;
import org.thresholdregister.clinical.ClinicalResult;
import org.thresholdregister.clinical.ClinicalService;
import org.thresholdregister.clinical.Refusal;
import org.thresholdregister.core.wording.ClinicalWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.documents.Document;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.ui.WorkerSection;

/** The clinical part on a worker's page, for a nurse; anybody else is shown nothing at all. */
@org.springframework.stereotype.Component
class ClinicalSection implements WorkerSection {

    private static final int PLACE = 50;

    private final ClinicalService clinical;
    private final CurrentUser currentUser;

    ClinicalSection(ClinicalService clinical, CurrentUser currentUser) {
        this.clinical = clinical;
        this.currentUser = currentUser;
    }

    @Override
    public int place() {
        return PLACE;
    }

    @Override
    public Optional<Component> of(WorkerRecord record) {
        String workerId = record.details().workerId();
        return currentUser.role() == Role.NURSE
                ? clinical.of(workerId).map(found -> section(workerId, found))
                : Optional.empty();
    }

    private Section section(String workerId, ClinicalRecord record) {
        var section = new Section(new H2("Health history and ears"));
        var add = new Button(
                "Enter history and ears",
                click -> new ClinicalDialog(clinical, workerId, record, record.asOf(), () -> show(workerId)).open());
        if (record.entries().isEmpty()) {
            section.add(new EmptyHint(
                    "No health history and no look into the ears is on record.",
                    "It is entered beside a test, or here for a day without one. Only nurses see it.",
                    add));
        } else {
            section.add(
                    new ListTable<>("The newest first; only nurses see it", columns(), record.entries(), entry -> {}),
                    add);
        }
        section.add(new H3("Refusals"));
        if (record.refusals().isEmpty()) {
            section.add(new Paragraph("No refusal is on record."));
        } else {
            section.add(
                    new Paragraph(ClinicalWords.AFTER_REFUSAL.withBasis()),
                    new ListTable<>(
                            "The newest first",
                            refusalColumns(),
                            record.refusals(),
                            refusal -> takeBack(workerId, refusal)));
            record.refusals()
                    .forEach(refusal -> refusal.signedSheet()
                            .ifPresent(sheet -> section.add(new Paragraph(download(workerId, refusal, sheet)))));
        }
        var actions = new Div(
                new Button(
                        "Enter a refusal",
                        click -> new RefusalDialog(clinical, workerId, record.asOf(), () -> show(workerId)).open()),
                new Anchor(RefusalFormView.path(workerId), "Form to sign"));
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        section.add(actions);
        return section;
    }

    private static List<ListColumn<ClinicalEntry, ?>> columns() {
        return List.of(
                ListColumn.unordered("Day", 7, entry -> ListCell.figures(Words.day(entry.day()))),
                ListColumn.unordered(
                        "History",
                        18,
                        entry -> ListCell.text(
                                ClinicalWords.history(entry.facts().history()))),
                ListColumn.unordered("Ears", 14, entry -> ListCell.text(ClinicalWords.ears(entry.facts()))),
                ListColumn.unordered(
                        "The worker said",
                        12,
                        entry -> ListCell.text(entry.facts().said())),
                ListColumn.unordered("State", 8, ClinicalSection::state),
                ListColumn.unordered("Entered by", 7, entry -> ListCell.text(entry.enteredBy())));
    }

    private static ListCell state(ClinicalEntry entry) {
        return (entry.inForce() ? ListCell.state(StateBadge.Kind.DONE, "in force") : ListCell.text("replaced"))
                .withNote(entry.reason());
    }

    private static List<ListColumn<Refusal, ?>> refusalColumns() {
        return List.of(
                ListColumn.unordered("Day", 7, refusal -> ListCell.figures(Words.day(refusal.day()))),
                ListColumn.unordered("Reason", 16, refusal -> ListCell.text(refusal.reason())),
                ListColumn.unordered(
                        "State",
                        10,
                        refusal -> refusal.takenBack()
                                .map(why -> ListCell.text("taken back").withNote(why))
                                .orElse(ListCell.state(StateBadge.Kind.OPEN, "refused, to be offered again"))),
                ListColumn.unordered("Entered by", 7, refusal -> ListCell.text(refusal.enteredBy())),
                ListColumn.unordered(
                        "",
                        6,
                        refusal -> refusal.takenBack().isEmpty()
                                ? ListCell.action("Take back", "Take back the refusal of " + Words.day(refusal.day()))
                                : ListCell.EMPTY));
    }

    private Anchor download(String workerId, Refusal refusal, Document sheet) {
        return Downloads.link(
                "Signed form of " + Words.day(refusal.day()),
                sheet.name(),
                sheet.type().value(),
                out -> {
                    Optional<byte[]> content = clinical.signedSheet(workerId, refusal.key());
                    if (content.isPresent()) {
                        out.write(content.get());
                    }
                });
    }

    private void takeBack(String workerId, Refusal refusal) {
        var dialog = new Dialog();
        dialog.setHeaderTitle("Take back the refusal of " + Words.day(refusal.day()));
        dialog.setWidth("min(30rem, 100%)");
        var reason = new TextArea("Why it was no refusal");
        reason.setMaxLength(ClinicalService.LONGEST_REASON);
        reason.setWidthFull();
        dialog.add(reason);
        var save = new Button("Take back", click -> {
            switch (clinical.takeBackRefusal(
                    workerId, refusal.key(), reason.getValue().strip())) {
                case ClinicalResult.Kept() -> {
                    dialog.close();
                    show(workerId);
                }
                case ClinicalResult.Refused(var why) -> {
                    reason.setErrorMessage(ClinicalReasons.inWords(why));
                    reason.setInvalid(true);
                }
            }
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        dialog.getFooter().add(new Button("Cancel", click -> dialog.close()), save);
        dialog.open();
        reason.focus();
    }

    private static void show(String workerId) {
        Notification.show("The entry is on record.");
        UI.getCurrent().navigate(Paths.worker(workerId));
    }
}
