package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.NextChange;
import org.thresholdregister.core.judging.OpenProposals;
import org.thresholdregister.core.judging.RuleEdition;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.review.RegisterRules.OfToday;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/**
 * Keeps what the engine finds about every worker. It checks no role: the service that calls it does, and screens never
 * call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class JudgementStore {

    private static final int WORKERS_AT_A_TIME = 200;

    private final EntityManager entityManager;
    private final WorkerStore workers;
    private final HistoryStore histories;
    private final TaskStore tasks;
    private final RegisterRules rules;
    private final Clock clock;

    JudgementStore(
            EntityManager entityManager,
            WorkerStore workers,
            HistoryStore histories,
            TaskStore tasks,
            RegisterRules rules,
            Clock clock) {
        this.entityManager = entityManager;
        this.workers = workers;
        this.histories = histories;
        this.tasks = tasks;
        this.rules = rules;
        this.clock = clock;
    }

    /**
     * Judges these workers anew as of today and replaces what was kept of them. A determination that now says something
     * else is kept as it was made.
     */
    public void judge(Collection<Long> workerKeys, JudgingCause cause) {
        judge(workerKeys, cause, done -> {});
    }

    /** @param progress is told how many of the workers have been judged so far */
    public void judge(Collection<Long> workerKeys, JudgingCause cause, IntConsumer progress) {
        OfToday today = rules.today();
        List<Long> keys = List.copyOf(workerKeys);
        for (int from = 0; from < keys.size(); from += WORKERS_AT_A_TIME) {
            int to = Math.min(from + WORKERS_AT_A_TIME, keys.size());
            judgeSome(keys.subList(from, to), today, cause);
            progress.accept(to);
        }
    }

    /** The workers whose judgement is not of today and may differ from it. */
    List<Long> outOfDate() {
        return entityManager
                .createQuery(
                        "select m.workerId from WorkerJudgementMark m"
                                + " where (m.nextChangeOn <= :today or m.judgedOn > :today)"
                                + " and m.ruleEdition = :edition order by m.workerId",
                        Long.class)
                .setParameter("today", LocalDate.now(clock))
                .setParameter("edition", RuleEdition.OF_THIS_PROGRAM)
                .getResultList();
    }

    /** Has every worker judged again at the next look: what the sites answer to has changed. */
    void outdateAll() {
        entityManager
                .createQuery("update WorkerJudgementMark m set m.ruleEdition = :none")
                .setParameter("none", RuleEdition.NONE)
                .executeUpdate();
    }

    /** The workers who were judged by another edition of the rules, or before their site's choice of them. */
    List<Long> ofAnotherEdition() {
        return entityManager
                .createQuery(
                        "select m.workerId from WorkerJudgementMark m where m.ruleEdition <> :edition order by m.workerId",
                        Long.class)
                .setParameter("edition", RuleEdition.OF_THIS_PROGRAM)
                .getResultList();
    }

    private void judgeSome(List<Long> keys, OfToday today, JudgingCause cause) {
        entityManager.flush();
        Succession succession = new Succession(entityManager, keys, cause, clock.instant(), today.day());
        for (String kept : List.of("StoredDetermination", "StoredTask", "StoredProposal", "WorkerJudgementMark")) {
            entityManager
                    .createQuery("delete from " + kept + " k where k.workerId in :keys")
                    .setParameter("keys", keys)
                    .executeUpdate();
        }
        entityManager.clear();
        List<StoredWorker> some = workers.withKeys(keys);
        Map<Long, List<StoredPostponement>> postponed = tasks.postponements(keys);
        for (StoredHistory stored : histories.of(some)) {
            keep(
                    stored,
                    today,
                    succession,
                    postponed.getOrDefault(stored.worker().key(), List.of()));
        }
        tasks.addAlterations(some, postponed);
        entityManager.flush();
        entityManager.clear();
    }

    private void keep(StoredHistory stored, OfToday today, Succession succession, List<StoredPostponement> postponed) {
        RulesInForce inForce = today.of(stored);
        WorkerJudgement judgement = today.judge(stored);
        long worker = stored.worker().key();
        Map<Audiogram, Long> keys =
                stored.tests().stream().collect(Collectors.toMap(RecordedTest::audiogram, RecordedTest::key));
        List<StoredDetermination> determinations = new ArrayList<>();
        for (Determination determination : judgement.determinations()) {
            Long key = keys.get(determination.test());
            if (key == null) {
                throw new IllegalStateException("a determination about a test that is not on record");
            }
            determinations.add(new StoredDetermination(
                    worker,
                    key,
                    determination,
                    inForce.optionsOn(determination.test().date(), today.day(), RegisterRules.REVISION)));
        }
        succession.put(stored, inForce, determinations);
        List<Object> rows = new ArrayList<>();
        rows.addAll(TaskStore.of(stored, judgement, today, postponed));
        for (BaselineChange proposal : OpenProposals.of(stored.history(), judgement)) {
            rows.add(new StoredProposal(worker, proposal));
        }
        rows.add(new WorkerJudgementMark(
                worker,
                today.day(),
                NextChange.after(today.day(), stored.history(), judgement).orElse(null)));
        rows.forEach(entityManager::persist);
    }
}
