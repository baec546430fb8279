package org.thresholdregister.review.ui;

import static org.thresholdregister.review.ui.PlainTable.words;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.review.RecordedDecision;

/** What people decided about this worker's tests, and the way to enter more. */
class DecisionSection extends Section {

    DecisionSection(List<RecordedDecision> decisions, Button... enter) {
        add(new H2("What was decided"));
        if (decisions.isEmpty()) {
            add(new EmptyHint(
                    "No decision about this worker is on record.",
                    "A notice given, an entry on the injury log or a finding of a professional is entered here.",
                    enter));
            return;
        }
        var table = new PlainTable(
                "The newest first", List.of("Decision", "Ears", "Test of", "Decided", "By", "Reason", "Entered by"));
        for (RecordedDecision recorded : decisions.reversed()) {
            Decision decision = recorded.decision();
            table.addRow(
                    words(Words.capitalised(Words.decision(decision.kind()))),
                    words(Words.ears(decision.ears())),
                    words(Words.day(decision.testDate())),
                    words(Words.day(decision.decidedOn())),
                    words(decision.by()),
                    words(decision.reason()),
                    words(recorded.enteredBy()));
        }
        add(table);
        add(enter);
    }
}
