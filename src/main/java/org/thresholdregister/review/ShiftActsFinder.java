package org.thresholdregister.review;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.roster.WorkerStore;

/** Finds what was done about the shifts of a page; only the histories of the workers on it are read. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ShiftActsFinder {

    private final WorkerStore workers;
    private final HistoryStore histories;
    private final Clock clock;

    ShiftActsFinder(WorkerStore workers, HistoryStore histories, Clock clock) {
        this.workers = workers;
        this.histories = histories;
        this.clock = clock;
    }

    /** The same rows, each with what was done about it. */
    List<ShiftRow> addedTo(List<ShiftRow> rows) {
        if (rows.isEmpty()) {
            return rows;
        }
        JudgingOptions options = JudgingOptions.asOf(LocalDate.now(clock));
        List<String> workerIds =
                rows.stream().map(ShiftRow::workerId).distinct().toList();
        Map<String, WorkerCases> cases = histories.of(workers.withNumbers(workerIds)).stream()
                .collect(Collectors.toMap(
                        stored -> stored.worker().details().workerId(), stored -> of(stored.history(), options)));
        return rows.stream()
                .map(row -> Optional.ofNullable(cases.get(row.workerId()))
                        .map(ofWorker -> row.withActs(actsOn(row, ofWorker)))
                        .orElse(row))
                .toList();
    }

    private static WorkerCases of(WorkerHistory history, JudgingOptions options) {
        return WorkerCases.of(history, Judge.judge(history, options), options);
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
