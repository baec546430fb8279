package org.thresholdregister.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.thresholdregister.core.columnar.PopulationBuilder;

/**
 * Which rows of an audiograms file the tests of a population come from. Filled row by row, then settled once: tests that
 * contradict each other are taken out of the population again.
 */
final class AudiogramRegister {

    /**
     * A row of a test that has several.
     *
     * @param group all of them, in the order of the file
     */
    private record RepeatedRow(int test, int[] group, boolean contradicts) {}

    private final PopulationBuilder population;
    private int size;
    private int[] lines = new int[1024];
    private long[] hashes = new long[1024];

    AudiogramRegister(PopulationBuilder population) {
        this.population = population;
    }

    void add(int worker, AudiogramRow row) {
        add(population.addTest(worker, row.audiogram()), row.line(), row.contentHash());
    }

    /** @param test the number that the population has just given to the test */
    void add(int test, int line, long contentHash) {
        if (test == lines.length) {
            lines = Arrays.copyOf(lines, test + (test >> 1));
            hashes = Arrays.copyOf(hashes, test + (test >> 1));
        }
        lines[test] = line;
        hashes[test] = contentHash;
        size = test + 1;
    }

    /**
     * Settles which tests stand in the file twice, once all of it has arrived: rows that are the same count once,
     * others count for nothing. Reports both in the order of the file.
     *
     * @return the lines of the rows that count
     */
    BitSet settle(String file, ProblemSink problems) {
        for (RepeatedRow row : repeatedRows()) {
            if (row.contradicts || row.test != row.group[0]) {
                problems.report(problem(row, file));
                population.dropTest(row.test);
            }
        }
        BitSet kept = new BitSet();
        for (int test = 0; test < size; test++) {
            if (!population.isDropped(test)) {
                kept.set(lines[test]);
            }
        }
        lines = new int[0];
        hashes = new long[0];
        return kept;
    }

    /** In the order of the file. */
    private List<RepeatedRow> repeatedRows() {
        List<RepeatedRow> rows = new ArrayList<>();
        for (int[] group : population.repeatedTests()) {
            boolean contradicts = IntStream.of(group).anyMatch(test -> hashes[test] != hashes[group[0]]);
            for (int test : group) {
                rows.add(new RepeatedRow(test, group, contradicts));
            }
        }
        rows.sort(Comparator.comparingInt(RepeatedRow::test));
        return rows;
    }

    private RowProblem problem(RepeatedRow row, String file) {
        int line = lines[row.test];
        return new RowProblem(
                Table.AUDIOGRAMS,
                file,
                line,
                AudiogramColumn.WORKER_ID.columnName(),
                population.workerId(population.workerOfTest(row.test)),
                row.contradicts ? ProblemKind.CONTRADICTING_TESTS : ProblemKind.SAME_ROW_AGAIN,
                row.contradicts
                        ? OtherLines.names(line, IntStream.of(row.group).map(test -> lines[test]))
                        : Integer.toString(lines[row.group[0]]),
                row.contradicts ? Effect.ROW_LEFT_OUT : Effect.NOTE);
    }
}
