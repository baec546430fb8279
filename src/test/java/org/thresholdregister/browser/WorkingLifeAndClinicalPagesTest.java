package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The working life, the clinical part and sold plants over the sample plant; nobody there leaves or is sold. */
class WorkingLifeAndClinicalPagesTest extends BrowserTest {

    private void openFirstWorker() {
        open("/workers");
        Locator first = page().locator("a[href^='worker/']").first();
        first.click();
        page().waitForURL(Pattern.compile(".*/worker/.*"));
        heading("Working life").scrollIntoViewIfNeeded();
    }

    private Locator heading(String name) {
        return page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName(name));
    }

    private Locator button(String name) {
        return page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private Locator labelled(String label) {
        return page().getByLabel(label, new Page.GetByLabelOptions().setExact(true));
    }

    private void choose(String label, String item) {
        labelled(label).click();
        page().locator("vaadin-select-item:visible")
                .filter(new Locator.FilterOptions().setHasText(item))
                .click();
    }

    @Test
    void theNurseAddsToTheWorkingLifeAndSeesWhatFollows() {
        signInAs(DemoAccounts.NURSE);
        openFirstWorker();
        screenshots("working-life");
        Accessibility.assertNothingGrave(page());

        button("Add to the working life").click();
        screenshots("working-life-dialog");
        Accessibility.assertNothingGrave(page());
        choose("What happened", "Agency or contract worker");
        button("Enter").click();
        assertThat(page().getByText("Give the name of the agency or contractor."))
                .isVisible();
        screenshots("working-life-dialog-error");
        Accessibility.assertNothingGrave(page());
        labelled("Name of the agency or contractor").fill("Brightwater Staffing");
        page().getByText("This employer, which then records").click();
        button("Enter").click();
        assertThat(page().locator("main"))
                .containsText("Worker of the agency Brightwater Staffing, supervised here from day to day");
        assertThat(page().locator("main")).containsText("29 CFR 1904.31(a), (b)(2)-(4)");
    }

    @Test
    void theNurseEntersHistoryEarsAndARefusalAndTheOfficerSeesNothingOfThem() {
        signInAs(DemoAccounts.NURSE);
        openFirstWorker();
        String worker = page().url();
        button("Enter history and ears").click();
        page().getByLabel("Hunting or shooting", new Page.GetByLabelOptions().setExact(true))
                .check();
        labelled("Hunting or shooting: what, how long").fill("deer each autumn");
        page().getByText("the right shoulder").click();
        screenshots("clinical-dialog");
        Accessibility.assertNothingGrave(page());
        button("Enter").click();
        assertThat(page().locator("main")).containsText("Yes: hunting or shooting (deer each autumn)");

        button("Enter a refusal").click();
        button("Enter").click();
        assertThat(page().getByText("Give the reason: it stays with the entry."))
                .isVisible();
        screenshots("refusal-dialog");
        Accessibility.assertNothingGrave(page());
        labelled("Reason, in the worker's words").fill("No time today");
        button("Enter").click();
        assertThat(page().locator("main")).containsText("refused, to be offered again");
        screenshots("clinical-section");
        Accessibility.assertNothingGrave(page());

        page().getByText("Form to sign").click();
        assertThat(heading("I do not want the hearing test")).isVisible();
        screenshots("refusal-form");
        Accessibility.assertNothingGrave(page());

        button("Sign out").click();
        page().waitForURL(Pattern.compile(".*/login.*"));
        signInAs(DemoAccounts.SAFETY_OFFICER);
        page().navigate(worker);
        assertThat(heading("Working life")).isVisible();
        assertThat(heading("Health history and ears")).hasCount(0);
        assertThat(page().locator("main")).not().containsText("efus");
        assertThat(page().locator("main")).not().containsText("deer each autumn");
    }

    @Test
    void theOfficerLooksWhoWouldGoWithASoldPlant() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/sold-plant");
        assertThat(page().locator(".tr-lead")).containsText("No plant was sold with its workers.");
        Accessibility.assertNothingGrave(page());
        button("Look who goes").click();
        assertThat(page().getByText("Name the new owner.")).isVisible();
        screenshots("sold-plant-error");
        Accessibility.assertNothingGrave(page());
        labelled("Site").click();
        page().locator("vaadin-select-item:visible").first().click();
        labelled("Successor").fill("Larkmoor Glass");
        button("Look who goes").click();
        assertThat(heading("Before anything is changed")).isVisible();
        screenshots("sold-plant");
        Accessibility.assertNothingGrave(page());
    }
}
