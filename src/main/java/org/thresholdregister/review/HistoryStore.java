package org.thresholdregister.review;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.roster.StoredWorker;

/** Gathers what the engine judges: a worker's facts, tests and decisions. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class HistoryStore {

    /** A worker's history with the records that it was made from. */
    record StoredHistory(
            StoredWorker worker, List<RecordedTest> tests, List<RecordedDecision> decisions, WorkerHistory history) {

        static StoredHistory of(StoredWorker worker, List<RecordedTest> tests, List<RecordedDecision> decisions) {
            return new StoredHistory(
                    worker,
                    tests,
                    decisions,
                    new WorkerHistory(
                            worker.details().facts(),
                            tests.stream().map(RecordedTest::audiogram).toList(),
                            decisions.stream().map(RecordedDecision::decision).toList()));
        }
    }

    private final TestStore tests;
    private final DecisionStore decisions;

    HistoryStore(TestStore tests, DecisionStore decisions) {
        this.tests = tests;
        this.decisions = decisions;
    }

    List<StoredHistory> of(Collection<StoredWorker> workers) {
        List<Long> keys = workers.stream().map(StoredWorker::key).toList();
        Map<Long, List<RecordedTest>> testsByWorker =
                tests.ofWorkers(keys).stream().collect(Collectors.groupingBy(RecordedTest::workerKey));
        Map<Long, List<RecordedDecision>> decisionsByWorker = decisions.ofWorkers(keys);
        return workers.stream()
                .map(worker -> StoredHistory.of(
                        worker,
                        testsByWorker.getOrDefault(worker.key(), List.of()),
                        decisionsByWorker.getOrDefault(worker.key(), List.of())))
                .toList();
    }
}
