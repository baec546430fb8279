package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.documents.DocumentStore;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/** What shows that decisions were carried out. A safety officer opens no file of a clinical kind. */
@Service
public class EvidenceService {

    /** A referral, a finding of a physician or a note on a test may hold what is the nurse's alone. */
    private static final Set<DecisionKind> CLINICAL = Set.of(
            DecisionKind.REFERRED,
            DecisionKind.NOT_WORK_RELATED,
            DecisionKind.WORK_RELATED,
            DecisionKind.INVALID_TEST,
            DecisionKind.BASELINE,
            DecisionKind.BASELINE_KEPT);

    private final EntityManager entityManager;
    private final WorkerStore workers;
    private final DocumentStore documents;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;

    EvidenceService(
            EntityManager entityManager,
            WorkerStore workers,
            DocumentStore documents,
            AuditTrail auditTrail,
            CurrentUser currentUser) {
        this.entityManager = entityManager;
        this.workers = workers;
        this.documents = documents;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
    }

    /** All of one worker; none where the user may not see the worker. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<DecisionEvidence> ofWorker(String workerId) {
        return workers.find(workerId, currentUser.scope()).map(this::of).orElse(List.of());
    }

    private List<DecisionEvidence> of(StoredWorker worker) {
        return entityManager
                .createQuery(
                        "select d, e from StoredEvidence e join StoredDecision d on d.id = e.decisionId"
                                + " where d.workerId = :key order by d.id",
                        Object[].class)
                .setParameter("key", worker.key())
                .getResultStream()
                .map(pair -> evidence((StoredDecision) pair[0], (StoredEvidence) pair[1]))
                .toList();
    }

    private DecisionEvidence evidence(StoredDecision decision, StoredEvidence evidence) {
        return new DecisionEvidence(
                decision.key(),
                decision.toRecordedDecision().decision(),
                evidence.means(),
                evidence.note(),
                evidence.document().flatMap(documents::find),
                mayOpen(decision));
    }

    /**
     * The file of a decision about this worker; empty where there is none that the user may see. That it was fetched
     * goes on the audit trail.
     *
     * @throws AccessDeniedException where the file is clinical and the user is no nurse
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public Optional<byte[]> file(String workerId, long decisionKey) {
        Optional<StoredDecision> about = workers.find(workerId, currentUser.scope())
                .flatMap(worker -> Optional.ofNullable(entityManager.find(StoredDecision.class, decisionKey))
                        .filter(decision -> decision.workerKey() == worker.key()));
        if (about.isEmpty()) {
            return Optional.empty();
        }
        if (!mayOpen(about.get())) {
            throw new AccessDeniedException("a clinical file is the nurse's alone");
        }
        return Optional.ofNullable(entityManager.find(StoredEvidence.class, decisionKey))
                .flatMap(StoredEvidence::document)
                .map(document -> {
                    auditTrail.record(ReviewAction.EVIDENCE_FETCHED, "worker", workerId, "document " + document);
                    return documents.content(document);
                });
    }

    private boolean mayOpen(StoredDecision decision) {
        return currentUser.role() == Role.NURSE
                || !CLINICAL.contains(decision.toRecordedDecision().decision().kind());
    }
}
