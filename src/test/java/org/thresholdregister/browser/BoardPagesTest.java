package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The first page of nurse and safety officer, and the board behind it, over the sample plant. */
class BoardPagesTest extends BrowserTest {

    private static final Pattern NUMBER = Pattern.compile("\\d+");

    private Locator lead() {
        return page().locator(".tr-lead");
    }

    /** The sentence of Today that counts. */
    private Locator counts() {
        return page().locator(".tr-lead").filter(new Locator.FilterOptions().setHasText("are overdue"));
    }

    private Locator dialog() {
        return page().locator("vaadin-dialog[opened]");
    }

    private Locator button(Locator within, String words) {
        return within.locator("vaadin-button")
                .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^\\s*" + words + "\\s*$")));
    }

    private void choose(String label, String item) {
        dialog().locator("vaadin-select")
                .filter(new Locator.FilterOptions().setHasText(label))
                .click();
        page().locator("vaadin-select-item:visible")
                .getByText(item, new Locator.GetByTextOptions().setExact(true))
                .click();
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
        assertThat(lead().first()).containsText(Pattern.compile("Most urgent: .* \\d+ days overdue by 29 CFR"));
        screenshots("today");
        Accessibility.assertNothingGrave(page());

        int all = page().locator(".tr-due tbody tr:last-child td").allInnerTexts().stream()
                .mapToInt(Integer::parseInt)
                .sum();
        assertThat(page().getByText("See all " + all + " follow-ups")).isVisible();

        String words = counts().locator("a").first().innerText();
        counts().locator("a").first().click();
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
        assertThat(dialog()).containsText("29 CFR 1910.95(g)(8)(i)");
        assertThat(dialog()).containsText(label.substring(label.indexOf("FG-")));
        button(dialog(), "Enter").click();
        assertThat(dialog().locator("vaadin-select [slot=error-message]")).hasText("Say how it was done.");
        Accessibility.assertNothingGrave(page());
        choose("How", "Letter handed over");
        dialog().locator("vaadin-upload input[type=file]")
                .setInputFiles(new FilePayload("plain.txt", "text/plain", "words".getBytes(UTF_8)));
        assertThat(dialog().getByRole(AriaRole.ALERT)).containsText("It is no PDF, PNG or JPEG file.");
        dialog().locator("vaadin-upload input[type=file]")
                .setInputFiles(new FilePayload("signed.pdf", "application/pdf", "%PDF-1.7 signed".getBytes(UTF_8)));
        assertThat(dialog().locator("vaadin-upload-file")).containsText("signed.pdf");
        assertThat(dialog().getByRole(AriaRole.ALERT)).isHidden();
        screenshots("notice-given");
        Accessibility.assertNothingGrave(page());
        button(dialog(), "Enter").click();

        assertThat(page().locator(".tr-result")).containsText("is on record now");
        assertThat(gridButtons("Notice given")).hasCount(before - 1);
        assertThat(page().getByLabel(label)).hasCount(0);
        screenshots("notice-entered");

        String number = label.substring(label.indexOf("FG-"));
        open("/worker/" + number);
        assertThat(page().locator("li").filter(new Locator.FilterOptions().setHasText("Written notice given on")))
                .containsText("letter handed over");
        Download file = page().waitForDownload(
                        () -> page().getByText("signed.pdf (PDF, 15 bytes)").click());
        assertThat(file.suggestedFilename()).isEqualTo("signed.pdf");
        Accessibility.assertNothingGrave(page());
    }

    @Test
    void aNoticeCannotBeGivenBeforeItsTest() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/follow-ups?kind=notice");
        gridButtons("Notice given").first().click();
        Locator day = page().getByLabel("Day", new Page.GetByLabelOptions().setExact(true));
        day.fill("2 Jan 2001");
        day.press("Enter");
        choose("How", "Letter sent by post");
        button(dialog(), "Enter").click();

        assertThat(dialog().locator("vaadin-date-picker [slot=error-message]")).containsText("before the test of");
        assertThat(page().getByLabel("Note", new Page.GetByLabelOptions().setExact(true)))
                .isVisible();
    }

    @Test
    void rowsAreChosenByKeyboardAndPutOffTogether() {
        signInAs(DemoAccounts.NURSE);
        open("/follow-ups?kind=annual-test&state=within-30-days");
        page().locator("vaadin-grid a:visible").first().waitFor();
        Locator boxes = page().locator("vaadin-grid vaadin-checkbox input[aria-label='Select Row']");
        boxes.first().focus();
        page().keyboard().press("Space");
        boxes.nth(1).focus();
        page().keyboard().press("Space");
        assertThat(page().locator(".tr-bulk-number")).hasText("2 rows are chosen.");
        screenshots("chosen");
        Accessibility.assertNothingGrave(page());

        button(page().locator(".tr-bulk"), "Put off").press("Enter");
        page().getByLabel("Until", new Page.GetByLabelOptions().setExact(true)).fill("20 Dec 2027");
        page().keyboard().press("Enter");
        assertThat(dialog()).containsText("the legal day of 2 comes before that: it stands");
        button(dialog(), "Put off").click();
        assertThat(dialog().locator("vaadin-text-area [slot=error-message]"))
                .hasText("It is put off only with a reason.");
        screenshots("put-off");
        Accessibility.assertNothingGrave(page());
        page().getByLabel("Reason", new Page.GetByLabelOptions().setExact(true)).fill("on long leave");
        button(dialog(), "Put off").click();
        assertThat(page().locator(".tr-result")).hasText("2 put off until 20 Dec 2027.");
        assertThat(page().locator("vaadin-grid").getByText(Pattern.compile("put off until 20 Dec 2027: on long leave")))
                .hasCount(2);
        open("/today");
        assertThat(page().getByText("2 follow-ups are put off")).isVisible();
    }

    @Test
    void retestsAreBookedTogetherAndTheOrderIsInTheAddress() {
        signInAs(DemoAccounts.NURSE);
        open("/follow-ups?kind=retest");
        page().locator("vaadin-grid a:visible").first().waitFor();
        page().locator("vaadin-grid-sorter")
                .getByText("For", new Locator.GetByTextOptions().setExact(true))
                .click();
        assertThat(page()).hasURL(Pattern.compile("kind=retest&order=name$"));
        page().locator("vaadin-grid-sorter[direction=asc]").click();
        assertThat(page()).hasURL(Pattern.compile("kind=retest&order=name-descending$"));
        page().locator("vaadin-grid-sorter[direction=desc]").click();
        assertThat(page()).hasURL(Pattern.compile("kind=retest$"));
        page().locator("vaadin-grid-sorter")
                .getByText("For", new Locator.GetByTextOptions().setExact(true))
                .click();
        button(page().locator(".tr-bulk"), "Choose all \\d+").click();
        button(page().locator(".tr-bulk"), "Book retests").click();
        page().getByLabel("Day of the retest", new Page.GetByLabelOptions().setExact(true))
                .fill("26 Nov 2026");
        page().keyboard().press("Enter");
        Accessibility.assertNothingGrave(page());
        button(dialog(), "Book").click();
        assertThat(page().locator(".tr-result")).containsText(Pattern.compile("\\d+ booked for 26 Nov 2026"));
        page().reload();
        page().locator("vaadin-grid a:visible").first().waitFor();
        assertThat(page()).hasURL(Pattern.compile("kind=retest&order=name$"));
        assertThat(page().locator("vaadin-grid")
                        .getByText("booked for 26 Nov 2026")
                        .first())
                .isVisible();
    }

    @Test
    void aSiteTypedByHalfIsTakenOrSaidToBeNone() {
        signInAs(DemoAccounts.NURSE);
        open("/follow-ups");
        Locator site = page().getByLabel("Site", new Page.GetByLabelOptions().setExact(true));
        site.fill("xyz");
        site.press("Tab");
        assertThat(page().locator("vaadin-combo-box [slot=error-message]:visible"))
                .containsText("None is called “xyz”");
        Accessibility.assertNothingGrave(page());
        site.fill("quarry");
        site.press("Tab");
        assertThat(page()).hasURL(Pattern.compile("site=Quarry"));
        assertThat(site).hasValue("Quarry Road");
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
