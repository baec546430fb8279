package org.thresholdregister.review;

import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.decision.Decision;

/**
 * The decisions on record, for services. It checks no role: the service that calls it does, and screens never call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class DecisionStore {

    private final DecisionRepository decisions;

    DecisionStore(DecisionRepository decisions) {
        this.decisions = decisions;
    }

    /** The decisions about these workers' tests, by worker key, in order of the day of decision. */
    public Map<Long, List<RecordedDecision>> ofWorkers(Collection<Long> workerKeys) {
        return decisions.findAllByWorkerIdInOrderByDecidedOnAscIdAsc(workerKeys).stream()
                .collect(Collectors.groupingBy(
                        StoredDecision::workerKey,
                        LinkedHashMap::new,
                        Collectors.mapping(StoredDecision::toRecordedDecision, Collectors.toList())));
    }

    /**
     * Stores a decision and returns its key.
     *
     * @param importBatch the import that it came with; empty where it was entered by hand
     */
    public long add(
            long workerKey, Decision decision, String enteredBy, Instant enteredAt, Optional<Long> importBatch) {
        return decisions
                .save(new StoredDecision(workerKey, decision, enteredBy, enteredAt, importBatch.orElse(null)))
                .key();
    }
}
