package org.thresholdregister.shell;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.thresholdregister.browser.BrowserTest;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The house around the pages, in a real browser. */
@ExtendWith(OutputCaptureExtension.class)
class HouseTest extends BrowserTest {

    @Autowired
    JdbcClient jdbc;

    private long audited(String action, String subjectId) {
        return jdbc.sql("select count(*) from audit_event where action = ? and subject_id = ?")
                .params(action, subjectId)
                .query(Long.class)
                .single();
    }

    private void assertAccessible() {
        assertThat(new AxeBuilder(page())
                        .exclude("vaadin-connection-indicator")
                        .analyze()
                        .getViolations())
                .as("accessibility")
                .isEmpty();
    }

    @Test
    void aWrongPasswordIsToldInWords() {
        open("/login");
        page().fill("#username", DemoAccounts.NURSE);
        page().fill("#password", "not the password");
        page().click("button[type=submit]");

        assertThat(page().getByRole(AriaRole.ALERT)).containsText("do not go together");
        screenshots("sign-in-failed");
        assertAccessible();
    }

    @Test
    void aPageOfAnotherRoleIsRefusedAndNoted() {
        signInAs(DemoAccounts.NURSE);
        long before = audited("ACCESS_REFUSED", "/users");

        open("/users");

        assertThat(page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .hasText("Not for your role");
        assertThat(page().locator("vaadin-side-nav-item").getByText("Users")).hasCount(0);
        assertThat(audited("ACCESS_REFUSED", "/users")).isEqualTo(before + 1);
        screenshots("refused");
        assertAccessible();
    }

    @Test
    void signingOutEndsTheSessionAndIsNoted() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        long before = audited("SIGNED_OUT", DemoAccounts.SAFETY_OFFICER);
        var cookie = page().context().cookies().getFirst();

        page().getByText("Sign out").click();
        page().waitForURL("**/login");

        assertThat(audited("SIGNED_OUT", DemoAccounts.SAFETY_OFFICER)).isEqualTo(before + 1);
        page().context().clearCookies();
        page().context().addCookies(List.of(cookie));
        open("/probe");
        assertThat(page().locator("#password")).isVisible();
    }

    @Test
    void aPageThatFailsShowsAReferenceAndNothingOfTheCause(CapturedOutput output) {
        signInAs(DemoAccounts.NURSE);

        open("/probe?fail");

        var main = page().locator("main");
        assertThat(main).containsText("Something went wrong");
        assertThat(main).not().containsText("Nora");
        String reference = main.textContent().replaceAll("(?s).*the reference ([A-Z0-9]{8})\\..*", "$1");
        assertThat(reference).hasSize(8);
        assertThat(output.getAll())
                .contains("Reference " + reference + ": java.lang.IllegalStateException")
                .doesNotContain(ProbeView.PERSONAL);
        screenshots("failed");
    }

    @Test
    void aClickThatFailsShowsAReferenceAndThePageStays(CapturedOutput output) {
        signInAs(DemoAccounts.NURSE);
        open("/probe");

        page().getByText("Fail").click();

        var notice = page().locator("vaadin-notification-card");
        assertThat(notice).containsText("this step was not done");
        assertThat(page().locator("h1")).hasText("Probe");
        assertThat(output.getAll()).doesNotContain(ProbeView.PERSONAL);
        screenshots("click-failed");
    }

    @Test
    void whatAServiceRefusesIsToldAsSuch() {
        signInAs(DemoAccounts.NURSE);
        open("/probe?refuse");
        assertThat(page().locator("main")).containsText("Not for your role");

        open("/probe");
        page().getByText("Refuse").click();
        assertThat(page().locator("vaadin-notification-card")).containsText("Your role does not allow this");
    }

    @Test
    void aDownloadIsNotKeptByTheBrowser() {
        signInAs(DemoAccounts.NURSE);
        open("/probe");

        var link = page().getByText("Download");
        var download = page().waitForDownload(link::click);
        assertThat(download.suggestedFilename()).isEqualTo("probe-2026-03-09.csv");
        assertThat(read(download.path())).isEqualTo("worker_id\nW-1\n");

        var headers = page().request()
                .get(address() + "/" + link.getAttribute("href"))
                .headers();
        assertThat(headers)
                .containsEntry("cache-control", "no-store")
                .containsEntry("x-content-type-options", "nosniff")
                .containsEntry("content-type", "text/csv;charset=UTF-8");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void theFirstTabStopSkipsToThePage() {
        signInAs(DemoAccounts.NURSE);
        open("/probe");
        page().locator("h1").waitFor();

        page().keyboard().press("Tab");
        assertThat(page().locator(".tr-skip")).isFocused();
        page().keyboard().press("Enter");
        assertThat(page().locator("main")).isFocused();
        page().keyboard().press("Tab");

        assertThat(page().locator("vaadin-button", new Page.LocatorOptions().setHasText("Fail")))
                .isFocused();
    }

    @Test
    void paperHasNoMenusAndSaysWhoPrintedIt() {
        signInAs(DemoAccounts.NURSE);
        open("/probe");
        page().locator("h1").waitFor();
        assertThat(page().locator(".tr-printed-by")).isHidden();

        page().emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

        assertThat(page().getByText("Sign out")).isHidden();
        assertThat(page().locator(".tr-menu")).isHidden();
        assertThat(page().locator(".tr-printed-by")).containsText("Health record.");
        assertThat(page().locator(".tr-printed-by")).containsText("by Demo nurse.");
        assertThat(page().locator(".tr-page .tr-caution")).isVisible();
    }

    @Test
    void darkFollowsTheSystem() {
        page().emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        signInAs(DemoAccounts.NURSE);
        Object background = page().evaluate("getComputedStyle(document.documentElement).backgroundColor");
        assertThat(background).isEqualTo("rgb(23, 23, 21)");
        assertAccessible();
    }
}
