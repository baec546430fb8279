package org.thresholdregister.review;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface DecisionRepository extends Repository<StoredDecision, Long> {

    StoredDecision save(StoredDecision decision);

    List<StoredDecision> findAllByWorkerIdInOrderByDecidedOnAscIdAsc(Collection<Long> workerKeys);
}
