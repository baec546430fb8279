package org.thresholdregister.roster;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/**
 * The workers, for the services of other features. It checks no role: the service that calls it does, and screens never
 * call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class WorkerStore {

    private final WorkerRepository workers;
    private final EntityManager entityManager;
    private final List<RosterListener> listeners;

    WorkerStore(WorkerRepository workers, EntityManager entityManager, List<RosterListener> listeners) {
        this.workers = workers;
        this.entityManager = entityManager;
        this.listeners = listeners;
    }

    /** The worker of this number, where its site is in the scope. */
    public Optional<StoredWorker> find(String workerId, SiteScope scope) {
        return workers.findByWorkerId(workerId)
                .map(Worker::toStored)
                .filter(worker -> scope.includes(worker.details().siteIfGiven()));
    }

    /** Those of the workers that are in the register, of whatever site. */
    public List<StoredWorker> withNumbers(Collection<String> workerIds) {
        return workers.findAllByWorkerIdIn(workerIds).stream()
                .map(Worker::toStored)
                .toList();
    }

    public List<StoredWorker> withKeys(Collection<Long> keys) {
        return workers.findAllByIdIn(keys).stream().map(Worker::toStored).toList();
    }

    public boolean isEmpty() {
        return workers.count() == 0;
    }

    /** What the rules need to know of every worker in the scope. */
    public List<WorkerFacts> facts(SiteScope scope) {
        return ListQuery.of(entityManager, "Worker w", "w.site", scope)
                .all("w.workerId, w.birthDate, w.sex, w.enrolledFrom, w.endDate", "", WorkerStore::facts);
    }

    /** Where everybody in the scope works who is employed on this day, by name. */
    public List<WorkerPlace> working(SiteScope scope, LocalDate day) {
        return ListQuery.of(entityManager, "Worker w", "w.site", scope)
                .where("(w.endDate is null or w.endDate >= ?)", day)
                .where("(w.hireDate is null or w.hireDate <= ?)", day)
                .all(
                        "w.id, w.workerId, w.familyName, w.givenName, w.site, w.department, w.jobTitle, w.noiseGroup,"
                                + " w.hireDate, w.twaDba, w.enrolledFrom",
                        "order by w.search, w.id",
                        WorkerStore::place);
    }

    private static WorkerPlace place(Tuple tuple) {
        return new WorkerPlace(
                tuple.get(0, Long.class),
                tuple.get(1, String.class),
                tuple.get(2, String.class),
                tuple.get(3, String.class),
                tuple.get(4, String.class),
                tuple.get(5, String.class),
                tuple.get(6, String.class),
                tuple.get(7, String.class),
                Optional.ofNullable(tuple.get(8, LocalDate.class)),
                Optional.ofNullable(tuple.get(9, BigDecimal.class)).map(BigDecimal::stripTrailingZeros),
                Optional.ofNullable(tuple.get(10, LocalDate.class)));
    }

    private static WorkerFacts facts(Tuple tuple) {
        return new WorkerFacts(
                tuple.get(0, String.class),
                Optional.ofNullable(tuple.get(1, LocalDate.class)),
                Optional.ofNullable(tuple.get(2, Sex.class)),
                Optional.ofNullable(tuple.get(3, LocalDate.class)),
                Optional.ofNullable(tuple.get(4, LocalDate.class)));
    }

    /** Stores a new worker and returns its key. */
    public long add(WorkerDetails details, long importBatch) {
        return workers.save(new Worker(details, importBatch)).key();
    }

    /** Stores what an import changes about a worker, who is known by number, and returns the key. */
    public long update(WorkerDetails details, long importBatch) {
        Worker worker = workers.findByWorkerId(details.workerId())
                .orElseThrow(() -> new IllegalArgumentException("no such worker in the register"));
        WorkerDetails before = worker.toStored().details();
        worker.set(details);
        listeners.forEach(listener -> listener.changed(worker.key(), before, details, importBatch));
        return worker.key();
    }

    /** Stores what the events of a working life make of a worker's place and dates; no listener is told. */
    public void follow(StoredWorker asItIsNow) {
        workers.findAllByIdIn(List.of(asItIsNow.key())).forEach(worker -> worker.set(asItIsNow.details()));
    }
}
