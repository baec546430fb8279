package org.thresholdregister.review.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.drawing.AudiogramSvg;
import org.thresholdregister.review.FindingWords;
import org.thresholdregister.review.TestStory;

/** The chosen test, drawn over the baseline that each ear is compared with, in words and as numbers. */
class AudiogramSection extends Section {

    private final TestChoice choice;
    private final Element reader = new Element("audiogram-reader");
    private final Div words = new Div();
    private final Div numbers = new Div();
    private final Button earlier = new Button("Earlier test", click -> step(-1));
    private final Button later = new Button("Later test", click -> step(1));

    AudiogramSection(TestChoice choice) {
        this.choice = choice;
        addClassName("tr-audiogram");
        words.getElement().setAttribute("aria-live", "polite");
        reader.addEventListener("audiogram-step", event -> step(event.getEventDetail(Integer.class)))
                .addEventData("event.detail");
        var drawing = new Div();
        drawing.addClassName("tr-audiogram-drawing");
        drawing.getElement().appendChild(reader);
        var steps = new Div(earlier, later);
        steps.addClassName("tr-audiogram-steps");
        words.addClassName("tr-audiogram-said");
        var told = new Div(words, steps, numbers);
        told.addClassName("tr-audiogram-told");
        add(new H2("Audiogram"), drawing, told);
        choice.follow(index -> show());
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        attached.getUI().getPage().addJsModule("context://js/audiogram-reader.js");
    }

    private void step(int tests) {
        choice.step(tests);
    }

    private void show() {
        TestStory story = choice.chosen();
        AudiogramComparison comparison = story.comparison();
        reader.setProperty("innerHTML", AudiogramSvg.forScreen(comparison));
        words.removeAll();
        words.add(new Paragraph(story.name() + "."));
        for (Ear ear : AudiogramComparison.EARS) {
            words.add(told(story, ear));
        }
        numbers.removeAll();
        numbers.add(new NumbersTable("The same numbers", comparison));
        earlier.setEnabled(!choice.isFirst());
        later.setEnabled(!choice.isLast());
    }

    private static Component told(TestStory story, Ear ear) {
        String means = story.of(ear)
                .map(determination -> ". " + FindingWords.means(determination) + ".")
                .orElse(".");
        return new Paragraph(new EarName(ear), new Span(": " + story.finding(ear) + means));
    }
}
