package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.Cookie;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** Entering a test, over the sample plant on its own day, 24 November 2026. */
class TestEntryPageTest extends BrowserTest {

    /** Right ear, then left, 500 to 8000 Hz. */
    private static final List<String> LEVELS =
            List.of("10", "5", "15", "35", "45", "40", "30", "10", "0", "15", "30", "40", "35", "25");

    private static final int DIGITS = String.join("", LEVELS).length();

    private Locator field(String name) {
        return page().getByLabel(name, new Page.GetByLabelOptions().setExact(true));
    }

    private void press(String... keys) {
        for (String key : keys) {
            page().keyboard().press(key);
        }
    }

    /** Counts what the browser is told of keys, the modifiers aside. */
    private void countKeys() {
        page().evaluate("""
                () => { window.keysPressed = 0; document.addEventListener('keydown', e => {
                  if (e.key !== 'Control' && e.key !== 'Shift') window.keysPressed++; }, true); }""");
    }

    private int keysPressed() {
        return (Integer) page().evaluate("window.keysPressed");
    }

    private void openTest(String workerId) {
        open("/test/" + workerId);
        page().locator("threshold-entry input").first().waitFor();
        assertThat(page().locator("threshold-entry input:focus")).hasCount(1);
    }

    private void type(List<String> levels) {
        for (String level : levels) {
            page().keyboard().type(level);
            press("Enter");
        }
    }

    @Test
    void aWholeTestIsTypedAndSignedWithTheDigitsAndEnterAlone() {
        signInAs(DemoAccounts.NURSE);
        open("/test");
        assertThat(page().getByLabel("Name or number")).isFocused();
        Accessibility.assertNothingGrave(page());
        page().keyboard().type("FG-0062");
        press("Enter");
        assertThat(field("Right ear, 500 Hz, dB HL")).isFocused();
        Accessibility.assertNothingGrave(page());
        screenshots("test-empty");

        countKeys();
        type(LEVELS.subList(0, 13));
        page().keyboard().type(LEVELS.getLast());
        press("Control+Enter");
        assertThat(page().locator("h1")).hasText("Signed");
        assertThat(keysPressed()).isEqualTo(DIGITS + 14);

        assertThat(page().locator("[role=status].tr-card")).containsText("signed by Demo nurse");
        assertThat(page().locator("[role=status].tr-card")).isFocused();
        Accessibility.assertNothingGrave(page());
        screenshots("test-signed");
        open("/worker/FG-0062");
        assertThat(page().locator(".tr-history tbody tr").first()).containsText("24 Nov 2026");
        assertThat(page().locator(".tr-history tbody tr").first().locator("td.tr-figures"))
                .hasText(LEVELS.toArray(String[]::new));
        screenshots("test-worker");
    }

    @Test
    void aReloadInTheMiddleAndALostConnectionLoseNothing() {
        signInAs(DemoAccounts.NURSE);
        openTest("FG-0063");
        type(LEVELS.subList(0, 5));
        page().keyboard().type("4");
        page().reload();
        assertThat(field("Right ear, 6000 Hz, dB HL")).hasValue("4");
        assertThat(field("Right ear, 4000 Hz, dB HL")).hasValue("45");
        assertThat(page().locator("audiogram-reader [data-ear=right][data-series=latest][data-hz='4000']"))
                .hasAttribute("data-words", "45 dB HL");

        field("Right ear, 6000 Hz, dB HL").focus();
        expectProblem("ERR_INTERNET_DISCONNECTED");
        page().context().setOffline(true);
        type(LEVELS.subList(5, 14));
        assertThat(field("Left ear, 8000 Hz, dB HL")).hasValue("25");
        page().context().setOffline(false);
        assertThat(page().locator("audiogram-reader [data-ear=left][data-series=latest][data-hz='8000']"))
                .hasAttribute("data-words", "25 dB HL", new LocatorAssertions.HasAttributeOptions().setTimeout(30_000));
        assertThat(page().evaluate("sessionStorage.length"))
                .as("what has arrived is kept in the browser no longer")
                .isEqualTo(0);
        page().reload();
        for (int i = 0; i < 7; i++) {
            assertThat(page().locator("threshold-entry fieldset")
                            .nth(0)
                            .locator("input")
                            .nth(i))
                    .hasValue(LEVELS.get(i));
            assertThat(page().locator("threshold-entry fieldset")
                            .nth(1)
                            .locator("input")
                            .nth(i))
                    .hasValue(LEVELS.get(i + 7));
        }
        screenshots("test-typed");
        open("/test");
        assertThat(page().locator("main")).containsText("FG-0063");
        assertThat(page().locator("main")).containsText("14 thresholds");
        Accessibility.assertNothingGrave(page());
        screenshots("test-start");
    }

    /** As after a laptop was closed overnight: the first key meets a session that is over. */
    @Test
    void whatIsTypedAfterTheSessionEndedIsThereAfterSigningInAgain() {
        signInAs(DemoAccounts.NURSE);
        openTest("FG-0066");
        type(LEVELS.subList(0, 3));
        assertThat(page().locator("audiogram-reader [data-ear=right][data-series=latest][data-hz='2000']"))
                .hasAttribute("data-words", "15 dB HL");
        List<Cookie> ended = page().context().cookies().stream()
                .map(cookie -> new Cookie(cookie.name, "ended")
                        .setDomain(cookie.domain)
                        .setPath(cookie.path))
                .toList();
        page().context().addCookies(ended);
        page().keyboard().type("35");
        page().keyboard().press("Enter");
        page().keyboard().press("Escape");
        page().waitForSelector("#username");
        page().fill("#username", DemoAccounts.NURSE);
        page().fill("#password", DemoAccounts.PASSWORD);
        page().click("button[type=submit]");
        page().waitForSelector("vaadin-app-layout");
        openTest("FG-0066");
        assertThat(field("Right ear, 3000 Hz, dB HL")).hasValue("35");
        assertThat(field("Right ear, 2000 Hz, dB HL")).hasValue("15");
    }

    @Test
    void keysStepMarkAndRefuseWhereTheyStandAndADraftIsThrownAway() {
        signInAs(DemoAccounts.NURSE);
        openTest("FG-0064");
        Locator first = field("Right ear, 500 Hz, dB HL");
        press("ArrowUp", "ArrowUp");
        assertThat(first).hasValue("5");
        press("ArrowDown", "ArrowDown", "ArrowDown");
        assertThat(first).hasValue("-10");
        press("Enter");
        page().keyboard().type("130");
        press("Enter");
        Locator wrong = field("Right ear, 1000 Hz, dB HL");
        assertThat(wrong).isFocused();
        assertThat(wrong).hasAttribute("aria-invalid", "true");
        assertThat(page().locator("threshold-entry .words.wrong")).hasText("Outside -10 to 120 dB HL.");
        Accessibility.assertNothingGrave(page());
        screenshots("test-wrong");
        press("Control+Enter");
        assertThat(page().locator("[role=alert]")).containsText("Nothing was signed. What you typed is kept.");
        assertThat(page().locator("[role=alert]")).containsText("Right ear, 1000 Hz: this is no hearing level.");
        assertThat(wrong).isFocused();
        Accessibility.assertNothingGrave(page());
        screenshots("test-refused");

        page().keyboard().type("12");
        assertThat(page().locator("threshold-entry .words", new Page.LocatorOptions().setHasText("step")))
                .hasText("Off the 5 dB step.");
        press("Enter", "n");
        assertThat(field("Right ear, 2000 Hz, dB HL")).hasValue(">95");
        press("Enter", "c");
        assertThat(field("Right ear, 3000 Hz, dB HL")).hasValue("CNT");
        press("Backspace");
        assertThat(field("Right ear, 3000 Hz, dB HL")).hasValue("");
        press("Shift+Enter");
        assertThat(field("Right ear, 2000 Hz, dB HL")).isFocused();
        assertThat(page().locator("audiogram-reader [data-ear=right][data-series=latest][data-hz='2000']"))
                .hasAttribute("data-words", "no response at 95 dB HL");

        page().getByText("Throw this draft away").click();
        assertThat(page().getByText("What you typed on this page is lost.")).isVisible();
        press("Control+Enter");
        assertThat(page().locator("h1")).containsText("Test of");
        Accessibility.assertNothingGrave(page());
        page().getByText("Throw it away").click();
        assertThat(page().locator("h1")).hasText("Test");
        assertThat(page().locator("main")).not().containsText("FG-0064");
    }

    @Test
    void aTestOnRecordIsCorrectedAndTheOldOneStaysReadable() {
        signInAs(DemoAccounts.NURSE);
        open("/worker/FG-0065");
        page().locator(".tr-corrections summary").last().press("Enter");
        page().locator(".tr-corrections table a").first().click();
        page().locator("threshold-entry input").first().waitFor();
        assertThat(page().locator("h1")).containsText("Correct a test of");
        Accessibility.assertNothingGrave(page());
        screenshots("test-correct");
        String was = field("Right ear, 500 Hz, dB HL").inputValue();
        field("Right ear, 500 Hz, dB HL").fill(was.equals("20") ? "25" : "20");
        press("Control+Enter");
        assertThat(page().locator("[role=alert]")).containsText("Say why the test on record is wrong.");
        page().getByLabel("Why the test on record is wrong").fill("Read from the wrong line");
        page().locator("vaadin-combo-box", new Page.LocatorOptions().setHasText("Instrument"))
                .locator("input")
                .fill("Z-9");
        press("Control+Enter");
        assertThat(page().locator("h1")).hasText("Signed");
        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("The worker's page"))
                .click();
        assertThat(page().locator(".tr-history tbody tr", new Page.LocatorOptions().setHasText("on Z-9")))
                .hasCount(1);
        assertThat(page().locator(".tr-history-former")).hasCount(1);
        assertThat(page().locator(".tr-history-former")).containsText("Superseded on 24 Nov 2026 by nurse");
        assertThat(page().locator(".tr-corrections del")).hasCount(1);
        assertThat(page().locator(".tr-corrections summary").first()).containsText("Read from the wrong line");
        page().locator(".tr-corrections summary").first().press("Enter");
        assertThat(page().locator(".tr-corrections details").first()).containsText("It stands here as it was.");
        Accessibility.assertNothingGrave(page());
        page().locator(".tr-corrections").scrollIntoViewIfNeeded();
        screenshots("test-corrected");

        page().locator(".tr-corrections summary").last().press("Enter");
        page().locator(".tr-corrections button").first().click();
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Take it out"))
                .click();
        assertThat(page().getByText("A test is taken out only with a reason.")).isVisible();
        Accessibility.assertNothingGrave(page());
        screenshots("test-withdraw");
        page().getByLabel("Why it was entered in error").fill("Another person's test");
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Take it out"))
                .click();
        assertThat(page().locator(".tr-corrections del")).hasCount(2);
    }

    @Test
    void onlyANurseEntersTests() {
        for (String other : List.of(DemoAccounts.SAFETY_OFFICER, DemoAccounts.PLANT_MANAGER)) {
            signInAs(other);
            open("/test/FG-0061");
            assertThat(page().locator("h1")).hasText("Not for your role");
            page().context().clearCookies();
        }
    }
}
