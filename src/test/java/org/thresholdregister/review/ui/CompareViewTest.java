package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.QueryParameters;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026; M-2 changed by 30 dB on the left on 1 June 2025, and nobody retested it. */
@RegisterTest
class CompareViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoWorkers() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                M-1,1990-05-01,F,Núñez,Ada,Mill,2020-01-01
                M-2,1990-01-01,F,Rusk,Dara,Mill,2020-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("M-1", "2024-06-03", "baseline", 10, 10)
                        + TestImports.test("M-1", "2025-06-02", "annual", 10, 10)
                        + TestImports.test("M-2", "2024-06-01", "baseline", 10, 10)
                        + TestImports.test("M-2", "2025-06-01", "annual", 40, 10),
                "");
    }

    private String shown(String query) {
        UI.getCurrent().navigate("compare", QueryParameters.fromString(query));
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    @SuppressWarnings("unchecked")
    private Select<RuleSet> ruleSet(String label) {
        return $(Select.class).withPropertyValue(Select::getLabel, label).single();
    }

    @Test
    void whoDiffersIsNamedWithBothAnswersAndWhy() {
        assertThat(shown("year=2025&one=osha&other=niosh"))
                .contains("1 worker of the 2 workers tested in 2025 is judged differently, on 1 test of an ear.")
                .contains("Reasons: retest or second test (1).")
                .contains("Rusk, Dara")
                .contains("shift confirmed, recordable")
                .contains(
                        "Both read the change alike. OSHA with allowance for age: shift confirmed, by the test itself."
                                + " NIOSH: awaiting retest, wanted by 1 Jul 2025.")
                .contains(Words.CAUTION);
        assertThat($(Anchor.class).withText("Rusk, Dara").single().getHref()).isEqualTo("worker/M-2");
    }

    @Test
    void eachColumnNamesItsWay() {
        assertThat(shown("year=2025&one=osha.age-off&other=niosh"))
                .containsSubsequence(
                        "First: OSHA without allowance for age",
                        "Second: NIOSH",
                        "First: OSHA without allowance for age",
                        "Second: NIOSH");
    }

    @Test
    void aRuleSetWithoutALogCountsNoCases() {
        assertThat(shown("year=2025&one=osha&other=niosh")).contains("Recordable cases1keeps no log");
        assertThat(shown("year=2025&one=osha&other=fra")).contains("Recordable cases11");
    }

    @Test
    void withoutAnAddressItComparesOshaWithAndWithoutTheAllowanceThisYear() {
        assertThat(shown("")).contains("No worker was tested in 2026.").contains("No test of 2026 is on record.");
        assertThat(ruleSet("First way").getValue()).isEqualTo(RuleSets.OSHA);
        assertThat(ruleSet("Second way").getValue()).isEqualTo(RuleSets.OSHA);
        assertThat($(Checkbox.class).withPropertyValue(Checkbox::getLabel, "Allowance for age").all().stream()
                        .map(Checkbox::getValue))
                .containsExactly(true, false);
    }

    @Test
    void whatIsChosenIsComparedAgainAndAgain() {
        shown("year=2025&one=osha&other=osha");
        assertThat(text()).contains("Both ways are the same.");
        for (String word : List.of("niosh", "dod", "fra")) {
            ruleSet("Second way").setValue(RuleSets.find(word).orElseThrow());
            Button compare = $(Button.class).withText("Compare").single();
            assertThat(compare.isEnabled()).as("before %s", word).isTrue();
            test(compare).click();
            assertThat(text())
                    .contains("Second: " + RuleSets.find(word).orElseThrow().shortName());
        }
        assertThat(jdbc.queryForList(
                        "select detail from audit_event where action = 'RULES_COMPARED' order by id", String.class))
                .containsExactly("osha beside osha", "osha beside niosh", "osha beside dod", "osha beside fra");
    }

    @Test
    void anAllowanceThatTheRuleSetDoesNotMakeCannotBeChosen() {
        shown("year=2025&one=osha&other=niosh");
        assertThat($(Checkbox.class).withPropertyValue(Checkbox::getLabel, "Allowance for age").all().stream()
                        .map(Checkbox::isEnabled))
                .containsExactly(true, false);
    }

    @Test
    void aYearOrASiteWithoutTestsSaysSo() {
        assertThat(shown("year=1999&one=osha&other=niosh"))
                .contains("No worker was tested in 1999.")
                .contains("Choose another year or another site.")
                .doesNotContain("counted in both ways");
        assertThat(shown("year=2025&site=Yard&one=osha&other=niosh"))
                .contains("No worker was tested in 2025 at Yard.")
                .contains("No test of 2025 is on record at Yard.");
        assertThat($(ComboBox.class)
                        .withPropertyValue(ComboBox::getLabel, "Site")
                        .single()
                        .getValue())
                .isEqualTo("Yard");
    }

    @Test
    void recordsThatBothAnswerAlikeSaySo() {
        assertThat(shown("year=2024&one=osha&other=niosh"))
                .contains("None of the 2 workers tested in 2024 is judged differently.")
                .contains("Both ways answer every test of 2024 alike.")
                .contains("The year 2024, counted in both ways");
    }

    @Test
    void aWayThatMeansNothingLeadsToNoPage() {
        assertThat(shown("year=2025&one=gosha&other=niosh")).contains("No such page");
        assertThat(shown("year=25&one=osha&other=niosh")).contains("No such page");
    }
}
