package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import org.thresholdregister.Application;
import org.thresholdregister.platform.security.Role;

/** The first day of a real register, without demo accounts: set up, bring the plant's files in, read, take the year away. */
@ExtendWith(OutputCaptureExtension.class)
class FirstDayTest extends ChromiumTest {

    private static final String PASSWORD = "kilns glow before dawn";
    private static final Pattern TOKEN = Pattern.compile("([A-Z0-9]{4}(?:-[A-Z0-9]{4})+)");
    private static final int IMPORT_MILLIS = 120_000;

    private static ConfigurableApplicationContext app;
    private static String token;

    @BeforeAll
    static void startAnEmptyRegister(CapturedOutput console) throws IOException {
        Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target", "test-data")), "first-day");
        app = Application.serve(
                "--register.data=" + folder.toAbsolutePath(), "--server.port=0", "--register.today=2026-11-24");
        Matcher found = TOKEN.matcher(console.getOut());
        assertThat(found.find()).as("the console shows the set-up token").isTrue();
        token = found.group(1);
    }

    @AfterAll
    static void stop() {
        app.close();
    }

    @Override
    protected String address() {
        return "http://localhost:" + app.getEnvironment().getProperty("local.server.port");
    }

    @Test
    void anEmptyRegisterIsSetUpFilledAndRead() throws IOException {
        setUp();
        signIn("safety.officer");
        importTheSample();
        readAWorking();
        takeTheSummaryAway();
        signOut();

        signIn("keeper");
        assertThat(page().locator("vaadin-side-nav-item")).containsText(new String[] {"Users", "Rules"});
        open("/worker/FG-0061");
        assertThat(page().locator("main")).not().containsText("Audiogram");
        assertThat(page().locator("audiogram-reader")).hasCount(0);
    }

    private void setUp() {
        open("/setup");
        field("Set-up token", 0).fill(token);
        field("Username", 0).fill("keeper");
        field("Name", 0).fill("Keeper of accounts");
        field("Password", 0).fill(PASSWORD);
        field("Username", 1).fill("safety.officer");
        field("Name", 1).fill("Safety officer");
        field("Password", 1).fill(PASSWORD);
        page().locator("vaadin-select:visible").click();
        page().getByRole(AriaRole.OPTION)
                .filter(new Locator.FilterOptions().setHasText(Role.SAFETY_OFFICER.label()))
                .click();
        screenshots("set-up");
        page().getByText("Create the accounts").click();
        assertThat(page().locator("h1")).hasText("The register is set up");
    }

    /** The field with this label, the administrator's first. */
    private Locator field(String label, int nth) {
        return page().locator("vaadin-text-field, vaadin-password-field")
                .filter(new Locator.FilterOptions()
                        .setHas(page().locator("label")
                                .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^" + label + ".*")))))
                .locator("input")
                .nth(nth);
    }

    private void signIn(String username) {
        open("/login");
        page().fill("#username", username);
        page().fill("#password", PASSWORD);
        page().click("button[type=submit]");
        page().waitForSelector("vaadin-app-layout");
    }

    private void signOut() {
        page().getByText("Sign out").click();
        page().waitForSelector("#username");
    }

    private void importTheSample() {
        open("/import");
        for (String title : new String[] {"Roster", "Audiograms", "Decisions"}) {
            Locator place =
                    page().locator(".tr-drop").filter(new Locator.FilterOptions().setHas(page().getByText(title)));
            place.locator("input[type=file]").setInputFiles(Path.of("sample-roster", title.toLowerCase() + ".csv"));
            assertThat(place.locator("vaadin-upload-file[complete]")).hasCount(1);
        }
        page().getByText("Check the files").click();
        assertThat(page().getByText("Confirm and store"))
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(IMPORT_MILLIS));
        assertThat(page().locator(".tr-lead"))
                .hasText("400 workers, 2,911 tests and 216 decisions can be stored; no row is left out.");
        page().getByText("Confirm and store").click();
        assertThat(page().locator(".tr-lead"))
                .containsText("are stored", new LocatorAssertions.ContainsTextOptions().setTimeout(IMPORT_MILLIS));
    }

    private void readAWorking() {
        open("/worker/FG-0061");
        Locator working = page().locator("details")
                .filter(new Locator.FilterOptions().setHasText("from 37 to 42; 26 left"))
                .first();
        assertThat(working.locator("li").first()).not().isVisible();
        working.locator("summary").click();
        assertThat(working).containsText("4 of it is the age allowance from 37 to 42; 26 left.");
        assertThat(working).containsText("29 CFR 1910.95(g)(10)(i)");
    }

    private void takeTheSummaryAway() throws IOException {
        open("/summary?year=2025");
        assertThat(page().locator(".tr-lead")).containsText("In 2025, 277 workers were tested");
        Download download = page().waitForDownload(
                        () -> page().getByText("Download as a workbook").click());
        try (InputStream bytes = download.createReadStream();
                XSSFWorkbook workbook = new XSSFWorkbook(bytes)) {
            assertThat(workbook.getNumberOfSheets()).isPositive();
        }
    }
}
