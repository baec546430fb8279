package org.thresholdregister.employment;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.WorkingLife;
import org.thresholdregister.employment.StoredWorkEvent.Origin;
import org.thresholdregister.roster.WorkerDetails;

/** The events on record. It checks no role: the service that calls it does, and screens never call it. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class LifeStore {

    private final EntityManager entityManager;
    private final Clock clock;

    LifeStore(EntityManager entityManager, Clock clock) {
        this.entityManager = entityManager;
        this.clock = clock;
    }

    /** The rows of a worker, in the order in which they were entered. */
    List<StoredWorkEvent> rows(long workerKey) {
        return rows(List.of(workerKey)).getOrDefault(workerKey, List.of());
    }

    Map<Long, List<StoredWorkEvent>> rows(Collection<Long> workerKeys) {
        return entityManager
                .createQuery(
                        "select e from StoredWorkEvent e where e.workerId in :keys order by e.id",
                        StoredWorkEvent.class)
                .setParameter("keys", workerKeys)
                .getResultStream()
                .collect(Collectors.groupingBy(StoredWorkEvent::workerKey));
    }

    /** The rows that count: neither corrected, nor taken back, nor the taking back itself. */
    static List<StoredWorkEvent> inForce(List<StoredWorkEvent> rows) {
        Set<Long> corrected =
                rows.stream().flatMap(row -> row.corrects().stream()).collect(Collectors.toSet());
        return rows.stream()
                .filter(row -> row.event().isPresent() && !corrected.contains(row.key()))
                .toList();
    }

    static WorkingLife life(List<StoredWorkEvent> rows) {
        return WorkingLife.of(
                inForce(rows).stream().flatMap(row -> row.event().stream()).toList());
    }

    /** The life on record, or what the roster tells where nothing has changed since. */
    WorkingLife life(long workerKey, WorkerDetails details) {
        List<StoredWorkEvent> rows = rows(workerKey);
        return rows.isEmpty() ? WorkingLife.of(Opening.of(details, today())) : life(rows);
    }

    WorkerLife workerLife(long workerKey, WorkerDetails details) {
        List<StoredWorkEvent> rows = rows(workerKey);
        if (rows.isEmpty()) {
            List<DatedEvent> opening = Opening.of(details, today());
            return new WorkerLife(
                    today(),
                    opening.stream()
                            .map(event -> new LifeEntry(
                                    Optional.of(event),
                                    event.day(),
                                    true,
                                    false,
                                    Opening.REASON,
                                    Opening.BY,
                                    Optional.empty()))
                            .toList(),
                    WorkingLife.of(opening));
        }
        Set<StoredWorkEvent> counting = new HashSet<>(inForce(rows));
        List<LifeEntry> entries = rows.stream()
                .map(row -> row.toEntry(counting.contains(row)))
                .sorted(Comparator.comparing(LifeEntry::day))
                .toList();
        return new WorkerLife(today(), entries, life(rows));
    }

    /** The rows of a worker, what the roster tells written down first where nothing is on record yet. */
    List<StoredWorkEvent> begun(long workerKey, WorkerDetails details) {
        List<StoredWorkEvent> rows = rows(workerKey);
        if (!rows.isEmpty()) {
            return rows;
        }
        List<StoredWorkEvent> opening = new ArrayList<>();
        for (DatedEvent event : Opening.of(details, today())) {
            opening.add(
                    add(workerKey, event, null, Opening.REASON, new Origin(Opening.BY, clock.instant(), null, null)));
        }
        return opening;
    }

    StoredWorkEvent add(
            long workerKey, DatedEvent event, @Nullable StoredWorkEvent corrects, String reason, Origin origin) {
        return added(new StoredWorkEvent(workerKey, event, corrects == null ? null : corrects.key(), reason, origin));
    }

    StoredWorkEvent takeBack(StoredWorkEvent row, String reason, Origin origin) {
        return added(StoredWorkEvent.takingBack(row, reason, origin));
    }

    private StoredWorkEvent added(StoredWorkEvent row) {
        entityManager.persist(row);
        return row;
    }

    LocalDate today() {
        return LocalDate.now(clock);
    }
}
