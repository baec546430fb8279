package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.dom.Element;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.validity.ValidityFlag;
import org.thresholdregister.core.wording.NextWords;
import org.thresholdregister.core.wording.Sentence;
import org.thresholdregister.core.wording.ValidityWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.review.FindingWords;
import org.thresholdregister.review.TestStory;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.ui.EarName;

/** What a test says: the shift of each ear, what there is to doubt about it, and what happens next. */
class FoundPart extends Section {

    private final Div found = new Div();
    private final Div doubts = new Div();
    private final Div next = new Div();
    private final Div changed = new Div();

    FoundPart(String heading) {
        found.addClassName("tr-test-findings");
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        var columns = new Div(found, doubts, next, changed);
        columns.addClassName("tr-test-columns");
        add(new H2(heading), columns, caution);
    }

    /** The shift of each ear, to be put where it is seen while typing. */
    Div findings() {
        return found;
    }

    /** Says in place of everything why there is nothing to say. */
    void showNothing(String why) {
        found.removeAll();
        doubts.removeAll();
        next.removeAll();
        changed.removeAll();
        found.add(new H3("Found"), new Paragraph(why));
    }

    /** @param isWhole whether all thresholds are typed, so that one that is missing is one to ask about */
    void show(WorkerRecord record, TestStory story, boolean isWhole) {
        found.removeAll();
        found.add(new H3("Found"));
        AudiogramComparison.EARS.forEach(ear -> found.add(finding(story, ear)));
        doubts.removeAll();
        doubts.add(new H3("Can this test be trusted?"));
        List<ValidityFlag> flags = story.flags().stream()
                .filter(flag -> isWhole || flag.kind() != FlagKind.FREQUENCIES_MISSING)
                .toList();
        if (flags.isEmpty()) {
            doubts.add(new Paragraph("Nothing to doubt was found."));
        } else {
            doubts.add(sentences(flags.stream().map(FoundPart::doubt).toList()));
        }
        next.removeAll();
        next.add(new H3("What happens next"));
        List<FollowUp> owed = record.judgement().followUps();
        if (owed.isEmpty()) {
            next.add(new Paragraph("Nothing is owed to this worker."));
        } else {
            next.add(sentences(owed.stream()
                    .map(followUp -> NextWords.of(
                            followUp, record.rules().by(followUp, record.asOf()).ruleSet()))
                    .map(FoundPart::item)
                    .toList()));
        }
    }

    /** Says what the test changes about others on record; nothing where it changes nothing. */
    void showChanges(List<String> changes) {
        changed.removeAll();
        if (!changes.isEmpty()) {
            changed.add(
                    new H3("What it changes about other tests"),
                    sentences(changes.stream().map(ListItem::new).toList()));
        }
    }

    private static Paragraph finding(TestStory story, Ear ear) {
        String means = story.of(ear)
                .map(determination -> ". " + FindingWords.means(determination) + ".")
                .orElse(".");
        return new Paragraph(new EarName(ear), new Span(": " + story.finding(ear) + means));
    }

    private static ListItem doubt(ValidityFlag flag) {
        var item =
                new ListItem(Words.capitalised(ValidityWords.weight(flag.kind().weight())) + ", "
                        + ValidityWords.kind(flag.kind()) + ". " + ValidityWords.reason(flag) + " "
                        + ValidityWords.advice(flag) + " ");
        item.getElement().appendChild(new Element("cite").setText(ValidityWords.source(flag.source())));
        return item;
    }

    private static ListItem item(Sentence sentence) {
        var item = new ListItem(sentence.text() + " ");
        sentence.basis()
                .ifPresent(basis -> item.getElement().appendChild(new Element("cite").setText(basis.toString())));
        return item;
    }

    private static UnorderedList sentences(List<ListItem> items) {
        var list = new UnorderedList(items.toArray(ListItem[]::new));
        list.addClassName("tr-working");
        return list;
    }
}
