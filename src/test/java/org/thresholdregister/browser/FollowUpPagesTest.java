package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The first page of nurse and safety officer, and the list behind it, over the sample plant. */
class FollowUpPagesTest extends BrowserTest {

    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private Locator lead() {
        return page().locator(".tr-lead");
    }

    private Locator gridButtons(String words) {
        return page().locator("vaadin-grid .tr-row-button:visible")
                .filter(new Locator.FilterOptions().setHasText(words));
    }

    private static int firstNumber(String text) {
        return Integer.parseInt(NUMBER.matcher(text)
                .results()
                .map(MatchResult::group)
                .findFirst()
                .orElseThrow());
    }

    @Test
    void theNumbersOfTodayLeadToTheListsThatTheyCount() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        assertThat(page()).hasURL(Pattern.compile("/today$"));
        assertThat(lead()).containsText("overdue");
        screenshots("today");
        Accessibility.assertNothingGrave(page());

        int all = page().locator(".tr-due tbody tr:last-child td").allInnerTexts().stream()
                .mapToInt(Integer::parseInt)
                .sum();
        assertThat(page().getByText("See all " + all + " follow-ups")).isVisible();

        String words = lead().locator("a").first().innerText();
        lead().locator("a").first().click();
        assertThat(page()).hasURL(Pattern.compile("/follow-ups\\?kind=[a-z-]+&state=overdue$"));
        assertThat(lead()).containsText("Of " + all + " follow-ups, " + words);
        assertThat(page().locator("vaadin-grid a:visible")).hasCount(firstNumber(words));
        screenshots("follow-ups-filtered");
    }

    @Test
    void theMostPressingStandsFirstAndLeadsToTheWorker() {
        signInAs(DemoAccounts.NURSE);
        Locator first = page().locator(".tr-cards tbody tr").first();
        assertThat(first).containsText(Pattern.compile("\\d+ days overdue"));
        assertThat(first).containsText("29 CFR 1910.95(g)");
        String number = first.locator(".tr-cell-note").first().innerText();
        assertThat(first.locator("a")).hasAttribute("href", "worker/" + number);
    }

    @Test
    void aNoticeGivenIsTakenDownAndLeavesTheList() {
        signInAs(DemoAccounts.NURSE);
        open("/follow-ups?kind=notice");
        gridButtons("Notice given").first().waitFor();
        int before = gridButtons("Notice given").count();
        String label = gridButtons("Notice given").first().getAttribute("aria-label");

        gridButtons("Notice given").first().click();
        Locator dialog = page().getByRole(AriaRole.DIALOG);
        assertThat(dialog).containsText("29 CFR 1910.95(g)(8)(i)");
        assertThat(dialog).containsText(label.substring(label.indexOf("FG-")));
        screenshots("notice-given");
        Accessibility.assertNothingGrave(page());
        dialog.getByText("Enter", new Locator.GetByTextOptions().setExact(true)).click();

        assertThat(page().getByRole(AriaRole.STATUS)).containsText("is on record now");
        assertThat(gridButtons("Notice given")).hasCount(before - 1);
        assertThat(page().getByLabel(label)).hasCount(0);
        screenshots("notice-entered");
    }

    @Test
    void aNoticeCannotBeGivenBeforeItsTest() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/follow-ups?kind=notice");
        gridButtons("Notice given").first().click();
        Locator day = page().getByLabel("Day", new Page.GetByLabelOptions().setExact(true));
        day.fill("2 Jan 2001");
        day.press("Enter");
        page().getByRole(AriaRole.DIALOG)
                .getByText("Enter", new Locator.GetByTextOptions().setExact(true))
                .click();

        assertThat(page().locator("vaadin-date-picker [slot=error-message]")).containsText("before the test of");
        assertThat(page().getByLabel("Reason or remark")).isVisible();
    }

    @Test
    void onlyTheSafetyOfficerMayEnterThatACaseIsRecorded() {
        signInAs(DemoAccounts.NURSE);
        open("/follow-ups?kind=record");
        page().locator("vaadin-grid a:visible").first().waitFor();
        assertThat(gridButtons("Case recorded")).hasCount(0);
        page().getByText("Sign out").click();
        page().waitForURL("**/login");

        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/follow-ups?kind=record");
        assertThat(gridButtons("Case recorded").first()).isVisible();
        int cases = page().locator("vaadin-grid a:visible").count();
        assertThat(gridButtons("Case recorded")).hasCount(cases);
    }

    @Test
    void aChoiceGoesIntoTheAddressAndAListWithoutAnythingSaysWhy() {
        signInAs(DemoAccounts.NURSE);
        open("/follow-ups?kind=baseline-test");
        page().getByLabel("Department", new Page.GetByLabelOptions().setExact(true))
                .click();
        page().locator("vaadin-combo-box-item:visible")
                .getByText("Packing Hall", new Locator.GetByTextOptions().setExact(true))
                .click();

        assertThat(page()).hasURL(Pattern.compile("department=Packing"));
        open("/follow-ups?kind=retest&state=overdue");
        assertThat(page().locator(".tr-empty")).containsText("Nothing is owed that fits this filter");
        assertThat(page().locator("vaadin-grid")).isHidden();
        page().locator(".tr-empty a").click();
        assertThat(page()).hasURL(Pattern.compile("/follow-ups$"));
        assertThat(lead()).containsText("follow-ups are owed");
        page().locator("vaadin-grid a:visible").first().waitFor();
        screenshots("follow-ups");
        Accessibility.assertNothingGrave(page());
    }

    @Test
    void anAddressThatMeansNothingLeadsToNoPage() {
        signInAs(DemoAccounts.NURSE);
        open("/follow-ups?kind=tea");
        assertThat(page().locator("h1")).hasText("No such page");
    }

    @Test
    void aPlantManagerSeesNobody() {
        signInAs(DemoAccounts.PLANT_MANAGER);
        for (String path : new String[] {"/today", "/follow-ups", "/workers", "/shifts"}) {
            open(path);
            assertThat(page().locator("h1")).hasText("Not for your role");
        }
    }
}
