package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.dom.Element;
import java.util.Optional;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.validity.ValidityFlag;
import org.thresholdregister.core.wording.ValidityWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.review.TestStory;

/** What there is to doubt about the chosen test, with what to do and what each limit rests on. */
class ValiditySection extends Section {

    private final TestChoice choice;
    private final Div told = new Div();

    ValiditySection(TestChoice choice) {
        this.choice = choice;
        addClassName("tr-validity");
        told.getElement().setAttribute("aria-live", "polite");
        var caution = new Paragraph(ValidityWords.CAUTION);
        caution.addClassName("tr-caution");
        add(new H2("Can this test be trusted?"), told, caution);
        choice.follow(index -> show());
    }

    /** A short mark for a test that has flags; it has a shape where one of them is a doubt. */
    static Optional<Span> mark(TestStory story) {
        FlagCount count = FlagCount.of(story.flags());
        if (count.isNone()) {
            return Optional.empty();
        }
        String words = ValidityWords.count(count);
        return Optional.of(count.doubts() > 0 ? new StateBadge(StateBadge.Kind.UNDECIDED, words) : new Span(words));
    }

    private void show() {
        TestStory story = choice.chosen();
        told.removeAll();
        if (story.flags().isEmpty()) {
            told.add(new Paragraph(story.name() + ": nothing to doubt was found."));
            return;
        }
        told.add(new Paragraph(story.name() + ": " + ValidityWords.count(FlagCount.of(story.flags())) + "."));
        var list = new UnorderedList();
        list.addClassName("tr-working");
        story.flags().forEach(flag -> list.add(item(flag)));
        told.add(list);
    }

    private static ListItem item(ValidityFlag flag) {
        FlagKind kind = flag.kind();
        var head = new Span(Words.capitalised(ValidityWords.weight(kind.weight())) + ", " + ValidityWords.kind(kind));
        head.addClassName("tr-validity-kind");
        var item = new ListItem(
                head, new Span(". " + ValidityWords.reason(flag) + " " + ValidityWords.advice(flag) + " "));
        item.getElement().appendChild(new Element("cite").setText(ValidityWords.source(flag.source())));
        return item;
    }
}
