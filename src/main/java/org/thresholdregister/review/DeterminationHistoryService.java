package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/** What was determined before, as it was made, and why it changed. */
@Service
@Transactional(readOnly = true)
public class DeterminationHistoryService {

    private final EntityManager entityManager;
    private final WorkerStore workers;
    private final CurrentUser currentUser;

    DeterminationHistoryService(EntityManager entityManager, WorkerStore workers, CurrentUser currentUser) {
        this.entityManager = entityManager;
        this.workers = workers;
        this.currentUser = currentUser;
    }

    /**
     * Everything that was determined about each ear and test of this worker that is, or was, determined otherwise: the
     * earliest first, what stands now last. Empty also for a worker of a site that the user may not see.
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<DeterminationVersion> of(String workerId) {
        return workers.find(workerId, currentUser.scope())
                .map(StoredWorker::key)
                .map(this::versions)
                .orElse(List.of());
    }

    private List<DeterminationVersion> versions(long workerKey) {
        List<StoredFormerDetermination> former = entityManager
                .createQuery(
                        "from StoredFormerDetermination f where f.workerId = :key", StoredFormerDetermination.class)
                .setParameter("key", workerKey)
                .getResultList();
        Map<Long, StoredDecision> decisions = decisions(former);
        List<DeterminationVersion> versions = new ArrayList<>();
        former.stream()
                .sorted(Comparator.comparing(StoredFormerDetermination::replacedAt)
                        .thenComparing(StoredFormerDetermination::key))
                .map(row -> row.toVersion(row.decisionKey().map(decisions::get).orElse(null)))
                .forEach(versions::add);
        Set<DeterminationRow.Subject> changed =
                former.stream().map(DeterminationRow::subject).collect(Collectors.toSet());
        entityManager
                .createQuery("from StoredDetermination d where d.workerId = :key", StoredDetermination.class)
                .setParameter("key", workerKey)
                .getResultStream()
                .filter(row -> changed.contains(row.subject()))
                .map(row -> row.toVersion(Optional.empty()))
                .forEach(versions::add);
        return List.copyOf(versions);
    }

    private Map<Long, StoredDecision> decisions(List<StoredFormerDetermination> former) {
        List<Long> keys = former.stream()
                .flatMap(row -> row.decisionKey().stream())
                .distinct()
                .toList();
        return entityManager
                .createQuery("from StoredDecision d where d.id in :keys", StoredDecision.class)
                .setParameter("keys", keys)
                .getResultStream()
                .collect(Collectors.toMap(StoredDecision::key, Function.identity()));
    }
}
