package org.thresholdregister.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.core.validity.TestValidity;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.review.RegisterRules.OfToday;
import org.thresholdregister.roster.WorkerStore;

/** Counts the doubts about the tests of a page of shifts; only the histories of the workers on it are read. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ShiftDoubts {

    /** One worker on the page. */
    private record Doubted(StoredHistory stored, TestValidity validity) {
        Optional<Audiogram> testOf(ShiftRow row) {
            return stored.history().audiograms().stream()
                    .filter(test -> test.date().equals(row.testDate()) && test.purpose() == row.purpose())
                    .findFirst();
        }

        FlagCount of(ShiftRow row) {
            return testOf(row)
                    .map(test -> FlagCount.of(validity.of(test).stream()
                            .filter(flag -> flag.ears().include(row.ear()))
                            .toList()))
                    .orElse(FlagCount.NONE);
        }
    }

    private final WorkerStore workers;
    private final HistoryStore histories;
    private final ValidityFinder finder;
    private final RegisterRules rules;

    ShiftDoubts(WorkerStore workers, HistoryStore histories, ValidityFinder finder, RegisterRules rules) {
        this.workers = workers;
        this.histories = histories;
        this.finder = finder;
        this.rules = rules;
    }

    /** The same rows, each with the doubts about its ear of its test. */
    List<ShiftRow> countedOn(List<ShiftRow> rows) {
        if (rows.isEmpty()) {
            return rows;
        }
        OfToday today = rules.today();
        List<String> workerIds =
                rows.stream().map(ShiftRow::workerId).distinct().toList();
        Map<String, Doubted> doubted = histories.of(workers.withNumbers(workerIds)).stream()
                .collect(Collectors.toMap(
                        stored -> stored.worker().details().workerId(),
                        stored -> new Doubted(
                                stored,
                                finder.of(
                                        stored,
                                        today.judge(stored),
                                        today.options(stored).ruleSet().quiet()))));
        return rows.stream()
                .map(row -> Optional.ofNullable(doubted.get(row.workerId()))
                        .map(worker -> row.withFlags(worker.of(row)))
                        .orElse(row))
                .toList();
    }
}
