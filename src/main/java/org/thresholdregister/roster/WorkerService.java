package org.thresholdregister.roster;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/** The list of workers, within the sites that the signed-in user may see. */
@Service
@Transactional(readOnly = true)
public class WorkerService {

    private final EntityManager entityManager;
    private final WorkerStore workers;
    private final CurrentUser currentUser;
    private final Clock clock;

    WorkerService(EntityManager entityManager, WorkerStore workers, CurrentUser currentUser, Clock clock) {
        this.entityManager = entityManager;
        this.workers = workers;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** One page of the workers that the filter lets through. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<WorkerRow> find(WorkerFilter filter, Order<WorkerColumn> order, int offset, int limit) {
        return filtered(filter)
                .page(
                        "w.workerId, w.familyName, w.givenName, w.site, w.department, w.jobTitle, w.hireDate, w.endDate",
                        List.of(order.column().path(), "w.search", "w.id"),
                        order.descending(),
                        offset,
                        limit,
                        WorkerService::row);
    }

    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public int count(WorkerFilter filter) {
        return filtered(filter).count();
    }

    /** The worker of this number; empty also for a worker of a site that the user may not see. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public Optional<WorkerDetails> get(String workerId) {
        return workers.find(workerId, currentUser.scope()).map(StoredWorker::details);
    }

    /** The sites that workers belong to, in order; an empty name stands for workers without one. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<String> sites() {
        return distinct("w.site");
    }

    /** The departments that workers belong to, in order; an empty name stands for workers without one. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<String> departments() {
        return distinct("w.department");
    }

    private List<String> distinct(String path) {
        return inScope().all("distinct " + path, "order by " + path, tuple -> tuple.get(0, String.class));
    }

    private ListQuery inScope() {
        return ListQuery.of(entityManager, "Worker w", "w.site", currentUser.scope());
    }

    private ListQuery filtered(WorkerFilter filter) {
        ListQuery query = inScope().whereMatches("w.search", filter.text());
        filter.site().ifPresent(site -> query.where("w.site = ?", site));
        filter.department().ifPresent(department -> query.where("w.department = ?", department));
        LocalDate today = LocalDate.now(clock);
        switch (filter.status()) {
            case ACTIVE -> query.where("(w.endDate is null or w.endDate >= ?)", today);
            case LEFT -> query.where("w.endDate < ?", today);
            case ALL -> {}
        }
        return query;
    }

    private static WorkerRow row(Tuple tuple) {
        return new WorkerRow(
                tuple.get(0, String.class),
                tuple.get(1, String.class),
                tuple.get(2, String.class),
                tuple.get(3, String.class),
                tuple.get(4, String.class),
                tuple.get(5, String.class),
                Optional.ofNullable(tuple.get(6, LocalDate.class)),
                Optional.ofNullable(tuple.get(7, LocalDate.class)));
    }
}
