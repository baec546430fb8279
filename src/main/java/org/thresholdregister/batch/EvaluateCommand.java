package org.thresholdregister.batch;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.intake.FileSet;
import org.thresholdregister.intake.SourceFile;
import org.thresholdregister.intake.UnusableFileException;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * {@code register evaluate}: judges a roster and its audiograms without a database. Bad rows are reported and left out
 * and never stop the run.
 */
@Command(
        name = "evaluate",
        description = "Judges a roster and its audiograms and writes the results into a folder, without a database.")
final class EvaluateCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Option(names = "--roster", required = true, paramLabel = "FILE", description = "the workers (CSV)")
    private @Nullable Path roster;

    @Option(names = "--audiograms", required = true, paramLabel = "FILE", description = "their tests (CSV)")
    private @Nullable Path audiograms;

    @Option(names = "--decisions", paramLabel = "FILE", description = "what was decided before or elsewhere (CSV)")
    private @Nullable Path decisions;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "where the results go")
    private @Nullable Path out;

    @Option(
            names = "--as-of",
            paramLabel = "DATE",
            description = "the day to judge on, such as 2026-03-09; today if not given")
    private @Nullable String asOf;

    @Option(names = "--rules", paramLabel = "NAME", defaultValue = "osha", description = "the rule set (default: osha)")
    private String rules = RuleSets.OSHA.word();

    @Option(
            names = "--age-correction",
            paramLabel = "on|off",
            defaultValue = "on",
            description = "whether the allowance for aging is made (default: on)")
    private String ageCorrection = "on";

    @Option(
            names = "--baseline-revision",
            paramLabel = "off|propose|apply",
            defaultValue = "off",
            description = "what is done about baselines that the guide's rules would revise (default: off)")
    private String baselineRevision = "off";

    @Option(
            names = "--setting",
            paramLabel = "NAME=VALUE",
            description = "another value for a number of the rule set that could not be verified, such as"
                    + " notice-days=30; may be given several times")
    private Map<String, Integer> settings = new LinkedHashMap<>();

    @Option(
            names = "--holidays",
            paramLabel = "FILE",
            description = "the days that deadlines in working days skip besides weekends, one date a line")
    private @Nullable Path holidays;

    @Option(names = "--workings", description = "also write workings.csv: each determination in sentences")
    private boolean workings;

    @Option(names = "--validity", description = "also write validity.csv: what there is to doubt about each test")
    private boolean validity;

    @Option(
            names = "--programme",
            description = "also write programme.csv, shares of people with their intervals, and instrument-watch.csv,"
                    + " which instruments came under suspicion")
    private boolean programme;

    @Override
    public Integer call() {
        JudgingOptions options = new JudgingOptions(
                day(),
                ruleSet(),
                oneOf(AgeCorrection.class, "--age-correction", ageCorrection),
                oneOf(BaselineRevision.class, "--baseline-revision", baselineRevision),
                holidays());
        FileSet files = FileSet.of(readable("--roster", roster), readable("--audiograms", audiograms));
        if (decisions != null) {
            files = files.withDecisions(readable("--decisions", decisions));
        }
        Path folder = Objects.requireNonNull(out);
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw badUsage("--out: " + folder + " is a file; name a folder.");
        }
        try {
            report(new Evaluation(options, folder, workings, validity, programme).run(files), options, folder);
            return ExitCode.OK;
        } catch (UnusableFileException e) {
            error().println(e.getMessage());
            return ExitCode.USAGE;
        } catch (IOException | UncheckedIOException e) {
            error().println("The evaluation stopped: a file could not be read or written (" + e.getMessage()
                    + "). What stands in " + folder + " is not complete.");
            return ExitCode.SOFTWARE;
        }
    }

    private RuleSet ruleSet() {
        RuleSet ruleSet = RuleSets.find(rules)
                .orElseThrow(() ->
                        badUsage("--rules: there is no rule set " + rules + "; there is " + RuleSets.words() + "."));
        try {
            return RuleSets.with(ruleSet, settings);
        } catch (IllegalArgumentException e) {
            throw badUsage("--setting: " + e.getMessage() + ".");
        }
    }

    private Holidays holidays() {
        if (holidays == null) {
            return Holidays.NONE;
        }
        readable("--holidays", holidays);
        Set<LocalDate> days = new HashSet<>();
        try {
            List<String> lines = Files.readAllLines(holidays);
            for (int i = 0; i < lines.size(); i++) {
                String line = withoutByteOrderMark(lines.get(i)).strip();
                if (!line.isEmpty()) {
                    days.add(date("--holidays: " + holidays + ", line " + (i + 1), line));
                }
            }
        } catch (IOException e) {
            throw badUsage("--holidays: " + holidays + " could not be read as text in UTF-8.");
        }
        return new Holidays(days);
    }

    /** Spreadsheets and editors may begin a text with it. */
    private static String withoutByteOrderMark(String line) {
        return line.startsWith("\uFEFF") ? line.substring(1) : line;
    }

    private void report(Evaluation.Result result, JudgingOptions options, Path folder) {
        PrintWriter output = commandSpec().commandLine().getOut();
        output.printf(
                "As of %s: %s for %s, in %s.%n",
                options.asOf(),
                Counted.of(result.determinations(), "determination", "determinations"),
                Counted.of(result.workers(), "worker", "workers"),
                folder);
        if (!result.problems().isEmpty()) {
            output.printf(
                    "problems.csv has %s.%n",
                    result.problems().entrySet().stream()
                            .map(entry -> Counted.of(entry.getValue(), "line", "lines") + " saying \""
                                    + entry.getKey().words() + "\"")
                            .collect(Collectors.joining(", ")));
        }
        output.flush();
    }

    private <E extends Enum<E>> E oneOf(Class<E> type, String option, String word) {
        for (E value : type.getEnumConstants()) {
            if (wordOf(value).equals(word)) {
                return value;
            }
        }
        String words = Arrays.stream(type.getEnumConstants())
                .map(EvaluateCommand::wordOf)
                .collect(Collectors.joining(", "));
        throw badUsage(option + ": " + word + " is none of the words it takes, which are " + words + ".");
    }

    private static String wordOf(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private LocalDate day() {
        if (asOf == null) {
            return LocalDate.now();
        }
        return date("--as-of", asOf);
    }

    private LocalDate date(String where, String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw badUsage(where + ": " + text + " is no day of the calendar; write it like 2026-03-09.");
        }
    }

    private SourceFile readable(String option, @Nullable Path path) {
        Path file = Objects.requireNonNull(path);
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            throw badUsage(option + ": there is no readable file " + file + ".");
        }
        return SourceFile.of(file);
    }

    private ParameterException badUsage(String message) {
        return new ParameterException(commandSpec().commandLine(), message);
    }

    private PrintWriter error() {
        return commandSpec().commandLine().getErr();
    }

    private CommandSpec commandSpec() {
        return Objects.requireNonNull(spec);
    }
}
