package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.SignIn;
import org.thresholdregister.platform.accounts.Accounts;
import org.thresholdregister.platform.accounts.DemoAccounts;
import org.thresholdregister.platform.accounts.NewAccount;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

/** The rule sets, and a year under two of them, over the sample plant. */
class RulesPagesTest extends BrowserTest {

    @Autowired
    private Accounts accounts;

    private Locator lead() {
        return page().locator(".tr-lead");
    }

    private Locator table(String caption) {
        return page().getByRole(AriaRole.TABLE, new Page.GetByRoleOptions().setName(Pattern.compile(caption)));
    }

    private Locator ruleSet(String name) {
        return page().locator(".tr-rule-set details")
                .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^" + name)));
    }

    @Test
    void theOfficerComparesTwoRuleSetsAndFollowsWhoDiffers() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/compare");
        page().getByLabel("Second way", new Page.GetByLabelOptions().setExact(true))
                .click();
        page().locator("vaadin-select-item:visible")
                .filter(new Locator.FilterOptions().setHasText("NIOSH"))
                .click();
        page().getByText("Compare", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page()).hasURL(Pattern.compile("/compare\\?.*other=niosh"));
        assertThat(lead()).containsText("judged differently, on ");
        screenshots("compare");
        Accessibility.assertNothingGrave(page());

        Matcher numbers = Pattern.compile(
                        "(\\d+) workers of the (\\d+) workers tested in 2026.* on (\\d+) tests of an ear")
                .matcher(lead().innerText());
        assertThat(numbers.find()).isTrue();
        Locator rows = table("Tests that are answered differently").locator("tbody tr");
        assertThat(rows).hasCount(Integer.parseInt(numbers.group(3)));
        List<String> who = rows.locator("a").allInnerTexts();
        assertThat(who.stream().distinct()).hasSize(Integer.parseInt(numbers.group(1)));
        Locator counts = table("The year 2026, counted in both ways");
        assertThat(counts).containsText("First: OSHA with allowance for age");
        assertThat(counts).containsText("Second: NIOSH");
        assertThat(counts.locator("tbody tr").first()).containsText(numbers.group(2));
        assertThat(rows.first()).containsText("OSHA with allowance for age");
        assertThat(rows.first()).containsText("dB");

        rows.locator("a").first().click();
        assertThat(page()).hasURL(Pattern.compile("/worker/"));
        String family = who.getFirst().split(",")[0];
        assertThat(page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .containsText(family);
    }

    @Test
    void theButtonComparesAsOftenAsItIsPressed() {
        signInAs(DemoAccounts.NURSE);
        open("/compare?year=2025&one=osha&other=niosh");
        assertThat(lead()).containsText("tested in 2025");
        for (String ruleSet : List.of("DoD", "FRA")) {
            page().getByLabel("Second way", new Page.GetByLabelOptions().setExact(true))
                    .click();
            page().locator("vaadin-select-item:visible")
                    .filter(new Locator.FilterOptions().setHasText(ruleSet))
                    .click();
            page().getByText("Compare", new Page.GetByTextOptions().setExact(true))
                    .click();
            assertThat(table("counted in both ways")).containsText("Second: " + ruleSet);
        }
    }

    @Test
    void theNurseOpensARuleSetAndReadsWhatItAsks() {
        signInAs(DemoAccounts.NURSE);
        open("/rules");
        assertThat(lead()).containsText("Every site answers to OSHA");
        Locator niosh = ruleSet("NIOSH");
        assertThat(niosh.getByText("The worker is told in writing of every shift"))
                .isHidden();
        niosh.locator("summary").click();
        assertThat(niosh.getByText("The worker is told in writing of every shift"))
                .isVisible();
        assertThat(niosh).containsText("confirm-days: the time for the confirmation test, 30 days");
        assertThat(niosh).containsText("unverified");
        ruleSet("HSE L108").locator("summary").click();
        screenshots("rules");
        Accessibility.assertNothingGrave(page());
        assertThat(page().getByText("Choose this rule set")).hasCount(0);
    }

    @Test
    void theAdministratorsFormHasAFieldForEachUnverifiedNumber() {
        SignIn.as(Role.ADMINISTRATOR);
        assertThat(accounts.add(new NewAccount(
                        "rules-admin",
                        "Rules administrator",
                        DemoAccounts.PASSWORD,
                        Role.ADMINISTRATOR,
                        SiteScope.all())))
                .isEmpty();
        SignIn.out();
        signInAs("rules-admin");
        open("/rules");
        page().getByLabel("Rule set", new Page.GetByLabelOptions().setExact(true))
                .click();
        page().locator("vaadin-select-item:visible")
                .filter(new Locator.FilterOptions().setHasText("DoD"))
                .click();
        assertThat(page().getByLabel("The time for the follow-up tests, in days"))
                .hasValue("30");
        screenshots("rules-choose");
        Accessibility.assertNothingGrave(page());
    }
}
