package org.thresholdregister.roster;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface WorkerRepository extends Repository<Worker, Long> {

    Worker save(Worker worker);

    Optional<Worker> findByWorkerId(String workerId);

    List<Worker> findAllByWorkerIdIn(Collection<String> workerIds);

    List<Worker> findAllByIdIn(Collection<Long> ids);

    long count();
}
