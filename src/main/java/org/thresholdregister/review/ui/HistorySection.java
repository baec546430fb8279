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
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.SupersededTest;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.review.TestStory;

/** Every test on record, the newest first; a click on one draws it. */
class HistorySection extends Section {

    private final List<NativeTableRow> rows = new ArrayList<>();

    /**
     * @param superseded the tests that count no more, which stand among the others, struck through
     * @param showDrawing brings the drawing into view
     */
    HistorySection(TestChoice choice, List<SupersededTest> superseded, SerializableRunnable showDrawing) {
        var table = new NativeTable();
        table.addClassNames("tr-table", "tr-history");
        table.setCaptionText("Thresholds in dB HL, newest test first");
        addHead(table);
        var body = table.addBody();
        List<TestStory> stories = choice.stories();
        for (int i = 0; i < stories.size(); i++) {
            rows.add(row(stories.get(i), choice, i, showDrawing));
        }
        List<SupersededTest> former = new ArrayList<>(superseded);
        former.sort(Comparator.comparing(test -> test.test().audiogram(), Audiogram.CHRONOLOGICAL));
        for (int i = stories.size() - 1; i >= 0; i--) {
            while (!former.isEmpty() && isNotBefore(former.getLast(), stories.get(i))) {
                body.add(struckThrough(former.removeLast()));
            }
            body.add(rows.get(i));
        }
        former.reversed().forEach(test -> body.add(struckThrough(test)));
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
        addThresholds(row, story.test());
        row.getElement().addEventListener("click", click -> {
            choice.choose(index);
            showDrawing.run();
        });
        return row;
    }

    private static void addThresholds(NativeTableRow row, RecordedTest test) {
        for (Ear ear : AudiogramComparison.EARS) {
            for (Frequency frequency : Frequency.values()) {
                row.add(figures(
                        new NativeTableCell(Words.thresholdCell(test.audiogram().threshold(ear, frequency)))));
            }
        }
        row.add(new NativeTableCell(HowMade.inWords(test)));
    }

    private static boolean isNotBefore(SupersededTest former, TestStory story) {
        return Audiogram.CHRONOLOGICAL.compare(former.test().audiogram(), story.audiogram()) >= 0;
    }

    /** A test that counts no more, as it was, with what became of it in place of what was found. */
    private static NativeTableRow struckThrough(SupersededTest former) {
        Audiogram audiogram = former.test().audiogram();
        var day = new Span();
        day.getElement().appendChild(new Element("del").setText(Words.day(audiogram.date())));
        var test = new NativeTableHeaderCell(day, new Span(Words.purpose(audiogram.purpose())));
        test.getElement().setAttribute("scope", "row");
        String became = (former.successor().isPresent() ? "Superseded on " : "Entered in error, taken out on ")
                + Words.day(former.on()) + " by " + former.by() + ": " + former.reason();
        var row = new NativeTableRow(test, new NativeTableCell(became));
        addThresholds(row, former.test());
        row.addClassName("tr-history-former");
        return row;
    }

    private static Component[] found(TestStory story) {
        return AudiogramComparison.EARS.stream().map(story::finding).distinct().count() == 1
                ? new Component[] {new Span("Both ears: " + story.finding(Ear.LEFT))}
                : AudiogramComparison.EARS.stream()
                        .map(ear -> new Div(Words.capitalised(Words.ear(ear)) + ": " + story.finding(ear)))
                        .toArray(Component[]::new);
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
