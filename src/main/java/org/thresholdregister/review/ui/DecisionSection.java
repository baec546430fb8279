package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.function.SerializableFunction;
import java.util.List;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.documents.ui.DocumentLink;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.review.DecisionEvidence;
import org.thresholdregister.review.RecordedDecision;

/** What people decided about this worker's tests, and the way to enter more. */
class DecisionSection extends Section {

    /** @param evidence what shows that they were carried out */
    DecisionSection(
            List<RecordedDecision> decisions,
            List<DecisionEvidence> evidence,
            DocumentLink.Content files,
            Button... enter) {
        add(new H2("What was decided"));
        if (decisions.isEmpty()) {
            add(new EmptyHint(
                    "No decision about this worker is on record.",
                    "A notice given, an entry on the injury log or a finding of a professional is entered here.",
                    enter));
            return;
        }
        List<ListColumn<RecordedDecision, ?>> columns = List.of(
                decided("Decision", 10, decision -> Words.capitalised(Words.decision(decision.kind()))),
                decided("Ears", 6, decision -> Words.ears(decision.ears())),
                decided("Test of", 7, decision -> Words.day(decision.testDate())),
                decided("Decided", 7, decision -> Words.day(decision.decidedOn())),
                decided("By", 10, Decision::by),
                decided("Reason", 14, Decision::reason),
                ListColumn.unordered("Entered by", 8, recorded -> ListCell.text(recorded.enteredBy())));
        add(new ListTable<>("The newest first", columns, decisions.reversed(), recorded -> {}));
        if (!evidence.isEmpty()) {
            add(new H3("What shows it"), evidence(evidence, files));
        }
        add(enter);
    }

    private static UnorderedList evidence(List<DecisionEvidence> evidence, DocumentLink.Content files) {
        var list = new UnorderedList();
        for (DecisionEvidence one : evidence.reversed()) {
            Decision decision = one.decision();
            var item = new ListItem(Words.capitalised(Words.decision(decision.kind())) + " on "
                    + Words.day(decision.decidedOn()) + ", " + Words.ears(decision.ears()) + ", test of "
                    + Words.day(decision.testDate()) + ": " + BoardWords.means(one.means())
                    + (one.note().isEmpty() ? ". " : ". " + one.note() + " "));
            one.document().ifPresent(document -> {
                if (one.mayOpen()) {
                    item.add(DocumentLink.of(document, key -> files.of(one.decisionKey())));
                } else {
                    item.add(new Text("A clinical file is kept with it, which a nurse may open."));
                }
            });
            list.add(item);
        }
        return list;
    }

    private static ListColumn<RecordedDecision, ?> decided(
            String header, int width, SerializableFunction<Decision, String> words) {
        return ListColumn.unordered(header, width, recorded -> ListCell.text(words.apply(recorded.decision())));
    }
}
