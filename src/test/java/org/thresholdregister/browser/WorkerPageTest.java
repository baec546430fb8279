package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The page of one worker, over the sample plant: FG-0061 has a shift that a retest confirmed in February 2022. */
class WorkerPageTest extends BrowserTest {

    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    private void openWorker(String workerId) {
        open("/worker/" + workerId);
        page().locator("audiogram-reader .readout").waitFor();
    }

    /** The line of an ear in the findings, which unfolds. */
    private Locator finding(String test, String ear) {
        return page().locator(
                        ".tr-found-test",
                        new Page.LocatorOptions()
                                .setHas(page().locator("h3", new Page.LocatorOptions().setHasText(test))))
                .locator("details", new Locator.LocatorOptions().setHasText(ear))
                .first();
    }

    private Locator button(String words) {
        return page().getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(words).setExact(true));
    }

    private void press(String... keys) {
        for (String key : keys) {
            page().keyboard().press(key);
        }
    }

    private Locator said() {
        return page().locator(".tr-audiogram-said");
    }

    /** Arithmetic by hand from the file; allowance from Table F-1, 29 CFR 1910.95 Appendix F, males at 37 and at 42. */
    @Test
    void aNurseUnfoldsTheWorkingOfAConfirmedShiftByKeyboard() {
        signInAs(DemoAccounts.NURSE);
        openWorker("FG-0061");
        assertThat(page().locator(".tr-lead"))
                .hasText("Both ears: shift of 3 Feb 2026 stands without a retest, already recorded; next is the annual"
                        + " test by 3 Feb 2027.");

        Locator finding = finding("Annual test of 8 Feb 2022", "Right ear");
        assertThat(finding.locator("summary")).containsText("shift confirmed, recordable");
        assertThat(finding.locator("summary"))
                .containsText("Mean shift 17.67 dB, 20.00 dB without the age allowance; mean level 25.00 dB HL");
        assertThat(finding.locator("li").first()).not().isVisible();
        finding.locator("summary").focus();
        press("Enter");

        Locator sentence = finding.locator("li", new Locator.LocatorOptions().setHasText("4000 Hz:"));
        assertThat(sentence).isVisible();
        assertThat(sentence)
                .hasText("4000 Hz: 40 dB HL now, 10 at the baseline, 30 worse; 4 of it is the age allowance from 37 to"
                        + " 42; 26 left. 29 CFR 1910.95(g)(10)(ii) and Appendix F");
        assertThat(finding).containsText("Without the age allowance the mean is 20.00 dB: a shift.");
        assertThat(finding.locator("cite", new Locator.LocatorOptions().setHasText("29 CFR 1904.10(b)(2)(ii)")))
                .isVisible();
        assertThat(finding.locator(".tr-caution"))
                .hasText("Computed from the record by the rule named; a professional decides.");
        Accessibility.assertNothingGrave(page());
        finding.scrollIntoViewIfNeeded();
        screenshots("worker-working");
    }

    /** The fold is closed at first; what it holds is read by hand and by a machine for accessibility. */
    @Test
    void aNurseUnfoldsWhatTheNumbersMean() {
        signInAs(DemoAccounts.NURSE);
        openWorker("FG-0061");
        Locator meaning = page().locator(".tr-meaning details");
        assertThat(meaning.locator("h3")).hasCount(0);
        meaning.locator("summary").focus();
        press("Enter");
        assertThat(meaning.locator("h3").first()).hasText("Percentage of hearing handicap");
        assertThat(meaning.locator(".tr-meaning-drawing svg").first()).isVisible();
        assertThat(meaning).containsText("by ISO 7029:2017");
        meaning.locator("vaadin-radio-button", new Locator.LocatorOptions().setHasText("2000"))
                .click();
        assertThat(meaning).not().containsText("by ISO 7029:2017");
        Accessibility.assertNothingGrave(page());
        meaning.scrollIntoViewIfNeeded();
        screenshots("worker-meaning");
    }

    @Test
    void theKeyboardStepsThroughTheYearsAndARowOfTheHistoryIsDrawn() {
        signInAs(DemoAccounts.NURSE);
        openWorker("FG-0061");
        assertThat(said()).containsText("Annual test of 3 Feb 2026.");
        screenshots("worker");
        Accessibility.assertNothingGrave(page());

        page().locator(".tr-history").scrollIntoViewIfNeeded();
        screenshots("worker-history");
        page().locator("audiogram-reader .stage").focus();
        press("PageUp");
        assertThat(said()).containsText("Annual test of 3 Feb 2025.");
        press("PageUp", "PageUp", "PageUp");
        assertThat(said()).containsText("Retest of 24 Feb 2022.");
        assertThat(page().locator(".tr-audiogram-numbers thead")).containsText("Right ear, 24 Feb 2022");
        assertThat(page().locator("svg.audiogram"))
                .hasAttribute(
                        "aria-label",
                        Pattern.compile(
                                "^Audiogram of 24 Feb 2022, retest\\. Right ear, compared with the baseline of 7 Feb 2017: .*"));
        assertThat(page().locator(".tr-history tr[aria-current=true]")).containsText("24 Feb 2022");
        press("PageDown");
        assertThat(said()).containsText("Annual test of 8 Feb 2023.");

        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Draw the baseline test of 7 Feb 2017"))
                .press("Enter");
        assertThat(said()).containsText("Baseline test of 7 Feb 2017.");
        assertThat(page().locator("[data-series=baseline]")).hasCount(0);
        assertThat(button("Earlier test")).isDisabled();
        button("Later test").click();
        assertThat(said()).containsText("Annual test of 5 Feb 2018.");
        page().locator(".tr-history tr", new Page.LocatorOptions().setHasText("3 Feb 2020"))
                .locator("td")
                .nth(5)
                .click();
        assertThat(said()).containsText("Annual test of 3 Feb 2020.");

        page().locator(".tr-lead a").last().click();
        assertThat(page().locator("#owed h2")).isInViewport();
        assertThat(said()).containsText("Annual test of 3 Feb 2020.");
    }

    /** One octave is as wide as 20 dB is tall: common practice after ANSI S3.21, from memory. */
    @Test
    void anOctaveIsAsWideAsTwentyDecibelsAreTall() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        openWorker("FG-0061");
        for (int width : new int[] {1280, 390}) {
            page().setViewportSize(width, 900);
            double octave = middle(".octave", 2).x - middle(".octave", 1).x;
            double twentyDecibels = middle(".level", 3).y - middle(".level", 1).y;
            assertThat(octave).as("at a width of " + width).isGreaterThan(40);
            assertThat(octave).as("at a width of " + width).isCloseTo(twentyDecibels, Offset.offset(0.5));
        }
    }

    private BoundingBox middle(String line, int index) {
        BoundingBox box = page().locator("svg.audiogram " + line).nth(index).boundingBox();
        box.x += box.width / 2;
        box.y += box.height / 2;
        return box;
    }

    @Test
    void paperShowsTheOpenWorkingsAndWhoPrintedWhat() {
        signInAs(DemoAccounts.NURSE);
        openWorker("FG-0061");
        button("Open all workings").click();
        assertThat(button("Close all workings")).isVisible();
        assertThat(page().locator(".tr-found-test details[open]")).hasCount(22);

        page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        assertThat(page().locator(".tr-printed-by"))
                .hasText("Health record. Fernhollow Works. Threshold Register. Printed 24 Nov 2026 by Demo nurse.");
        assertThat(page().locator(".tr-printed-by")).isVisible();
        assertThat(finding("Annual test of 8 Feb 2022", "Left ear")
                        .locator("li")
                        .first())
                .isVisible();
        assertThat(button("Close all workings")).not().isVisible();
        assertThat(button("Sign out")).not().isVisible();
        page().setViewportSize(718, 1000);
        page().screenshot(new Page.ScreenshotOptions()
                .setPath(SCREENSHOTS.resolve("worker-paper.png"))
                .setFullPage(true));
        assertThat((Integer) page().evaluate("document.documentElement.scrollWidth"))
                .isLessThanOrEqualTo(718);
    }

    @Test
    void theDarkSchemeIsAsReadable() {
        page().emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        signInAs(DemoAccounts.SAFETY_OFFICER);
        openWorker("FG-0107");
        assertThat(page().locator(".tr-history tbody tr").first()).containsText(">95");
        Accessibility.assertNothingGrave(page());
        screenshots("worker-dark");
    }

    @Test
    void aNurseEntersADecisionAndIsToldWhatItNeeds() {
        signInAs(DemoAccounts.NURSE);
        openWorker("FG-0061");
        button("Enter a decision").click();
        Locator dialog = page().locator("vaadin-dialog[opened]");
        dialog.locator("vaadin-select").first().click();
        assertThat(page().getByRole(AriaRole.OPTION)).hasCount(6);
        page().getByRole(AriaRole.OPTION, new Page.GetByRoleOptions().setName("Set aside as invalid"))
                .click();
        screenshots("worker-decision");
        button("Enter").click();
        assertThat(page().getByText("This decision is taken down only with its reason."))
                .isVisible();
        Accessibility.assertNothingGrave(page());

        dialog.locator("vaadin-select").first().click();
        page().getByRole(AriaRole.OPTION, new Page.GetByRoleOptions().setName("Written notice given"))
                .click();
        dialog.locator("vaadin-select:visible")
                .filter(new Locator.FilterOptions().setHasText("How"))
                .click();
        page().getByRole(AriaRole.OPTION, new Page.GetByRoleOptions().setName("Letter handed over"))
                .click();
        button("Enter").click();
        assertThat(dialog).hasCount(0);
        assertThat(page().locator("[role=status]", new Page.LocatorOptions().setHasText("On record now")))
                .hasText("On record now: written notice given, both ears, test of 3 Feb 2026. Nothing else changes.");
        assertThat(page().locator("main")).containsText("Demo nurse");
    }

    /** FG-0061's case of 3 Feb 2026 has its notice; protectors and training are owed without a date. */
    @Test
    void aCaseIsMovedOnByItsButtonAndTheMessageIsInSightWithTheFocus() {
        signInAs(DemoAccounts.NURSE);
        openWorker("FG-0061");
        Locator life = page().locator("#cases details", new Page.LocatorOptions().setHasText("Case of 3 Feb 2026"))
                .first();
        assertThat(life.locator("summary").first()).containsText("Both ears: shift confirmed, held by an earlier case");
        assertThat(life).containsText("Fitting or refitting protectors, both ears; the rule gives no date.");
        button("Protectors fitted or refitted, both ears, case of 3 Feb 2026").scrollIntoViewIfNeeded();
        screenshots("worker-case");
        Accessibility.assertNothingGrave(page());

        button("Protectors fitted or refitted, both ears, case of 3 Feb 2026").press("Enter");
        Locator dialog = page().locator("vaadin-dialog[opened]");
        assertThat(dialog.locator("vaadin-select").first()).containsText("Protectors fitted or refitted");
        button("Enter").press("Enter");
        assertThat(dialog).hasCount(0);
        Locator message = page().locator("[role=status]", new Page.LocatorOptions().setHasText("On record now"));
        assertThat(message).isInViewport();
        assertThat(message).isFocused();
        assertThat(life).not().containsText("Fitting or refitting protectors, both ears;");
    }

    @Test
    void aTestThatIsNeverJudgedAndOneSetAsideSayWhy() {
        signInAs(DemoAccounts.NURSE);
        openWorker("FG-0163");
        assertThat(page().locator(".tr-found"))
                .containsText("Both ears: not judged, as a test of this purpose never is");
        openWorker("FG-0131");
        assertThat(page().locator(".tr-history"))
                .containsText("Both ears: not judged, set aside as invalid on 18 Dec 2023: instrument A-1 read about"
                        + " 10 dB too high in November 2023");
        open("/worker/FG-0398");
        assertThat(page().locator(".tr-lead"))
                .hasText("No hearing test is on record; next is the baseline test by 5 Apr 2027.");
        screenshots("worker-without-tests");
    }

    @Test
    void anUnknownNumberShowsNoRecord() {
        signInAs(DemoAccounts.NURSE);
        open("/worker/FG-9999");
        assertThat(page().locator("h1")).hasText("No record to show");
        assertThat(page().locator("svg.audiogram")).hasCount(0);
        screenshots("worker-unknown");
    }

    @Test
    void aPlantManagerIsRefusedByAddress() {
        signInAs(DemoAccounts.PLANT_MANAGER);
        open("/worker/FG-0061");
        assertThat(page().locator("h1")).hasText("Not for your role");
        assertThat(page().locator("svg.audiogram")).hasCount(0);
        assertThat(page().locator("main").innerText())
                .doesNotContain("Quispemar")
                .doesNotContain("dB");
    }
}
