package org.thresholdregister.benchmark;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * {@code ./register benchmark}: judges invented files of several sizes with the register, in SQL and in Python, compares
 * what they wrote row by row, and prints what each took. It runs in the project's folder.
 */
@Command(
        name = "register benchmark",
        description = "Measures judging beside the same in SQL and in Python, and compares the rows.")
final class Benchmark implements Callable<Integer> {

    private static final Path FOLDER = Path.of("target/benchmark");
    private static final Path REPORT = Path.of("target/benchmark.md");
    private static final long SEED = 20_260_630;

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--help", usageHelp = true, description = "show this")
    private boolean help;

    @Option(
            names = "--sizes",
            split = ",",
            paramLabel = "N",
            defaultValue = "10000,100000,1000000",
            description = "how many audiograms, each a multiple of ten (default: ${DEFAULT-VALUE})")
    private List<Integer> sizes = List.of();

    @Option(
            names = "--repetitions",
            paramLabel = "N",
            defaultValue = "3",
            description = "how often each process is run; the median counts (default: ${DEFAULT-VALUE})")
    private int repetitions;

    static void main(String[] arguments) {
        System.exit(new CommandLine(new Benchmark()).execute(arguments));
    }

    @Override
    public Integer call() throws IOException, InterruptedException, SQLException {
        checkOptions();
        List<Contender> contenders = contenders();
        Report report = new Report(LocalDate.now(), Machine.describe(), Machine.load());
        for (int size : sizes) {
            measure(size, contenders, report);
        }
        String text = report.markdown(Machine.load());
        Files.writeString(REPORT, text);
        output().println(text);
        output().flush();
        return report.allAgree() ? ExitCode.OK : ExitCode.SOFTWARE;
    }

    private void checkOptions() {
        if (repetitions < 1) {
            throw badUsage("--repetitions: at least one is needed.");
        }
        for (int size : sizes) {
            if (size < BenchmarkFiles.TESTS_PER_WORKER || size % BenchmarkFiles.TESTS_PER_WORKER != 0) {
                throw badUsage("--sizes: " + size + " is no multiple of " + BenchmarkFiles.TESTS_PER_WORKER + ".");
            }
        }
    }

    private List<Contender> contenders() throws SQLException {
        List<Contender> contenders = new ArrayList<>();
        contenders.add(new RegisterContender());
        try (var database = DriverManager.getConnection("jdbc:duckdb:")) {
            contenders.add(new SqlContender(database.getMetaData().getDatabaseProductVersion()));
        }
        Optional<String> python = PythonJudge.version();
        python.ifPresentOrElse(
                version -> contenders.add(new PythonContender(version)),
                () -> say("python3 is not there: its script is left out"));
        return contenders;
    }

    private void measure(int size, List<Contender> contenders, Report report) throws IOException, InterruptedException {
        say("writing files of " + size + " audiograms");
        BenchmarkFiles files = BenchmarkFiles.write(FOLDER, size, SEED);
        Path expected = null;
        for (Contender contender : contenders) {
            say("measuring " + contender.name());
            Path results = Files.createDirectories(FOLDER.resolve(contender.name()));
            Path determinations = results.resolve(JudgingTask.DETERMINATIONS);
            Measurement measured = contender.measure(JudgingTask.of(files, determinations), repetitions);
            if (expected == null) {
                expected = determinations;
            }
            RowComparison comparison = RowComparison.of(expected, determinations);
            comparison.examples().forEach(this::say);
            report.add(size, contender.name(), measured, comparison);
        }
        deleteFolder();
    }

    private static void deleteFolder() throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private ParameterException badUsage(String message) {
        return new ParameterException(Objects.requireNonNull(spec).commandLine(), message);
    }

    private PrintWriter output() {
        return Objects.requireNonNull(spec).commandLine().getOut();
    }

    private void say(String message) {
        PrintWriter errors = Objects.requireNonNull(spec).commandLine().getErr();
        errors.println("benchmark: " + message);
        errors.flush();
    }
}
