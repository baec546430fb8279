package org.thresholdregister.rulesets.ui;

import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import java.util.List;
import org.thresholdregister.core.rules.Duty;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.rules.Rule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.Step;
import org.thresholdregister.core.wording.RuleSetWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;

/** One rule set: what it needs, what it answers, what it makes people do and by when, each with its paragraph. */
class RuleSetCard extends Div {

    RuleSetCard(RuleSet ruleSet) {
        addClassName("tr-rule-set");
        var details = new NativeDetails();
        var force = new Span(ruleSet.force());
        force.addClassName("tr-cell-note");
        details.setSummary(new Span(ruleSet.name()), new Span(" "), force);
        var content = new Div(facts(ruleSet), duties(ruleSet.duties()));
        if (!ruleSet.furtherRules().isEmpty()) {
            content.add(furtherRules(ruleSet.furtherRules()));
        }
        if (!ruleSet.settings().isEmpty()) {
            content.add(settings(ruleSet));
        }
        details.setContent(content);
        add(details);
    }

    private static DescriptionList facts(RuleSet ruleSet) {
        var facts = new DescriptionList();
        facts.addClassName("tr-meanings");
        fact(facts, "Needs", Words.capitalised(String.join("; ", ruleSet.needs())) + ".");
        fact(facts, "Answers", Words.capitalised(Words.listed(ruleSet.answers())) + ".");
        fact(facts, "Quiet", quiet(ruleSet.quiet(), RuleSetWording.quiet(ruleSet)));
        fact(facts, "Shift", RuleSetWording.shift(ruleSet) + paragraph(ruleSet, Step.SHIFT));
        fact(facts, "Retest", RuleSetWording.retest(ruleSet) + paragraph(ruleSet, Step.RETEST));
        fact(facts, "Notice", RuleSetWording.notice(ruleSet) + paragraph(ruleSet, Step.NOTICE));
        fact(facts, "Recorded", RuleSetWording.recording(ruleSet) + paragraph(ruleSet, Step.RECORDABLE));
        fact(facts, "Next test", RuleSetWording.tests(ruleSet) + paragraph(ruleSet, Step.PERIODIC_TEST));
        fact(facts, "Name in files", ruleSet.word() + ", read as of " + ruleSet.edition());
        return facts;
    }

    private static String quiet(QuietRule rule, String words) {
        String mark = RuleSetWording.mark(rule.provenance());
        return words + " [" + rule.source().place() + (mark.isEmpty() ? "" : ", " + mark) + "]";
    }

    private static String paragraph(RuleSet ruleSet, Step step) {
        return ruleSet.paragraphs().containsKey(step)
                ? " [" + ruleSet.paragraph(step).place() + "]"
                : "";
    }

    private static void fact(DescriptionList facts, String term, String words) {
        facts.add(new DescriptionList.Term(term), new DescriptionList.Description(words));
    }

    private static ListTable<Duty> duties(List<Duty> duties) {
        return new ListTable<>(
                "Duties",
                List.<ListColumn<Duty, ?>>of(
                        ListColumn.unordered("Duty", 20, row -> ListCell.text(row.what())),
                        ListColumn.unordered("By when", 12, row -> ListCell.text(RuleSetWording.when(row))),
                        ListColumn.unordered(
                                "Paragraph",
                                10,
                                row -> ListCell.text(row.basis().place())
                                        .withNote(RuleSetWording.mark(row.provenance())))),
                duties,
                row -> {});
    }

    private static ListTable<Rule> furtherRules(List<Rule> rules) {
        return new ListTable<>(
                "Read beside the shift, never mixed with its counts",
                List.<ListColumn<Rule, ?>>of(
                        ListColumn.unordered(
                                "Rule",
                                10,
                                row -> ListCell.text(Words.capitalised(row.name()))
                                        .withNote(row.word())),
                        ListColumn.unordered("It speaks where", 18, row -> ListCell.text(row.explained())),
                        ListColumn.unordered("What it calls for", 18, row -> ListCell.text(row.consequence())),
                        ListColumn.unordered(
                                "Source",
                                10,
                                row -> ListCell.text(row.basis().place())
                                        .withNote(RuleSetWording.mark(row.provenance())))),
                rules,
                row -> {});
    }

    private static Div settings(RuleSet ruleSet) {
        var list = new UnorderedList();
        ruleSet.settings().forEach(setting -> list.add(new ListItem(RuleSetWording.setting(setting))));
        return new Div(new Span("Unverified numbers, which a site may set from its own copy of the rule:"), list);
    }
}
