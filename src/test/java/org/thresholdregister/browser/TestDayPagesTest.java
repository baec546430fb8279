package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** Test days over the sample plant, by the keyboard where it counts; each state is checked for accessibility. */
class TestDayPagesTest extends BrowserTest {

    private Locator lead() {
        return page().locator(".tr-lead");
    }

    private Locator button(String name) {
        return page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private Locator field(String label) {
        return page().getByLabel(label, new Page.GetByLabelOptions().setExact(true));
    }

    private void check(String name) {
        screenshots(name);
        Accessibility.assertNothingGrave(page());
    }

    @Test
    void aNursePlansADayFillsItAndMovesSomebodyByKeyboard() {
        signInAs(DemoAccounts.NURSE);
        open("/test-days");
        assertThat(lead()).containsText("due within 30 days");
        check("test-days-empty");

        button("Plan it").click();
        assertThat(page().getByText("Say where people go, such as First aid room 2."))
                .isVisible();
        check("test-days-error");
        field("Room or stand").fill("First aid room 2");
        field("Day").fill("1 Dec 2026");
        field("Day").press("Enter");
        button("Plan it").click();
        assertThat(page()).hasURL(Pattern.compile("/test-day/\\d+"));
        assertThat(lead()).containsText("Nobody is on the list for Tuesday 1 Dec 2026");
        check("test-day-empty");

        button("Propose who comes").press("Enter");
        assertThat(page().getByText("The free times are filled by urgency")).isVisible();
        check("test-day-propose");
        button("Propose").press("Enter");
        assertThat(lead()).containsText(Pattern.compile("\\d+ people on Tuesday 1 Dec 2026"));
        Locator rows = page().locator(".tr-table").first().locator("tbody tr");
        assertThat(rows.count()).isPositive();
        check("test-day-proposed");

        Locator change = rows.first().getByText("Change");
        change.focus();
        page().keyboard().press("Enter");
        assertThat(page().getByText("Another time")).isVisible();
        check("test-day-change");
        page().keyboard().press("Escape");

        button("Confirm all proposed people").press("Enter");
        assertThat(page().locator(".tr-result")).containsText("confirmed");
        check("test-day-confirmed");
    }

    @Test
    void theOtherPagesOfTestDaysAreReadable() {
        signInAs(DemoAccounts.NURSE);
        open("/due-tests");
        assertThat(lead()).containsText("due by");
        check("due-tests");
        open("/work-shifts");
        assertThat(lead()).containsText("No shift is known");
        check("work-shifts-empty");
        field("Name").fill("early");
        field("Begins").fill("06:00");
        field("Begins").press("Enter");
        field("Ends").fill("14:00");
        field("Ends").press("Enter");
        button("Enter the shift").click();
        assertThat(page().locator(".tr-result")).containsText("The shift early is stored.");
        check("work-shifts");
        open("/protectors-until-baseline");
        assertThat(lead()).containsText("people have no protectors noted");
        check("protectors-until-baseline");
        open("/test-calendar");
        assertThat(lead()).containsText("no address yet");
        button("Make an address").click();
        Locator address = field("Address, shown this once");
        assertThat(address).hasValue(Pattern.compile("http://localhost:\\d+/calendar/[A-Za-z0-9_-]{43}\\.ics"));
        check("test-calendar");
        assertThat(page().request().get(address.inputValue()).text()).startsWith("BEGIN:VCALENDAR");
    }
}
