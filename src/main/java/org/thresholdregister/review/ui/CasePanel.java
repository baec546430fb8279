package org.thresholdregister.review.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.function.SerializableConsumer;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.caselife.CaseEvent;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.caselife.NextMove;
import org.thresholdregister.core.caselife.Owed;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.platform.ui.StateBadge.Kind;

/** One case: how it stands, what is owed, what happened, what may be done next, and what may not and why. */
class CasePanel extends Div {

    CasePanel(
            CaseLife life,
            Set<DecisionKind> allowed,
            LocalDate today,
            SerializableConsumer<DecisionDialog.Draft> enter) {
        addClassName("tr-case");
        var details = new NativeDetails();
        details.setSummary(
                new Span("Case of " + Words.day(life.testDate())),
                new StateBadge(life.isClosed() ? Kind.DONE : Kind.OPEN, openOrClosed(life)),
                new Span(Words.capitalised(CaseWords.state(life))));
        details.setOpen(!life.isClosed());
        var content = new Div();
        owed(life, today, content);
        content.add(history(life));
        next(life, allowed, enter, content);
        details.setContent(content);
        add(details);
    }

    private static String openOrClosed(CaseLife life) {
        return life.closedOn().map(day -> "closed on " + Words.day(day)).orElse("open");
    }

    private static void owed(CaseLife life, LocalDate today, Div content) {
        var list = new UnorderedList();
        for (Owed owed : life.owed()) {
            var item = new ListItem(new Span(CaseWords.owed(owed) + ". "));
            owed.by()
                    .map(day -> ChronoUnit.DAYS.between(today, day))
                    .ifPresent(days -> item.add(
                            new StateBadge(days < 0 ? Kind.OVERDUE : Kind.OPEN, Counted.daysLeft(days)),
                            new Span(" ")));
            owed.rule().ifPresent(rule -> item.getElement().appendChild(cite(rule)));
            list.add(item);
        }
        life.lifted()
                .forEach(lifted -> list.add(
                        new ListItem(CaseWords.lifted(lifted, life.afterShift().liftedBy()))));
        if (list.getChildren().findAny().isPresent()) {
            content.add(new H3("Still owed"), list);
        }
    }

    private static Element cite(Citation rule) {
        return new Element("cite").setText(rule.place());
    }

    private static ListTable<CaseEvent> history(CaseLife life) {
        List<ListColumn<CaseEvent, ?>> columns = List.of(
                ListColumn.unordered("Day", 6, event -> ListCell.figures(Words.day(event.day()))),
                ListColumn.unordered(
                        "What happened",
                        14,
                        event -> ListCell.text(Words.capitalised(CaseWords.event(event)))
                                .withNote(event.note().map(CaseWords::note).orElse(""))),
                ListColumn.unordered("Ears", 6, event -> ListCell.text(Words.ears(event.ears()))),
                ListColumn.unordered("By", 10, event -> ListCell.text(by(event))),
                ListColumn.unordered("Reason", 12, event -> ListCell.text(event.reason())),
                ListColumn.unordered(
                        "Paragraph",
                        10,
                        event -> ListCell.text(event.rule().map(Citation::place).orElse(""))));
        return new ListTable<>(
                "What happened in the case of " + Words.day(life.testDate()), columns, life.history(), event -> {});
    }

    private static String by(CaseEvent event) {
        return event.decision().isPresent() ? event.by() : "computed from the record";
    }

    private static void next(
            CaseLife life, Set<DecisionKind> allowed, SerializableConsumer<DecisionDialog.Draft> enter, Div content) {
        var owed = new Div();
        var possible = new Div();
        List<ListItem> notOpen = new ArrayList<>();
        for (NextMove next : life.nextMoves()) {
            DecisionKind kind = next.move().decision().orElseThrow();
            String words = Words.capitalised(CaseWords.move(next.move())) + ", " + Words.ears(next.ears());
            switch (next) {
                case NextMove.Open open
                when allowed.contains(kind) -> {
                    var button = new Button(
                            words, click -> enter.accept(new DecisionDialog.Draft(Optional.of(kind), life.testDate())));
                    button.setAriaLabel(words + ", case of " + Words.day(life.testDate()));
                    button.addThemeVariants(open.isOwed() ? ButtonVariant.PRIMARY : ButtonVariant.TERTIARY);
                    (open.isOwed() ? owed : possible).add(button);
                }
                case NextMove.Open ignored ->
                    notOpen.add(new ListItem(words + ": this is a safety officer's to enter."));
                case NextMove.NotOpen(var ignoredMove, var ignoredEars, var why) ->
                    notOpen.add(new ListItem(words + ": " + CaseWords.refusal(why)));
            }
        }
        owed.addClassNames("tr-case-moves", "tr-on-screen");
        possible.addClassNames("tr-case-moves", "tr-on-screen");
        if (owed.getComponentCount() > 0) {
            content.add(owed);
        }
        if (possible.getComponentCount() > 0) {
            var also = new Paragraph("Also possible:");
            also.addClassName("tr-on-screen");
            content.add(also, possible);
        }
        life.retestBy()
                .ifPresent(day -> content.add(new Paragraph("A retest may settle it until " + Words.day(day) + ".")));
        if (!notOpen.isEmpty()) {
            var closed = new NativeDetails("What is not open, and why");
            closed.setContent(new UnorderedList(notOpen.toArray(ListItem[]::new)));
            closed.addClassName("tr-on-screen");
            content.add(closed);
        }
    }
}
