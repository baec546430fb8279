package org.thresholdregister.sample;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The committed sample, read once from its files and from nothing else. */
final class SampleFiles {

    static final Path DIRECTORY = Path.of("sample-roster");
    static final List<Row> ROSTER = Row.allOf(DIRECTORY.resolve("roster.csv"));
    static final List<Row> AUDIOGRAMS = Row.allOf(DIRECTORY.resolve("audiograms.csv"));
    static final List<Row> DECISIONS = Row.allOf(DIRECTORY.resolve("decisions.csv"));
    static final Map<String, WorkerFile> WORKERS = workers();

    private SampleFiles() {}

    static WorkerFile worker(String id) {
        WorkerFile worker = WORKERS.get(id);
        if (worker == null) {
            throw new IllegalArgumentException("not on the roster: " + id);
        }
        return worker;
    }

    private static Map<String, WorkerFile> workers() {
        Map<String, List<Row>> tests = byWorker(AUDIOGRAMS);
        Map<String, List<Row>> decisions = byWorker(DECISIONS);
        Map<String, WorkerFile> workers = new TreeMap<>();
        for (Row line : ROSTER) {
            String id = line.get("worker_id");
            workers.put(
                    id, new WorkerFile(line, tests.getOrDefault(id, List.of()), decisions.getOrDefault(id, List.of())));
        }
        return workers;
    }

    private static Map<String, List<Row>> byWorker(List<Row> rows) {
        return rows.stream().collect(Collectors.groupingBy(row -> row.get("worker_id")));
    }
}
