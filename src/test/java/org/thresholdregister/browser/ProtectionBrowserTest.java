package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** Protectors and training in the browser, over the sample plant. */
class ProtectionBrowserTest extends BrowserTest {

    private Locator lead() {
        return page().locator(".tr-lead").first();
    }

    /** Opens a page and waits for its first sentence, however busy the machine is. */
    private void show(String path) {
        open(path);
        lead().waitFor();
    }

    private Locator button(String words) {
        return page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(words).setExact(true));
    }

    private void ready(String shot) {
        Accessibility.assertNothingGrave(page());
        screenshots(shot);
    }

    @Test
    void fromTheListToAProtectorGivenOut() {
        signInAs(DemoAccounts.NURSE);
        show("/protectors");
        assertThat(lead())
                .containsText(Pattern.compile("^\\d+ people have to wear protectors; \\d+ with no protector"));
        page().locator("vaadin-grid a:visible").first().waitFor();
        ready("protectors");

        page().locator("vaadin-grid a:visible").first().click();
        assertThat(page()).hasURL(Pattern.compile("/worker-protectors/.+"));
        button("Give out a protector").click();
        button("Give out").click();
        assertThat(page().getByText("Choose a protector from the catalogue of this site."))
                .isVisible();
        ready("give-out-error");
        page().getByLabel("Protector", new Page.GetByLabelOptions().setExact(true))
                .fill("Hollow");
        page().locator("vaadin-combo-box-item:visible").first().click();
        button("Give out").click();
        assertThat(page().locator("main")).containsText("By the label and Appendix B (ii), ");
        page().waitForTimeout(300);
        ready("worker-protectors");

        button("Enter a fit test").click();
        button("Enter").click();
        ready("fit-test-error");
        button("Cancel").click();
        page().getByText("The worker's page").click();
        assertThat(page().locator("main")).containsText("Protectors and training");
    }

    @Test
    void theCatalogueAndTheCalculator() {
        signInAs(DemoAccounts.NURSE);
        show("/protector-catalogue");
        assertThat(lead()).containsText("10 protectors are given out");
        ready("protector-catalogue");
        button("Add a protector").click();
        button("Add").click();
        ready("add-protector-error");
        button("Cancel").click();

        show("/protector-calculator");
        assertThat(lead()).containsText("What a hearing protector leaves of a noise");
        ready("protector-calculator-empty");
        page().getByLabel("Noise (dBA)").fill("97");
        page().getByLabel("NRR (dB)", new Page.GetByLabelOptions().setExact(true))
                .fill("25");
        button("Calculate").click();
        assertThat(page()).hasURL(Pattern.compile("dba=97"));
        page().getByText("How each is worked out").click();
        assertThat(page().locator("main")).containsText("97 − (25 − 7) = 79 dBA.");
        ready("protector-calculator");
    }

    @Test
    void anOfficerEntersATraining() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        show("/training?site=Quarry%20Road");
        assertThat(lead()).containsText("overdue for training");
        page().locator("vaadin-grid a:visible").first().waitFor();
        ready("training");
        page().getByText("Enter a training").first().click();
        button("Enter the training").click();
        assertThat(page().getByText("Choose one of your own sites.")).isVisible();
        ready("training-entry-error");
        page().locator("vaadin-combo-box").first().locator("input").fill("Quarry");
        page().locator("vaadin-combo-box-item:visible").first().click();
        for (Locator box :
                page().locator("vaadin-checkbox-group vaadin-checkbox input").all()) {
            box.check();
        }
        page().getByLabel("Trainer").fill("A. Vale");
        Locator department = page().getByLabel("Add a whole department");
        department.fill("Cutting");
        page().locator("vaadin-combo-box-item:visible").first().click();
        button("Enter the training").click();
        assertThat(page()).hasURL(Pattern.compile("/training-session/\\d+$"));
        assertThat(lead()).containsText("took part; it covered noise, protectors and tests.");
        page().waitForTimeout(500);
        ready("training-session");
        page().locator("main .tr-row-button:visible").first().click();
        button("Withdraw").click();
        ready("withdraw-error");
    }
}
