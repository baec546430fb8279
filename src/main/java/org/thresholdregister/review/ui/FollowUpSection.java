package org.thresholdregister.review.ui;

import static org.thresholdregister.review.ui.PlainTable.words;

import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.review.DaysLeft;
import org.thresholdregister.review.WorkerRecord;

/** What is owed to the worker, by when, and by which paragraph. */
class FollowUpSection extends Section {

    static final String ID = "owed";

    FollowUpSection(WorkerRecord record) {
        setId(ID);
        add(new H2("What is owed"));
        List<FollowUp> followUps = record.judgement().followUps();
        if (followUps.isEmpty()) {
            add(new EmptyHint(
                    "Nothing is owed to this worker.", "A test, a shift or a return to work brings the next date."));
            return;
        }
        var table = new PlainTable(
                "Dates count in calendar days",
                List.of("What", "Ears", "Follows the test of", "Due", "State", "Paragraph"));
        for (FollowUp followUp : followUps) {
            table.addRow(
                    words(Words.capitalised(Words.followUp(followUp.kind()))),
                    words(Words.ears(followUp.ears())),
                    words(followUp.testDate().map(Words::day).orElse("")),
                    words(Words.day(followUp.dueDate())),
                    state(followUp, record),
                    words(followUp.kind().basis().place()));
        }
        add(table);
    }

    private static StateBadge state(FollowUp followUp, WorkerRecord record) {
        return new StateBadge(
                followUp.isOverdue(record.asOf()) ? Kind.OVERDUE : Kind.OPEN,
                DaysLeft.inWords(ChronoUnit.DAYS.between(record.asOf(), followUp.dueDate())));
    }
}
