package org.thresholdregister.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.review.RegisterRules.OfToday;
import org.thresholdregister.roster.WorkerStore;

/** Finds what was done about the shifts of a page; only the histories of the workers on it are read. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ShiftActsFinder {

    private final WorkerStore workers;
    private final HistoryStore histories;
    private final RegisterRules rules;

    ShiftActsFinder(WorkerStore workers, HistoryStore histories, RegisterRules rules) {
        this.workers = workers;
        this.histories = histories;
        this.rules = rules;
    }

    /** The same rows, each with what was done about it. */
    List<ShiftRow> addedTo(List<ShiftRow> rows) {
        if (rows.isEmpty()) {
            return rows;
        }
        OfToday today = rules.today();
        List<String> workerIds =
                rows.stream().map(ShiftRow::workerId).distinct().toList();
        Map<String, WorkerCases> cases = histories.of(workers.withNumbers(workerIds)).stream()
                .collect(Collectors.toMap(stored -> stored.worker().details().workerId(), stored -> of(stored, today)));
        return rows.stream()
                .map(row -> Optional.ofNullable(cases.get(row.workerId()))
                        .map(ofWorker -> row.withActs(actsOn(row, ofWorker)))
                        .orElse(row))
                .toList();
    }

    private static WorkerCases of(StoredHistory stored, OfToday today) {
        return WorkerCases.of(stored.history(), today.judge(stored), today.options(stored));
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
