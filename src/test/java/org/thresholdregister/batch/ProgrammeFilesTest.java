package org.thresholdregister.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.opencsv.CSVReaderHeaderAware;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code evaluate --programme} on the sample roster. */
class ProgrammeFilesTest {

    private static final Path SAMPLE = Path.of("sample-roster");

    @TempDir
    Path folder;

    @BeforeEach
    void evaluateTheSample() {
        var errors = new StringWriter();
        int exit = RegisterCommand.commandLine()
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(errors, true))
                .execute(
                        "evaluate",
                        "--as-of",
                        "2026-11-24",
                        "--roster",
                        SAMPLE.resolve("roster.csv").toString(),
                        "--audiograms",
                        SAMPLE.resolve("audiograms.csv").toString(),
                        "--out",
                        folder.toString(),
                        "--programme");
        assertThat(exit).as(errors.toString()).isZero();
    }

    private List<Map<String, String>> rows(String file) throws Exception {
        List<Map<String, String>> rows = new ArrayList<>();
        try (var reader = new CSVReaderHeaderAware(Files.newBufferedReader(folder.resolve(file)))) {
            for (Map<String, String> row = reader.readMap(); row != null; row = reader.readMap()) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** In November 2023 A-1 read about 10 dB too high at 3000, 4000 and 6000 Hz, and never was anything else wrong. */
    @Test
    void theMonthOfTheBadCalibrationIsFoundAndNothingElse() throws Exception {
        List<Map<String, String>> tests = rows(ProgrammeFiles.WATCH);
        assertThat(tests).extracting(test -> test.get("unit")).containsOnly("A-1 with P-11");
        assertThat(tests)
                .extracting(test -> test.get("signalled_on"))
                .containsOnly(tests.getFirst().get("signalled_on"))
                .first()
                .asString()
                .startsWith("2023-11");
        assertThat(tests)
                .extracting(test -> test.get("until"))
                .first()
                .asString()
                .startsWith("2023-1");
        assertThat(tests)
                .extracting(test -> test.get("signs"))
                .first()
                .asString()
                .contains("both 3000 4000 6000 Hz +");
        assertThat(tests.stream()
                        .filter(test -> test.get("test_date").startsWith("2023-11"))
                        .count())
                .as("tests on A-1 in that month")
                .isEqualTo(testsOnTheUnitIn("2023-11"));
    }

    /** Those that have an earlier test to be held against. */
    private static long testsOnTheUnitIn(String month) throws IOException {
        List<String[]> all = cells();
        return all.stream()
                .filter(row -> row[1].startsWith(month) && row[20].equals("A-1") && row[21].equals("P-11"))
                .filter(row ->
                        all.stream().anyMatch(other -> other[0].equals(row[0]) && other[1].compareTo(row[1]) < 0))
                .count();
    }

    private static List<String[]> cells() throws IOException {
        try (Stream<String> lines = Files.lines(SAMPLE.resolve("audiograms.csv"))) {
            return lines.skip(1).map(line -> line.split(",", -1)).toList();
        }
    }

    /** The shares counted anew in SQL, which shares no code with the program. */
    @Test
    void theSharesOfEverybodyAreThoseThatSqlCounts() throws Exception {
        Map<String, String> written = rows(ProgrammeFiles.PROGRAMME).stream()
                .filter(row -> row.get("grouped_by").equals("everybody")
                        && row.get("measure").startsWith("worse"))
                .collect(Collectors.toMap(
                        row -> row.get("year") + " " + row.get("measure"),
                        row -> row.get("count") + "/" + row.get("of"),
                        (a, b) -> a,
                        TreeMap::new));
        assertThat(written).hasSizeGreaterThan(15).isEqualTo(bySql());
    }

    private static Map<String, String> bySql() throws Exception {
        List<String> changes = new ArrayList<>();
        for (String ear : List.of("left", "right")) {
            for (int hertz : new int[] {500, 1000, 2000, 3000, 4000, 6000}) {
                changes.add(
                        "try_cast(%1$s_%2$d as int) - lag(try_cast(%1$s_%2$d as int)) over w".formatted(ear, hertz));
            }
        }
        String sql = """
                with t as (
                  select worker_id, test_date, [%s] as d
                  from read_csv('%s', all_varchar = true)
                  where purpose in ('baseline', 'annual', 'exit')
                  window w as (partition by worker_id
                               order by test_date, list_position(['baseline', 'annual', 'exit'], purpose))),
                p as (
                  select *, row_number() over (partition by worker_id, substr(test_date, 1, 4)
                                               order by test_date desc) as latest,
                         row_number() over (partition by worker_id order by test_date) as nth
                  from t)
                select substr(test_date, 1, 4), count(*),
                       count(*) filter (list_max(d) >= 15),
                       count(*) filter (list_max(d) >= 15 or list_min(d) <= -15)
                from p
                where latest = 1 and nth > 1 and len(list_filter(d, lambda x : x is not null)) = 12
                group by 1
                """.formatted(String.join(", ", changes), SAMPLE.resolve("audiograms.csv"));
        Map<String, String> counted = new TreeMap<>();
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(sql)) {
            while (result.next()) {
                String year = result.getString(1);
                counted.put(year + " worse_than_before", result.getInt(3) + "/" + result.getInt(2));
                counted.put(year + " worse_or_better_than_before", result.getInt(4) + "/" + result.getInt(2));
            }
        }
        return counted;
    }

    @Test
    void confirmedShiftsAreThoseOfTheDeterminations() throws Exception {
        Map<String, Long> persons = rows("determinations.csv").stream()
                .filter(row -> row.get("outcome").equals("confirmed"))
                .map(row -> row.get("test_date").substring(0, 4) + " " + row.get("worker_id"))
                .distinct()
                .collect(Collectors.groupingBy(key -> key.substring(0, 4), TreeMap::new, Collectors.counting()));
        Map<String, Long> written = rows(ProgrammeFiles.PROGRAMME).stream()
                .filter(row -> row.get("grouped_by").equals("everybody")
                        && row.get("measure").equals("confirmed_shift")
                        && !row.get("count").equals("0"))
                .collect(Collectors.toMap(
                        row -> row.get("year"), row -> Long.valueOf(row.get("count")), Long::sum, TreeMap::new));
        assertThat(written).isNotEmpty().isEqualTo(persons);
    }

    @Test
    void aGroupOfFewIsNotRatedAndTheRestrictedOnesSayWhoIsLeftOut() throws Exception {
        List<Map<String, String>> rows = rows(ProgrammeFiles.PROGRAMME);
        assertThat(rows)
                .filteredOn(row -> row.get("measure").startsWith("worse"))
                .allSatisfy(row -> assertThat(row.get("rating").equals("too few to rate"))
                        .isEqualTo(Integer.parseInt(row.get("of")) < 30));
        assertThat(rows)
                .filteredOn(row -> row.get("measure").equals("ever_shifted"))
                .extracting(row -> row.get("group"))
                .containsExactly("counted", "left out");
    }

    @Test
    void theSameFilesGiveTheSameBytes() throws Exception {
        byte[] first = Files.readAllBytes(folder.resolve(ProgrammeFiles.PROGRAMME));
        byte[] watched = Files.readAllBytes(folder.resolve(ProgrammeFiles.WATCH));
        evaluateTheSample();
        assertThat(Files.readAllBytes(folder.resolve(ProgrammeFiles.PROGRAMME))).isEqualTo(first);
        assertThat(Files.readAllBytes(folder.resolve(ProgrammeFiles.WATCH))).isEqualTo(watched);
    }
}
