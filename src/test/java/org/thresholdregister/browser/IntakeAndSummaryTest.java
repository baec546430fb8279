package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.test.context.TestPropertySource;
import org.thresholdregister.platform.accounts.DemoAccounts;

@TestPropertySource(properties = "register.today=2026-11-25")
class IntakeAndSummaryTest extends BrowserTest {

    @Test
    void theManagerReadsTheYear() {
        signInAs(DemoAccounts.PLANT_MANAGER);
        assertThat(page().locator("h1")).hasText("Summary of 2026");
        screenshots("summary");
        var d = page().waitForDownload(
                        () -> page().getByText("Download as a workbook").click());
        d.saveAs(java.nio.file.Path.of("target/screenshots/summary.xlsx"));
        page().locator("text=2016").first().click();
        assertThat(page().locator("h1")).hasText("Summary of 2016");
        screenshots("summary-2016");
    }
}
