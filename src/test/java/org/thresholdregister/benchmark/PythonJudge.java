package org.thresholdregister.benchmark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Judges files by {@code judge.py}, in a process of its own. */
final class PythonJudge {

    static final String TIMINGS = "--timings";

    private static final Path SCRIPT = Path.of("src/test/python/judge.py");

    private PythonJudge() {}

    /** What {@code python3} says of its version, where it is there. */
    static Optional<String> version() {
        return ProcessRun.tryToRun("python3", "--version").map(String::strip);
    }

    static List<String> command(JudgingTask task) {
        List<String> command = new ArrayList<>(List.of("python3", SCRIPT.toString(), TIMINGS));
        command.addAll(task.arguments());
        return command;
    }
}
