package org.thresholdregister.rulesets.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.rules.Setting;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.rulesets.Holiday;
import org.thresholdregister.rulesets.SiteRules;
import org.thresholdregister.rulesets.SiteRulesService;

/** Today is 9 March 2026. */
@RegisterTest
class RulesViewTest extends SpringBrowserlessTest {

    @Autowired
    private SiteRulesService rules;

    private String shownTo(Role role) {
        SignIn.as(role);
        UI.getCurrent().navigate("rules");
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    private TextField textField(String label) {
        return $(TextField.class).withPropertyValue(TextField::getLabel, label).single();
    }

    private DatePicker date(String label) {
        return $(DatePicker.class)
                .withPropertyValue(DatePicker::getLabel, label)
                .single();
    }

    private IntegerField setting(String label) {
        return $(IntegerField.class)
                .withPropertyValue(IntegerField::getLabel, label)
                .single();
    }

    private TextArea reason() {
        return $(TextArea.class).single();
    }

    @SuppressWarnings("unchecked")
    private void select(String ruleSet) {
        Select<RuleSet> select = $(Select.class).single();
        select.setValue(RuleSets.find(ruleSet).orElseThrow());
    }

    private void press(String words) {
        test($(Button.class).withText(words).single()).click();
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"NURSE", "SAFETY_OFFICER"})
    void whoReadsRecordsReadsEveryRuleSetAndChoosesNone(Role role) {
        String page = shownTo(role);
        assertThat(page)
                .contains("Every site answers to OSHA: 29 CFR 1910.95 and 1904.10, with the allowance for age.")
                .contains("No holiday is listed: deadlines in working days skip Saturdays and Sundays only.")
                .contains(Words.CAUTION);
        for (RuleSet ruleSet : RuleSets.ALL) {
            assertThat(page).contains(ruleSet.name()).contains(ruleSet.force());
            ruleSet.duties().forEach(duty -> assertThat(page).contains(duty.what()));
            ruleSet.furtherRules()
                    .forEach(rule -> assertThat(page).contains(rule.word()).contains(rule.consequence()));
            ruleSet.settings().forEach(setting -> assertThat(page).contains(setting.word() + ": "));
        }
        assertThat($(Button.class).withText("Choose this rule set").all()).isEmpty();
        assertThat($(Button.class).withText("Add the holiday").all()).isEmpty();
    }

    @Test
    void aChoiceStandsInTheListWithItsDayItsReasonAndItsNumbers() {
        shownTo(Role.ADMINISTRATOR);
        textField("Site").setValue(" Mill ");
        date("From").setValue(LocalDate.parse("2026-01-01"));
        select("niosh");
        setting("The time for the confirmation test, in days").setValue(45);
        reason().setValue("The customer asks for it");
        press("Choose this rule set");

        assertThat(rules.chosen()).singleElement().satisfies(chosen -> {
            assertThat(chosen.site()).isEqualTo("Mill");
            assertThat(chosen.from()).isEqualTo("2026-01-01");
            assertThat(chosen.ruleSet().word()).isEqualTo("niosh");
            assertThat(chosen.ruleSet().settings()).extracting(Setting::value).containsExactly(45, 30);
        });
        assertThat(text())
                .contains("Sites answer to what was chosen for them;")
                .contains("Mill1 Jan 2026NIOSH: recommended criteria, Publication 98-126")
                .contains("none in this rule set")
                .contains("confirm-days: 45 days; notice-days: 30 days")
                .contains("The customer asks for it")
                .contains("test-administrator");
        assertThat(reason().getValue()).isEmpty();
    }

    @Test
    void withoutAnAllowanceAndForEveryOtherSite() {
        shownTo(Role.ADMINISTRATOR);
        $(Checkbox.class).single().setValue(false);
        reason().setValue("Our own policy");
        press("Choose this rule set");
        assertThat(rules.chosen())
                .singleElement()
                .extracting(SiteRules::ageCorrection, SiteRules::from)
                .containsExactly(AgeCorrection.OFF, LocalDate.parse("2026-03-09"));
        assertThat(text()).contains("Every site without a choice of its own").contains("not made");
    }

    @Test
    void whatLacksIsSaidBesideItsFieldAndNothingTypedIsLost() {
        shownTo(Role.ADMINISTRATOR);
        textField("Site").setValue("Mill");
        press("Choose this rule set");
        assertThat(reason().isInvalid()).isTrue();
        assertThat(reason().getErrorMessage()).isEqualTo("Say why: the reason stays with the choice.");

        select("dod");
        reason().setValue("Told so");
        setting("The change at one frequency that is an early warning, in dB").setValue(99);
        date("From").clear();
        press("Choose this rule set");
        assertThat(setting("The change at one frequency that is an early warning, in dB")
                        .isInvalid())
                .isTrue();
        assertThat(setting("The change at one frequency that is an early warning, in dB")
                        .getErrorMessage())
                .isEqualTo("It goes from 1 to 60 dB.");
        assertThat(date("From").isInvalid()).isTrue();
        assertThat(setting("The time for the follow-up tests, in days").isInvalid())
                .isFalse();

        setting("The change at one frequency that is an early warning, in dB").clear();
        date("From").setValue(LocalDate.parse("2026-02-01"));
        press("Choose this rule set");
        assertThat(rules.chosen()).as("an empty number is no number").isEmpty();
        assertThat(textField("Site").getValue()).isEqualTo("Mill");
        assertThat(reason().getValue()).isEqualTo("Told so");

        setting("The change at one frequency that is an early warning, in dB").setValue(20);
        press("Choose this rule set");
        assertThat(rules.chosen()).hasSize(1);
    }

    @Test
    void holidaysAreAddedAndTakenAway() {
        shownTo(Role.ADMINISTRATOR);
        press("Add the holiday");
        assertThat(date("Day").isInvalid()).isTrue();
        assertThat(textField("Holiday").isInvalid()).isTrue();
        date("Day").setValue(LocalDate.parse("2026-12-25"));
        textField("Holiday").setValue("  ");
        press("Add the holiday");
        assertThat(rules.holidays()).isEmpty();
        textField("Holiday").setValue(" Christmas Day ");
        press("Add the holiday");
        assertThat(text()).contains("25 Dec 2026Christmas Day");
        assertThat(textField("Holiday").isInvalid()).isFalse();
        assertThat(date("Day").isInvalid()).isFalse();

        test($(NativeButton.class).withText("Remove").single()).click();
        assertThat(rules.holidays()).isEmpty();
        assertThat(text()).contains("No holiday is listed");
    }

    @Test
    void theNurseSeesTheHolidaysAndTakesNoneAway() {
        SignIn.as(Role.ADMINISTRATOR);
        rules.addHoliday(new Holiday(LocalDate.parse("2026-12-25"), "Christmas Day"));
        assertThat(shownTo(Role.NURSE)).contains("25 Dec 2026Christmas Day");
        assertThat($(NativeButton.class).withText("Remove").all()).isEmpty();
    }
}
