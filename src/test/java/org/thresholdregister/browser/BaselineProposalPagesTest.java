package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The baseline proposals of the sample plant, from the list to what a professional answers. */
class BaselineProposalPagesTest extends BrowserTest {

    private Locator button(String name) {
        return page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    @Test
    void aProposalIsFoundInTheListReadAndDeclined() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/baseline-proposals");
        assertThat(page().locator(".tr-lead"))
                .containsText(Pattern.compile("^\\d+ baseline proposals? waits? for a professional\\."));
        Locator proposals = page().locator("vaadin-grid a:visible").getByText("Lasting");
        proposals.first().waitFor();
        screenshots("baseline-proposals");
        Accessibility.assertNothingGrave(page());

        proposals.first().click();
        assertThat(page().locator(".tr-working")).containsText("A professional supervisor decides");
        assertThat(page().locator(".tr-audiogram-drawing svg")).isVisible();
        screenshots("baseline-proposal");
        Accessibility.assertNothingGrave(page());

        button("Declined by a professional").click();
        Locator dialog = page().getByRole(AriaRole.DIALOG);
        assertThat(dialog).containsText("What this will change:");
        screenshots("baseline-proposal-answer");
        button("Decline").click();
        assertThat(dialog).containsText("Name the audiologist, otolaryngologist or physician who decided.");
        page().getByLabel("Decided by").fill("Dr. Ines Vale");
        page().getByLabel("Profession").click();
        page().getByRole(AriaRole.OPTION, new Page.GetByRoleOptions().setName("Audiologist"))
                .click();
        page().getByLabel("Reason").fill("Had a cold on both days");
        button("Decline").click();

        assertThat(page().locator("main")).containsText("is declined as the baseline of the");
    }
}
