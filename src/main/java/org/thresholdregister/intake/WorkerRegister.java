package org.thresholdregister.intake;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.thresholdregister.core.columnar.PopulationBuilder;
import org.thresholdregister.core.judging.WorkerFacts;

/**
 * The workers of a file set: what the rules need goes to the population that is being built, whose numbers of workers
 * are used here too; beside it stands where they work, and which rows of the roster file told of them.
 */
final class WorkerRegister {

    /** A row of a worker who has several. */
    private record RepeatedRow(int line, int worker) {}

    private final PopulationBuilder population;
    /** The same few names come again and again: they are kept once. */
    private final Map<String, String> places = new HashMap<>();

    private final BitSet contradictory = new BitSet();
    /** The rows of each worker with more than one. */
    private final Map<Integer, List<Integer>> repeatedLines = new HashMap<>();

    private String[] sites = new String[1024];
    private String[] departments = new String[1024];
    private int[] lines = new int[1024];
    private long[] hashes = new long[1024];

    WorkerRegister(PopulationBuilder population) {
        this.population = population;
    }

    /** Takes a row of the roster file. */
    void add(RosterRow row) {
        byte[] id = row.workerId().getBytes(StandardCharsets.UTF_8);
        int worker = add(id, 0, id.length, row.line(), row.contentHash());
        if (worker != PopulationBuilder.NO_WORKER) {
            population.setFacts(worker, row.facts());
            setPlace(worker, row.site(), row.department());
        }
    }

    /**
     * Takes a row of the roster file about the worker with this id in UTF-8.
     *
     * @return the worker's number, for what the row says; or {@link PopulationBuilder#NO_WORKER} where an earlier row
     *     has said it
     */
    int add(byte[] id, int from, int to, int line, long contentHash) {
        int known = population.workersAdded();
        int worker = population.worker(id, from, to);
        if (worker == known) {
            makeRoomFor(worker);
            lines[worker] = line;
            hashes[worker] = contentHash;
            return worker;
        }
        repeatedLines
                .computeIfAbsent(worker, repeated -> new ArrayList<>(List.of(lines[repeated])))
                .add(line);
        if (hashes[worker] != contentHash) {
            contradictory.set(worker);
        }
        return PopulationBuilder.NO_WORKER;
    }

    void setPlace(int worker, String site, String department) {
        sites[worker] = once(site);
        departments[worker] = once(department);
    }

    /** Takes a worker who is on record without a row in the file, and gives the worker's number. */
    int addExisting(WorkerFacts facts) {
        int worker = population.worker(facts.workerId());
        makeRoomFor(worker);
        population.setFacts(worker, facts);
        setPlace(worker, "", "");
        return worker;
    }

    /**
     * Settles who stands in the roster twice, once all of it has arrived: rows that are the same count once, others
     * count for nothing. Reports both in the order of the file.
     *
     * @return the lines of the rows that count
     */
    BitSet settle(String file, ProblemSink problems) {
        BitSet kept = new BitSet();
        for (int worker = 0; worker < population.workersAdded(); worker++) {
            if (contradictory.get(worker)) {
                population.removeWorker(worker);
            } else {
                kept.set(lines[worker]);
            }
        }
        List<RepeatedRow> repeated = new ArrayList<>();
        repeatedLines.forEach((worker, all) -> all.forEach(line -> repeated.add(new RepeatedRow(line, worker))));
        repeated.sort(Comparator.comparingInt(RepeatedRow::line));
        for (RepeatedRow row : repeated) {
            report(row, file, problems);
        }
        repeatedLines.clear();
        lines = new int[0];
        hashes = new long[0];
        return kept;
    }

    private void report(RepeatedRow row, String file, ProblemSink problems) {
        List<Integer> all = repeatedLines.getOrDefault(row.worker(), List.of());
        if (contradictory.get(row.worker())) {
            String others = OtherLines.names(row.line(), all.stream().mapToInt(Integer::intValue));
            problems.report(problem(row, file, ProblemKind.CONTRADICTING_WORKERS, others, Effect.ROW_LEFT_OUT));
        } else if (row.line() != all.getFirst()) {
            String first = all.getFirst().toString();
            problems.report(problem(row, file, ProblemKind.SAME_ROW_AGAIN, first, Effect.NOTE));
        }
    }

    private RowProblem problem(RepeatedRow row, String file, ProblemKind kind, String detail, Effect effect) {
        return new RowProblem(
                Table.ROSTER,
                file,
                row.line(),
                RosterColumn.WORKER_ID.columnName(),
                population.workerId(row.worker()),
                kind,
                detail,
                effect);
    }

    /** The number of a worker who counts, or {@link PopulationBuilder#NO_WORKER}. */
    int find(String workerId) {
        byte[] id = workerId.getBytes(StandardCharsets.UTF_8);
        return population.findWorker(id, 0, id.length);
    }

    String site(int worker) {
        return sites[worker];
    }

    String department(int worker) {
        return departments[worker];
    }

    private void makeRoomFor(int worker) {
        if (worker < sites.length) {
            return;
        }
        int capacity = worker + (worker >> 1);
        sites = Arrays.copyOf(sites, capacity);
        departments = Arrays.copyOf(departments, capacity);
        lines = Arrays.copyOf(lines, capacity);
        hashes = Arrays.copyOf(hashes, capacity);
    }

    private String once(String name) {
        String same = places.putIfAbsent(name, name);
        return same == null ? name : same;
    }
}
