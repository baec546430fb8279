package org.thresholdregister.review;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.SupersededTest;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.review.RegisterRules.OfToday;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/** Opens a worker's record and judges it. */
@Service
public class WorkerRecordService {

    /** The key of a test that is looked at before it is on record. */
    public static final long NOT_ON_RECORD = 0;

    private final WorkerStore workers;
    private final TestStore tests;
    private final HistoryStore histories;
    private final ValidityFinder validity;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final RegisterRules rules;

    WorkerRecordService(
            WorkerStore workers,
            TestStore tests,
            HistoryStore histories,
            ValidityFinder validity,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            RegisterRules rules) {
        this.workers = workers;
        this.tests = tests;
        this.histories = histories;
        this.validity = validity;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.rules = rules;
    }

    /**
     * The record of the worker with this number, judged as of today; empty also for a worker of a site that the user
     * may not see. That it was opened goes on the audit trail.
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public Optional<WorkerRecord> open(String workerId) {
        return workers.find(workerId, currentUser.scope()).map(this::open);
    }

    private WorkerRecord open(StoredWorker worker) {
        auditTrail.record(
                ReviewAction.WORKER_RECORD_OPENED, "worker", worker.details().workerId(), "");
        return judged(worker);
    }

    /**
     * The record of this worker as it would be with one more test, which has the key {@link #NOT_ON_RECORD}; nothing is
     * stored. Empty also for a worker of a site that the user may not see. The caller has opened the record before, so
     * that there is no entry on the audit trail, and has seen to it that no other test is of this day and purpose.
     *
     * @param inPlaceOf the key of the test that it would supersede, if any
     */
    @PreAuthorize(Roles.HAS_NURSE)
    @Transactional(readOnly = true)
    public Optional<WorkerRecord> withOneMoreTest(
            String workerId, Audiogram test, TestFacts facts, Optional<Long> inPlaceOf) {
        return workers.find(workerId, currentUser.scope()).map(worker -> {
            StoredHistory stored = histories.of(List.of(worker)).getFirst();
            Stream<RecordedTest> kept = stored.tests().stream()
                    .filter(known -> !Optional.of(known.key()).equals(inPlaceOf));
            RecordedTest one = new RecordedTest(NOT_ON_RECORD, worker.key(), test, facts);
            return judged(
                    StoredHistory.of(worker, Stream.concat(kept, Stream.of(one)).toList(), stored.decisions()));
        });
    }

    /**
     * The tests of this worker that count no more, as they were, the last superseded first. Empty also for a worker of a
     * site that the user may not see.
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<SupersededTest> superseded(String workerId) {
        return workers
                .find(workerId, currentUser.scope())
                .map(worker -> tests.supersededOf(List.of(worker.key())))
                .orElse(List.of())
                .stream()
                .map(former -> currentUser.role() == Role.NURSE ? former : former.withoutRemark())
                .toList();
    }

    /** The record for those who show nothing of it but what follows from it: no entry on the audit trail. */
    WorkerRecord judged(StoredWorker worker) {
        return judged(histories.of(List.of(worker)).getFirst());
    }

    private WorkerRecord judged(StoredHistory stored) {
        OfToday today = rules.today();
        WorkerJudgement judgement = today.judge(stored);
        JudgingOptions options = today.options(stored);
        return new WorkerRecord(
                today.day(),
                stored.worker().details(),
                testsFor(currentUser.role(), stored.tests()),
                stored.decisions(),
                stored.history(),
                judgement,
                today.of(stored),
                validity.of(stored, judgement, options.ruleSet().quiet()).ofAllTests(),
                WorkerCases.of(stored.history(), judgement, options));
    }

    /** A remark may be a clinical note, which is the nurse's alone. */
    private static List<RecordedTest> testsFor(Role role, List<RecordedTest> tests) {
        return role == Role.NURSE
                ? tests
                : tests.stream().map(RecordedTest::withoutRemark).toList();
    }
}
