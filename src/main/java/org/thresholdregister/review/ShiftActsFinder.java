package org.thresholdregister.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.caselife.WorkerCases;

/** Finds what was done about the shifts of a page; only the histories of the workers on it are read. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ShiftActsFinder {

    /**
     * The same rows, each with what was done about it.
     *
     * @param workers those of the rows, by number
     */
    List<ShiftRow> addedTo(List<ShiftRow> rows, Map<String, JudgedWorker> workers) {
        Map<String, WorkerCases> cases = workers.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, worker -> cases(worker.getValue())));
        return rows.stream()
                .map(row -> Optional.ofNullable(cases.get(row.workerId()))
                        .map(ofWorker -> row.withActs(actsOn(row, ofWorker)))
                        .orElse(row))
                .toList();
    }

    private static WorkerCases cases(JudgedWorker worker) {
        return WorkerCases.of(worker.stored().history(), worker.judgement(), worker.options());
    }

    private static ShiftActs actsOn(ShiftRow row, WorkerCases cases) {
        return cases.cases().stream()
                .filter(life -> life.testDate().equals(row.testDate())
                        && life.state(row.ear()).isPresent())
                .findFirst()
                .map(life -> ShiftActs.of(life, row.ear()))
                .orElse(ShiftActs.NONE);
    }
}
