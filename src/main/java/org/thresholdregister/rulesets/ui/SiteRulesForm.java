package org.thresholdregister.rulesets.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableBiFunction;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.rules.Setting;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.rulesets.SiteRules;

/** Chooses a rule set for a site from a day on; the numbers that could not be verified are asked for beside it. */
class SiteRulesForm extends Div {

    private final TextField site = new TextField("Site");
    private final DatePicker from = new DatePicker("From");
    private final Select<RuleSet> ruleSet = new Select<>();
    private final Checkbox age = new Checkbox("Make the allowance for age");
    private final TextArea reason = new TextArea("Reason");
    private final Div settings = new Div();
    private final Map<String, IntegerField> settingFields = new LinkedHashMap<>();

    /** @param choose stores the choice and says whether it was taken */
    SiteRulesForm(LocalDate today, SerializableBiFunction<SiteRules.Choice, SiteRulesForm, Boolean> choose) {
        addClassNames("tr-card", "tr-screen-only");
        site.setMaxLength(SiteRules.Choice.LONGEST_SITE);
        site.setHelperText("As spelled in the roster; empty for every site without a choice of its own");
        from.setI18n(new DatePicker.DatePickerI18n().setDateFormats("d MMM yyyy", "yyyy-MM-dd"));
        from.setValue(today);
        from.setHelperText("Tests from this day on are judged by it; earlier ones stay as they are");
        ruleSet.setLabel("Rule set");
        ruleSet.setItems(RuleSets.ALL);
        ruleSet.setItemLabelGenerator(RuleSet::name);
        ruleSet.addValueChangeListener(change -> showSettings(change.getValue()));
        age.setValue(true);
        reason.setHelperText("Stays with the choice");
        reason.setMaxLength(SiteRules.Choice.LONGEST_REASON);
        reason.setWidthFull();
        reason.addClassName("tr-wide");
        settings.addClassName("tr-settings");
        ruleSet.setValue(RuleSets.OSHA);
        var fields = new Div(site, from, ruleSet, age, settings, reason);
        fields.addClassName("tr-form");
        var button = new Button("Choose this rule set", click -> {
            if (isComplete() && choose.apply(choice(), this)) {
                reason.clear();
            }
        });
        button.addThemeVariants(ButtonVariant.PRIMARY);
        add(new H2("Choose a rule set for a site"), fields, button);
    }

    void show(Optional<String> objection) {
        reason.setErrorMessage(objection.orElse(""));
        reason.setInvalid(objection.isPresent());
    }

    private void showSettings(RuleSet chosen) {
        settings.removeAll();
        settingFields.clear();
        settings.setVisible(!chosen.settings().isEmpty());
        age.setVisible(chosen.allowsForAge());
        for (Setting setting : chosen.settings()) {
            var field = new IntegerField(Words.capitalised(setting.meaning()) + ", in " + setting.unit());
            field.setHelperText("Unverified: check it against your own copy of the rule");
            field.setMin(setting.lowest());
            field.setMax(setting.highest());
            field.setValue(setting.value());
            field.setStepButtonsVisible(true);
            field.setErrorMessage(
                    "It goes from " + setting.lowest() + " to " + setting.highest() + " " + setting.unit() + ".");
            settingFields.put(setting.word(), field);
            settings.add(field);
        }
    }

    /** Says beside each field what it lacks; nothing that was typed is put aside. */
    private boolean isComplete() {
        from.setErrorMessage("Choose the first day.");
        from.setInvalid(from.isEmpty());
        boolean complete = !from.isEmpty();
        for (IntegerField field : settingFields.values()) {
            boolean fits = field.getOptionalValue()
                    .filter(value -> value >= field.getMin() && value <= field.getMax())
                    .isPresent();
            field.setInvalid(!fits);
            complete &= fits;
        }
        return complete;
    }

    private SiteRules.Choice choice() {
        Map<String, Integer> values = new LinkedHashMap<>();
        settingFields.forEach((word, field) -> values.put(word, field.getValue()));
        return new SiteRules.Choice(
                site.getValue().strip(),
                from.getValue(),
                ruleSet.getValue().word(),
                age.getValue() ? AgeCorrection.ON : AgeCorrection.OFF,
                values,
                reason.getValue().strip());
    }
}
