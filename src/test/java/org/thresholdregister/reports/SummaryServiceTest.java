package org.thresholdregister.reports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.summary.Count;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Eight workers at the mill (2 at the saws, 6 at the press), seven at the yard, tested in 2025; one again in 2026. */
@RegisterTest
class SummaryServiceTest {

    @Autowired
    private SummaryService summaries;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void plant() {
        StringBuilder roster = new StringBuilder("worker_id,birth_date,sex,family_name,site,department\n");
        StringBuilder tests = new StringBuilder(AUDIOGRAM_COLUMNS);
        for (int i = 0; i < 15; i++) {
            String place = i < 2 ? "Mill,Saws" : i < 8 ? "Mill,Press" : "Yard,Cranes";
            roster.append("W-" + i + ",1980-05-01,F,Testperson,").append(place).append('\n');
            tests.append(test("W-" + i, "2025-02-01", "baseline", 10, 10));
        }
        tests.append(test("W-0", "2026-02-01", "annual", 40, 10));
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(roster.toString(), tests.toString(), "");
    }

    private static Map<String, String> tested(YearReport report) {
        Map<String, String> tested = new LinkedHashMap<>();
        for (SummaryRow row : report.rows()) {
            if (row.measure() == Measure.WORKERS_TESTED) {
                tested.put(
                        row.group().site() + " " + row.group().department(),
                        row.count().word());
            }
        }
        return tested;
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"NURSE", "SAFETY_OFFICER"})
    void thoseWhoSeePeopleSeeEveryCount(Role role) {
        SignIn.as(role);

        assertThat(tested(summaries.report(2025)))
                .isEqualTo(Map.of(
                        "(all) (all)", "15",
                        "Mill (all)", "8",
                        "Mill Press", "6",
                        "Mill Saws", "2",
                        "Yard (all)", "7",
                        "Yard Cranes", "7"));
        assertThat(summaries.report(2026).rows())
                .contains(new SummaryRow(2026, new Group("Mill", "Saws"), Measure.SHIFTS_FOUND, Count.of(1)));
    }

    @Test
    void aPlantManagerIsNotToldOfSmallGroups() {
        SignIn.as(Role.PLANT_MANAGER);

        assertThat(tested(summaries.report(2025)))
                .isEqualTo(Map.of(
                        "(all) (all)", "15",
                        "Mill (all)", "8",
                        "Mill Press", "hidden",
                        "Mill Saws", "hidden",
                        "Yard (all)", "7",
                        "Yard Cranes", "7"));
        assertThat(summaries.report(2026).rows())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.count()).isEqualTo(Count.hidden()));
        assertThat(summaries.report(2027).yearsBefore())
                .extracting(
                        SummaryRow::year, SummaryRow::group, row -> row.count().word())
                .contains(tuple(2026, Group.EVERYBODY, "hidden"), tuple(2025, Group.EVERYBODY, "15"));
    }

    @Test
    void totalsAreOfTheSitesInScope() {
        SignIn.as(Role.NURSE, "Yard");

        YearReport report = summaries.report(2025);

        assertThat(tested(report)).isEqualTo(Map.of("(all) (all)", "7", "Yard (all)", "7", "Yard Cranes", "7"));
        assertThat(report.onlySites()).isEqualTo(Optional.of(Set.of("Yard")));
        assertThat(summaries.years()).containsExactly(2025);
    }

    @Test
    void yearsComeLatestFirstAndTheYearsBeforeWithTheirTotals() {
        SignIn.as(Role.NURSE);

        assertThat(summaries.years()).containsExactly(2026, 2025);
        assertThat(summaries.report(2026).yearsBefore())
                .hasSize(Measure.values().length)
                .contains(new SummaryRow(2025, Group.EVERYBODY, Measure.WORKERS_TESTED, Count.of(15)));
        assertThat(summaries.report(2030).yearsBefore())
                .extracting(SummaryRow::year)
                .containsOnly(2026);
        assertThat(summaries.report(2030).rows()).isEmpty();
    }

    @Test
    void theWorkbookTellsWhatTheScreenTellsAndNothingOfAnyone() throws IOException {
        SignIn.as(Role.PLANT_MANAGER);

        List<String> cells = cells(summaries.workbook(2025));

        assertThat(cells)
                .contains("In 2025, 15 workers were tested at 2 sites; no shift was found; no case is recordable.")
                .contains("Saws", "Press", "hidden", "15", "8", "7")
                .doesNotContain("2", "6")
                .anyMatch(cell -> cell.startsWith("hidden: fewer than 5 workers"))
                .noneMatch(cell -> cell.contains("W-") || cell.contains("Testperson") || cell.contains("1980"));
    }

    @Test
    void theWorkbookSaysOfWhichSitesItsTotalsAre() throws IOException {
        SignIn.as(Role.PLANT_MANAGER, "Yard");

        assertThat(cells(summaries.workbook(2025)))
                .contains("The totals are of Yard, the only site in view.")
                .doesNotContain("Mill");
    }

    @Test
    void theSameStateGivesTheSameBytes() {
        SignIn.as(Role.PLANT_MANAGER);

        assertThat(summaries.workbook(2025)).isEqualTo(summaries.workbook(2025));
    }

    @Test
    void takingTheWorkbookOutIsOnTheAuditTrail() {
        SignIn.as(Role.PLANT_MANAGER);
        summaries.report(2025);
        summaries.workbook(2025);

        assertThat(jdbc.queryForList(
                        "select actor, subject_type, subject_id from audit_event where action = 'SUMMARY_DOWNLOADED'"))
                .containsExactly(
                        Map.of("actor", "test-plant_manager", "subject_type", "summary", "subject_id", "2025"));
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"PROFESSIONAL_SUPERVISOR", "ADMINISTRATOR"})
    void otherRolesAreRefused(Role role) {
        SignIn.as(role);

        assertThatThrownBy(() -> summaries.years()).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> summaries.report(2025)).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> summaries.workbook(2025)).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void nobodyIsToldAnythingWithoutASignIn() {
        SignIn.out();

        assertThatThrownBy(() -> summaries.report(2025)).isInstanceOf(AuthenticationCredentialsNotFoundException.class);
    }

    private static List<String> cells(byte[] workbook) throws IOException {
        List<String> cells = new ArrayList<>();
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
            DataFormatter formatter = new DataFormatter();
            read.getSheetAt(0).forEach(row -> row.forEach(cell -> cells.add(formatter.formatCellValue(cell))));
        }
        return cells;
    }
}
