package org.thresholdregister.review.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.core.wording.Working;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.review.DeterminationVersion;
import org.thresholdregister.review.FindingWords;
import org.thresholdregister.review.TestStory;

/** What was determined, the newest test first; each ear's line unfolds into its working. */
class DeterminationSection extends Section {

    static final String ID = "found";

    private final List<NativeDetails> workings = new ArrayList<>();

    /** @param versions what was determined before, the earliest first, with what stands now */
    DeterminationSection(List<TestStory> stories, List<DeterminationVersion> versions) {
        setId(ID);
        addClassName("tr-found");
        var all = new Button("Open all workings");
        all.addClickListener(click -> {
            boolean open = workings.stream().anyMatch(working -> !working.isOpen());
            workings.forEach(working -> working.setOpen(open));
            all.setText(open ? "Close all workings" : "Open all workings");
        });
        add(new H2("What was found and why"), all);
        for (TestStory story : stories.reversed()) {
            var test = new Div(new H3(story.name()));
            test.addClassName("tr-found-test");
            if (story.determinations().isEmpty()) {
                test.add(notJudged(new Span("Both ears"), story, Ear.RIGHT));
            } else {
                AudiogramComparison.EARS.forEach(ear -> test.add(
                        story.of(ear).map(this::working).orElseGet(() -> notJudged(new EarName(ear), story, ear))));
            }
            AudiogramComparison.EARS.forEach(ear -> addFormer(test, story, ear, versions));
            add(test);
        }
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        add(caution);
    }

    private static void addFormer(Div test, TestStory story, Ear ear, List<DeterminationVersion> versions) {
        List<DeterminationVersion> ofThisEar = versions.stream()
                .filter(version -> version.testKey() == story.test().key() && version.ear() == ear)
                .toList();
        if (!ofThisEar.isEmpty()) {
            test.add(new VersionTable(ofThisEar));
        }
    }

    private static Div notJudged(Span ears, TestStory story, Ear ear) {
        var line = new Div(ears, new Span(": " + story.finding(ear)));
        line.addClassName("tr-found-unjudged");
        return line;
    }

    private Div working(Determination determination) {
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        var details = new NativeDetails();
        var means = new Span(FindingWords.means(determination));
        means.addClassName("tr-found-means");
        details.setSummary(
                new EarName(determination.ear()),
                new StateBadge(kind(determination), FindingWords.finding(determination)),
                means);
        details.setContent(new Div(new WorkingList(Working.of(determination)), caution));
        workings.add(details);
        return new Div(details);
    }

    private static StateBadge.Kind kind(Determination determination) {
        return switch (determination.outcome()) {
            case AWAITING_RETEST -> StateBadge.Kind.OPEN;
            case UNDECIDED -> StateBadge.Kind.UNDECIDED;
            case BASELINE, BEFORE_BASELINE, NO_SHIFT, CONFIRMED, NOT_CONFIRMED, RETEST -> StateBadge.Kind.DONE;
        };
    }
}
