package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasStyle;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.review.TestStory;

/** Every test on record, the newest first; a click on one draws it. */
class HistorySection extends Section {

    private final List<NativeTableRow> rows = new ArrayList<>();

    /** @param showDrawing brings the drawing into view */
    HistorySection(TestChoice choice, SerializableRunnable showDrawing) {
        var table = new NativeTable();
        table.addClassNames("tr-table", "tr-history");
        table.setCaptionText("Thresholds in dB HL, newest test first");
        addHead(table);
        var body = table.addBody();
        List<TestStory> stories = choice.stories();
        for (int i = 0; i < stories.size(); i++) {
            rows.add(row(stories.get(i), choice, i, showDrawing));
        }
        rows.reversed().forEach(body::add);
        var scroll = new Div(table);
        scroll.addClassName("tr-scroll");
        scroll.getElement().setAttribute("tabindex", "0");
        scroll.getElement().setAttribute("role", "region");
        scroll.getElement().setAttribute("aria-label", "Tests on record");
        var hint = new Paragraph("Press a test to have it drawn above.");
        hint.addClassName("tr-on-screen");
        var sideways =
                new Paragraph("The table is wider than the window: scroll it sideways for both ears and for how each"
                        + " test was made.");
        sideways.addClassName("tr-scroll-hint");
        add(new H2("Tests on record"), hint, sideways, scroll);
        choice.follow(this::mark);
    }

    private void mark(int chosen) {
        for (int i = 0; i < rows.size(); i++) {
            if (i == chosen) {
                rows.get(i).getElement().setAttribute("aria-current", "true");
            } else {
                rows.get(i).getElement().removeAttribute("aria-current");
            }
        }
    }

    private static void addHead(NativeTable table) {
        var groups =
                new NativeTableRow(span(heading("Test", ""), "rowspan", 2), span(heading("Found", ""), "rowspan", 2));
        var frequencies = new NativeTableRow();
        for (Ear ear : AudiogramComparison.EARS) {
            var name = new NativeTableHeaderCell(new EarName(ear));
            name.getElement().setAttribute("scope", "colgroup");
            groups.add(span(name, "colspan", Frequency.values().length));
            for (Frequency frequency : Frequency.values()) {
                frequencies.add(figures(heading(Integer.toString(frequency.hertz()), frequency.hertz() + " Hz")));
            }
        }
        groups.add(span(heading("How it was made", ""), "rowspan", 2));
        table.getHead().add(groups, frequencies);
    }

    private static NativeTableRow row(TestStory story, TestChoice choice, int index, SerializableRunnable showDrawing) {
        var choose = new NativeButton(Words.day(story.audiogram().date()));
        choose.addClassName("tr-link");
        choose.getElement()
                .setAttribute(
                        "aria-label",
                        "Draw the " + Words.purpose(story.audiogram().purpose()) + " of "
                                + Words.day(story.audiogram().date()));
        var test = new NativeTableHeaderCell(
                choose, new Span(Words.purpose(story.audiogram().purpose())));
        ValiditySection.mark(story).ifPresent(test::add);
        test.getElement().setAttribute("scope", "row");
        var row = new NativeTableRow(test, new NativeTableCell(found(story)));
        for (Ear ear : AudiogramComparison.EARS) {
            for (Frequency frequency : Frequency.values()) {
                row.add(figures(new NativeTableCell(
                        Words.thresholdCell(story.audiogram().threshold(ear, frequency)))));
            }
        }
        row.add(new NativeTableCell(howMade(story.test().facts())));
        row.getElement().addEventListener("click", click -> {
            choice.choose(index);
            showDrawing.run();
        });
        return row;
    }

    private static Component[] found(TestStory story) {
        return AudiogramComparison.EARS.stream().map(story::finding).distinct().count() == 1
                ? new Component[] {new Span("Both ears: " + story.finding(Ear.LEFT))}
                : AudiogramComparison.EARS.stream()
                        .map(ear -> new Div(Words.capitalised(Words.ear(ear)) + ": " + story.finding(ear)))
                        .toArray(Component[]::new);
    }

    /** {@code 16 h away from noise, by P. Marrowdale, on A-1. Asked to come back}. */
    private static String howMade(TestFacts facts) {
        List<String> parts = new ArrayList<>();
        facts.hoursSinceNoise().ifPresent(hours -> parts.add(hours.toPlainString() + " h away from noise"));
        facts.protectorsWorn().filter(worn -> worn).ifPresent(worn -> parts.add("protectors worn instead"));
        addIfGiven(parts, "by ", facts.tester());
        addIfGiven(parts, "on ", facts.instrument());
        addIfGiven(parts, "with ", facts.transducer());
        for (Ear ear : AudiogramComparison.EARS) {
            Threshold second = facts.repeatAt1000Hz().of(ear);
            if (!second.equals(Threshold.notGiven())) {
                parts.add("second reading at 1000 Hz, " + Words.ear(ear) + ": " + Words.threshold(second));
            }
        }
        String made = parts.isEmpty() ? "" : Words.capitalised(String.join(", ", parts)) + ".";
        return facts.remark().isEmpty() ? made : (made + " " + Words.capitalised(facts.remark())).strip();
    }

    private static void addIfGiven(List<String> parts, String preposition, String text) {
        if (!text.isEmpty()) {
            parts.add(preposition + text);
        }
    }

    private static NativeTableHeaderCell heading(String words, String title) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", "col");
        if (!title.isEmpty()) {
            cell.setTitle(title);
        }
        return cell;
    }

    private static NativeTableHeaderCell span(NativeTableHeaderCell cell, String attribute, int count) {
        cell.getElement().setAttribute(attribute, Integer.toString(count));
        return cell;
    }

    private static <C extends Component & HasStyle> C figures(C cell) {
        cell.addClassName("tr-figures");
        return cell;
    }
}
