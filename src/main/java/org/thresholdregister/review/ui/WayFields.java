package org.thresholdregister.review.ui;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.review.Way;

/** Chooses a way of judging: a rule set, the allowance for age, and whether baselines are revised. */
class WayFields extends Div {

    private final Select<RuleSet> ruleSet = new Select<>();
    private final Checkbox age = new Checkbox("Allowance for age");
    private final Checkbox revised = new Checkbox("Baselines revised as the guide's rules propose");

    WayFields(String label) {
        addClassName("tr-way");
        ruleSet.setLabel(label);
        ruleSet.setItems(RuleSets.ALL);
        ruleSet.setItemLabelGenerator(RuleSet::name);
        ruleSet.addValueChangeListener(
                change -> age.setEnabled(change.getValue().allowsForAge()));
        add(ruleSet, age, revised);
    }

    void setValue(Way way) {
        ruleSet.setValue(way.ruleSet());
        age.setValue(way.ageCorrection() == AgeCorrection.ON);
        revised.setValue(way.revised());
    }

    Way getValue() {
        return new Way(ruleSet.getValue(), age.getValue() ? AgeCorrection.ON : AgeCorrection.OFF, revised.getValue());
    }
}
