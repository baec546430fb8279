package org.thresholdregister.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Holds the committed sample to its generator, to the file contract and to what its README promises. Apart from the
 * first test, everything is read from the committed files.
 */
class SampleRosterTest {

    private static final LocalDate FIRST_DAY = LocalDate.of(2016, 11, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2026, 11, 20);
    private static final Pattern THRESHOLD = Pattern.compile("-?\\d{1,3}|>\\d{2,3}|NR|DNT|CNT|");

    private final List<Row> roster = SampleFiles.ROSTER;
    private final List<Row> audiograms = SampleFiles.AUDIOGRAMS;
    private final List<Row> decisions = SampleFiles.DECISIONS;
    private final Map<String, WorkerFile> workers = SampleFiles.WORKERS;

    @Test
    void theCommittedFilesAreWhatTheGeneratorWrites() throws IOException {
        StringWriter rosterCsv = new StringWriter();
        StringWriter audiogramsCsv = new StringWriter();
        StringWriter decisionsCsv = new StringWriter();
        new SampleRoster(Workforce.SAMPLE).write(rosterCsv, audiogramsCsv, decisionsCsv);

        assertSameBytes("roster.csv", rosterCsv.toString());
        assertSameBytes("audiograms.csv", audiogramsCsv.toString());
        assertSameBytes("decisions.csv", decisionsCsv.toString());
        assertSameBytes("README.md", SampleReadme.text());
    }

    @Test
    void thePlantHasTheSizeItClaims() {
        assertThat(roster).hasSize(400);
        assertThat(valuesOf(roster, "site")).containsExactlyInAnyOrder("Fernhollow Works", "Quarry Road", "");
        assertThat(valuesOf(roster, "department")).hasSize(7).contains("").contains("Hot End", "Packing Hall");
        assertThat(SampleFiles.ROSTER.stream()
                        .filter(worker -> !worker.isBlank("noise_group"))
                        .collect(Collectors.groupingBy(
                                worker -> worker.get("noise_group"),
                                Collectors.mapping(worker -> worker.get("twa_dba"), Collectors.toSet()))))
                .hasSize(7)
                .allSatisfy((_, levels) -> assertThat(levels).hasSize(1));
        assertThat(valuesOf(roster, "twa_dba"))
                .as("each group has its own noise")
                .hasSize(8);

        List<LocalDate> days =
                audiograms.stream().map(test -> test.date("test_date")).sorted().toList();
        assertThat(days.getFirst()).isBetween(FIRST_DAY, FIRST_DAY.plusMonths(1));
        assertThat(days.getLast()).isBetween(LAST_DAY.minusDays(3), LAST_DAY);
        for (int year = 2017; year <= 2026; year++) {
            String inYear = year + "-";
            assertThat(audiograms.stream()
                            .filter(test -> test.get("test_date").startsWith(inYear))
                            .count())
                    .as("tests in " + year)
                    .isGreaterThan(200);
        }
    }

    @Test
    void everyCellOfTheRosterIsAsTheContractSays() {
        Set<String> ids = new HashSet<>();
        assertThat(roster).allSatisfy(worker -> {
            String id = worker.get("worker_id");
            assertThat(id).matches("FG-\\d{4}");
            assertThat(ids.add(id)).as(id + " stands once").isTrue();
            assertThat(worker.get("sex")).matches("[FM]|");
            assertThat(worker.get("language")).matches("en|es|");
            assertThat(worker.get("twa_dba")).matches("\\d{2}\\.\\d|");
            assertThat(worker.get("email")).matches("[a-z]+\\.[a-z]+\\d+@fernhollow\\.example|");
            assertThat(worker.get("family_name")).isNotBlank();
            assertThat(worker.get("given_name")).isNotBlank();
            LocalDate hired = worker.date("hire_date");
            assertThat(hired).isBeforeOrEqualTo(LAST_DAY);
            assertThat(worker.date("enrolled_from")).isAfterOrEqualTo(hired);
            if (!worker.isBlank("end_date")) {
                assertThat(worker.date("end_date")).isAfter(hired);
            }
            if (!worker.isBlank("birth_date")) {
                assertThat(worker.date("birth_date")).isBetween(hired.minusYears(63), hired.minusYears(18));
            }
        });
        assertThat(roster).isSortedAccordingTo(Comparator.comparing(worker -> worker.get("worker_id")));
        assertThat(SampleFiles.ROSTER.stream()
                        .flatMap(worker -> worker.values().stream())
                        .anyMatch(cell -> cell.chars().anyMatch(character -> character > 127)))
                .as("some names have accents")
                .isTrue();
    }

    @Test
    void everyCellOfTheAudiogramsIsAsTheContractSays() {
        Set<String> tests = new HashSet<>();
        assertThat(audiograms).allSatisfy(test -> {
            WorkerFile worker = SampleFiles.worker(test.get("worker_id"));
            assertThat(test.get("purpose")).isIn("baseline", "annual", "retest", "exit", "other");
            assertThat(tests.add(test.get("worker_id") + test.get("test_date") + test.get("purpose")))
                    .as("no test stands twice")
                    .isTrue();
            assertThat(test.date("test_date")).isBetween(worker.roster().date("enrolled_from"), LAST_DAY);
            if (!worker.roster().isBlank("end_date")) {
                assertThat(test.date("test_date"))
                        .isBeforeOrEqualTo(worker.roster().date("end_date"));
            }
            for (String column : thresholdColumns()) {
                assertThat(test.get(column)).as(column).matches(THRESHOLD);
                if (test.isNumber(column)) {
                    int level = test.number(column);
                    assertThat(level).isBetween(-10, 95);
                    assertThat(level % 5).as("steps of 5 dB").isZero();
                }
            }
            assertThat(test.get("hours_since_noise")).matches("\\d+(\\.\\d)?");
            assertThat(test.get("protectors_worn")).matches("yes|no");
            assertThat(test.get("instrument")).isIn("A-1", "A-2", "A-3");
            assertThat(test.get("transducer")).isNotBlank();
            assertThat(test.get("tester")).isNotBlank();
        });
        assertThat(audiograms)
                .isSortedAccordingTo(Comparator.<Row, String>comparing(test -> test.get("worker_id"))
                        .thenComparing(test -> test.get("test_date"))
                        .thenComparing(test -> List.of("baseline", "annual", "exit", "retest", "other")
                                .indexOf(test.get("purpose"))));
        assertThat(valuesOf(audiograms, "transducer")).hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void everyDecisionNamesATestOfItsWorker() {
        assertThat(decisions).isNotEmpty().allSatisfy(decision -> {
            WorkerFile worker = SampleFiles.worker(decision.get("worker_id"));
            assertThat(worker.tests()).anyMatch(test -> test.has("test_date", decision.get("test_date")));
            assertThat(decision.get("ear")).isIn("left", "right", "both");
            assertThat(decision.get("kind"))
                    .isIn(
                            "not-work-related",
                            "work-related",
                            "recorded",
                            "lined-out",
                            "notice-given",
                            "baseline",
                            "invalid-test");
            assertThat(decision.date("date")).isBetween(decision.date("test_date"), LAST_DAY);
            assertThat(decision.get("by")).isNotBlank();
        });
    }

    /** Good test-retest agreement has a standard deviation of 3 to 5 dB for one frequency; a little more at 6000 Hz. */
    @Test
    void testsAYearApartVaryAsInARealBooth() {
        for (String frequency : List.of("500", "1000", "2000", "3000", "4000")) {
            assertThat(standardDeviationOfATest(frequency))
                    .as(frequency + " Hz")
                    .isCloseTo(4.0, within(1.0));
        }
        assertThat(standardDeviationOfATest("6000")).isCloseTo(5.0, within(1.0));
    }

    @Test
    void hearingShowsANoiseNotchThatGrows() {
        assertThat(meanLevel("4000", 2026)).isGreaterThan(meanLevel("4000", 2018) + 2);
        for (int year : new int[] {2018, 2026}) {
            assertThat(meanLevel("4000", year)).isGreaterThan(meanLevel("2000", year) + 3);
            assertThat(meanLevel("6000", year)).isGreaterThan(meanLevel("8000", year) + 1);
        }
    }

    @Test
    void theFaultyMonthReadsTooHigh() {
        double faulty = meanChange("A-1", "2023-11", "4000");
        assertThat(faulty).isGreaterThan(7);
        assertThat(meanChange("A-1", "2023-11", "1000")).isLessThan(3);
        assertThat(meanChange("A-1", "2023-10", "4000")).isLessThan(4);
        assertThat(meanChange("A-2", "2023-11", "4000")).isLessThan(4);
    }

    @Test
    void noTestsWereMadeWhileTheClinicWasClosed() {
        assertThat(valuesOf(audiograms, "test_date"))
                .noneMatch(day -> "2020-03-23".compareTo(day) <= 0 && day.compareTo("2020-06-22") < 0);
    }

    @Test
    void aLargeWorkforceIsWrittenWorkerByWorkerWithAboutElevenTestsEach() throws IOException {
        StringWriter rosterCsv = new StringWriter();
        StringWriter audiogramsCsv = new StringWriter();
        new SampleRoster(new Workforce(200, false)).write(rosterCsv, audiogramsCsv, new StringWriter());
        List<String> tests = audiogramsCsv.toString().lines().skip(1).toList();

        assertThat(rosterCsv.toString().lines()).hasSize(201);
        assertThat(tests.stream()
                        .filter(line -> line.contains(",baseline,") || line.contains(",annual,"))
                        .collect(Collectors.groupingBy(line -> line.substring(0, 7), Collectors.counting())))
                .hasSize(200)
                .allSatisfy((_, count) -> assertThat(count).isBetween(10L, 12L));
        assertThat(new Workforce(100_000, false).worker(7).id).isEqualTo("FG-000007");
    }

    private double standardDeviationOfATest(String frequency) {
        List<Integer> differences = new ArrayList<>();
        for (WorkerFile worker : workers.values()) {
            List<Row> annual = worker.tests().stream()
                    .filter(test -> test.has("purpose", "annual"))
                    .toList();
            for (int i = 1; i < annual.size(); i++) {
                for (String ear : WorkerFile.EARS) {
                    change(annual.get(i - 1), annual.get(i), ear + "_" + frequency)
                            .ifPresent(differences::add);
                }
            }
        }
        double mean = differences.stream().mapToInt(Integer::intValue).average().orElseThrow();
        double variance = differences.stream()
                .mapToDouble(difference -> (difference - mean) * (difference - mean))
                .average()
                .orElseThrow();
        return Math.sqrt(variance / 2);
    }

    /** Over those who were tested in both 2018 and 2026, so that the people are the same. */
    private double meanLevel(String frequency, int year) {
        return workers.values().stream()
                .filter(worker -> worker.in("2018") > 0 && worker.in("2026") > 0)
                .flatMap(worker -> worker.testsIn(Integer.toString(year)).stream())
                .flatMap(test -> WorkerFile.EARS.stream().map(ear -> test.get(ear + "_" + frequency)))
                .filter(cell -> cell.matches("-?\\d+"))
                .mapToInt(Integer::parseInt)
                .average()
                .orElseThrow();
    }

    /** From the year before to the annual tests of one month on one instrument. */
    private double meanChange(String instrument, String month, String frequency) {
        List<Integer> changes = new ArrayList<>();
        for (WorkerFile worker : workers.values()) {
            for (int i = 1; i < worker.tests().size(); i++) {
                if (worker.purpose(i).equals("annual")
                        && worker.cell(i, "instrument").equals(instrument)
                        && worker.cell(i, "test_date").startsWith(month)) {
                    for (String ear : WorkerFile.EARS) {
                        change(worker.tests().get(i - 1), worker.tests().get(i), ear + "_" + frequency)
                                .ifPresent(changes::add);
                    }
                }
            }
        }
        assertThat(changes).hasSizeGreaterThan(8);
        return changes.stream().mapToInt(Integer::intValue).average().orElseThrow();
    }

    private static OptionalInt change(Row before, Row now, String column) {
        return before.isNumber(column) && now.isNumber(column)
                ? OptionalInt.of(now.number(column) - before.number(column))
                : OptionalInt.empty();
    }

    private static List<String> thresholdColumns() {
        return WorkerFile.EARS.stream()
                .flatMap(ear -> WorkerFile.FREQUENCIES.stream().map(frequency -> ear + "_" + frequency))
                .toList();
    }

    private static Set<String> valuesOf(List<Row> rows, String column) {
        return rows.stream().map(row -> row.get(column)).collect(Collectors.toSet());
    }

    private static void assertSameBytes(String file, String expected) throws IOException {
        assertThat(Files.readAllBytes(SampleFiles.DIRECTORY.resolve(file)))
                .as("sample-roster/" + file + " is what SampleRoster writes; run its main method after a change")
                .isEqualTo(expected.getBytes(StandardCharsets.UTF_8));
    }
}
