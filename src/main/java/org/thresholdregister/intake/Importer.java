package org.thresholdregister.intake;

import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.intake.ImportProgress.Phase;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.review.DecisionStore;
import org.thresholdregister.review.JudgementStore;
import org.thresholdregister.review.JudgingCause;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;

/**
 * Looks at files and stores them: all of what is accepted, with the workers judged anew, in one transaction, or nothing.
 * One import runs at a time.
 */
@Component
class Importer {

    private static final Logger log = LoggerFactory.getLogger(Importer.class);
    private static final int ROWS_AT_A_TIME = 500;

    private final ImportPlanner planner;
    private final NewTestDoubts newTestDoubts;
    private final UploadFolder uploads;
    private final WorkerStore workers;
    private final TestStore tests;
    private final DecisionStore decisions;
    private final JudgementStore judgements;
    private final AuditTrail auditTrail;
    private final EntityManager entityManager;
    private final Clock clock;
    private final TransactionTemplate transaction;
    private final TransactionTemplate reading;
    private final ReentrantLock oneAtATime = new ReentrantLock();

    Importer(
            ImportPlanner planner,
            NewTestDoubts newTestDoubts,
            UploadFolder uploads,
            WorkerStore workers,
            TestStore tests,
            DecisionStore decisions,
            JudgementStore judgements,
            AuditTrail auditTrail,
            EntityManager entityManager,
            Clock clock,
            PlatformTransactionManager transactionManager) {
        this.planner = planner;
        this.newTestDoubts = newTestDoubts;
        this.uploads = uploads;
        this.workers = workers;
        this.tests = tests;
        this.decisions = decisions;
        this.judgements = judgements;
        this.auditTrail = auditTrail;
        this.entityManager = entityManager;
        this.clock = clock;
        this.transaction = new TransactionTemplate(transactionManager);
        this.reading = new TransactionTemplate(transactionManager);
        this.reading.setReadOnly(true);
    }

    PreviewResult preview(String token, List<UploadedFile> files, ImportRights rights) {
        return reading.execute(status -> {
            try {
                return new PreviewResult.Ready(preview(token, files, plan(files, rights)));
            } catch (UnusableFileException unusable) {
                return new PreviewResult.Unusable(messageOf(unusable));
            }
        });
    }

    /** Stores what the preview showed, if that is still what the files do. */
    ImportResult confirm(ImportPreview agreed, ImportRights rights, ImportProgress progress) {
        oneAtATime.lock();
        try {
            return transaction.execute(status -> store(agreed, rights, progress));
        } catch (ImportCancelledException cancelled) {
            log.info("an import was stopped; nothing was stored");
            return new ImportResult.Cancelled();
        } finally {
            oneAtATime.unlock();
        }
    }

    private ImportResult store(ImportPreview agreed, ImportRights rights, ImportProgress progress) {
        report(progress, Phase.READING, 0, 0);
        ImportPlan plan;
        try {
            plan = plan(agreed.files(), rights);
        } catch (UnusableFileException unusable) {
            throw new IllegalStateException("a file that could be read cannot be read any more", unusable);
        }
        if (!plan.isAsIn(agreed)) {
            return new ImportResult.RegisterChanged(preview(agreed.token(), agreed.files(), plan));
        }
        if (!plan.counts().changeNothing()) {
            store(agreed.files(), plan, rights, progress);
        }
        return new ImportResult.Stored(plan.counts());
    }

    private void store(List<UploadedFile> files, ImportPlan plan, ImportRights rights, ImportProgress progress) {
        ImportBatch batch = new ImportBatch(clock.instant(), rights.actor(), plan.counts(), files);
        entityManager.persist(batch);
        Set<Long> concerned = new LinkedHashSet<>();
        concerned.addAll(storeWorkers(plan, batch.key(), rights, progress));
        concerned.addAll(storeTests(plan.newTests(), batch.key(), progress));
        concerned.addAll(storeDecisions(plan.newDecisions(), batch.key(), rights, progress));
        report(progress, Phase.JUDGING, 0, concerned.size());
        judgements.judge(
                concerned,
                new JudgingCause.ByImport(batch.key()),
                done -> report(progress, Phase.JUDGING, done, concerned.size()));
        ImportCounts counts = plan.counts();
        auditTrail.recordAs(
                rights.actor(),
                ImportAction.FILES_IMPORTED,
                "import",
                Long.toString(batch.key()),
                counts.newWorkers() + " new workers, " + counts.changedWorkers() + " changed, " + counts.newTests()
                        + " new tests, " + counts.newDecisions() + " new decisions, " + counts.rowsLeftOut()
                        + " rows left out");
        log.info(
                "import {}: {} new workers, {} changed, {} new tests, {} new decisions, {} rows left out",
                batch.key(),
                counts.newWorkers(),
                counts.changedWorkers(),
                counts.newTests(),
                counts.newDecisions(),
                counts.rowsLeftOut());
    }

    private Set<Long> storeWorkers(ImportPlan plan, long batch, ImportRights rights, ImportProgress progress) {
        Steps steps = new Steps(
                progress,
                Phase.STORING_WORKERS,
                plan.newWorkers().size() + plan.changedWorkers().size());
        Set<Long> keys = new LinkedHashSet<>();
        for (WorkerDetails worker : plan.newWorkers()) {
            keys.add(workers.add(worker, batch));
            steps.next();
        }
        for (WorkerDetails worker : plan.changedWorkers()) {
            keys.add(workers.update(worker, batch));
            steps.next();
        }
        for (WorkerChange change : plan.changes()) {
            auditTrail.recordAs(
                    rights.actor(),
                    ImportAction.WORKER_CHANGED,
                    "worker",
                    change.workerId(),
                    change.fields().stream()
                            .map(field -> field.column().columnName())
                            .collect(Collectors.joining(", ", "by import " + batch + ": ", "")));
        }
        steps.finish();
        return keys;
    }

    private Set<Long> storeTests(List<AudiogramRow> rows, long batch, ImportProgress progress) {
        Steps steps = new Steps(progress, Phase.STORING_TESTS, rows.size());
        Map<String, Long> keys =
                keysOf(rows.stream().map(AudiogramRow::workerId).collect(Collectors.toSet()));
        for (AudiogramRow row : rows) {
            tests.add(keyOf(row.workerId(), keys), row.audiogram(), TestComparison.facts(row), batch);
            steps.next();
        }
        steps.finish();
        return Set.copyOf(keys.values());
    }

    private Set<Long> storeDecisions(List<DecisionRow> rows, long batch, ImportRights rights, ImportProgress progress) {
        Steps steps = new Steps(progress, Phase.STORING_DECISIONS, rows.size());
        Map<String, Long> keys = keysOf(rows.stream().map(DecisionRow::workerId).collect(Collectors.toSet()));
        for (DecisionRow row : rows) {
            long worker = keyOf(row.workerId(), keys);
            decisions.add(worker, row.decision(), rights.actor(), clock.instant(), Optional.of(batch));
            steps.next();
        }
        steps.finish();
        return Set.copyOf(keys.values());
    }

    private Map<String, Long> keysOf(Set<String> workerIds) {
        Map<String, Long> keys = new HashMap<>();
        List<String> all = List.copyOf(workerIds);
        for (int from = 0; from < all.size(); from += ROWS_AT_A_TIME) {
            workers.withNumbers(all.subList(from, Math.min(from + ROWS_AT_A_TIME, all.size())))
                    .forEach(worker -> keys.put(worker.details().workerId(), worker.key()));
        }
        return keys;
    }

    private static long keyOf(String workerId, Map<String, Long> keys) {
        Long key = keys.get(workerId);
        if (key == null) {
            throw new IllegalStateException("a row of a worker who is not in the register");
        }
        return key;
    }

    private ImportPlan plan(List<UploadedFile> files, ImportRights rights) throws UnusableFileException {
        try {
            return planner.plan(
                    new FileSet(file(files, Table.ROSTER), file(files, Table.AUDIOGRAMS), file(files, Table.DECISIONS)),
                    LocalDate.now(clock),
                    rights);
        } catch (IOException e) {
            throw new UncheckedIOException("an uploaded file cannot be read", e);
        }
    }

    private Optional<SourceFile> file(List<UploadedFile> files, Table table) {
        return files.stream()
                .filter(upload -> upload.table() == table)
                .findFirst()
                .map(uploads::open);
    }

    private ImportPreview preview(String token, List<UploadedFile> files, ImportPlan plan) {
        return new ImportPreview(
                token,
                files,
                plan.counts(),
                plan.changes(),
                plan.problems(),
                plan.lateChanges(),
                newTestDoubts.of(plan, LocalDate.now(clock)));
    }

    private static String messageOf(UnusableFileException unusable) {
        return Optional.ofNullable(unusable.getMessage()).orElse("");
    }

    private static void report(ImportProgress progress, Phase phase, int done, int total) {
        if (progress.isCancelled()) {
            throw new ImportCancelledException();
        }
        progress.report(phase, done, total);
    }

    /** Counts the rows of a phase; every so often it writes them out and tells how far it is. */
    private final class Steps {
        private final ImportProgress progress;
        private final Phase phase;
        private final int total;
        private int done;

        Steps(ImportProgress progress, Phase phase, int total) {
            this.progress = progress;
            this.phase = phase;
            this.total = total;
            report(progress, phase, 0, total);
        }

        void next() {
            done++;
            if (done % ROWS_AT_A_TIME == 0) {
                writeOut();
            }
        }

        void finish() {
            writeOut();
        }

        private void writeOut() {
            entityManager.flush();
            entityManager.clear();
            report(progress, phase, done, total);
        }
    }
}
