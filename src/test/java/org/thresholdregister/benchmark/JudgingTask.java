package org.thresholdregister.benchmark;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** What everyone is asked to do: judge these files as of that day and write the determinations there. */
public record JudgingTask(Path roster, Path audiograms, LocalDate asOf, Path determinations) {

    static final String DETERMINATIONS = "determinations.csv";

    static JudgingTask of(BenchmarkFiles files, Path determinations) {
        return new JudgingTask(files.roster(), files.audiograms(), BenchmarkFiles.AS_OF, determinations);
    }

    /** Reads what {@link #arguments} wrote. */
    static JudgingTask parse(String... arguments) {
        return new JudgingTask(
                Path.of(arguments[1]), Path.of(arguments[3]), LocalDate.parse(arguments[7]), Path.of(arguments[5]));
    }

    List<String> arguments() {
        return List.of(
                "--roster",
                roster.toString(),
                "--audiograms",
                audiograms.toString(),
                "--out",
                determinations.toString(),
                "--as-of",
                asOf.toString());
    }

    /** The same for {@code register evaluate}, which names its files itself and is told the folder only. */
    JudgingTask withFolder() {
        return new JudgingTask(roster, audiograms, asOf, determinations.getParent());
    }
}
