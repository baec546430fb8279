package org.thresholdregister.review;

import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.DecisionResult.AlreadyOnRecord;
import org.thresholdregister.review.DecisionResult.OutOfOrder;
import org.thresholdregister.review.DecisionResult.Reason;
import org.thresholdregister.review.DecisionResult.Recorded;
import org.thresholdregister.review.DecisionResult.Refused;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/** Takes down what a person decided about a test. */
@Service
public class DecisionService {

    /** The most characters of {@link Decision#by()}. */
    public static final int LONGEST_BY = 200;

    /** The most characters of {@link Decision#reason()}. */
    public static final int LONGEST_REASON = 2000;

    private static final Set<DecisionKind> BY_A_NURSE = Set.of(
            DecisionKind.NOTICE_GIVEN,
            DecisionKind.INVALID_TEST,
            DecisionKind.RETEST_BOOKED,
            DecisionKind.PROTECTOR_REFITTED,
            DecisionKind.TRAINED,
            DecisionKind.REFERRED);

    private final WorkerStore workers;
    private final HistoryStore histories;
    private final DecisionStore decisions;
    private final JudgementStore judgements;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final RegisterRules rules;
    private final Clock clock;

    DecisionService(
            WorkerStore workers,
            HistoryStore histories,
            DecisionStore decisions,
            JudgementStore judgements,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            RegisterRules rules,
            Clock clock) {
        this.workers = workers;
        this.histories = histories;
        this.decisions = decisions;
        this.judgements = judgements;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.rules = rules;
        this.clock = clock;
    }

    /** The kinds of decision that the signed-in user may enter. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public Set<DecisionKind> kindsToEnter() {
        return currentUser.role() == Role.NURSE ? BY_A_NURSE : EnumSet.allOf(DecisionKind.class);
    }

    /**
     * Takes down a decision and judges the worker anew.
     *
     * @throws AccessDeniedException where the user's role may not enter decisions of this kind
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public DecisionResult enter(String workerId, Decision decision) {
        if (!kindsToEnter().contains(decision.kind())) {
            throw new AccessDeniedException("decisions of this kind are not this role's to enter");
        }
        return workers.find(workerId, currentUser.scope())
                .map(worker -> enter(worker, decision))
                .orElse(new Refused(Reason.UNKNOWN_WORKER));
    }

    private DecisionResult enter(StoredWorker worker, Decision decision) {
        StoredHistory stored = histories.of(List.of(worker)).getFirst();
        Optional<Reason> objection = objection(stored, decision);
        if (objection.isPresent()) {
            return new Refused(objection.get());
        }
        if (stored.history().decisions().contains(decision)) {
            return new AlreadyOnRecord();
        }
        Optional<WorkerCases.Objection> outOfOrder = WorkerCases.objectionTo(
                decision, stored.history(), rules.today().options(stored));
        if (outOfOrder.isPresent()) {
            return new OutOfOrder(outOfOrder.get());
        }
        long key = decisions.add(worker.key(), decision, currentUser.username(), clock.instant(), Optional.empty());
        auditTrail.record(
                ReviewAction.DECISION_ENTERED,
                "worker",
                worker.details().workerId(),
                decision.kind().word() + ", " + decision.ears().word() + ", test of " + decision.testDate());
        judgements.judge(List.of(worker.key()), new JudgingCause.ByDecision(key));
        return new Recorded();
    }

    private Optional<Reason> objection(StoredHistory stored, Decision decision) {
        if (stored.tests().stream().noneMatch(test -> test.audiogram().date().equals(decision.testDate()))) {
            return Optional.of(Reason.NO_SUCH_TEST);
        }
        if (decision.decidedOn().isBefore(decision.testDate())) {
            return Optional.of(Reason.BEFORE_THE_TEST);
        }
        if (decision.decidedOn().isAfter(LocalDate.now(clock))) {
            return Optional.of(Reason.IN_THE_FUTURE);
        }
        if (decision.kind().needsReason() && decision.reason().isBlank()) {
            return Optional.of(Reason.REASON_MISSING);
        }
        return decision.by().length() > LONGEST_BY || decision.reason().length() > LONGEST_REASON
                ? Optional.of(Reason.TEXT_TOO_LONG)
                : Optional.empty();
    }
}
