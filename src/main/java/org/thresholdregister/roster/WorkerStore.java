package org.thresholdregister.roster;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.SiteScope;

/**
 * The workers, for the services of other features. It checks no role: the service that calls it does, and screens never
 * call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class WorkerStore {

    private final WorkerRepository workers;

    WorkerStore(WorkerRepository workers) {
        this.workers = workers;
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

    /** Stores a new worker and returns its key. */
    public long add(WorkerDetails details) {
        return workers.save(new Worker(details)).toStored().key();
    }

    /** Stores what has changed about a worker, who is known by number. */
    public void update(WorkerDetails details) {
        workers.findByWorkerId(details.workerId())
                .orElseThrow(() -> new IllegalArgumentException("no such worker in the register"))
                .set(details);
    }
}
