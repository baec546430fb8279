package org.thresholdregister.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.opencsv.CSVReader;
import com.opencsv.exceptions.CsvException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.reports.SummaryService;

/**
 * The summary counted three ways over the sample plant, line by line: by the screen's service from what is stored, by
 * the command from the files, and by SQL that knows nothing of how the other two count.
 */
@RegisterTest
class SummaryRecountTest {

    private static final Path SAMPLE = Path.of("sample-roster");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 24);

    private record Grouping(String site, String department) {}

    private record Counted(String what, String where) {}

    /** Who is counted, by site and department, by site, and all together. */
    private static final List<Grouping> GROUPINGS = List.of(
            new Grouping(
                    "case when w.site = '' then '(none)' else w.site end",
                    "case when w.department = '' then '(none)' else w.department end"),
            new Grouping("case when w.site = '' then '(none)' else w.site end", "'(all)'"),
            new Grouping("'(all)'", "'(all)'"));

    /** For each measure, the things counted, each once, and which determinations speak of them. */
    private static final Map<String, Counted> MEASURES = measures();

    @Autowired
    private TestImports files;

    @Autowired
    private SummaryService summaries;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private MovableClock clock;

    private static Map<String, Counted> measures() {
        String onThatDay = " (select 1 from determination o where o.worker_id = d.worker_id"
                + " and o.test_date = d.test_date and o.outcome in ";
        Map<String, Counted> measures = new LinkedHashMap<>();
        measures.put("workers_tested", new Counted("d.worker_id", "1 = 1"));
        measures.put(
                "annual_tests", new Counted("d.worker_id, d.test_date, d.purpose", "d.purpose in ('annual', 'exit')"));
        measures.put(
                "shifts_found",
                new Counted(
                        "d.worker_id, d.test_date",
                        "d.outcome <> 'retest' and (d.sts = 'yes' or d.outcome = 'confirmed')"));
        measures.put("shifts_confirmed", new Counted("d.worker_id, d.test_date", "d.outcome = 'confirmed'"));
        measures.put(
                "shifts_not_confirmed",
                new Counted(
                        "d.worker_id, d.test_date",
                        "d.outcome = 'not-confirmed' and not exists" + onThatDay
                                + "('confirmed', 'awaiting-retest'))"));
        measures.put(
                "shifts_awaiting_retest",
                new Counted(
                        "d.worker_id, d.test_date",
                        "d.outcome = 'awaiting-retest' and not exists" + onThatDay + "('confirmed'))"));
        measures.put("undecided_tests", new Counted("d.worker_id, d.test_date, d.purpose", "d.outcome = 'undecided'"));
        measures.put("recordable_cases", new Counted("d.worker_id, d.test_date", "d.recordable = 'yes'"));
        return measures;
    }

    @BeforeEach
    void theSampleIsStored() throws IOException {
        clock.moveTo(DAY);
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                Files.readString(SAMPLE.resolve("roster.csv")),
                Files.readString(SAMPLE.resolve("audiograms.csv")),
                Files.readString(SAMPLE.resolve("decisions.csv")));
    }

    @Test
    void theScreenTheCommandAndSqlCountTheSameOnEveryLine(@TempDir Path folder) throws IOException, CsvException {
        Map<String, Integer> bySql = bySql();

        assertThat(byService()).isEqualTo(bySql);
        assertThat(byCommand(folder)).isEqualTo(bySql);

        assertThat(bySql.size()).as("lines").isGreaterThan(800);
        assertThat(MEASURES.keySet())
                .as("measures that count something")
                .allSatisfy(measure -> assertThat(bySql.entrySet())
                        .anyMatch(line -> line.getKey().endsWith("," + measure) && line.getValue() > 0));
    }

    private Map<String, Integer> bySql() {
        Map<String, Integer> lines = new TreeMap<>();
        GROUPINGS.forEach(grouping -> MEASURES.forEach((measure, counted) -> {
            String sql = """
                    select counted.y, counted.s, counted.p, count(*) as n
                    from (select distinct extract(year from d.test_date) as y, %s as s, %s as p, %s
                          from determination d join worker w on w.id = d.worker_id where %s) counted
                    group by counted.y, counted.s, counted.p
                    """.formatted(grouping.site(), grouping.department(), counted.what(), counted.where());
            jdbc.query(sql, row -> {
                String group = row.getInt("y") + "," + row.getString("s") + "," + row.getString("p") + ",";
                // Who was tested comes first, and makes the lines that may stay at zero.
                if (measure.equals("workers_tested")) {
                    MEASURES.keySet().forEach(any -> lines.put(group + any, 0));
                }
                lines.put(group + measure, row.getInt("n"));
            });
        }));
        return lines;
    }

    private Map<String, Integer> byService() {
        Map<String, Integer> lines = new TreeMap<>();
        for (int year : summaries.years()) {
            for (SummaryRow row : summaries.report(year).rows()) {
                lines.put(
                        row.year() + "," + row.group().site() + ","
                                + row.group().department() + "," + row.measure().word(),
                        Integer.valueOf(row.count().word()));
            }
        }
        return lines;
    }

    private static Map<String, Integer> byCommand(Path folder) throws IOException, CsvException {
        StringWriter output = new StringWriter();
        int exitCode = RegisterCommand.commandLine()
                .setOut(new PrintWriter(output, true))
                .setErr(new PrintWriter(output, true))
                .execute(
                        "evaluate",
                        "--roster=" + SAMPLE.resolve("roster.csv"),
                        "--audiograms=" + SAMPLE.resolve("audiograms.csv"),
                        "--decisions=" + SAMPLE.resolve("decisions.csv"),
                        "--as-of=" + DAY,
                        "--out=" + folder);
        assertThat(exitCode).as("%s", output).isZero();
        Map<String, Integer> lines = new TreeMap<>();
        try (CSVReader reader = new CSVReader(Files.newBufferedReader(folder.resolve("summary.csv")))) {
            assertThat(reader.readNext()).containsExactly("year", "site", "department", "measure", "value");
            for (String[] row : reader.readAll()) {
                lines.put(row[0] + "," + row[1] + "," + row[2] + "," + row[3], Integer.valueOf(row[4]));
            }
        }
        return lines;
    }
}
