package org.thresholdregister.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.opencsv.CSVReaderHeaderAware;
import com.opencsv.exceptions.CsvException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/** The command under other rule sets than the default, as a user runs it. All numbers are worked out by hand. */
class EvaluateRulesTest {

    private static final String FREQUENCIES = "500,1000,2000,3000,4000,6000,8000";

    @TempDir
    Path folder;

    private final StringWriter output = new StringWriter();
    private final StringWriter errors = new StringWriter();
    private Path out;

    @BeforeEach
    void writeFiles() throws IOException {
        out = folder.resolve("out");
        Files.writeString(folder.resolve("roster.csv"), """
                worker_id,birth_date,sex,site
                W1,1980-01-01,M,Quarry
                W2,1988-06-01,M,Quarry
                """);
        Files.writeString(
                folder.resolve("audiograms.csv"),
                Stream.of(
                                header(),
                                // 15 dB at 2000 Hz, and again on the retest: a mean of 5 dB.
                                row("W1", "2024-03-04", "baseline", "10 10 10 10 10 10 10", "10 10 10 10 10 10 10"),
                                row("W1", "2026-03-02", "annual", "10 10 10 10 10 10 10", "10 10 25 10 10 10 10"),
                                row("W1", "2026-03-20", "retest", "10 10 10 10 10 10 10", "10 10 25 10 10 10 10"),
                                // Four years without a test, then a loss, then 30 dB more from 3000 to 6000 Hz.
                                row("W2", "2022-03-07", "baseline", "10 10 10 10 10 10 10", "10 10 10 10 10 10 10"),
                                row("W2", "2026-03-02", "annual", "10 10 10 10 10 10 10", "10 40 40 40 40 40 10"),
                                row("W2", "2026-06-01", "annual", "10 10 10 10 10 10 10", "10 40 40 50 50 50 10"))
                        .collect(Collectors.joining("\n", "", "\n")));
    }

    private static String header() {
        return "worker_id,test_date,purpose,"
                + Stream.of("left_", "right_")
                        .flatMap(ear -> Stream.of(FREQUENCIES.split(",")).map(hertz -> ear + hertz))
                        .collect(Collectors.joining(","));
    }

    private static String row(String worker, String date, String purpose, String left, String right) {
        return String.join(",", worker, date, purpose, left.replace(' ', ','), right.replace(' ', ','));
    }

    private int evaluate(String... options) {
        List<String> arguments = new ArrayList<>(List.of(
                "evaluate",
                "--roster",
                folder.resolve("roster.csv").toString(),
                "--audiograms",
                folder.resolve("audiograms.csv").toString(),
                "--out",
                out.toString(),
                "--as-of",
                "2026-06-30"));
        arguments.addAll(List.of(options));
        return RegisterCommand.commandLine()
                .setOut(new PrintWriter(output, true))
                .setErr(new PrintWriter(errors, true))
                .execute(arguments.toArray(String[]::new));
    }

    private List<Map<String, String>> rows(String name) throws IOException, CsvException {
        List<Map<String, String>> rows = new ArrayList<>();
        try (Reader file = Files.newBufferedReader(out.resolve(name));
                CSVReaderHeaderAware reader = new CSVReaderHeaderAware(file)) {
            for (Map<String, String> row = reader.readMap(); row != null; row = reader.readMap()) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** The cells of one determination in the order of the file, from {@code rule_set} on. */
    private String determination(String worker, String date, String ear) throws IOException {
        return Files.readAllLines(out.resolve("determinations.csv")).stream()
                .filter(line -> line.startsWith(worker + "," + date + ",") && line.contains("," + ear + ","))
                .map(line -> line.substring(line.indexOf("," + ear + ",") + ear.length() + 2))
                .collect(Collectors.joining("\n"));
    }

    /** The rule's answers about a test, as {@code left no, right yes}. */
    private String answers(String worker, String date, String rule) throws IOException, CsvException {
        return rows("findings.csv").stream()
                .filter(row -> row.get("worker_id").equals(worker)
                        && row.get("test_date").equals(date)
                        && row.get("rule").equals(rule))
                .map(row -> row.get("ear") + " " + row.get("answer"))
                .collect(Collectors.joining(", "));
    }

    private List<String> followUps(String worker) throws IOException, CsvException {
        return rows("followups.csv").stream()
                .filter(row -> row.get("worker_id").equals(worker))
                .map(row -> row.get("kind") + " " + row.get("due_date") + " " + row.get("state"))
                .toList();
    }

    /** NIOSH Publication 98-126: 15 dB at one frequency, twice; no allowance for age, no log. */
    @Test
    void nioshEstablishesAShiftByTwoTests() throws Exception {
        assertThat(evaluate("--rules", "niosh")).as(errors.toString()).isZero();
        assertThat(determination("W1", "2026-03-02", "right"))
                .isEqualTo("niosh,2024-03-04,,,15,0,0,0,0,0,5.00,yes,15.00,confirmed,,,2026-04-19,");
        assertThat(determination("W1", "2026-03-02", "left"))
                .isEqualTo("niosh,2024-03-04,,,0,0,0,0,0,0,0.00,no,10.00,no-shift,,,,");
        assertThat(answers("W1", "2026-03-02", "fifteen_twice_500_6000")).isEqualTo("left no, right no");
        assertThat(answers("W1", "2026-03-20", "fifteen_twice_500_6000")).isEqualTo("left no, right yes");
        assertThat(rows("determinations.csv"))
                .extracting(row -> row.get("recordable"))
                .containsOnly("");
        assertThat(followUps("W1")).contains("notice 2026-04-19 overdue", "annual-test 2027-03-20 open");
        assertThat(rows("findings.csv"))
                .filteredOn(row -> row.get("test_date").equals("2026-03-20")
                        && row.get("ear").equals("right"))
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("purpose", "retest")
                        .containsEntry("rule_set", "niosh")
                        .containsEntry("unverified", "")
                        .containsEntry("source", "Royster 1992, for NIOSH (abstract)")
                        .hasEntrySatisfying(
                                "working", working -> assertThat(working).contains("the largest 15 dB", ": yes.")));
    }

    /** A mean of 5 dB is no shift for OSHA, and it reads nothing beside. */
    @Test
    void oshaFindsNothingInTheSameRecordAndWritesNoFindings() throws Exception {
        assertThat(evaluate("--rules", "niosh")).isZero();
        assertThat(out.resolve("findings.csv")).exists();
        assertThat(evaluate()).isZero();
        assertThat(determination("W1", "2026-03-02", "right"))
                .isEqualTo("osha,2024-03-04,44,46,15,0,0,1,1,2,3.67,no,15.00,no-shift,no,,,");
        assertThat(out.resolve("findings.csv")).as("of the earlier run").doesNotExist();
    }

    /**
     * 30 CFR Part 62: for the years from 33 (5, 7, 10 dB) to 37 (6, 9, 12 dB) Table 62-3 takes 1, 2 and 2 dB, so that
     * 30 dB at each frequency are a mean of 28.33 dB, reportable from 25 dB on; every result is told within ten working days.
     */
    @Test
    void mshaReportsALargeShiftAndTellsEveryResult() throws Exception {
        assertThat(evaluate("--rules", "msha")).isZero();
        assertThat(determination("W2", "2026-03-02", "right"))
                .isEqualTo("msha,2022-03-07,33,37,30,30,30,1,2,2,28.33,yes,40.00,confirmed,yes,,2026-03-16,2026-03-16");
        assertThat(determination("W2", "2026-06-01", "right"))
                .endsWith(",awaiting-retest,awaiting-retest,2026-07-01,2026-06-15,");
        assertThat(determination("W2", "2026-03-02", "left")).endsWith(",no-shift,no,,2026-03-16,");
        assertThat(followUps("W2")).contains("notice 2026-03-16 overdue", "record 2026-03-16 overdue");
        assertThat(out.resolve("findings.csv")).doesNotExist();
    }

    @Test
    void holidaysMoveWhatIsCountedInWorkingDays() throws Exception {
        Path holidays = Files.writeString(folder.resolve("holidays.txt"), "\uFEFF2026-03-06\n\n 2026-03-09 \n");
        assertThat(evaluate("--rules", "msha", "--holidays", holidays.toString()))
                .as(errors.toString())
                .isZero();
        assertThat(determination("W2", "2026-03-02", "left")).endsWith(",no-shift,no,,2026-03-18,");
    }

    /**
     * HSE L108: without a test of the last three years there is nothing to compare with. A man of 37 is in category 2
     * from a sum of 100 dB on and in 3 from 154 dB on; 30 dB more at 3000, 4000 and 6000 Hz are category 4.
     */
    @Test
    void ukGuidancePutsPeopleIntoCategories() throws Exception {
        assertThat(evaluate("--rules", "uk-l108")).isZero();
        assertThat(determination("W2", "2022-03-07", "right")).isEqualTo("uk-l108,,,,,,,,,,,,10.00,baseline,,,,");
        assertThat(determination("W2", "2026-03-02", "right")).isEqualTo("uk-l108,,,,,,,,,,,,40.00,baseline,,,,");
        assertThat(determination("W2", "2026-06-01", "right"))
                .isEqualTo("uk-l108,2026-03-02,,,0,10,10,0,0,0,6.67,yes,46.67,confirmed,,,,");
        assertThat(answers("W2", "2026-03-02", "uk_l108_sum")).isEqualTo("left 1, right 3");
        assertThat(answers("W2", "2026-03-02", "uk_l108_rapid")).isEqualTo("left no, right no");
        assertThat(answers("W2", "2026-06-01", "uk_l108_rapid")).isEqualTo("left no, right yes");
        assertThat(answers("W2", "2026-03-02", "uk_l108_category")).isEqualTo("both 3");
        assertThat(answers("W2", "2026-06-01", "uk_l108_category")).isEqualTo("both 4");
        assertThat(answers("W2", "2026-06-01", "uk_l108_unilateral")).isEqualTo("both yes");
        assertThat(answers("W2", "2022-03-07", "uk_l108_unilateral")).isEqualTo("both no");
        assertThat(followUps("W2"))
                .as("three years after the last test, the first two years being over")
                .containsExactly("annual-test 2029-06-01 open");
    }

    @Test
    void aSettingReachesTheDates() throws Exception {
        assertThat(evaluate("--rules", "niosh", "--setting", "notice-days=45", "--setting", "confirm-days=20"))
                .isZero();
        assertThat(determination("W1", "2026-03-02", "right")).endsWith(",confirmed,,,2026-05-04,");
    }

    @Test
    void anUnverifiedRuleIsMarkedAndItsSettingReachesIt() throws Exception {
        assertThat(evaluate("--rules", "dod")).isZero();
        assertThat(answers("W1", "2026-03-02", "dod_early_warning")).isEqualTo("left no, right yes");
        assertThat(rows("findings.csv"))
                .extracting(row -> row.get("unverified"))
                .containsOnly("unverified");
        assertThat(evaluate("--rules", "dod", "--setting", "early-warning-db=16"))
                .isZero();
        assertThat(answers("W1", "2026-03-02", "dod_early_warning")).isEqualTo("left no, right no");
    }

    @ParameterizedTest
    @CsvSource({
        "osha, notice-days=30, the rule set osha has no setting notice-days",
        "niosh, retest-days=30, the rule set niosh has no setting retest-days",
        "niosh, notice-days=0, notice-days is 0; it goes from 1 to 365 days",
        "niosh, notice-days=abc, abc",
        "niosh, notice-days, notice-days"
    })
    void aSettingThatDoesNotFitIsBadUsage(String ruleSet, String setting, String says) {
        assertThat(evaluate("--rules", ruleSet, "--setting", setting)).isEqualTo(2);
        assertThat(errors.toString()).contains("--setting", says).doesNotContain("\tat ");
        assertThat(out).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Christmas", "2026-02-30", "2026-03-06,Founders' Day", "03/06/2026"})
    void aLineThatIsNoDayIsBadUsageAndNamed(String line) throws IOException {
        Path holidays = Files.writeString(folder.resolve("days.txt"), "2026-12-25\n" + line + "\n");
        assertThat(evaluate("--rules", "msha", "--holidays", holidays.toString()))
                .isEqualTo(2);
        assertThat(errors.toString()).contains("--holidays", "days.txt, line 2", line);
        assertThat(out).doesNotExist();
    }

    @Test
    void aListOfHolidaysThatCannotBeReadIsBadUsage() throws IOException {
        assertThat(evaluate("--holidays", folder.resolve("none.txt").toString()))
                .isEqualTo(2);
        Path binary = Files.write(folder.resolve("binary.txt"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, (byte) 0xd8});
        assertThat(evaluate("--holidays", binary.toString())).isEqualTo(2);
        assertThat(errors.toString()).contains("none.txt").contains("binary.txt could not be read as text in UTF-8.");
    }

    @Test
    void aRuleSetThatThereIsNotIsToldWithThoseThatThereAre() {
        assertThat(evaluate("--rules", "NIOSH")).isEqualTo(2);
        assertThat(errors.toString())
                .contains(
                        "there is no rule set NIOSH; there is osha, msha, fra, niosh, dod, uk-l108, alberta, aao, twice");
    }

    static List<RuleSet> ruleSets() {
        return RuleSets.ALL;
    }

    /** Findings exactly where a rule set reads rules beside its shift, and the same bytes twice. */
    @ParameterizedTest
    @MethodSource("ruleSets")
    void everyRuleSetIsEvaluatedAndGivesTheSameBytesTwice(RuleSet ruleSet) throws Exception {
        assertThat(evaluate("--rules", ruleSet.word(), "--workings")).isZero();
        List<String> files = List.of("determinations.csv", "followups.csv", "workings.csv", "summary.csv");
        List<String> first = new ArrayList<>();
        for (String file : files) {
            first.add(Files.readString(out.resolve(file)));
        }
        assertThat(Files.exists(out.resolve("findings.csv")))
                .isEqualTo(!ruleSet.furtherRules().isEmpty());
        assertThat(rows("determinations.csv"))
                .hasSize(12)
                .extracting(row -> row.get("rule_set"))
                .containsOnly(ruleSet.word());
        assertThat(evaluate("--rules", ruleSet.word(), "--workings")).isZero();
        for (int i = 0; i < files.size(); i++) {
            assertThat(Files.readString(out.resolve(files.get(i)))).isEqualTo(first.get(i));
        }
    }
}
