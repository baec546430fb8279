package org.thresholdregister.batch;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.columnar.JudgedPopulation;
import org.thresholdregister.core.columnar.JudgedRow;
import org.thresholdregister.core.columnar.Population;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.YearSummary;

/**
 * Writes the rows of {@code determinations.csv} and {@code followups.csv} about a judged population, and counts for its
 * summary. All processors put rows together, each for some of the workers at a time; the caller's thread writes what is
 * ready, in order.
 */
final class ColumnarResults {

    private static final int WORKERS_OF_A_PART = 1 << 10;
    private static final int PROCESSORS = Runtime.getRuntime().availableProcessors();

    /** More than can be worked on, so that no processor waits while a part is being written. */
    private static final int MOST_PARTS = PROCESSORS + 2;

    private static final Ear[] EARS = Ear.values();

    private final JudgedPopulation judged;
    private final Population population;
    private final List<Group> groups;
    private final OutputStream determinations;
    private final OutputStream followUps;
    private final List<Part> parts = new ArrayList<>();

    /**
     * @param groups the smallest group of each worker
     * @param determinations behind the header row
     * @param followUps behind the header row
     */
    ColumnarResults(JudgedPopulation judged, List<Group> groups, OutputStream determinations, OutputStream followUps) {
        this.judged = judged;
        this.population = judged.population();
        this.groups = groups;
        this.determinations = determinations;
        this.followUps = followUps;
    }

    /** Writes everything, and gives how many determinations there are. */
    int writeTo(YearSummary summary) throws IOException {
        Deque<Future<Part>> underWay = new ArrayDeque<>();
        try (ExecutorService processors = Executors.newFixedThreadPool(PROCESSORS)) {
            for (int worker = 0; worker < population.workerCount(); worker += WORKERS_OF_A_PART) {
                Part part = underWay.size() == MOST_PARTS ? write(underWay.remove()) : newPart();
                int first = worker;
                underWay.add(processors.submit(() -> part.fill(first)));
            }
            while (!underWay.isEmpty()) {
                write(underWay.remove());
            }
        }
        int rows = 0;
        for (Part part : parts) {
            rows += part.determinationCount;
            part.counts.addTo(summary);
        }
        return rows;
    }

    private Part newPart() {
        Part part = new Part();
        parts.add(part);
        return part;
    }

    /** Waits for the part, writes it and gives it for use again. */
    private Part write(Future<Part> filled) throws IOException {
        try {
            Part part = filled.get();
            part.determinationBytes.writeTo(determinations);
            part.followUpBytes.writeTo(followUps);
            return part;
        } catch (ExecutionException failure) {
            throw new IllegalStateException("rows could not be put together", failure.getCause());
        } catch (InterruptedException interruption) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("interrupted while rows were put together");
        }
    }

    /** The rows about some of the workers. Used again and again, by one thread at a time. */
    private final class Part {
        private final RowBytes determinationBytes = new RowBytes();
        private final RowBytes followUpBytes = new RowBytes();
        private final DeterminationRows determinationRows = new DeterminationRows(judged);
        private final FollowUpRows followUpRows = new FollowUpRows(judged);
        private final SummaryCounts counts = new SummaryCounts(population);
        private final JudgedRow row = judged.newRow();
        private int determinationCount;

        Part fill(int firstWorker) {
            determinationBytes.clear();
            followUpBytes.clear();
            int end = Math.min(firstWorker + WORKERS_OF_A_PART, population.workerCount());
            for (int worker = firstWorker; worker < end; worker++) {
                byte[] workerId = CsvCells.of(population.workerId(worker));
                addDeterminations(worker, workerId);
                followUpRows.add(worker, workerId, followUpBytes);
            }
            return this;
        }

        private void addDeterminations(int worker, byte[] workerId) {
            counts.beginWorker(groups.get(worker));
            for (int test = population.firstTest(worker); test < population.endOfTests(worker); test++) {
                for (Ear ear : EARS) {
                    if (row.moveTo(worker, test, ear)) {
                        determinationRows.add(workerId, row, determinationBytes);
                        counts.see(row);
                        determinationCount++;
                    }
                }
            }
            counts.endWorker();
        }
    }
}
