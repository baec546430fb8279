package org.thresholdregister.testing;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.SupersededTest;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.JudgementStore;
import org.thresholdregister.review.JudgingCause;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/** Tests that count no more: superseded by another, or entered in error. They stay as they were. */
@Service
public class SupersededTestService {

    /** The most characters of a reason. */
    public static final int LONGEST_REASON = TypedTest.LONGEST_TEXT;

    private final WorkerStore workers;
    private final TestStore tests;
    private final JudgementStore judgements;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    SupersededTestService(
            WorkerStore workers,
            TestStore tests,
            JudgementStore judgements,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.workers = workers;
        this.tests = tests;
        this.judgements = judgements;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** Those of one worker, the last superseded first. Empty also for a worker of a site that the user may not see. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<SupersededTest> ofWorker(String workerId) {
        return workers
                .find(workerId, currentUser.scope())
                .map(worker -> tests.supersededOf(List.of(worker.key())))
                .orElse(List.of())
                .stream()
                .map(former -> currentUser.role() == Role.NURSE ? former : former.withoutRemark())
                .toList();
    }

    /** Takes a test out that was entered in error, such as for the wrong person. It is kept, and counts no more. */
    @PreAuthorize(Roles.HAS_NURSE)
    @Transactional
    public WithdrawResult withdraw(String workerId, long testKey, String reason) {
        Optional<StoredWorker> worker = workers.find(workerId, currentUser.scope());
        Optional<RecordedTest> test = worker.stream()
                .flatMap(found -> tests.ofWorkers(List.of(found.key())).stream())
                .filter(known -> known.key() == testKey)
                .findFirst();
        if (worker.isEmpty() || test.isEmpty()) {
            return WithdrawResult.NOT_ON_RECORD;
        }
        if (reason.isBlank()) {
            return WithdrawResult.REASON_MISSING;
        }
        if (reason.length() > LONGEST_REASON) {
            return WithdrawResult.REASON_TOO_LONG;
        }
        long workerKey = worker.get().key();
        tests.withdraw(
                testKey, workerKey, reason.strip(), currentUser.username(), clock.instant(), LocalDate.now(clock));
        auditTrail.record(
                TestingAction.TEST_WITHDRAWN,
                "worker",
                workerId,
                test.get().audiogram().purpose().word() + " test of "
                        + test.get().audiogram().date() + ", number " + testKey);
        judgements.judge(List.of(workerKey), new JudgingCause.BySuperseding(testKey, Optional.empty()));
        return WithdrawResult.WITHDRAWN;
    }
}
