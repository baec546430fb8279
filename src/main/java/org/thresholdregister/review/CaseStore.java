package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.review.RegisterRules.OfToday;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/**
 * What shifts leave to be done and to be reckoned with, for the services of other features. It checks no role: the
 * service that calls it does, and screens never call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class CaseStore {

    /** Workers whose cases are lived through at a time. */
    private static final int AT_A_TIME = 500;

    private final EntityManager entityManager;
    private final DailyJudging dailyJudging;
    private final HistoryStore histories;
    private final WorkerStore workers;
    private final RegisterRules rules;

    CaseStore(
            EntityManager entityManager,
            DailyJudging dailyJudging,
            HistoryStore histories,
            WorkerStore workers,
            RegisterRules rules) {
        this.entityManager = entityManager;
        this.dailyJudging = dailyJudging;
        this.histories = histories;
        this.workers = workers;
        this.rules = rules;
    }

    /** A worker and what became of each shift. */
    public record CasesOfWorker(StoredWorker worker, WorkerCases cases) {}

    /** The worker's cases as of today. */
    public WorkerCases of(StoredWorker worker) {
        return casesOf(List.of(worker)).getFirst().cases();
    }

    /** Everyone in the scope with a shift that stands, employed on this day, with what became of it. */
    public List<CasesOfWorker> withShift(SiteScope scope, LocalDate day) {
        List<Long> keys = confirmed(scope)
                .where("(w.endDate is null or w.endDate >= ?)", day)
                .all("distinct d.workerId", "order by d.workerId", tuple -> tuple.get(0, Long.class));
        return IntStream.iterate(0, from -> from < keys.size(), from -> from + AT_A_TIME)
                .mapToObj(from -> workers.withKeys(keys.subList(from, Math.min(keys.size(), from + AT_A_TIME))))
                .flatMap(some -> casesOf(some).stream())
                .toList();
    }

    private List<CasesOfWorker> casesOf(List<StoredWorker> some) {
        OfToday today = rules.today();
        return histories.of(some).stream()
                .map(stored -> new CasesOfWorker(
                        stored.worker(), WorkerCases.of(stored.history(), today.judge(stored), today.options(stored))))
                .toList();
    }

    /** The day of the test of the latest shift that stands, by worker key; others are not in it. */
    public Map<Long, LocalDate> latestShifts(SiteScope scope) {
        return confirmed(scope)
                .all(
                        "d.workerId, max(d.testDate)",
                        "group by d.workerId",
                        tuple -> Map.entry(tuple.get(0, Long.class), tuple.get(1, LocalDate.class)))
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    /** The same of one worker. */
    public Optional<LocalDate> latestShift(long workerKey) {
        return confirmed(SiteScope.all())
                .where("d.workerId = ?", workerKey)
                .all("max(d.testDate)", "group by d.workerId", tuple -> tuple.get(0, LocalDate.class))
                .stream()
                .findFirst();
    }

    /** The keys of the workers with a test that is a baseline or is compared with one. */
    public Set<Long> withBaseline(SiteScope scope) {
        return Set.copyOf(determinations(scope).all("distinct d.workerId", "", tuple -> tuple.get(0, Long.class)));
    }

    /** Whether the worker is one of these. */
    public boolean hasBaseline(long workerKey) {
        return determinations(SiteScope.all())
                        .where("d.workerId = ?", workerKey)
                        .count()
                > 0;
    }

    private ListQuery confirmed(SiteScope scope) {
        return determinations(scope).where("d.outcome = ?", Outcome.CONFIRMED);
    }

    private ListQuery determinations(SiteScope scope) {
        dailyJudging.bringUpToDate();
        return ListQuery.ofOwned(
                entityManager, "StoredDetermination d", "Worker w on w.id = d.workerId", "w.site", scope);
    }
}
