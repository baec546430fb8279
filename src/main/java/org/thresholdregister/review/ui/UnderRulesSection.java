package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.rules.Finding;
import org.thresholdregister.core.wording.DifferenceWording;
import org.thresholdregister.core.wording.RuleWording;
import org.thresholdregister.core.wording.Sentence;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.core.wording.Working;
import org.thresholdregister.review.UnderRules;
import org.thresholdregister.review.WorkerRecord;

/** What every rule set says of the latest test, each answer with its working; worked out when it is opened. */
class UnderRulesSection extends Section {

    private final transient WorkerRecord record;
    private final Div content = new Div();

    UnderRulesSection(WorkerRecord record) {
        this.record = record;
        var details = new NativeDetails(new Span("The latest test under every rule set, side by side"));
        details.setContent(content);
        details.addToggleListener(toggled -> fill());
        add(new H2("Under other rules"), details);
    }

    private void fill() {
        if (content.getComponentCount() > 0) {
            return;
        }
        var caution = new Paragraph("Only the rule set of the worker's site decides what is owed. Answers of different"
                + " rule sets are never added up. " + Words.CAUTION);
        caution.addClassName("tr-caution");
        content.add(caution);
        List<UnderRules> all = UnderRules.ofLatestTest(record);
        if (all.isEmpty()) {
            content.add(new Paragraph("No test of this worker is judged yet."));
        }
        all.forEach(under -> content.add(part(under)));
    }

    private static Div part(UnderRules under) {
        var part = new Div(new H3(under.ruleSet().name() + (under.inForce() ? ", in force at the worker's site" : "")));
        part.addClassName("tr-found-test");
        for (Determination determination : under.determinations()) {
            part.add(unfolding(
                    Words.capitalised(Words.ear(determination.ear())) + ": " + DifferenceWording.found(determination),
                    Working.of(determination)));
        }
        for (Finding finding : under.findings()) {
            part.add(unfolding(RuleWording.heading(finding), RuleWording.of(finding)));
        }
        return part;
    }

    private static NativeDetails unfolding(String summary, List<Sentence> sentences) {
        var details = new NativeDetails(new Span(summary));
        details.setContent(new WorkingList(sentences));
        return details;
    }
}
