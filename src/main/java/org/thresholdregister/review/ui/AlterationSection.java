package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.review.Alteration;
import org.thresholdregister.review.AlterationService;
import org.thresholdregister.review.EarFinding;

/** What changed about this worker's tests after a notice was given or a case recorded, and who has seen to it. */
class AlterationSection extends Section {

    private final String workerId;
    private final transient AlterationService alterations;

    AlterationSection(String workerId, AlterationService alterations) {
        this.workerId = workerId;
        this.alterations = alterations;
        refresh();
    }

    private void refresh() {
        removeAll();
        List<ListColumn<Alteration, ?>> columns = List.of(
                ListColumn.unordered(
                        "Test of",
                        8,
                        change -> ListCell.text(Words.day(change.testDate())).withNote(Words.ear(change.ear()))),
                ListColumn.unordered(
                        "Before",
                        10,
                        change ->
                                ListCell.text(Words.capitalised(change.before().inWords()))),
                ListColumn.unordered(
                        "Now", 10, change -> ListCell.text(Words.capitalised(EarFinding.inWords(change.after())))),
                ListColumn.unordered("State", 12, AlterationSection::state),
                ListColumn.unordered("", 6, AlterationSection::action));
        add(
                new H2("Changed after a notice or an entry"),
                new ListTable<>("The newest first", columns, alterations.ofWorker(workerId), this::ask));
    }

    private static ListCell state(Alteration change) {
        return change.acknowledgement()
                .map(seen -> ListCell.state(Kind.DONE, "acknowledged on " + Words.day(seen.on()) + " by " + seen.by())
                        .withNote(seen.reason()))
                .orElseGet(() -> ListCell.state(Kind.OPEN, change.inWords()));
    }

    private static ListCell action(Alteration change) {
        return change.mayAcknowledge()
                ? ListCell.action("Acknowledge", "Acknowledge, test of " + Words.day(change.testDate()))
                : ListCell.EMPTY;
    }

    private void ask(Alteration change) {
        new AcknowledgeDialog(change, reason -> alterations.acknowledge(workerId, change.key(), reason), this::refresh)
                .open();
    }
}
