package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
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
import org.thresholdregister.platform.documents.DocumentStore;
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
    private final DocumentStore documents;
    private final EntityManager entityManager;
    private final JudgementStore judgements;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final RegisterRules rules;
    private final Clock clock;

    DecisionService(
            WorkerStore workers,
            HistoryStore histories,
            DecisionStore decisions,
            DocumentStore documents,
            EntityManager entityManager,
            JudgementStore judgements,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            RegisterRules rules,
            Clock clock) {
        this.workers = workers;
        this.histories = histories;
        this.decisions = decisions;
        this.documents = documents;
        this.entityManager = entityManager;
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
        return enter(workerId, decision, Optional.empty()).result();
    }

    /**
     * Takes down a decision with what shows that it was carried out.
     *
     * @throws AccessDeniedException where the user's role may not enter decisions of this kind
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public DecisionResult enter(String workerId, Decision decision, Evidence evidence) {
        return enter(workerId, decision, Optional.of(evidence)).result();
    }

    /** @param kept the key of the evidence's file, once it is stored */
    record Entered(DecisionResult result, Optional<Long> kept) {}

    /** The same within a transaction of many. */
    Entered enter(String workerId, Decision decision, Optional<Evidence> evidence) {
        if (!kindsToEnter().contains(decision.kind())) {
            throw new AccessDeniedException("decisions of this kind are not this role's to enter");
        }
        return workers.find(workerId, currentUser.scope())
                .map(worker -> enter(worker, decision, evidence))
                .orElse(new Entered(new Refused(Reason.UNKNOWN_WORKER), Optional.empty()));
    }

    private Entered enter(StoredWorker worker, Decision decision, Optional<Evidence> evidence) {
        StoredHistory stored = histories.of(List.of(worker)).getFirst();
        Optional<DecisionResult> hindrance = objection(stored, decision)
                .or(() -> evidence.flatMap(DecisionService::objection))
                .<DecisionResult>map(Refused::new)
                .or(() -> standing(stored, decision));
        if (hindrance.isPresent()) {
            return new Entered(hindrance.get(), Optional.empty());
        }
        long key = decisions.add(worker.key(), decision, currentUser.username(), clock.instant(), Optional.empty());
        auditTrail.record(
                ReviewAction.DECISION_ENTERED,
                "worker",
                worker.details().workerId(),
                decision.kind().word() + ", " + decision.ears().word() + ", test of " + decision.testDate());
        Optional<Long> kept = evidence.flatMap(some -> keep(worker, key, some));
        judgements.judge(List.of(worker.key()), new JudgingCause.ByDecision(key));
        return new Entered(new Recorded(), kept);
    }

    private Optional<DecisionResult> standing(StoredHistory stored, Decision decision) {
        if (stored.history().decisions().contains(decision)) {
            return Optional.of(new AlreadyOnRecord());
        }
        return WorkerCases.objectionTo(decision, stored.history(), rules.today().options(stored))
                .map(OutOfOrder::new);
    }

    private Optional<Long> keep(StoredWorker worker, long decisionKey, Evidence evidence) {
        Optional<Long> document = evidence.attached().map(attached -> switch (attached) {
            case Evidence.Attached.New(var file) -> documents.add(file);
            case Evidence.Attached.Kept(var key) -> key;
        });
        entityManager.persist(new StoredEvidence(
                decisionKey, evidence.means(), evidence.note().strip(), document));
        auditTrail.record(
                ReviewAction.EVIDENCE_STORED,
                "worker",
                worker.details().workerId(),
                evidence.means().word()
                        + document.map(key -> ", document " + key).orElse(""));
        return document;
    }

    private static Optional<Reason> objection(Evidence evidence) {
        if (!evidence.showsSomething()) {
            return Optional.of(Reason.EVIDENCE_MISSING);
        }
        return evidence.note().length() > LONGEST_REASON ? Optional.of(Reason.TEXT_TOO_LONG) : Optional.empty();
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
