package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.intake.WorkerChange;
import org.thresholdregister.platform.ui.LeadSentence;

/** What the files would do, before anything is stored. */
class PreviewStep extends Step {

    private static final String NOT_GIVEN = "(not given)";

    /** @param notice what the user should know first; may be empty */
    PreviewStep(
            ImportPreview preview,
            String notice,
            ImportService imports,
            SerializableRunnable confirm,
            SerializableRunnable giveUp) {
        super(new LeadSentence(ImportWords.outlook(preview.counts())));
        if (!notice.isEmpty()) {
            var first = new Paragraph(notice);
            first.addClassName("tr-message");
            addComponentAsFirst(first);
        }
        add(new CountsTable(preview));
        if (!preview.lateChanges().isEmpty()) {
            add(new LateChangeSection(preview, imports));
        }
        if (!preview.doubts().isEmpty()) {
            add(new DoubtsTable(preview.doubts()));
        }
        var buttons = new Div();
        buttons.addClassName("tr-buttons");
        if (!preview.counts().changeNothing()) {
            var store = new Button("Confirm and store", click -> confirm.run());
            store.addThemeVariants(ButtonVariant.PRIMARY);
            store.setDisableOnClick(true);
            buttons.add(store);
        }
        buttons.add(new Button("Give up and hand over other files", click -> giveUp.run()));
        add(buttons, new ProblemSection(preview, imports));
        if (!preview.changes().isEmpty()) {
            addChanges(preview.changes());
        }
    }

    private void addChanges(List<WorkerChange> changes) {
        record Line(String workerId, WorkerChange.Field field) {}
        List<List<String>> lines = changes.stream()
                .flatMap(change -> change.fields().stream().map(field -> new Line(change.workerId(), field)))
                .map(line -> List.of(
                        line.workerId(),
                        line.field().column().columnName(),
                        given(line.field().before()),
                        given(line.field().after())))
                .toList();
        add(
                new H2("What changes about workers"),
                new LongTable(
                        ImportWords.some(changes.size(), "worker") + " in the register, field by field.",
                        List.of("Worker", "Field", "On record", "By the roster"),
                        new ArrayList<>(lines)));
    }

    private static String given(String text) {
        return text.isEmpty() ? NOT_GIVEN : text;
    }
}
