package org.thresholdregister.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderHeaderAware;
import com.opencsv.exceptions.CsvException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.summary.Measure;

/** The command and its files, as a user runs it. */
class EvaluateCommandTest {

    private static final String DETERMINATIONS = "worker_id,test_date,purpose,ear,rule_set,baseline_date,age_baseline,"
            + "age_test,shift_2000,shift_3000,shift_4000,allowance_2000,allowance_3000,allowance_4000,average_shift,"
            + "sts,average_level,outcome,recordable,retest_by,notify_by,record_by";
    private static final String AUDIOGRAMS_HEADER = "worker_id,test_date,purpose,left_500,left_1000,left_2000,"
            + "left_3000,left_4000,left_6000,left_8000,right_500,right_1000,right_2000,right_3000,right_4000,"
            + "right_6000,right_8000";
    private static final List<String> RESULT_FILES =
            List.of("determinations.csv", "followups.csv", "problems.csv", "summary.csv", "summary.xlsx");

    /** Accents that windows-1252 has, a separator of either kind and a quotation mark inside cells. */
    private static final String ROSTER = """
            worker_id,birth_date,sex,family_name,site,department,enrolled_from
            W1,1960-01-01,M,Núñez,Fernhollow Süd,"Kiln, ""A"" hall",2020-01-01
            W2,1985-05-05,F,"Ost; van",Fernhollow Süd,Grinding,2020-01-01
            W3,,F,Plain,,,2020-01-01
            W4,1990-02-28,M,Late,Fernhollow Süd,Grinding,2026-01-31
            """;

    private static final String AUDIOGRAMS = AUDIOGRAMS_HEADER + ",remark\n" + """
            W1,2024-04-01,baseline,10,10,15,15,15,10,10,10,10,10,10,10,10,10,
            W1,2026-04-01,annual,10,10,30,30,30,10,10,10,10,10,10,10,10,10,"été; ""noisy"", chaud"
            W1,2026-04-11,retest,10,10,30,30,31,10,10,10,10,10,10,10,10,10,
            W2,2024-05-01,baseline,10,10,10,10,10,10,10,10,10,10,10,10,10,10,
            W2,2026-06-15,exit,10,10,25,>95,25,10,10,10,10,25,DNT,NR,10,10,
            W3,2024-05-01,baseline,10,10,10,10,10,10,10,10,10,10,10,10,10,10,
            W3,2026-05-01,annual,10,10,20,20,20,10,10,10,10,10,10,10,10,10,
            """;

    @TempDir
    Path folder;

    private final StringWriter output = new StringWriter();
    private final StringWriter errors = new StringWriter();

    private Path roster;
    private Path audiograms;
    private Path out;

    @BeforeEach
    void writeFiles() throws IOException {
        roster = Files.writeString(folder.resolve("roster.csv"), ROSTER);
        audiograms = Files.writeString(folder.resolve("audiograms.csv"), AUDIOGRAMS);
        out = folder.resolve("out");
    }

    /** The 220 rows derived by hand from 29 CFR 1904.10 and 1910.95 (see {@code vectors/README.md}). */
    @ParameterizedTest
    @CsvSource({"on, recordability-vectors-expected-age-on.csv", "off, recordability-vectors-expected-age-off.csv"})
    void everyRecordabilityVectorComesOutAsDerivedByHand(String ageCorrection, String expectedFile) throws Exception {
        roster = copyOfVector("recordability-vectors-roster.csv");
        audiograms = copyOfVector("recordability-vectors-audiograms.csv");

        assertThat(evaluate("--as-of", "2026-06-30", "--age-correction", ageCorrection))
                .isZero();

        List<Map<String, String>> expected = Vectors.rows(expectedFile);
        assertThat(expected).hasSize(220);
        Map<String, Map<String, String>> actual = new HashMap<>();
        for (Map<String, String> row : rows("determinations.csv")) {
            assertThat(actual.put(key(row), row)).as("twice: " + key(row)).isNull();
        }
        for (Map<String, String> row : expected) {
            Map<String, String> found = actual.get(key(row));
            assertThat(found).as(key(row)).isNotNull();
            assertThat(found).as(key(row)).containsAllEntriesOf(row);
        }
        assertThat(read("problems.csv").lines()).hasSize(1);
    }

    private static String key(Map<String, String> row) {
        return Stream.of("worker_id", "test_date", "purpose", "ear")
                .map(row::get)
                .collect(Collectors.joining(" "));
    }

    @Test
    void theFiveFilesHaveTheirHeaders() throws Exception {
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();

        assertThat(names(out)).containsExactlyElementsOf(new TreeSet<>(RESULT_FILES));
        assertThat(header("determinations.csv")).isEqualTo(DETERMINATIONS);
        assertThat(header("followups.csv")).isEqualTo("worker_id,kind,due_date,test_date,ears,state");
        assertThat(header("problems.csv")).isEqualTo("file,line,column,value,problem,effect");
        assertThat(header("summary.csv")).isEqualTo("year,site,department,measure,value");
        assertThat(output.toString()).contains("As of 2026-06-30: 14 determinations for 4 workers");
    }

    @Test
    void theRowsAreAsTheRulesSay() throws Exception {
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();

        assertThat(read("determinations.csv")).isEqualTo(DETERMINATIONS + "\n" + """
                        W1,2024-04-01,baseline,left,osha,,,,,,,,,,,,15.00,baseline,,,,
                        W1,2024-04-01,baseline,right,osha,,,,,,,,,,,,10.00,baseline,,,,
                        W1,2026-04-01,annual,left,osha,2024-04-01,64,66,15,15,15,0,0,0,15.00,yes,30.00,confirmed,yes,,2026-05-02,2026-04-18
                        W1,2026-04-01,annual,right,osha,2024-04-01,64,66,0,0,0,0,0,0,0.00,no,10.00,no-shift,no,,,
                        W1,2026-04-11,retest,left,osha,2024-04-01,64,66,15,15,16,0,0,0,15.33,yes,30.33,retest,,,,
                        W1,2026-04-11,retest,right,osha,2024-04-01,64,66,0,0,0,0,0,0,0.00,no,10.00,retest,,,,
                        W2,2024-05-01,baseline,left,osha,,,,,,,,,,,,10.00,baseline,,,,
                        W2,2024-05-01,baseline,right,osha,,,,,,,,,,,,10.00,baseline,,,,
                        W2,2026-06-15,exit,left,osha,2024-05-01,38,41,15,,15,1,1,1,,yes,,awaiting-retest,awaiting-retest,2026-07-15,2026-07-06,
                        W2,2026-06-15,exit,right,osha,2024-05-01,38,41,15,,,1,1,1,,undecided,,undecided,undecided,,,
                        W3,2024-05-01,baseline,left,osha,,,,,,,,,,,,10.00,baseline,,,,
                        W3,2024-05-01,baseline,right,osha,,,,,,,,,,,,10.00,baseline,,,,
                        W3,2026-05-01,annual,left,osha,2024-05-01,,,10,10,10,,,,,undecided,20.00,undecided,undecided,,,
                        W3,2026-05-01,annual,right,osha,2024-05-01,,,0,0,0,,,,,no,10.00,no-shift,no,,,
                        """);
        assertThat(read("followups.csv")).isEqualTo("""
                        worker_id,kind,due_date,test_date,ears,state
                        W1,record,2026-04-18,2026-04-01,left,overdue
                        W1,notice,2026-05-02,2026-04-01,left,overdue
                        W1,annual-test,2027-04-11,2026-04-11,both,open
                        W2,notice,2026-07-06,2026-06-15,left,open
                        W2,retest,2026-07-15,2026-06-15,left,open
                        W2,annual-test,2027-06-15,2026-06-15,both,open
                        W3,annual-test,2027-05-01,2026-05-01,both,open
                        W4,baseline-test,2026-07-31,,both,open
                        """);
    }

    @Test
    void theOrderOfTheInputRowsDoesNotMatter() throws Exception {
        Path sample = Path.of("sample-roster");
        roster = sample.resolve("roster.csv");
        audiograms = sample.resolve("audiograms.csv");
        Path decisions = sample.resolve("decisions.csv");
        String[] options = {"--as-of", "2026-06-30", "--baseline-revision", "apply", "--workings"};
        assertThat(evaluate(withDecisions(decisions, options))).isZero();
        Map<String, byte[]> first = results();
        assertThat(first).containsKeys("determinations.csv", "summary.xlsx", "workings.csv", "baseline-proposals.csv");
        assertThat(read("determinations.csv").lines().count()).isGreaterThan(5_000);

        Random random = new Random(20260630);
        roster = shuffled(roster, random);
        audiograms = shuffled(audiograms, random);
        assertThat(evaluate(withDecisions(shuffled(decisions, random), options)))
                .isZero();

        Map<String, byte[]> second = results();
        assertThat(second).containsOnlyKeys(first.keySet());
        for (String name : first.keySet()) {
            if (!name.equals("problems.csv")) {
                assertThat(second.get(name)).as(name).isEqualTo(first.get(name));
            }
        }
    }

    @Test
    void theSameInputGivesTheSameBytes() throws Exception {
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        Map<String, byte[]> first = results();
        // The clock of the format counts in two seconds; an hour of the day in the file would show after that.
        Thread.sleep(2_100);
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        results().forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(first.get(name)));
    }

    /** The ways in which a spreadsheet may save the same table. */
    enum Dialect {
        BYTE_ORDER_MARK,
        CARRIAGE_RETURNS,
        EVERY_CELL_QUOTED,
        SEMICOLONS,
        WINDOWS_1252,
        ALL_OF_IT;

        byte[] write(String csv) throws IOException {
            boolean all = this == ALL_OF_IT;
            String separator = this == SEMICOLONS || all ? ";" : ",";
            String lineEnd = this == CARRIAGE_RETURNS || all ? "\r\n" : "\n";
            Charset charset = this == WINDOWS_1252 || all ? Charset.forName("windows-1252") : StandardCharsets.UTF_8;
            boolean quoted = this == EVERY_CELL_QUOTED || all;
            String text = table(csv).stream()
                    .map(row -> Arrays.stream(row)
                            .map(cell -> cell(cell, separator, quoted))
                            .collect(Collectors.joining(separator)))
                    .collect(Collectors.joining(lineEnd, this == BYTE_ORDER_MARK ? "\uFEFF" : "", lineEnd));
            return text.getBytes(charset);
        }

        private static String cell(String cell, String separator, boolean quoted) {
            return quoted || cell.contains(separator) || cell.contains("\"")
                    ? '"' + cell.replace("\"", "\"\"") + '"'
                    : cell;
        }
    }

    @ParameterizedTest
    @EnumSource
    void theSameTableIsReadFromEveryDialect(Dialect dialect) throws Exception {
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        Map<String, byte[]> plain = results();
        assertThat(read("summary.csv")).contains("2026,Fernhollow Süd,\"Kiln, \"\"A\"\" hall\",recordable_cases,1\n");

        byte[] rosterBytes = dialect.write(ROSTER);
        assertThat(rosterBytes).isNotEqualTo(ROSTER.getBytes(StandardCharsets.UTF_8));
        Files.write(roster, rosterBytes);
        Files.write(audiograms, dialect.write(AUDIOGRAMS));
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        results().forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(plain.get(name)));
        assertThat(read("problems.csv").lines()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"roster.csv, sex", "roster.csv, worker_id", "audiograms.csv, right_3000", "audiograms.csv, purpose"})
    void aMissingRequiredColumnIsUnusableInput(String file, String column) throws Exception {
        Path path = folder.resolve(file);
        Files.writeString(path, Files.readString(path).replaceFirst(column + "\\b", "another"));

        assertThat(evaluate("--as-of", "2026-06-30")).isEqualTo(2);
        assertThat(errors.toString()).contains(file, column).doesNotContain("Exception", "\tat ");
        assertThat(out).doesNotExist();
    }

    @Test
    void aFileIsNoFolderForTheResults() throws Exception {
        Files.writeString(out, "mine");

        assertThat(evaluate("--as-of", "2026-06-30")).isEqualTo(2);
        assertThat(errors.toString()).contains("--out", "is a file").doesNotContain("Exception", "\tat ");
        assertThat(out).hasContent("mine");
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldInASentence() throws Exception {
        Files.createDirectories(out.resolve("determinations.csv"));

        assertThat(evaluate("--as-of", "2026-06-30")).isEqualTo(1);
        assertThat(errors.toString())
                .contains("determinations.csv", "is not complete")
                .doesNotContain("Exception", "\tat ");
    }

    @Test
    void aDayThatDoesNotExistIsBadUsage() {
        assertThat(evaluate("--as-of", "2026-02-30")).isEqualTo(2);
        assertThat(errors.toString()).contains("--as-of: 2026-02-30 is no day").doesNotContain("Exception");
    }

    @Test
    void noCellOfARowThatIsLeftOutIsSaidToBeKept() throws Exception {
        String row = "W3,2026-06-01,annual,10,10,%s,20,20,10,10,10,10,10,10,10,10,10,\n";
        Files.writeString(audiograms, AUDIOGRAMS + row.formatted("20") + row.formatted("x"));

        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        assertThat(rows("problems.csv"))
                .extracting(problem -> problem.get("line") + " " + problem.get("column") + " " + problem.get("effect"))
                .containsExactly("9 worker_id row left out", "10 worker_id row left out", "10 left_2000 row left out");
    }

    @Test
    void whatAnEarlierRunWroteAndThisOneDoesNotIsRemoved() throws Exception {
        assertThat(evaluate("--as-of", "2026-06-30", "--workings", "--baseline-revision", "propose"))
                .isZero();
        assertThat(out.resolve("workings.csv")).isNotEmptyFile();
        assertThat(out.resolve("baseline-proposals.csv")).isNotEmptyFile();

        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        assertThat(names(out))
                .containsExactlyInAnyOrder(
                        "determinations.csv", "followups.csv", "problems.csv", "summary.csv", "summary.xlsx");
    }

    @Test
    void aMissingColumnOfTheDecisionsIsUnusableInput() throws Exception {
        Path decisions = Files.writeString(folder.resolve("decided.csv"), "worker_id,ear,test_date,date,by,reason\n");
        assertThat(evaluate("--as-of", "2026-06-30", "--decisions", decisions.toString()))
                .isEqualTo(2);
        assertThat(errors.toString()).contains("decided.csv", "kind");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--roster", "--audiograms", "--decisions"})
    void aMissingFileIsBadUsage(String option) {
        Path missing = folder.resolve("nowhere.csv");
        List<String> arguments = new ArrayList<>(List.of(
                "evaluate",
                "--roster",
                roster.toString(),
                "--audiograms",
                audiograms.toString(),
                "--out",
                out.toString()));
        if (arguments.contains(option)) {
            arguments.set(arguments.indexOf(option) + 1, missing.toString());
        } else {
            arguments.addAll(List.of(option, missing.toString()));
        }
        assertThat(execute(arguments.toArray(String[]::new))).isEqualTo(2);
        assertThat(errors.toString()).contains(option, "nowhere.csv");
        assertThat(out).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "--rules, unheard-of",
        "--age-correction, maybe",
        "--age-correction, ON",
        "--baseline-revision, always",
        "--as-of, yesterday",
        "--as-of, 2026-02-30"
    })
    void aWordThatAnOptionDoesNotTakeIsBadUsage(String option, String word) {
        assertThat(evaluate(option, word)).isEqualTo(2);
        assertThat(errors.toString()).contains(option, word).doesNotContain("\tat ");
        assertThat(out).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--roster", "--audiograms", "--out"})
    void aRequiredOptionCannotBeLeftOut(String option) {
        List<String> arguments = new ArrayList<>(List.of(
                "evaluate",
                "--roster",
                roster.toString(),
                "--audiograms",
                audiograms.toString(),
                "--out",
                out.toString()));
        int position = arguments.indexOf(option);
        arguments.remove(position + 1);
        arguments.remove(position);
        assertThat(execute(arguments.toArray(String[]::new))).isEqualTo(2);
        assertThat(errors.toString()).contains(option);
    }

    @Test
    void badRowsAreReportedAndTheRestIsJudged() throws Exception {
        Files.writeString(roster, ROSTER + """
                        ,1980-01-01,F,Nameless,,,
                        W5,not-a-date,F,Undated,,,
                        """);
        Files.writeString(audiograms, AUDIOGRAMS + """
                        W1,2025-04-01,annual,10,10,999,15,15,10,10,10,10,10,10,10,10,10,
                        W9,2025-04-01,annual,10,10,15,15,15,10,10,10,10,10,10,10,10,10,
                        W1,2025-13-01,annual,10,10,15,15,15,10,10,10,10,10,10,10,10,10,
                        W1,2025-05-01,yearly,10,10,15,15,15,10,10,10,10,10,10,10,10,10,
                        W1,2026-07-01,annual,10,10,15,15,15,10,10,10,10,10,10,10,10,10,
                        W1,1959-07-01,annual,10,10,15,15,15,10,10,10,10,10,10,10,10,10,
                        W2,2024-05-01,baseline,10,10,10,10,10,10,10,10,10,10,10,10,10,10,
                        W3,2026-05-01,annual,10,10,20,20,25,10,10,10,10,10,10,10,10,10,
                        """);

        assertThat(evaluate("--as-of", "2026-06-30")).isZero();

        assertThat(rows("problems.csv"))
                .extracting(row -> String.join(
                        " ", row.get("file"), row.get("line"), row.get("column"), row.get("value"), row.get("effect")))
                .containsExactly(
                        "roster.csv 6 worker_id  row left out",
                        "roster.csv 7 birth_date not-a-date cell left blank",
                        "audiograms.csv 8 worker_id W3 row left out",
                        "audiograms.csv 9 left_2000 999 cell left blank",
                        "audiograms.csv 10 worker_id W9 row left out",
                        "audiograms.csv 11 test_date 2025-13-01 row left out",
                        "audiograms.csv 12 purpose yearly row left out",
                        "audiograms.csv 13 test_date 2026-07-01 row left out",
                        "audiograms.csv 14 test_date 1959-07-01 row left out",
                        "audiograms.csv 15 worker_id W2 note",
                        "audiograms.csv 16 worker_id W3 row left out");
        assertThat(rows("problems.csv"))
                .allSatisfy(row -> assertThat(row.get("problem")).isNotBlank());
        assertThat(rows("determinations.csv"))
                .anySatisfy(row -> assertThat(row)
                        .containsEntry("worker_id", "W1")
                        .containsEntry("test_date", "2025-04-01")
                        .containsEntry("ear", "left")
                        .containsEntry("shift_2000", "")
                        .containsEntry("sts", "undecided"))
                .noneSatisfy(row ->
                        assertThat(row).containsEntry("worker_id", "W3").containsEntry("test_date", "2026-05-01"));
        assertThat(output.toString())
                .contains("problems.csv has 8 lines saying \"row left out\", 2 lines saying \"cell left blank\", 1 line"
                        + " saying \"note\".");
    }

    @Test
    void theOutputHasNoByteOrderMarkAndNoCarriageReturn() throws Exception {
        Files.write(roster, Dialect.CARRIAGE_RETURNS.write(ROSTER));
        assertThat(evaluate("--as-of", "2026-06-30", "--baseline-revision", "propose", "--workings"))
                .isZero();
        for (String name : names(out)) {
            if (name.endsWith(".csv")) {
                byte[] bytes = Files.readAllBytes(out.resolve(name));
                assertThat(bytes).as(name).doesNotContain((byte) '\r');
                assertThat(bytes[0] & 0xFF).as(name).isLessThan(0x80);
                assertThat(bytes[bytes.length - 1]).as(name).isEqualTo((byte) '\n');
            }
        }
    }

    @Test
    void proposingRevisionsLeavesTheJudgementAsItIs() throws Exception {
        writeImprovingWorker();
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        String off = read("determinations.csv");
        assertThat(names(out)).doesNotContain("baseline-proposals.csv");

        assertThat(evaluate("--as-of", "2026-06-30", "--baseline-revision", "propose"))
                .isZero();
        assertThat(read("determinations.csv")).isEqualTo(off);
        assertThat(read("baseline-proposals.csv"))
                .startsWith("worker_id,ear,kind,from_date,to_date,evidence_dates,reason\n");
        assertThat(rows("baseline-proposals.csv"))
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("worker_id", "W1")
                        .containsEntry("ear", "left")
                        .containsEntry("kind", "better")
                        .containsEntry("from_date", "2023-04-01")
                        .containsEntry("to_date", "2024-04-01")
                        .containsEntry("evidence_dates", "2024-04-01 2025-04-01"));
    }

    @Test
    void applyingRevisionsMovesTheBaselineAndAddsTheReference() throws Exception {
        writeImprovingWorker();
        assertThat(evaluate("--as-of", "2026-06-30", "--baseline-revision", "apply"))
                .isZero();
        assertThat(header("determinations.csv")).isEqualTo(DETERMINATIONS + ",reference_date,reference_shift");
        assertThat(rows("determinations.csv").stream()
                        .filter(row -> row.get("ear").equals("left"))
                        .map(row -> String.join(
                                " ",
                                row.get("test_date"),
                                row.get("baseline_date"),
                                row.get("outcome"),
                                row.get("recordable"),
                                row.get("reference_date"),
                                row.get("reference_shift"))))
                .containsExactly(
                        "2023-04-01  baseline   ",
                        "2024-04-01 2023-04-01 no-shift no 2023-04-01 -5.00",
                        "2025-04-01 2023-04-01 no-shift no 2023-04-01 -5.00",
                        "2026-04-01 2024-04-01 confirmed yes 2024-04-01 10.00");
        assertThat(rows("baseline-proposals.csv")).hasSize(1);
    }

    @Test
    void aProposalThatAProfessionalDeclinedIsNeitherListedNorApplied() throws Exception {
        writeImprovingWorker();
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        String judged = read("determinations.csv");
        String decisions = Files.writeString(folder.resolve("decided.csv"), """
                        worker_id,ear,test_date,kind,date,by,reason
                        W1,left,2024-04-01,baseline-kept,2025-05-01,"Dr. Vale, audiologist",wait for another
                        """).toString();

        assertThat(evaluate("--as-of", "2026-06-30", "--decisions", decisions)).isZero();
        assertThat(read("determinations.csv")).isEqualTo(judged);
        for (String revision : List.of("propose", "apply")) {
            assertThat(evaluate("--as-of", "2026-06-30", "--decisions", decisions, "--baseline-revision", revision))
                    .isZero();
            assertThat(rows("baseline-proposals.csv")).as(revision).isEmpty();
            assertThat(rows("determinations.csv"))
                    .as(revision)
                    .noneMatch(row -> row.get("baseline_date").equals("2024-04-01"));
        }
    }

    private void writeImprovingWorker() throws IOException {
        Files.writeString(audiograms, AUDIOGRAMS_HEADER + "\n" + """
                        W1,2023-04-01,baseline,10,10,20,20,20,10,10,10,10,10,10,10,10,10
                        W1,2024-04-01,annual,10,10,15,15,15,10,10,10,10,10,10,10,10,10
                        W1,2025-04-01,annual,10,10,15,15,15,10,10,10,10,10,10,10,10,10
                        W1,2026-04-01,annual,10,10,25,25,25,10,10,10,10,10,10,10,10,10
                        """);
    }

    @Test
    void theWorkbookHoldsTheNumbersOfTheSummary() throws Exception {
        roster = Path.of("sample-roster", "roster.csv");
        audiograms = Path.of("sample-roster", "audiograms.csv");
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();

        Map<String, Integer> inFile = new HashMap<>();
        for (Map<String, String> row : rows("summary.csv")) {
            inFile.put(
                    String.join("|", row.get("year"), row.get("site"), row.get("department"), row.get("measure")),
                    Integer.valueOf(row.get("value")));
        }
        assertThat(inFile).hasSizeGreaterThan(300);
        assertThat(inWorkbook()).isEqualTo(inFile);
    }

    private Map<String, Integer> inWorkbook() throws IOException {
        Map<String, Integer> numbers = new HashMap<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(out.resolve("summary.xlsx")))) {
            XSSFSheet sheet = workbook.getSheetAt(0);
            Row titles = titles(sheet);
            // The table ends with the first row that is not there; sentences follow it.
            for (int number = titles.getRowNum() + 1; sheet.getRow(number) != null; number++) {
                Row row = sheet.getRow(number);
                String group = String.join(
                        "|",
                        "" + (int) row.getCell(0).getNumericCellValue(),
                        word(row.getCell(1).getStringCellValue()),
                        word(row.getCell(2).getStringCellValue()));
                for (Measure measure : Measure.values()) {
                    int column = 3 + measure.ordinal();
                    assertThat(titles.getCell(column).getStringCellValue()).isEqualTo(measure.title());
                    numbers.put(group + "|" + measure.word(), (int)
                            row.getCell(column).getNumericCellValue());
                }
            }
        }
        return numbers;
    }

    private static Row titles(XSSFSheet sheet) {
        for (Row row : sheet) {
            if (row.getCell(0).toString().equals("Year")) {
                return row;
            }
        }
        throw new AssertionError("no row of titles");
    }

    private static String word(String readable) {
        return switch (readable) {
            case "all sites", "all departments" -> "(all)";
            case "no site given", "no department given" -> "(none)";
            default -> readable;
        };
    }

    @Test
    void theSummaryNamesNoWorker() throws Exception {
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(out.resolve("summary.xlsx")))) {
            Set<String> words = new HashSet<>();
            workbook.getSheetAt(0).forEach(row -> row.forEach(cell -> words.add(cell.toString())));
            assertThat(words).contains("Fernhollow Süd").doesNotContain("Núñez", "Plain", "W1");
        }
        assertThat(read("summary.csv")).doesNotContain("Núñez", "W1");
    }

    @Test
    void decisionsAreHonoured() throws Exception {
        Path decisions = Files.writeString(folder.resolve("decisions.csv"), """
                worker_id,ear,test_date,kind,date,by,reason
                W1,left,2026-04-01,not-work-related,2026-04-20,Dr Invented,hobby
                W1,both,2026-04-11,notice-given,2026-04-20,,
                W2,both,2026-06-15,invalid-test,2026-06-16,,booth door open
                W9,left,2026-06-15,recorded,2026-06-16,,
                """);
        assertThat(evaluate("--as-of", "2026-06-30", "--decisions", decisions.toString()))
                .isZero();
        assertThat(rows("determinations.csv"))
                .anySatisfy(row -> assertThat(row)
                        .containsEntry("worker_id", "W1")
                        .containsEntry("test_date", "2026-04-01")
                        .containsEntry("ear", "left")
                        .containsEntry("outcome", "confirmed")
                        .containsEntry("recordable", "no")
                        .containsEntry("record_by", ""))
                .noneSatisfy(row -> assertThat(row).containsEntry("test_date", "2026-06-15"));
        assertThat(rows("followups.csv"))
                .extracting(row -> row.get("worker_id") + " " + row.get("kind"))
                .containsExactly("W1 annual-test", "W2 annual-test", "W3 annual-test", "W4 baseline-test");
        assertThat(rows("problems.csv"))
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("file", "decisions.csv")
                        .containsEntry("line", "5")
                        .containsEntry("value", "W9")
                        .containsEntry("effect", "row left out"));
    }

    @Test
    void rowsAreSortedByCodePointDatePurposeAndEar() throws Exception {
        // U+1F600 comes after U+FF21 by code point and before it by UTF-16 unit.
        List<String> ids = List.of("10", "9", "A", "a", "é", "\uFF21", "\uD83D\uDE00");
        StringBuilder workers = new StringBuilder("worker_id,birth_date,sex\n");
        StringBuilder tests = new StringBuilder(AUDIOGRAMS_HEADER + "\n");
        for (String id : ids.reversed()) {
            workers.append(id).append(",1960-01-01,F\n");
            for (String test : List.of(
                    "2026-04-01,retest",
                    "2026-04-01,exit",
                    "2026-04-01,annual",
                    "2026-04-01,other",
                    "2026-04-01,baseline",
                    "2025-04-01,annual")) {
                tests.append(id)
                        .append(',')
                        .append(test)
                        .append(",10".repeat(14))
                        .append('\n');
            }
        }
        Files.writeString(roster, workers);
        Files.writeString(audiograms, tests);
        assertThat(evaluate("--as-of", "2026-06-30")).isZero();

        List<String> expected = new ArrayList<>();
        for (String id : ids) {
            for (String test : List.of(
                    "2025-04-01 annual",
                    "2026-04-01 baseline",
                    "2026-04-01 annual",
                    "2026-04-01 exit",
                    "2026-04-01 retest")) {
                expected.add(id + " " + test + " left");
                expected.add(id + " " + test + " right");
            }
        }
        assertThat(rows("determinations.csv").stream().map(EvaluateCommandTest::key))
                .containsExactlyElementsOf(expected);
        assertThat(rows("determinations.csv"))
                .filteredOn(row -> row.get("test_date").equals("2025-04-01"))
                .allSatisfy(row -> assertThat(row).containsEntry("outcome", "before-baseline"));
    }

    @Test
    void withoutADayItIsJudgedAsOfToday() throws Exception {
        String today = java.time.LocalDate.now().toString();
        assertThat(evaluate()).isZero();
        assertThat(output.toString())
                .contains("As of ")
                .containsAnyOf(today, java.time.LocalDate.now().toString());
    }

    private String[] withDecisions(Path decisions, String... options) {
        List<String> all = new ArrayList<>(List.of(options));
        all.addAll(List.of("--decisions", decisions.toString()));
        return all.toArray(String[]::new);
    }

    private int evaluate(String... options) {
        List<String> arguments = new ArrayList<>(List.of(
                "evaluate",
                "--roster",
                roster.toString(),
                "--audiograms",
                audiograms.toString(),
                "--out",
                out.toString()));
        arguments.addAll(List.of(options));
        return execute(arguments.toArray(String[]::new));
    }

    private int execute(String... arguments) {
        return RegisterCommand.commandLine()
                .setOut(new PrintWriter(output, true))
                .setErr(new PrintWriter(errors, true))
                .execute(arguments);
    }

    private Path copyOfVector(String name) throws IOException {
        Path copy = folder.resolve(name);
        try (var stream = Objects.requireNonNull(getClass().getResourceAsStream("/vectors/" + name))) {
            Files.copy(stream, copy);
        }
        return copy;
    }

    /** The same rows below the same header in another order. */
    private Path shuffled(Path file, Random random) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        List<String> rows = new ArrayList<>(lines.subList(1, lines.size()));
        Collections.shuffle(rows, random);
        assertThat(rows).isNotEqualTo(lines.subList(1, lines.size()));
        rows.addFirst(lines.getFirst());
        return Files.write(folder.resolve(file.getFileName()), rows);
    }

    private String read(String name) throws IOException {
        return Files.readString(out.resolve(name));
    }

    private String header(String name) throws IOException {
        return read(name).lines().findFirst().orElseThrow();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private Map<String, byte[]> results() throws IOException {
        Map<String, byte[]> results = new HashMap<>();
        for (String name : names(out)) {
            results.put(name, Files.readAllBytes(out.resolve(name)));
        }
        return results;
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

    private static List<String[]> table(String csv) throws IOException {
        try (CSVReader reader = new CSVReader(new StringReader(csv))) {
            return reader.readAll();
        } catch (CsvException e) {
            throw new IOException(e);
        }
    }
}
