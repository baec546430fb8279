package org.thresholdregister.audiograms;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface AudiogramRepository extends Repository<StoredAudiogram, Long> {

    StoredAudiogram save(StoredAudiogram audiogram);

    List<StoredAudiogram> findAllByWorkerIdIn(Collection<Long> workerKeys);
}
