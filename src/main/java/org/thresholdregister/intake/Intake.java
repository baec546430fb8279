package org.thresholdregister.intake;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;

/**
 * All that counts of a file set, read once and packed: the workers, their tests and the decisions about them. What it
 * holds does not depend on the order of the rows. Texts that no rule needs (names, testers, remarks) are not held; whoever
 * stores them reads the file a second time and asks {@link #keeps}.
 */
public final class Intake {

    private final WorkerRegister workers = new WorkerRegister();
    private final AudiogramRegister audiograms = new AudiogramRegister();
    private Map<Integer, List<Decision>> decisions = Map.of();
    private final Map<Table, BitSet> keptLines = new EnumMap<>(Table.class);
    private final Map<Table, Integer> rowsRead = new EnumMap<>(Table.class);

    private Intake() {}

    /** Reads files that stand alone; the roster is all there is of workers. */
    public static Intake read(FileSet files, LocalDate asOf, ProblemSink problems)
            throws IOException, UnusableFileException {
        return read(files, asOf, ExistingRecords.none(), problems);
    }

    /**
     * Reads files that add to what is on record: tests may be of workers who are on record and not on the roster file.
     *
     * @param asOf the day for which all is read; what is dated later is left out
     */
    public static Intake read(FileSet files, LocalDate asOf, ExistingRecords existing, ProblemSink problems)
            throws IOException, UnusableFileException {
        Intake intake = new Intake();
        if (files.roster().isPresent()) {
            intake.readRoster(files.roster().get(), asOf, problems);
        }
        ExistingRecords known = intake.new Known(existing);
        if (files.audiograms().isPresent()) {
            intake.readAudiograms(files.audiograms().get(), asOf, known, problems);
        }
        if (files.decisions().isPresent()) {
            intake.readDecisions(files.decisions().get(), asOf, known, problems);
        }
        return intake;
    }

    private void readRoster(SourceFile file, LocalDate asOf, ProblemSink problems)
            throws IOException, UnusableFileException {
        rowsRead.put(Table.ROSTER, new RosterReader(asOf, problems).read(file, workers::add));
        keptLines.put(Table.ROSTER, workers.settle(file.name(), problems));
    }

    private void readAudiograms(SourceFile file, LocalDate asOf, ExistingRecords known, ProblemSink problems)
            throws IOException, UnusableFileException {
        AudiogramReader reader = new AudiogramReader(asOf, known, problems);
        int rows = reader.read(file, row -> audiograms.add(number(row.workerId(), known), row));
        rowsRead.put(Table.AUDIOGRAMS, rows);
        keptLines.put(Table.AUDIOGRAMS, audiograms.settle(file.name(), workers, problems));
    }

    private void readDecisions(SourceFile file, LocalDate asOf, ExistingRecords known, ProblemSink problems)
            throws IOException, UnusableFileException {
        DecisionRegister register = new DecisionRegister();
        DecisionReader reader = new DecisionReader(asOf, known, problems);
        rowsRead.put(Table.DECISIONS, reader.read(file, row -> register.add(number(row.workerId(), known), row)));
        keptLines.put(Table.DECISIONS, register.settle(file.name(), problems));
        decisions = register.byWorker();
    }

    private int number(String workerId, ExistingRecords known) {
        int worker = workers.find(workerId);
        return worker == WorkerRegister.UNKNOWN
                ? workers.addExisting(known.worker(workerId).orElseThrow())
                : worker;
    }

    /** How many workers {@link #histories} gives. */
    public int workerCount() {
        return workers.inOrderOfId().length;
    }

    /**
     * The history of every worker of the roster file, tested or not, and of those on record of whom a file says
     * something; in the order of their ids by Unicode code points. Each is put together when it is reached.
     */
    public Stream<WorkerHistory> histories() {
        return Arrays.stream(workers.inOrderOfId()).mapToObj(this::history);
    }

    /** One worker's history, as {@link #histories} gives it. */
    public Optional<WorkerHistory> history(String workerId) {
        int worker = workers.find(workerId);
        return worker == WorkerRegister.UNKNOWN ? Optional.empty() : Optional.of(history(worker));
    }

    private WorkerHistory history(int worker) {
        return new WorkerHistory(
                workers.facts(worker), audiograms.audiograms(worker), decisions.getOrDefault(worker, List.of()));
    }

    /** The worker's site by the roster file; empty where none is given. */
    public String siteOf(String workerId) {
        int worker = workers.find(workerId);
        return worker == WorkerRegister.UNKNOWN ? "" : workers.site(worker);
    }

    /** The worker's department by the roster file; empty where none is given. */
    public String departmentOf(String workerId) {
        int worker = workers.find(workerId);
        return worker == WorkerRegister.UNKNOWN ? "" : workers.department(worker);
    }

    /** Whether the row at this line counts: it was not left out, and is not a repetition of an earlier one. */
    public boolean keeps(Table table, int line) {
        return kept(table).get(line);
    }

    /** How many rows of the file count. */
    public int rowsKept(Table table) {
        return kept(table).cardinality();
    }

    /** How many rows the file has, blank ones not counted. */
    public int rowsRead(Table table) {
        return rowsRead.getOrDefault(table, 0);
    }

    private BitSet kept(Table table) {
        return keptLines.getOrDefault(table, new BitSet());
    }

    /** What the files say of workers and tests, and beyond them what is on record; for reading a file a second time. */
    ExistingRecords known(ExistingRecords existing) {
        return new Known(existing);
    }

    /** What the files say, before what is on record. */
    private final class Known implements ExistingRecords {
        private final ExistingRecords existing;

        Known(ExistingRecords existing) {
            this.existing = existing;
        }

        @Override
        public Optional<WorkerFacts> worker(String workerId) {
            int worker = workers.find(workerId);
            return worker == WorkerRegister.UNKNOWN ? existing.worker(workerId) : Optional.of(workers.facts(worker));
        }

        @Override
        public boolean hasTestOn(String workerId, LocalDate date) {
            int worker = workers.find(workerId);
            return worker != WorkerRegister.UNKNOWN && audiograms.hasTestOn(worker, date)
                    || existing.hasTestOn(workerId, date);
        }
    }
}
