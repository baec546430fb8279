package org.thresholdregister.intake;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.WorkerStore;

/** What the register holds, as far as the importing person may see it. */
final class RegisterRecords implements ExistingRecords {

    private final WorkerStore workers;
    private final TestStore tests;
    private final SiteScope scope;
    private final Map<String, WorkerFacts> facts;
    private final Map<String, Set<LocalDate>> testDays = new HashMap<>();

    RegisterRecords(WorkerStore workers, TestStore tests, SiteScope scope) {
        this.workers = workers;
        this.tests = tests;
        this.scope = scope;
        this.facts = workers.facts(scope).stream()
                .collect(Collectors.toUnmodifiableMap(WorkerFacts::workerId, Function.identity()));
    }

    @Override
    public Optional<WorkerFacts> worker(String workerId) {
        return Optional.ofNullable(facts.get(workerId));
    }

    @Override
    public boolean hasTestOn(String workerId, LocalDate date) {
        return testDays.computeIfAbsent(workerId, this::testDays).contains(date);
    }

    private Set<LocalDate> testDays(String workerId) {
        return workers.find(workerId, scope)
                .map(worker -> tests.ofWorkers(List.of(worker.key())).stream()
                        .map(test -> test.audiogram().date())
                        .collect(Collectors.toUnmodifiableSet()))
                .orElse(Set.of());
    }
}
