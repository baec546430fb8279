package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/**
 * The determinations that changed after a notice was given or a case recorded on them, within the sites that the
 * signed-in user may see. Each waits until a person acknowledges it with a reason; a nurse those of a notice, a safety
 * officer also those of a case.
 */
@Service
public class AlterationService {

    private final EntityManager entityManager;
    private final DailyJudging dailyJudging;
    private final WorkerStore workers;
    private final TaskStore tasks;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    AlterationService(
            EntityManager entityManager,
            DailyJudging dailyJudging,
            WorkerStore workers,
            TaskStore tasks,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.dailyJudging = dailyJudging;
        this.workers = workers;
        this.tasks = tasks;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** One page of those that nobody has acknowledged. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<AlterationRow> find(Order<AlterationColumn> order, int offset, int limit) {
        return open().page(
                        "w.workerId, w.familyName, w.givenName, w.site, w.department, a",
                        List.of(order.column().path(), "a.alteredOn", "a.id"),
                        order.descending(),
                        offset,
                        limit,
                        tuple -> new AlterationRow(
                                tuple.get(0, String.class),
                                tuple.get(1, String.class),
                                tuple.get(2, String.class),
                                tuple.get(3, String.class),
                                tuple.get(4, String.class),
                                alteration(tuple.get(5, StoredAlteration.class))));
    }

    /** How many nobody has acknowledged. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public int count() {
        return open().count();
    }

    /** All of one worker, those that are acknowledged among them, the newest first. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<Alteration> ofWorker(String workerId) {
        return workers.find(workerId, currentUser.scope())
                .map(StoredWorker::key)
                .map(key -> entityManager
                        .createQuery(
                                "from StoredAlteration a join fetch a.former where a.workerId = :key"
                                        + " order by a.alteredOn desc, a.id desc",
                                StoredAlteration.class)
                        .setParameter("key", key)
                        .getResultStream()
                        .map(this::alteration)
                        .toList())
                .orElse(List.of());
    }

    /**
     * Takes down that a person has seen to it.
     *
     * @throws AccessDeniedException where a case was recorded and the user is no safety officer
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public AcknowledgeResult acknowledge(String workerId, long key, String reason) {
        Optional<StoredWorker> about = workers.find(workerId, currentUser.scope());
        Optional<StoredAlteration> open =
                about.flatMap(worker -> Optional.ofNullable(entityManager.find(StoredAlteration.class, key))
                        .filter(alteration -> alteration.workerKey() == worker.key() && alteration.isOpen()));
        if (open.isEmpty()) {
            return AcknowledgeResult.NOT_OPEN;
        }
        if (!mayAcknowledge(open.get())) {
            throw new AccessDeniedException("what changed about a recorded case is not this role's to acknowledge");
        }
        if (reason.isBlank()) {
            return AcknowledgeResult.REASON_MISSING;
        }
        if (reason.length() > DecisionService.LONGEST_REASON) {
            return AcknowledgeResult.REASON_TOO_LONG;
        }
        open.get().acknowledge(reason.strip(), currentUser.username(), clock.instant(), LocalDate.now(clock));
        auditTrail.record(
                ReviewAction.ALTERATION_ACKNOWLEDGED,
                "worker",
                workerId,
                open.get().subject());
        about.ifPresent(tasks::renewAlterations);
        return AcknowledgeResult.ACKNOWLEDGED;
    }

    private Alteration alteration(StoredAlteration stored) {
        return stored.toAlteration(stored.isOpen() && mayAcknowledge(stored));
    }

    private boolean mayAcknowledge(StoredAlteration alteration) {
        return !alteration.isOnACase() || currentUser.role() == Role.SAFETY_OFFICER;
    }

    private ListQuery open() {
        dailyJudging.bringUpToDate();
        return ListQuery.ofOwned(
                        entityManager,
                        "StoredAlteration a",
                        "Worker w on w.id = a.workerId",
                        "w.site",
                        currentUser.scope())
                .where("a.acknowledgedAt is null");
    }
}
