package org.thresholdregister.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.judging.WorkerFacts;

/**
 * The workers of a file set, packed into columns: hundreds of thousands fit into a small heap. Each has a number, in
 * the order of arrival.
 */
final class WorkerRegister {

    static final int UNKNOWN = -1;

    private static final int NO_DATE = Integer.MIN_VALUE;
    private static final byte NO_SEX = -1;
    private static final Sex[] SEXES = Sex.values();

    /** A row of a worker who has several. */
    private record RepeatedRow(int line, int worker) {}

    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<String, String> places = new HashMap<>();
    private final BitSet contradictory = new BitSet();
    /** The rows of each worker with more than one. */
    private final Map<Integer, List<Integer>> repeatedLines = new HashMap<>();

    private int size;
    private String[] ids = new String[1024];
    private String[] sites = new String[1024];
    private String[] departments = new String[1024];
    private int[] birthDates = new int[1024];
    private int[] enrolledFrom = new int[1024];
    private int[] endDates = new int[1024];
    private byte[] sexes = new byte[1024];
    private int[] lines = new int[1024];
    private long[] hashes = new long[1024];
    private int[] byId = {};

    /** Takes a row of the roster file. */
    void add(RosterRow row) {
        Integer known = numbers.get(row.workerId());
        if (known == null) {
            int worker = append(row.facts());
            sites[worker] = place(row.site());
            departments[worker] = place(row.department());
            lines[worker] = row.line();
            hashes[worker] = row.contentHash();
            return;
        }
        repeatedLines
                .computeIfAbsent(known, worker -> new ArrayList<>(List.of(lines[worker])))
                .add(row.line());
        if (hashes[known] != row.contentHash()) {
            contradictory.set(known);
        }
    }

    /** Takes a worker who is on record without a row in the file, and gives the worker's number. */
    int addExisting(WorkerFacts facts) {
        int worker = append(facts);
        sites[worker] = "";
        departments[worker] = "";
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
        for (int worker = 0; worker < size; worker++) {
            if (contradictory.get(worker)) {
                numbers.remove(ids[worker]);
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
        String column = RosterColumn.WORKER_ID.columnName();
        return new RowProblem(Table.ROSTER, file, row.line(), column, ids[row.worker()], kind, detail, effect);
    }

    /** The number of a worker who counts, or {@link #UNKNOWN}. */
    int find(String workerId) {
        @Nullable Integer worker = numbers.get(workerId);
        return worker == null ? UNKNOWN : worker;
    }

    WorkerFacts facts(int worker) {
        byte sex = sexes[worker];
        return new WorkerFacts(
                ids[worker],
                date(birthDates[worker]),
                sex == NO_SEX ? Optional.empty() : Optional.of(SEXES[sex]),
                date(enrolledFrom[worker]),
                date(endDates[worker]));
    }

    String site(int worker) {
        return sites[worker];
    }

    String department(int worker) {
        return departments[worker];
    }

    /** How many workers have arrived, those included who do not count. */
    int size() {
        return size;
    }

    /** The numbers of all workers who count, by code point order of their ids. */
    int[] inOrderOfId() {
        if (byId.length != numbers.size()) {
            byId = numbers.entrySet().stream()
                    .sorted(Map.Entry.comparingByKey(CodePointOrder.COMPARATOR))
                    .mapToInt(Map.Entry::getValue)
                    .toArray();
        }
        return byId;
    }

    private int append(WorkerFacts facts) {
        if (size == ids.length) {
            grow(size + (size >> 1));
        }
        int worker = size++;
        numbers.put(facts.workerId(), worker);
        ids[worker] = facts.workerId();
        birthDates[worker] = day(facts.birthDate());
        enrolledFrom[worker] = day(facts.enrolledFrom());
        endDates[worker] = day(facts.endDate());
        sexes[worker] = facts.sex().map(sex -> (byte) sex.ordinal()).orElse(NO_SEX);
        return worker;
    }

    private void grow(int capacity) {
        ids = Arrays.copyOf(ids, capacity);
        sites = Arrays.copyOf(sites, capacity);
        departments = Arrays.copyOf(departments, capacity);
        birthDates = Arrays.copyOf(birthDates, capacity);
        enrolledFrom = Arrays.copyOf(enrolledFrom, capacity);
        endDates = Arrays.copyOf(endDates, capacity);
        sexes = Arrays.copyOf(sexes, capacity);
        lines = Arrays.copyOf(lines, capacity);
        hashes = Arrays.copyOf(hashes, capacity);
    }

    /** The same few names come again and again: they are kept once. */
    private String place(String name) {
        String same = places.putIfAbsent(name, name);
        return same == null ? name : same;
    }

    private static int day(Optional<LocalDate> date) {
        return date.map(day -> (int) day.toEpochDay()).orElse(NO_DATE);
    }

    private static Optional<LocalDate> date(int day) {
        return day == NO_DATE ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(day));
    }
}
