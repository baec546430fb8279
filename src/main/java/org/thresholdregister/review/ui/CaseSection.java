package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.function.SerializableConsumer;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.EmptyHint;

/** What became of each shift, the newest first, and what may come next. Open cases stand open. */
class CaseSection extends Section {

    static final String ID = "cases";

    /**
     * @param allowed the kinds of decision that the user may enter
     * @param enter opens the dialog with what is proposed
     */
    CaseSection(
            WorkerCases cases,
            Set<DecisionKind> allowed,
            LocalDate today,
            SerializableConsumer<DecisionDialog.Draft> enter) {
        setId(ID);
        addClassName("tr-case-lives");
        add(new H2("The life of each case"));
        if (cases.cases().isEmpty()) {
            add(new EmptyHint(
                    "No shift was found, so there is no case.",
                    "A shift opens a case here, with what follows from it and who did it."));
        }
        for (CaseLife life : cases.cases().reversed()) {
            add(new CasePanel(life, allowed, today, enter));
        }
        if (!cases.withoutCase().isEmpty()) {
            List<ListItem> notes = cases.withoutCase().stream()
                    .map(CaseWords::withoutCase)
                    .map(ListItem::new)
                    .toList();
            add(new Div(
                    new Paragraph("Decisions that belong to no case:"),
                    new UnorderedList(notes.toArray(ListItem[]::new))));
        }
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        add(caution);
    }
}
