package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.SheetCsv;
import org.thresholdregister.review.DeterminationChange;
import org.thresholdregister.review.EarFinding;

/** What the new tests would change about tests on record, on the page and to take away. */
class LateChangeSection extends Div {

    private static final List<String> FILE_HEADER =
            List.of("worker_id", "test_date", "purpose", "ear", "before", "after", "sent_or_recorded");

    LateChangeSection(ImportPreview preview, ImportService imports) {
        addClassName("tr-problems");
        List<DeterminationChange> changes = preview.lateChanges();
        add(
                new H2("What changes about tests on record"),
                new Paragraph(ImportWords.lateChanges(changes)),
                Downloads.link(
                        "Download these as CSV",
                        "late-changes.csv",
                        SheetCsv.CONTENT_TYPE,
                        out -> SheetCsv.write(
                                out,
                                FILE_HEADER,
                                imports.lateChangesToTakeOut(preview).stream()
                                        .map(LateChangeSection::inFile)
                                        .toList())),
                new LongTable(
                        ImportWords.some(changes.size(), "determination") + ", worker by worker.",
                        List.of("Worker", "Test", "Ear", "Before", "After", "Sent or recorded"),
                        changes.stream().map(LateChangeSection::onScreen).toList()));
    }

    /** Leads to what a person has still to see to. */
    static Component toBeSeenTo() {
        return new Span(
                new Anchor("changed-after", "Determinations have changed"),
                new Text(" after a notice was given or a case recorded: a person decides."));
    }

    private static List<String> inFile(DeterminationChange change) {
        return List.of(
                change.workerId(),
                change.testDate().toString(),
                change.purpose().word(),
                change.ear().word(),
                change.before().inWords(),
                EarFinding.inWords(change.after()),
                change.sent().inWords());
    }

    private static List<String> onScreen(DeterminationChange change) {
        return List.of(
                change.workerId(),
                Words.capitalised(Words.purpose(change.purpose())) + " of " + Words.day(change.testDate()),
                change.ear().word(),
                change.before().inWords(),
                EarFinding.inWords(change.after()),
                change.sent().isAnything() ? change.sent().inWords() : "nothing");
    }
}
