package org.thresholdregister.intake;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.SupersededTest;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.DecisionStore;
import org.thresholdregister.review.DeterminationChange;
import org.thresholdregister.review.LateEntry;
import org.thresholdregister.review.LateEntryStore;
import org.thresholdregister.review.RecordedDecision;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;

/** Reads files and works out what storing them would change. It stores nothing. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ImportPlanner {

    private static final int WORKERS_AT_A_TIME = 500;

    private final WorkerStore workers;
    private final TestStore tests;
    private final DecisionStore decisions;
    private final LateEntryStore lateEntries;

    ImportPlanner(WorkerStore workers, TestStore tests, DecisionStore decisions, LateEntryStore lateEntries) {
        this.workers = workers;
        this.tests = tests;
        this.decisions = decisions;
        this.lateEntries = lateEntries;
    }

    ImportPlan plan(FileSet files, LocalDate asOf, ImportRights rights) throws IOException, UnusableFileException {
        return new Planning(files, asOf, rights).plan();
    }

    private record TestDay(LocalDate date, TestPurpose purpose) {}

    /** One planning, and what it has found so far. */
    private final class Planning {
        private final FileSet files;
        private final LocalDate asOf;
        private final ImportRights rights;
        private final ExistingRecords existing;
        private final ProblemList problems = new ProblemList();
        private final Set<String> refusedWorkers = new HashSet<>();
        private final Map<String, StoredWorker> storedWorkers = new HashMap<>();

        private final List<WorkerDetails> newWorkers = new ArrayList<>();
        private final List<WorkerDetails> changedWorkers = new ArrayList<>();
        private final List<WorkerChange> changes = new ArrayList<>();
        private final List<AudiogramRow> newTests = new ArrayList<>();
        private final List<DecisionRow> newDecisions = new ArrayList<>();
        /** The workers whose new tests may change what was determined about tests on record. */
        private final Set<String> lateWorkers = new LinkedHashSet<>();

        private int unchangedWorkers;
        private int unchangedTests;
        private int unchangedDecisions;

        Planning(FileSet files, LocalDate asOf, ImportRights rights) {
            this.files = files;
            this.asOf = asOf;
            this.rights = rights;
            this.existing = new RegisterRecords(workers, tests, rights.scope());
        }

        ImportPlan plan() throws IOException, UnusableFileException {
            Intake intake = Intake.read(files, asOf, existing, problems);
            if (files.roster().isPresent()) {
                planWorkers(files.roster().get(), intake);
            }
            if (files.audiograms().isPresent()) {
                planTests(files.audiograms().get(), intake);
            }
            if (files.decisions().isPresent()) {
                planDecisions(files.decisions().get(), intake);
            }
            List<RowProblem> found = problems.inFileOrder();
            return new ImportPlan(
                    new ImportCounts(
                            newWorkers.size(),
                            changedWorkers.size(),
                            unchangedWorkers,
                            newTests.size(),
                            unchangedTests,
                            newDecisions.size(),
                            unchangedDecisions,
                            rowsLeftOut(found)),
                    changes,
                    found,
                    lateChanges(),
                    newWorkers,
                    changedWorkers,
                    newTests,
                    newDecisions);
        }

        private void planWorkers(SourceFile file, Intake intake) throws IOException, UnusableFileException {
            List<RosterRow> rows = new ArrayList<>();
            new RosterReader(asOf, ProblemSink.ignoring()).read(file, row -> {
                if (intake.keeps(Table.ROSTER, row.line())) {
                    rows.add(row);
                }
            });
            inGroups(rows, group -> {
                lookUp(group.stream().map(RosterRow::workerId).toList());
                group.forEach(row -> planWorker(file, row));
            });
        }

        private void planWorker(SourceFile file, RosterRow row) {
            StoredWorker stored = storedWorkers.get(row.workerId());
            WorkerDetails after = stored == null ? RosterFacts.of(row) : RosterFacts.merged(stored.details(), row);
            boolean inScope = rights.scope().includes(after.siteIfGiven())
                    && (stored == null
                            || rights.scope().includes(stored.details().siteIfGiven()));
            if (!inScope) {
                leaveOut(
                        file,
                        Table.ROSTER,
                        row.line(),
                        RosterColumn.SITE,
                        row.site(),
                        ProblemKind.WORKER_OF_ANOTHER_SITE,
                        "");
                refusedWorkers.add(row.workerId());
            } else if (isTooLong(file, row)) {
                refusedWorkers.add(row.workerId());
            } else if (stored == null) {
                newWorkers.add(after);
            } else if (after.equals(stored.details())) {
                unchangedWorkers++;
            } else {
                changedWorkers.add(after);
                changes.add(RosterFacts.change(stored.details(), after));
            }
        }

        private boolean isTooLong(SourceFile file, RosterRow row) {
            WorkerDetails details = RosterFacts.of(row);
            boolean tooLong = false;
            for (RosterColumn column : RosterColumn.values()) {
                tooLong |= isTooLong(file, Table.ROSTER, row.line(), column, RosterFacts.text(details, column));
            }
            return tooLong;
        }

        private void planTests(SourceFile file, Intake intake) throws IOException, UnusableFileException {
            Map<String, List<AudiogramRow>> byWorker = new LinkedHashMap<>();
            new AudiogramReader(asOf, anyWorker(intake), ProblemSink.ignoring()).read(file, row -> {
                if (intake.keeps(Table.AUDIOGRAMS, row.line())) {
                    byWorker.computeIfAbsent(row.workerId(), worker -> new ArrayList<>())
                            .add(row);
                }
            });
            inGroups(List.copyOf(byWorker.keySet()), group -> {
                lookUp(group);
                Map<Long, List<RecordedTest>> recorded =
                        tests.ofWorkers(keysOf(group)).stream().collect(Collectors.groupingBy(RecordedTest::workerKey));
                Map<Long, List<SupersededTest>> superseded = tests.supersededOf(keysOf(group)).stream()
                        .collect(Collectors.groupingBy(former -> former.test().workerKey()));
                for (String workerId : group) {
                    Map<TestDay, RecordedTest> onRecord = of(workerId, recorded).stream()
                            .collect(Collectors.toMap(
                                    test -> new TestDay(
                                            test.audiogram().date(),
                                            test.audiogram().purpose()),
                                    Function.identity()));
                    int before = newTests.size();
                    byWorker.getOrDefault(workerId, List.of())
                            .forEach(row -> planTest(file, row, onRecord, of(workerId, superseded)));
                    if (newTests.subList(before, newTests.size()).stream()
                            .anyMatch(late -> bearsOnOthers(late.audiogram(), onRecord.values()))) {
                        lateWorkers.add(workerId);
                    }
                }
            });
        }

        /** A test bears on those on record that were made after it, and a retest on the one that it answers. */
        private static boolean bearsOnOthers(Audiogram test, Collection<RecordedTest> onRecord) {
            return onRecord.stream()
                    .map(RecordedTest::audiogram)
                    .anyMatch(recorded -> Audiogram.CHRONOLOGICAL.compare(test, recorded) < 0
                            || test.purpose() == TestPurpose.RETEST);
        }

        /** What these tests, with all that comes with them, would change about those on record. */
        private List<DeterminationChange> lateChanges() {
            if (lateWorkers.isEmpty()) {
                return List.of();
            }
            Map<String, List<Audiogram>> lateTests = newTests.stream()
                    .filter(row -> lateWorkers.contains(row.workerId()))
                    .collect(Collectors.groupingBy(
                            AudiogramRow::workerId, Collectors.mapping(AudiogramRow::audiogram, Collectors.toList())));
            Map<String, List<Decision>> withThem = newDecisions.stream()
                    .filter(row -> lateWorkers.contains(row.workerId()))
                    .collect(Collectors.groupingBy(
                            DecisionRow::workerId, Collectors.mapping(DecisionRow::decision, Collectors.toList())));
            Map<String, WorkerFacts> changedFacts = changedWorkers.stream()
                    .filter(worker -> lateWorkers.contains(worker.workerId()))
                    .collect(Collectors.toMap(WorkerDetails::workerId, WorkerDetails::facts));
            List<DeterminationChange> found = new ArrayList<>();
            inGroups(
                    lateWorkers.stream().sorted(CodePointOrder.COMPARATOR).toList(),
                    group -> found.addAll(lateEntries.changes(group.stream()
                            .flatMap(workerId -> Stream.ofNullable(storedWorkers.get(workerId)))
                            .map(worker -> new LateEntry(
                                    worker,
                                    changedFacts.getOrDefault(
                                            worker.details().workerId(),
                                            worker.details().facts()),
                                    lateTests.getOrDefault(worker.details().workerId(), List.of()),
                                    withThem.getOrDefault(worker.details().workerId(), List.of())))
                            .toList())));
            return List.copyOf(found);
        }

        private void planTest(
                SourceFile file,
                AudiogramRow row,
                Map<TestDay, RecordedTest> onRecord,
                List<SupersededTest> superseded) {
            if (refuses(file, Table.AUDIOGRAMS, row.line(), AudiogramColumn.WORKER_ID, row.workerId())
                    || isTooLong(file, row)) {
                return;
            }
            RecordedTest recorded = onRecord.get(
                    new TestDay(row.audiogram().date(), row.audiogram().purpose()));
            if (recorded == null) {
                superseded.stream()
                        .filter(former -> isOf(row, former.test())
                                && TestComparison.differences(row, former.test())
                                        .isEmpty())
                        .findFirst()
                        .ifPresentOrElse(
                                former -> leaveOut(
                                        file,
                                        Table.AUDIOGRAMS,
                                        row.line(),
                                        AudiogramColumn.TEST_DATE,
                                        row.audiogram().date().toString(),
                                        ProblemKind.SUPERSEDED_ON_RECORD,
                                        Words.day(former.on())),
                                () -> newTests.add(row));
                return;
            }
            List<AudiogramColumn> differing = TestComparison.differences(row, recorded);
            if (differing.isEmpty()) {
                unchangedTests++;
            } else {
                String columns =
                        differing.stream().map(AudiogramColumn::columnName).collect(Collectors.joining(", "));
                leaveOut(
                        file,
                        Table.AUDIOGRAMS,
                        row.line(),
                        differing.getFirst(),
                        "",
                        ProblemKind.DIFFERS_FROM_TEST_ON_RECORD,
                        columns);
            }
        }

        private static boolean isOf(AudiogramRow row, RecordedTest recorded) {
            return row.audiogram().date().equals(recorded.audiogram().date())
                    && row.audiogram().purpose() == recorded.audiogram().purpose();
        }

        private boolean isTooLong(SourceFile file, AudiogramRow row) {
            return isTooLong(file, Table.AUDIOGRAMS, row.line(), AudiogramColumn.TESTER, row.tester())
                    | isTooLong(file, Table.AUDIOGRAMS, row.line(), AudiogramColumn.INSTRUMENT, row.instrument())
                    | isTooLong(file, Table.AUDIOGRAMS, row.line(), AudiogramColumn.TRANSDUCER, row.transducer())
                    | isTooLong(file, Table.AUDIOGRAMS, row.line(), AudiogramColumn.REMARK, row.remark());
        }

        private void planDecisions(SourceFile file, Intake intake) throws IOException, UnusableFileException {
            Map<String, List<DecisionRow>> byWorker = new LinkedHashMap<>();
            new DecisionReader(asOf, anyWorker(intake), ProblemSink.ignoring()).read(file, row -> {
                if (intake.keeps(Table.DECISIONS, row.line())) {
                    byWorker.computeIfAbsent(row.workerId(), worker -> new ArrayList<>())
                            .add(row);
                }
            });
            inGroups(List.copyOf(byWorker.keySet()), group -> {
                lookUp(group);
                Map<Long, List<RecordedDecision>> recorded = decisions.ofWorkers(keysOf(group));
                for (String workerId : group) {
                    Set<Decision> onRecord = of(workerId, recorded).stream()
                            .map(RecordedDecision::decision)
                            .collect(Collectors.toSet());
                    byWorker.getOrDefault(workerId, List.of()).forEach(row -> planDecision(file, row, onRecord));
                }
            });
        }

        private void planDecision(SourceFile file, DecisionRow row, Set<Decision> onRecord) {
            Decision decision = row.decision();
            if (refuses(file, Table.DECISIONS, row.line(), DecisionColumn.WORKER_ID, row.workerId())
                    || isTooLong(file, Table.DECISIONS, row.line(), DecisionColumn.BY, decision.by())
                    || isTooLong(file, Table.DECISIONS, row.line(), DecisionColumn.REASON, decision.reason())) {
                return;
            }
            if (onRecord.contains(decision)) {
                unchangedDecisions++;
            } else if (rights.decisions().contains(decision.kind())) {
                newDecisions.add(row);
            } else {
                leaveOut(
                        file,
                        Table.DECISIONS,
                        row.line(),
                        DecisionColumn.KIND,
                        decision.kind().word(),
                        ProblemKind.DECISION_OF_ANOTHER_ROLE,
                        "");
            }
        }

        /** The first reading has seen to it that the rows kept are of known workers. */
        private ExistingRecords anyWorker(Intake intake) {
            return intake.known(existing);
        }

        /** A row about a worker whose roster row turned out to be left out. */
        private boolean refuses(SourceFile file, Table table, int line, Column column, String workerId) {
            if (refusedWorkers.contains(workerId)) {
                leaveOut(file, table, line, column, workerId, ProblemKind.UNKNOWN_WORKER, "");
                return true;
            }
            return false;
        }

        private boolean isTooLong(SourceFile file, Table table, int line, Column column, String text) {
            int most = TextLimits.mostCharacters(column);
            if (text.length() > most) {
                leaveOut(file, table, line, column, text, ProblemKind.TEXT_TOO_LONG_TO_KEEP, Integer.toString(most));
                return true;
            }
            return false;
        }

        private void leaveOut(
                SourceFile file, Table table, int line, Column column, String value, ProblemKind kind, String detail) {
            problems.report(new RowProblem(
                    table, file.name(), line, column.columnName(), value, kind, detail, Effect.ROW_LEFT_OUT));
        }

        private void lookUp(Collection<String> workerIds) {
            List<String> unseen = workerIds.stream()
                    .filter(workerId -> !storedWorkers.containsKey(workerId))
                    .toList();
            workers.withNumbers(unseen)
                    .forEach(worker -> storedWorkers.put(worker.details().workerId(), worker));
        }

        private List<Long> keysOf(Collection<String> workerIds) {
            return workerIds.stream()
                    .map(storedWorkers::get)
                    .filter(Objects::nonNull)
                    .map(StoredWorker::key)
                    .toList();
        }

        private <T> List<T> of(String workerId, Map<Long, List<T>> byKey) {
            StoredWorker worker = storedWorkers.get(workerId);
            return worker == null ? List.of() : byKey.getOrDefault(worker.key(), List.of());
        }
    }

    private static int rowsLeftOut(List<RowProblem> problems) {
        return Math.toIntExact(Arrays.stream(Table.values())
                .mapToLong(table -> RowProblem.linesLeftOut(problems, table))
                .sum());
    }

    private static <T> void inGroups(List<T> all, Consumer<List<T>> use) {
        for (int from = 0; from < all.size(); from += WORKERS_AT_A_TIME) {
            use.accept(all.subList(from, Math.min(from + WORKERS_AT_A_TIME, all.size())));
        }
    }
}
