package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.caselife.CaseDuty;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.SignedInUser;
import org.thresholdregister.review.CaseStore;
import org.thresholdregister.review.DecisionResult;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.roster.StoredWorker;

/** Enters in a worker's cases what was done with protectors and training. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class CaseActs {

    private final CaseStore cases;
    private final DecisionService decisions;
    private final CurrentUser currentUser;
    private final AuditTrail auditTrail;

    CaseActs(CaseStore cases, DecisionService decisions, CurrentUser currentUser, AuditTrail auditTrail) {
        this.cases = cases;
        this.decisions = decisions;
        this.currentUser = currentUser;
        this.auditTrail = auditTrail;
    }

    /** The cases that owe this, the earliest first. */
    static List<CaseLife> owing(WorkerCases cases, CaseDuty duty) {
        return cases.cases().stream()
                .filter(life -> life.owed().stream().anyMatch(owed -> owed.duty() == duty))
                .toList();
    }

    /** Enters that protectors were refitted because of the shift of this test; false where the case refuses it. */
    boolean refitted(StoredWorker worker, LocalDate testDate, LocalDate day, String reason) {
        Ears ears = cases.of(worker).earsFor(DecisionKind.PROTECTOR_REFITTED, testDate);
        return enter(worker, new Decision(ears, testDate, DecisionKind.PROTECTOR_REFITTED, day, who(), reason));
    }

    /**
     * Enters a training in the latest case that owes one and had begun by that day; what is done for the latest counts
     * for the earlier ones too. Returns whether anything was entered.
     */
    boolean trained(StoredWorker worker, LocalDate day, String reason) {
        WorkerCases now = cases.of(worker);
        Optional<CaseLife> latest = owing(now, CaseDuty.TRAINING).stream()
                .filter(life -> !life.testDate().isAfter(day))
                .max(Comparator.comparing(CaseLife::testDate));
        return latest.filter(life -> enter(
                        worker,
                        new Decision(
                                now.earsFor(DecisionKind.TRAINED, life.testDate()),
                                life.testDate(),
                                DecisionKind.TRAINED,
                                day,
                                who(),
                                reason)))
                .isPresent();
    }

    private boolean enter(StoredWorker worker, Decision decision) {
        String workerId = worker.details().workerId();
        return switch (decisions.enter(workerId, decision)) {
            case DecisionResult.Recorded() -> {
                auditTrail.record(
                        ProtectionAction.CASE_MOVED,
                        "worker",
                        workerId,
                        decision.kind().word());
                yield true;
            }
            case DecisionResult.AlreadyOnRecord() -> true;
            case DecisionResult.Refused refused -> false;
            case DecisionResult.OutOfOrder outOfOrder -> false;
        };
    }

    private String who() {
        return currentUser.find().map(SignedInUser::displayName).orElse("");
    }
}
