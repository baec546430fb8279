package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** Files come in and the year's counts go out, over a register of its own that holds the sample plant. */
@TestPropertySource(properties = "register.today=2026-11-25")
class IntakeAndSummaryTest extends BrowserTest {

    private static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,site,department,twa_dba
            FG-0003,1996-05-25,M,Lopez,Eliot,Quarry Road,Mould Shop,loud
            TR-1,1990-01-01,F,=Testperson,Una,Quarry Road,Mould Shop,90
            """;
    private static final String AUDIOGRAMS = AUDIOGRAM_COLUMNS
            + TestImports.test("TR-1", "2026-11-20", "baseline", 10, 10)
            + TestImports.test("TR-1", "2026-11-21", "annual", 400, 10)
            + TestImports.test("TR-9", "2026-11-20", "baseline", 10, 10);

    @Autowired
    private JdbcClient jdbc;

    @Test
    void theNurseImportsFilesAndSeesWhatTheyDo() throws IOException {
        signInAs(DemoAccounts.NURSE);
        page().locator("vaadin-side-nav-item").getByText("Import").click();
        assertThat(page().locator("h1")).hasText("Import");
        screenshots("import-files");
        assertAccessible();

        page().getByText("Check the files").click();
        assertThat(page().locator(".tr-message:visible")).containsText("There is no file to check yet");

        handOver(0, "roster.csv", ROSTER);
        handOver(1, "audiograms.csv", AUDIOGRAMS);
        screenshots("import-handed-over");
        page().getByText("Check the files").click();
        page().waitForTimeout(2000);
        screenshots("import-preview");
        assertAccessible();
        System.out.println(page().locator("main").innerText());
        page().getByText("Confirm and store").click();
        page().waitForTimeout(3000);
        screenshots("import-done");
        System.out.println(page().locator("main").innerText());
    }

    private void handOver(int place, String name, String text) {
        page().locator("vaadin-upload input[type=file]")
                .nth(place)
                .setInputFiles(new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8)));
        page().waitForTimeout(1500);
    }

    private void assertAccessible() {
        assertThat(new AxeBuilder(page())
                        .exclude("vaadin-connection-indicator").analyze().getViolations().stream()
                                .filter(rule -> Set.of("serious", "critical").contains(rule.getImpact()))
                                .map(rule -> rule.getId() + " "
                                        + rule.getNodes().stream()
                                                .map(node -> node.getTarget() + node.getFailureSummary())
                                                .toList()))
                .as("accessibility")
                .isEmpty();
    }
}
