package org.thresholdregister.intake;

import java.io.IOException;
import java.time.LocalDate;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.thresholdregister.core.columnar.Population;
import org.thresholdregister.core.columnar.PopulationBuilder;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.intake.TableReader.PlainRowsFactory;

/**
 * All that counts of a file set, read once and packed: the workers, their tests and the decisions about them. What it
 * holds does not depend on the order of the rows. Texts that no rule needs (names, testers, remarks) are not held; whoever
 * stores them reads the file a second time and asks {@link #keeps}.
 */
public final class Intake {

    private final PopulationBuilder population = new PopulationBuilder();
    private final WorkerRegister workers = new WorkerRegister(population);
    private final Bytes plainRows;
    private final Map<Table, BitSet> keptLines = new EnumMap<>(Table.class);
    private final Map<Table, Integer> rowsRead = new EnumMap<>(Table.class);

    /** Whether rows without a doubt may be taken as bytes. The outcome is the same, and comes much later otherwise. */
    enum Bytes {
        TAKEN,
        NEVER_TAKEN
    }

    private Intake(Bytes plainRows) {
        this.plainRows = plainRows;
    }

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
        return read(files, asOf, existing, problems, Bytes.TAKEN);
    }

    static Intake read(FileSet files, LocalDate asOf, ExistingRecords existing, ProblemSink problems, Bytes plainRows)
            throws IOException, UnusableFileException {
        Intake intake = new Intake(plainRows);
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
        PlainRowsFactory<RosterColumn> plain = (header, separator, encoding) -> new PlainWorkers(
                new PlainRow<>(header, RosterColumn.values(), separator, encoding), day(asOf), population, workers);
        int rows = new RosterReader(asOf, problems).read(file, whereTaken(plain), workers::add);
        rowsRead.put(Table.ROSTER, rows);
        keptLines.put(Table.ROSTER, workers.settle(file.name(), problems));
    }

    private void readAudiograms(SourceFile file, LocalDate asOf, ExistingRecords known, ProblemSink problems)
            throws IOException, UnusableFileException {
        AudiogramRegister register = new AudiogramRegister(population);
        PlainRowsFactory<AudiogramColumn> plain = (header, separator, encoding) -> new PlainTests(
                new PlainRow<>(header, AudiogramColumn.values(), separator, encoding), day(asOf), population, register);
        int rows = new AudiogramReader(asOf, known, problems)
                .read(file, whereTaken(plain), row -> register.add(number(row.workerId(), known), row));
        rowsRead.put(Table.AUDIOGRAMS, rows);
        keptLines.put(Table.AUDIOGRAMS, register.settle(file.name(), problems));
    }

    private void readDecisions(SourceFile file, LocalDate asOf, ExistingRecords known, ProblemSink problems)
            throws IOException, UnusableFileException {
        DecisionRegister register = new DecisionRegister();
        DecisionReader reader = new DecisionReader(asOf, known, problems);
        rowsRead.put(Table.DECISIONS, reader.read(file, row -> register.add(number(row.workerId(), known), row)));
        keptLines.put(Table.DECISIONS, register.settle(file.name(), problems));
        register.byWorker()
                .forEach((worker, decided) -> decided.forEach(decision -> population.addDecision(worker, decision)));
    }

    private <C extends Enum<C> & Column> PlainRowsFactory<C> whereTaken(PlainRowsFactory<C> factory) {
        return plainRows == Bytes.TAKEN ? factory : (header, separator, encoding) -> PlainRows.NONE;
    }

    /** A day so far away that it is no {@code int} is as far as one can be. */
    private static int day(LocalDate date) {
        return Math.clamp(date.toEpochDay(), Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    private int number(String workerId, ExistingRecords known) {
        int worker = workers.find(workerId);
        return worker == PopulationBuilder.NO_WORKER
                ? workers.addExisting(known.worker(workerId).orElseThrow())
                : worker;
    }

    /**
     * Every worker of the roster file, tested or not, and those on record of whom a file says something. Put together
     * at each call.
     */
    public Population population() {
        return population.build();
    }

    /** The histories of the {@link #population}, in its order. Each is put together when it is reached. */
    public Stream<WorkerHistory> histories() {
        Population built = population();
        return IntStream.range(0, built.workerCount()).mapToObj(built::history);
    }

    /**
     * The worker's site by the roster file; empty where none is given.
     *
     * @param worker the number of {@link Population#numberInBuilder}
     */
    public String siteOf(int worker) {
        return workers.site(worker);
    }

    /**
     * The worker's department by the roster file; empty where none is given.
     *
     * @param worker the number of {@link Population#numberInBuilder}
     */
    public String departmentOf(int worker) {
        return workers.department(worker);
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
            return worker == PopulationBuilder.NO_WORKER
                    ? existing.worker(workerId)
                    : Optional.of(population.facts(worker));
        }

        @Override
        public boolean hasTestOn(String workerId, LocalDate date) {
            int worker = workers.find(workerId);
            return worker != PopulationBuilder.NO_WORKER && population.hasTestOn(worker, day(date))
                    || existing.hasTestOn(workerId, date);
        }
    }
}
