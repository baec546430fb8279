package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.FilePayload;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** Files come in and the year's counts go out, over a register of its own that holds the sample plant. */
@TestPropertySource(properties = "register.today=2026-11-25")
class IntakeAndSummaryTest extends BrowserTest {

    private static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,site,department,twa_dba
            FG-0004,,,,,Quarry Road,Cutting Shop,=loud
            TR-1,1990-01-01,F,Testperson,Una,Quarry Road,Mould Shop,90
            """;
    private static final String AUDIOGRAMS = AUDIOGRAM_COLUMNS
            + TestImports.test("TR-1", "2026-11-20", "baseline", 10, 10)
            + TestImports.test("TR-1", "2026-11-21", "annual", 400, 10)
            + TestImports.test("TR-9", "2026-11-20", "baseline", 10, 10);

    @Autowired
    private JdbcClient jdbc;

    @Test
    void theNurseImportsFilesAndIsToldWhatTheyDo() throws IOException {
        signInAs(DemoAccounts.NURSE);
        page().locator("vaadin-side-nav-item").getByText("Import").click();
        assertThat(page().locator("h1")).hasText("Import");
        screenshots("import-files");
        Accessibility.assertNothingGrave(page());

        press("Check the files");
        assertThat(message()).containsText("There is no file to check yet");
        handOver("Roster", "roster.csv", ROSTER);
        assertThat(message()).hasCount(0);
        handOver("Audiograms", "audiograms.csv", AUDIOGRAMS);
        screenshots("import-handed-over");
        long workersBefore = workers();
        press("Check the files");

        assertThat(lead()).hasText("1 new and 1 changed worker and 2 tests can be stored; 1 row is left out.");
        assertThat(lead()).isFocused();
        assertThat(row("Roster: roster.csv")).hasText("Roster: roster.csv1100");
        assertThat(row("Audiograms: audiograms.csv")).hasText("Audiograms: audiograms.csv2001");
        assertThat(row("FG-0004")).containsText("Packing Hall");
        assertThat(row("FG-0004")).containsText("Cutting Shop");
        assertThat(row("=loud")).containsText("Use a point for decimals and no unit");
        assertThat(row("TR-9")).containsText("row left out");
        screenshots("import-preview");
        Accessibility.assertNothingGrave(page());
        assertProblemsCanBeTakenAway();
        assertThat(workers()).as("stored by a preview").isEqualTo(workersBefore);

        press("Confirm and store");
        assertThat(lead()).hasText("1 new and 1 changed worker and 2 tests are stored; 1 row was left out.");
        assertThat(page().locator("main").getByText("See what is due today")).hasAttribute("href", "today");
        assertThat(workers()).isEqualTo(workersBefore + 1);
        screenshots("import-done");
        Accessibility.assertNothingGrave(page());

        press("Import other files");
        handOver("Roster", "roster.csv", ROSTER);
        handOver("Audiograms", "audiograms.csv", AUDIOGRAMS);
        press("Check the files");
        assertThat(lead()).containsText("Nothing new");
        assertThat(page().getByText("Confirm and store")).hasCount(0);
    }

    private void assertProblemsCanBeTakenAway() throws IOException {
        long before = audited("PROBLEMS_DOWNLOADED", DemoAccounts.NURSE);
        String csv = new String(bytes(download("Download these as CSV")), StandardCharsets.UTF_8);

        assertThat(csv)
                .startsWith("\uFEFFfile,line,column,value,problem,effect\r\nroster.csv,2,twa_dba,'=loud,")
                .contains("\r\naudiograms.csv,3,left_500,400,")
                .contains("\r\naudiograms.csv,4,worker_id,TR-9,")
                .endsWith("row left out\r\n");
        assertThat(audited("PROBLEMS_DOWNLOADED", DemoAccounts.NURSE)).isEqualTo(before + 1);
    }

    @Test
    void aFileThatCannotBeUsedIsToldInWordsAndMayBeReplaced() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/import");
        handOver("Roster", "people.csv", "worker_id,birth_date\n1,1990-01-01\n");
        press("Check the files");
        assertThat(message()).hasText("people.csv has no column sex, which is required.");
        screenshots("import-unusable");

        place("Roster").getByLabel("Remove").click();
        assertThat(message()).hasCount(0);
        press("Check the files");
        assertThat(message()).containsText("There is no file to check yet");
        handOver("Roster", "people.csv", "worker_id,birth_date,sex\nTR-7,1990-01-01,F\n");
        press("Check the files");
        assertThat(lead()).hasText("1 worker can be stored; no row is left out.");

        press("Give up and hand over other files");
        assertThat(lead()).containsText("Hand over your files");
        assertThat(page().locator("main").getByText("people.csv")).hasCount(0);
    }

    @Test
    void aFileThatIsTooLargeIsRefusedInWords() {
        signInAs(DemoAccounts.NURSE);
        open("/import");
        place("Roster").locator("vaadin-upload").evaluate("upload => { upload.maxFileSize = 20 }");
        choose("Roster", "large.csv", "worker_id,birth_date,sex\n");

        assertThat(message()).containsText("large.csv: It is larger than 256 MB. Split it");
        press("Check the files");
        assertThat(page().getByText("There is no file to check yet")).isVisible();
    }

    @Test
    void aLongImportShowsHowFarItIsAndCanBeStopped() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/import");
        StringBuilder roster = new StringBuilder("worker_id,birth_date,sex\n");
        for (int i = 0; i < 20_000; i++) {
            roster.append("LONG-").append(i).append(",,\n");
        }
        handOver("Roster", "roster.csv", roster.toString());
        press("Check the files");
        assertThat(lead()).hasText("20,000 workers can be stored; no row is left out.");
        assertThat(page().locator("main tbody tr")).hasCount(1);
        press("Confirm and store");

        assertThat(page().locator("main")).containsText("Step 2 of 5: Storing the workers.");
        assertThat(page().locator("main")).containsText("of 20,000");
        // Another visit of the page finds the import where it is. Nothing slow stands here: the import does not wait.
        open("/import");
        press("Stop");
        assertThat(lead()).hasText("Stopped: nothing was stored, and the files that were handed over are gone.");
        assertThat(jdbc.sql("select count(*) from worker where worker_id like 'LONG-%'")
                        .query(Long.class)
                        .single())
                .isZero();
        press("Hand over the files again");
        assertThat(lead()).containsText("Hand over your files");
    }

    @Test
    void emptyFilesWithTheirHeaderRowsAreThere() throws IOException {
        signInAs(DemoAccounts.NURSE);
        open("/import");

        assertThat(new String(bytes(download("Empty roster.csv with its header row")), StandardCharsets.UTF_8))
                .startsWith("worker_id,birth_date,sex,family_name,")
                .endsWith(",email,language\r\n");
        assertThat(new String(bytes(download("Empty decisions.csv with its header row")), StandardCharsets.UTF_8))
                .isEqualTo("worker_id,ear,test_date,kind,date,by,reason\r\n");
    }

    @Test
    void theManagerLandsOnTheSummaryAndTakesItAwayWithSmallGroupsHidden() throws IOException {
        signInAs(DemoAccounts.PLANT_MANAGER);
        assertThat(page().locator("h1")).hasText("Summary of 2026");
        assertThat(lead()).containsText("workers were tested at 2 sites");
        assertThat(lead().locator("a")).hasCount(0);
        assertThat(page().locator("main")).containsText("hidden: fewer than 5 workers");
        screenshots("summary");
        Accessibility.assertNothingGrave(page());

        long before = audited("SUMMARY_DOWNLOADED", DemoAccounts.PLANT_MANAGER);
        Download download = download("Download as a workbook");
        assertThat(download.suggestedFilename()).isEqualTo("summary-2026.xlsx");
        List<List<String>> rows = rows(bytes(download));

        assertThat(audited("SUMMARY_DOWNLOADED", DemoAccounts.PLANT_MANAGER)).isEqualTo(before + 1);
        assertThat(rows.stream().filter(row -> row.getFirst().equals("2026")).map(row -> row.subList(1, row.size())))
                .as("the table on the page")
                .isEqualTo(tableOnPage());
        List<List<String>> counted = rows.stream()
                .filter(row -> row.getFirst().matches("\\d{4}"))
                .map(row -> row.subList(3, row.size()))
                .toList();
        assertThat(counted).anyMatch(row -> row.contains("hidden"));
        assertThat(counted).allSatisfy(row -> {
            assertThat(row).hasSize(Measure.values().length);
            if (row.contains("hidden")) {
                assertThat(row).containsOnly("hidden");
            } else {
                assertThat(Integer.parseInt(row.getFirst().replace(",", ""))).isGreaterThanOrEqualTo(5);
            }
        });
        assertThat(rows.toString()).doesNotContain("FG-", "TR-");
        assertThat(rows).anyMatch(row -> row.getFirst().startsWith("hidden: fewer than 5 workers"));
    }

    @Test
    void theYearIsInTheAddress() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        open("/summary?year=2024");
        assertThat(page().locator("h1")).hasText("Summary of 2024");
        assertThat(lead().getByText("confirmed")).hasAttribute("href", "shifts?year=2024&outcome=confirmed");
        assertThat(page().locator("main")).not().containsText("hidden");
        screenshots("summary-officer");
        Accessibility.assertNothingGrave(page());

        page().locator(".tr-years").getByText("2022").click();
        assertThat(page().locator("h1")).hasText("Summary of 2022");
        assertThat(page()).hasURL(address() + "/summary?year=2022");
        open("/summary?year=never");
        assertThat(page().locator("h1")).hasText("Summary of 2026");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/import", "/workers", "/shifts", "/today", "/worker/FG-0004"})
    void theManagerIsRefusedPagesWithPeople(String path) {
        signInAs(DemoAccounts.PLANT_MANAGER);
        open(path);

        assertThat(page().locator("h1")).hasText("Not for your role");
        assertThat(page().locator("main")).not().containsText("FG-");
    }

    private Locator lead() {
        return page().locator("main .tr-lead");
    }

    private Locator message() {
        return page().locator("main .tr-message:visible");
    }

    private Locator row(String words) {
        return page().locator("main tbody tr").filter(new Locator.FilterOptions().setHasText(words));
    }

    private Locator place(String title) {
        return page().locator(".tr-drop").filter(new Locator.FilterOptions().setHas(page().getByText(title)));
    }

    private void press(String words) {
        page().locator("main vaadin-button").getByText(words).click();
    }

    private void choose(String place, String name, String text) {
        place(place)
                .locator("input[type=file]")
                .setInputFiles(new FilePayload(name, "text/csv", text.getBytes(StandardCharsets.UTF_8)));
    }

    private void handOver(String place, String name, String text) {
        choose(place, name, text);
        assertThat(place(place).locator("vaadin-upload-file[complete]")).hasCount(1);
    }

    private Download download(String words) {
        return page().waitForDownload(
                        () -> page().locator("main").getByText(words).click());
    }

    private static byte[] bytes(Download download) throws IOException {
        try (InputStream in = download.createReadStream()) {
            return in.readAllBytes();
        }
    }

    private List<List<String>> tableOnPage() {
        return page().locator("main table").first().locator("tbody tr").all().stream()
                .map(row -> row.locator("th, td").allTextContents())
                .toList();
    }

    private static List<List<String>> rows(byte[] workbook) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        var formatter = new DataFormatter();
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
            for (Row row : read.getSheetAt(0)) {
                List<String> cells = new ArrayList<>();
                row.forEach(cell -> cells.add(formatter.formatCellValue(cell)));
                rows.add(cells);
            }
        }
        return rows;
    }

    private long workers() {
        return jdbc.sql("select count(*) from worker").query(Long.class).single();
    }

    private long audited(String action, String actor) {
        return jdbc.sql("select count(*) from audit_event where action = ? and actor = ?")
                .params(action, actor)
                .query(Long.class)
                .single();
    }
}
