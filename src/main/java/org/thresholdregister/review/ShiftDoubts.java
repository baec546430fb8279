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

    private final ValidityFinder finder;

    ShiftDoubts(ValidityFinder finder) {
        this.finder = finder;
    }

    /**
     * The same rows, each with the doubts about its ear of its test.
     *
     * @param workers those of the rows, by number
     */
    List<ShiftRow> countedOn(List<ShiftRow> rows, Map<String, JudgedWorker> workers) {
        Map<String, Doubted> doubted = workers.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, worker -> doubted(worker.getValue())));
        return rows.stream()
                .map(row -> Optional.ofNullable(doubted.get(row.workerId()))
                        .map(worker -> row.withFlags(worker.of(row)))
                        .orElse(row))
                .toList();
    }

    private Doubted doubted(JudgedWorker worker) {
        return new Doubted(
                worker.stored(),
                finder.of(
                        worker.stored(),
                        worker.judgement(),
                        worker.options().ruleSet().quiet()));
    }
}
