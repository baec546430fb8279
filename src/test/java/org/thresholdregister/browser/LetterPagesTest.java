package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The letters of the sample plant, from the list of those that wait to the mark that one was given. */
class LetterPagesTest extends BrowserTest {

    private void press(String name) {
        page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .last()
                .click();
    }

    @Test
    void aLetterIsPrintedAndMarkedAsGivenAndATextIsRefused() {
        signInAs(DemoAccounts.NURSE);
        open("/letters");
        assertThat(page().locator(".tr-lead")).containsText("wait to be printed");
        screenshots("letters");
        Accessibility.assertNothingGrave(page());

        page().locator("table vaadin-checkbox").first().click();
        press("Print these");
        assertThat(page().locator("main")).containsText("1 letter is kept as printed.");
        assertThat(page().locator("main")).containsText("printed, not given yet");
        screenshots("letters-printed");
        Accessibility.assertNothingGrave(page());

        page().locator("table").last().locator("vaadin-checkbox").first().click();
        press("Mark as given");
        assertThat(page().getByRole(AriaRole.DIALOG)).containsText("Mark 1 letter as given");
        Accessibility.assertNothingGrave(page());
        press("Mark as given");
        assertThat(page().locator("main")).containsText("1 letter is marked as given.");

        open("/letter-texts");
        assertThat(page().locator("main")).containsText("{worker.name}");
        page().getByLabel("Text", new Page.GetByLabelOptions().setExact(true)).fill("{nothing}");
        press("Save");
        assertThat(page().locator("main")).containsText("There is no placeholder {nothing}.");
        screenshots("letter-texts");
        Accessibility.assertNothingGrave(page());
    }
}
