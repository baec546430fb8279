package org.thresholdregister.review.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.shift.ThresholdShift;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.drawing.AudiogramSvg;
import org.thresholdregister.drawing.AudiogramTable;
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
        AudiogramComparison comparison = comparison(story);
        reader.setProperty("innerHTML", AudiogramSvg.forScreen(comparison));
        words.removeAll();
        words.add(new Paragraph(story.name() + "."));
        for (Ear ear : AudiogramComparison.EARS) {
            words.add(told(story, ear));
        }
        numbers.removeAll();
        numbers.add(table(AudiogramTable.of(comparison)));
        earlier.setEnabled(!choice.isFirst());
        later.setEnabled(!choice.isLast());
    }

    private static AudiogramComparison comparison(TestStory story) {
        AudiogramComparison comparison = AudiogramComparison.of(story.audiogram());
        for (Ear ear : Ear.values()) {
            Determination determination = story.of(ear).orElse(null);
            if (determination instanceof Determination.BaselineTest) {
                comparison = comparison.withBaseline(ear, story.audiogram());
            } else if (determination != null) {
                comparison = withBaseline(comparison, ear, determination);
            }
        }
        return comparison;
    }

    private static AudiogramComparison withBaseline(
            AudiogramComparison comparison, Ear ear, Determination determination) {
        return determination
                .shift()
                .map(ThresholdShift::earlier)
                .map(baseline -> comparison.withBaseline(ear, baseline))
                .orElse(comparison);
    }

    private static Component told(TestStory story, Ear ear) {
        String means = story.of(ear)
                .map(determination -> ". " + FindingWords.means(determination) + ".")
                .orElse(".");
        return new Paragraph(new EarName(ear), new Span(": " + story.finding(ear) + means));
    }

    private static NativeTable table(AudiogramTable numbers) {
        var table = new NativeTable();
        table.addClassNames("tr-table", "tr-audiogram-numbers");
        table.setCaptionText("The same numbers, " + AudiogramTable.UNIT);
        var head = new NativeTableRow(heading(AudiogramTable.FREQUENCY_HEADING, "col"));
        numbers.columns().forEach(column -> head.add(heading(column.heading(), "col")));
        table.getHead().add(head);
        var body = table.addBody();
        for (AudiogramTable.Row row : numbers.rows()) {
            var line =
                    new NativeTableRow(heading(Integer.toString(row.frequency().hertz()), "row"));
            row.cells().forEach(cell -> line.add(figure(cell)));
            body.add(line);
        }
        return table;
    }

    private static NativeTableHeaderCell heading(String words, String scope) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", scope);
        cell.addClassName("tr-figures");
        return cell;
    }

    private static NativeTableCell figure(String words) {
        var cell = new NativeTableCell(words);
        cell.addClassName("tr-figures");
        return cell;
    }
}
