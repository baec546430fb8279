package org.thresholdregister.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/**
 * Answers from columns, written as bytes, and answers worked out worker by worker, written as text (which asking for
 * workings makes evaluate do): the same files.
 */
class ColumnarEvaluationTest {

    private static final int WORKERS = 1_500;

    /** Ids and places that need quotation marks, lie beyond ASCII, or are named like what the summary calls totals. */
    private static final String UNUSUAL_WORKERS = """
            "Q,1",1970-02-28,F,Vale,Robin,2015-01-01,,(all),(all),operator,B,90,2015-01-01,,en
            "Q""2",1970-02-28,M,Vale,Robin,2015-01-01,,(none),(all),operator,B,90,2015-01-01,,en
            "\uD83C\uDFED 3",,F,Vale,Robin,2015-01-01,,"Kiln, ""A""\nhall",Ofen Süd,operator,B,90,2015-01-01,,en
            Ж4,1970-02-28,,Vale,Robin,2015-01-01,,,(none),operator,B,90,2015-01-01,,en
            untested,1970-02-28,M,Vale,Robin,2015-01-01,,(all),,operator,B,90,2025-12-01,,en
            """;

    private static final List<String> UNUSUAL_IDS = List.of("\"Q,1\"", "\"Q\"\"2\"", "\uD83C\uDFED 3", "Ж4");
    private static final String[] KINDS = {
        "not-work-related", "work-related", "recorded", "lined-out", "notice-given", "baseline", "invalid-test"
    };

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--as-of 2026-03-09",
                "--as-of 2024-02-29 --age-correction off",
                "--as-of 2025-01-15 --baseline-revision propose",
                "--as-of 2026-03-09 --baseline-revision apply"
            })
    void bothWaysWriteTheSame(String options) throws IOException {
        writeFiles(options.hashCode());

        String report = evaluate("columns", options);
        assertThat(evaluate("workings", options + " --workings")).isEqualTo(report);

        assertThat(folder.resolve("columns/workings.csv")).doesNotExist();
        assertThat(folder.resolve("workings/workings.csv")).exists();
        for (String file :
                List.of("determinations.csv", "followups.csv", "problems.csv", "summary.csv", "summary.xlsx")) {
            assertSame(file);
        }
        assertThat(Files.size(folder.resolve("columns/determinations.csv"))).isGreaterThan(1_000_000L);
        assertThat(folder.resolve("columns/baseline-proposals.csv").toFile().exists())
                .isEqualTo(options.contains("revision"));
        if (options.contains("revision")) {
            assertSame("baseline-proposals.csv");
        }
    }

    @Test
    void aRosterWithoutTestsGivesHeaders() throws IOException {
        Path roster = folder.resolve("roster.csv");
        LargeFiles.write(folder, 0, 1);
        assertThat(Files.readString(roster).lines()).hasSize(1);

        evaluate("columns", "--as-of 2026-03-09");
        evaluate("workings", "--as-of 2026-03-09 --workings");

        for (String file : List.of("determinations.csv", "followups.csv", "summary.csv", "summary.xlsx")) {
            assertSame(file);
        }
        assertThat(Files.readString(folder.resolve("columns/followups.csv")))
                .isEqualTo("worker_id,kind,due_date,test_date,ears,state\n");
    }

    private void assertSame(String file) throws IOException {
        assertThat(Files.mismatch(
                        folder.resolve("columns").resolve(file),
                        folder.resolve("workings").resolve(file)))
                .as("first different byte of " + file)
                .isEqualTo(-1);
    }

    private void writeFiles(long seed) throws IOException {
        LargeFiles.write(folder, WORKERS, seed);
        Random random = new Random(seed);
        Files.writeString(folder.resolve("roster.csv"), UNUSUAL_WORKERS, StandardOpenOption.APPEND);
        List<String> tests = new ArrayList<>(Files.readAllLines(folder.resolve("audiograms.csv")));
        // Everything of the first workers once more, of the unusual ones.
        tests.stream()
                .filter(test -> test.matches("W00000[0-3],.*"))
                .map(test -> UNUSUAL_IDS.get(test.charAt(6) - '0') + test.substring(7))
                .toList()
                .forEach(tests::add);
        Files.write(folder.resolve("audiograms.csv"), tests);
        StringBuilder decisions = new StringBuilder("worker_id,ear,test_date,kind,date,by,reason\n");
        for (String test : tests) {
            String[] cells = test.split(",");
            if (cells.length > 3 && cells[1].matches("20\\d\\d-\\d\\d-\\d\\d") && random.nextInt(40) == 0) {
                String ear = random.nextBoolean() ? "both" : random.nextBoolean() ? "left" : "right";
                String kind = KINDS[random.nextInt(KINDS.length)];
                decisions.append(String.join(",", cells[0], ear, cells[1], kind, cells[1], "R. Vale", "\n"));
            }
        }
        Files.writeString(folder.resolve("decisions.csv"), decisions);
    }

    /** Gives what the command says, but for the folder's name. */
    private String evaluate(String out, String options) {
        StringWriter output = new StringWriter();
        CommandLine command = RegisterCommand.commandLine().setOut(new PrintWriter(output));
        List<String> arguments = new ArrayList<>(
                List.of("evaluate", "--roster", folder.resolve("roster.csv").toString()));
        arguments.addAll(
                List.of("--audiograms", folder.resolve("audiograms.csv").toString()));
        if (Files.exists(folder.resolve("decisions.csv"))) {
            arguments.addAll(
                    List.of("--decisions", folder.resolve("decisions.csv").toString()));
        }
        arguments.addAll(List.of("--out", folder.resolve(out).toString()));
        arguments.addAll(List.of(options.split(" ")));
        assertThat(command.execute(arguments.toArray(String[]::new))).isZero();
        return output.toString().replace(folder.resolve(out).toString(), "");
    }
}
