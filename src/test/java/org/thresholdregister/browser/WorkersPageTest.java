package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The list of workers, over the sample plant. */
class WorkersPageTest extends BrowserTest {

    private Locator names() {
        return page().locator("vaadin-grid a:visible");
    }

    @Test
    void aNameIsFoundWithoutItsAccentsAndStaysOutOfTheAddress() {
        signInAs(DemoAccounts.NURSE);
        open("/workers");
        names().first().waitFor();
        screenshots("workers");
        Accessibility.assertNothingGrave(page());

        page().getByLabel("Name or number").fill("akervind fg-01");
        assertThat(page().locator(".tr-lead")).containsText("match the search");
        assertThat(names().first()).containsText("Åkervind");
        assertThat(page()).hasURL(Pattern.compile("/workers$"));
        screenshots("workers-found");
    }

    @Test
    void thoseWhoLeftAreOneClickAway() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/workers");
        page().locator(".tr-lead a").last().click();
        assertThat(page()).hasURL(Pattern.compile("/workers\\?status=left$"));
        assertThat(page().locator("vaadin-grid .tr-cell:visible")
                        .getByText(Pattern.compile("^left \\d"))
                        .first())
                .isVisible();
        assertThat(page().locator("vaadin-grid .tr-cell:visible").getByText("employed"))
                .hasCount(0);
    }

    @Test
    void aRowOpensTheWorkersPage() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/workers?site=Quarry%20Road&department=Maintenance");
        assertThat(page().locator(".tr-lead")).containsText("4 workers in Maintenance at Quarry Road");
        page().locator("vaadin-grid .tr-cell:visible").getByText("FG-0203").click();
        assertThat(page()).hasURL(Pattern.compile("/worker/FG-0203$"));
    }
}
