package org.thresholdregister.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.batch.RegisterCommand;

/** The command, the SQL and the script that the benchmark measures come to the same determinations. */
class SameJudgementTest {

    private static final int AUDIOGRAMS = 2_000;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"1, 2026-06-30", "2, 2025-12-15", "3, 2023-12-31", "4, 2019-05-31"})
    void theCommandAndTheSqlWriteTheSameRows(long seed, LocalDate asOf) throws Exception {
        JudgingTask task = task(seed, asOf, "sql.csv");

        SqlJudge.load().judge(task);

        assertSameAsTheCommand(task);
    }

    @ParameterizedTest
    @CsvSource({"1, 2026-06-30", "2, 2025-12-15", "3, 2023-12-31", "4, 2019-05-31"})
    void theCommandAndTheScriptWriteTheSameRows(long seed, LocalDate asOf) throws Exception {
        assumeTrue(PythonJudge.version().isPresent(), "python3 is not there");
        JudgingTask task = task(seed, asOf, "python.csv");

        ProcessRun.of(PythonJudge.command(task), Map.of());

        assertSameAsTheCommand(task);
    }

    /** Otherwise the agreement above would say little. */
    @Test
    void theFilesBringUpEveryOutcomeAndEveryAnswer() throws IOException {
        List<String[]> rows;
        try (Stream<String> lines = Files.lines(evaluate(task(3, LocalDate.parse("2023-12-31"), "none.csv")))) {
            rows = lines.skip(1).map(line -> line.split(",", -1)).toList();
        }

        assertThat(column(rows, 17))
                .contains(
                        "baseline",
                        "before-baseline",
                        "no-shift",
                        "awaiting-retest",
                        "confirmed",
                        "not-confirmed",
                        "undecided",
                        "retest");
        assertThat(column(rows, 18)).contains("", "yes", "no", "awaiting-retest", "already-recorded", "undecided");
        assertThat(column(rows, 2)).contains("baseline", "annual", "exit", "retest");
    }

    @Test
    void theSameSeedWritesTheSameFilesWithTenTestsAWorker() throws IOException {
        BenchmarkFiles one = BenchmarkFiles.write(folder.resolve("one"), 500, 9);
        BenchmarkFiles other = BenchmarkFiles.write(folder.resolve("other"), 500, 9);
        BenchmarkFiles unlike = BenchmarkFiles.write(folder.resolve("unlike"), 500, 10);

        assertThat(one.audiograms()).hasSameTextualContentAs(other.audiograms());
        assertThat(one.roster()).hasSameTextualContentAs(other.roster());
        assertThat(Files.mismatch(one.audiograms(), unlike.audiograms())).isNotNegative();
        assertThat(Files.readAllLines(one.roster())).hasSize(1 + 50);
        assertThat(Files.readAllLines(one.audiograms())).hasSize(1 + 500);
    }

    private JudgingTask task(long seed, LocalDate asOf, String determinations) throws IOException {
        BenchmarkFiles files = BenchmarkFiles.write(folder, AUDIOGRAMS, seed);
        return new JudgingTask(files.roster(), files.audiograms(), asOf, folder.resolve(determinations));
    }

    private void assertSameAsTheCommand(JudgingTask task) throws IOException {
        Path expected = evaluate(task);
        RowComparison comparison = RowComparison.of(expected, task.determinations());

        assertThat(comparison.examples()).isEmpty();
        assertThat(comparison.differing()).isZero();
        assertThat(comparison.rows()).isGreaterThan(400);
        assertThat(task.determinations()).hasSameBinaryContentAs(expected);
    }

    private Path evaluate(JudgingTask task) {
        Path out = folder.resolve("out");
        StringWriter errors = new StringWriter();
        int exitCode = RegisterCommand.commandLine()
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(errors))
                .execute(
                        "evaluate",
                        "--roster",
                        task.roster().toString(),
                        "--audiograms",
                        task.audiograms().toString(),
                        "--out",
                        out.toString(),
                        "--as-of",
                        task.asOf().toString());
        assertThat(exitCode).as(errors.toString()).isZero();
        return out.resolve("determinations.csv");
    }

    private static List<String> column(List<String[]> rows, int index) {
        return rows.stream().map(row -> row[index]).distinct().toList();
    }
}
