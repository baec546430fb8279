package org.thresholdregister.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.validity.SameDayTests;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.core.validity.TestValidity;
import org.thresholdregister.review.DecisionStore;
import org.thresholdregister.review.RecordedDecision;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;

/**
 * Counts what there is to doubt about the tests that an import would add, each beside what is on record and what comes
 * with it. Of others tested on the same day those count who have a new test too.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class NewTestDoubts {

    private static final int WORKERS_AT_A_TIME = 500;

    private final WorkerStore workers;
    private final TestStore tests;
    private final DecisionStore decisions;

    NewTestDoubts(WorkerStore workers, TestStore tests, DecisionStore decisions) {
        this.workers = workers;
        this.tests = tests;
        this.decisions = decisions;
    }

    /** How many new tests have each kind of flag; kinds that none has are absent. */
    Map<FlagKind, Integer> of(ImportPlan plan, LocalDate today) {
        Map<String, Tested> tested = new LinkedHashMap<>();
        Map<String, List<AudiogramRow>> rows = plan.newTests().stream()
                .collect(Collectors.groupingBy(AudiogramRow::workerId, LinkedHashMap::new, Collectors.toList()));
        Map<String, List<Decision>> newDecisions = plan.newDecisions().stream()
                .collect(Collectors.groupingBy(
                        DecisionRow::workerId, Collectors.mapping(DecisionRow::decision, Collectors.toList())));
        Map<String, String> sites = newSites(plan);
        List<String> workerIds = List.copyOf(rows.keySet());
        for (int from = 0; from < workerIds.size(); from += WORKERS_AT_A_TIME) {
            List<String> some = workerIds.subList(from, Math.min(from + WORKERS_AT_A_TIME, workerIds.size()));
            gather(some, rows, newDecisions, sites, tested);
        }
        return count(tested, today);
    }

    /** A worker with new tests: the history as it would be, and how the new tests were made. */
    private record Tested(WorkerHistory history, String site, Map<Audiogram, TestConditions> newTests) {}

    private record SiteDay(String site, LocalDate day) {}

    private static Map<String, String> newSites(ImportPlan plan) {
        Map<String, String> sites = new HashMap<>();
        for (List<WorkerDetails> some : List.of(plan.newWorkers(), plan.changedWorkers())) {
            some.forEach(worker -> sites.put(worker.workerId(), worker.site()));
        }
        return sites;
    }

    private void gather(
            List<String> workerIds,
            Map<String, List<AudiogramRow>> rows,
            Map<String, List<Decision>> newDecisions,
            Map<String, String> newSites,
            Map<String, Tested> tested) {
        Map<String, StoredWorker> stored = workers.withNumbers(workerIds).stream()
                .collect(Collectors.toMap(worker -> worker.details().workerId(), worker -> worker));
        List<Long> keys = stored.values().stream().map(StoredWorker::key).toList();
        Map<Long, List<RecordedTest>> recorded =
                tests.ofWorkers(keys).stream().collect(Collectors.groupingBy(RecordedTest::workerKey));
        Map<Long, List<RecordedDecision>> decided = decisions.ofWorkers(keys);
        for (String workerId : workerIds) {
            Optional<StoredWorker> worker = Optional.ofNullable(stored.get(workerId));
            List<Audiogram> audiograms = new ArrayList<>();
            List<Decision> all = new ArrayList<>(newDecisions.getOrDefault(workerId, List.of()));
            worker.ifPresent(known -> {
                recorded.getOrDefault(known.key(), List.of()).forEach(test -> audiograms.add(test.audiogram()));
                decided.getOrDefault(known.key(), List.of()).forEach(decision -> all.add(decision.decision()));
            });
            Map<Audiogram, TestConditions> newTests = new LinkedHashMap<>();
            rows.getOrDefault(workerId, List.of()).forEach(row -> newTests.put(row.audiogram(), row.conditions()));
            audiograms.addAll(newTests.keySet());
            String site = newSites.getOrDefault(
                    workerId, worker.map(known -> known.details().site()).orElse(""));
            tested.put(workerId, new Tested(new WorkerHistory(facts(workerId), audiograms, all), site, newTests));
        }
    }

    /** No flag depends on a worker's age or sex. */
    private static WorkerFacts facts(String workerId) {
        return new WorkerFacts(workerId, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Map<FlagKind, Integer> count(Map<String, Tested> tested, LocalDate today) {
        Map<SiteDay, Set<String>> onDay = new HashMap<>();
        tested.forEach((workerId, worker) -> worker.newTests()
                .keySet()
                .forEach(test -> onDay.computeIfAbsent(
                                new SiteDay(worker.site(), test.date()), day -> new LinkedHashSet<>())
                        .add(workerId)));
        Map<FlagKind, Integer> counts = new EnumMap<>(FlagKind.class);
        for (Tested worker : tested.values()) {
            String workerId = worker.history().worker().workerId();
            TestValidity validity = new TestValidity(
                    worker.history(),
                    Judge.judge(worker.history(), JudgingOptions.asOf(today)),
                    test -> worker.newTests().getOrDefault(test, TestConditions.NOT_ON_RECORD),
                    RuleSets.OSHA.quiet(),
                    SameDayTests.in(day -> onDay.getOrDefault(new SiteDay(worker.site(), day), Set.of()).stream()
                            .filter(other -> !other.equals(workerId))
                            .flatMap(other -> Optional.ofNullable(tested.get(other)).stream())
                            .map(Tested::history)
                            .toList()));
            for (Audiogram test : worker.newTests().keySet()) {
                Set<FlagKind> kinds = EnumSet.noneOf(FlagKind.class);
                validity.of(test).forEach(flag -> kinds.add(flag.kind()));
                kinds.forEach(kind -> counts.merge(kind, 1, Integer::sum));
            }
        }
        return Map.copyOf(counts);
    }
}
