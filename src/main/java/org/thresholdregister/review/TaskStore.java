package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.caselife.CaseEvent;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.caselife.CaseMove;
import org.thresholdregister.core.caselife.Owed;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.judging.OpenProposals;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.Step;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.review.RegisterRules.OfToday;
import org.thresholdregister.roster.StoredWorker;

/** What is open about workers, as it is kept for the board. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class TaskStore {

    private final EntityManager entityManager;

    TaskStore(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    /** How tasks of these workers were put off, by worker key, the latest last. */
    Map<Long, List<StoredPostponement>> postponements(Collection<Long> workerKeys) {
        return entityManager
                .createQuery(
                        "from StoredPostponement p where p.workerId in :keys order by p.id", StoredPostponement.class)
                .setParameter("keys", workerKeys)
                .getResultStream()
                .collect(Collectors.groupingBy(StoredPostponement::workerKey));
    }

    /** What is open about a worker, but for what changed after a notice. */
    static List<StoredTask> of(
            StoredHistory stored, WorkerJudgement judgement, OfToday today, List<StoredPostponement> postponed) {
        List<StoredTask> tasks = new ArrayList<>();
        RulesInForce inForce = today.of(stored);
        long worker = stored.worker().key();
        RuleSet now = inForce.on(today.day()).ruleSet();
        for (FollowUp followUp : judgement.followUps()) {
            RuleSet ruleSet = inForce.by(followUp, today.day()).ruleSet();
            tasks.add(new StoredTask(
                    worker,
                    TaskKind.of(followUp.kind()),
                    Optional.of(followUp.dueDate()),
                    followUp.testDate()
                            .or(() -> stored.worker().details().enrolledFrom())
                            .orElse(followUp.dueDate()),
                    followUp.testDate(),
                    followUp.ears(),
                    ruleSet.word(),
                    ruleSet.paragraph(followUp.kind().step()).place()));
        }
        boolean hasLeft = stored.worker()
                .details()
                .endDate()
                .filter(end -> end.isBefore(today.day()))
                .isPresent();
        WorkerCases cases = WorkerCases.of(stored.history(), judgement, today.options(stored));
        for (CaseLife life : cases.cases()) {
            for (Owed owed : life.owed()) {
                TaskKind.of(owed.duty())
                        .filter(kind -> !hasLeft || !isForWorkersAtWork(kind))
                        .ifPresent(kind -> tasks.add(new StoredTask(
                                worker,
                                kind,
                                owed.by(),
                                since(life, kind, owed.ears()),
                                Optional.of(life.testDate()),
                                owed.ears(),
                                now.word(),
                                owed.rule().map(Citation::place).orElse(""))));
            }
        }
        for (BaselineChange proposal : OpenProposals.of(stored.history(), judgement)) {
            LocalDate arose = proposal.evidence().getLast();
            tasks.add(new StoredTask(
                    worker,
                    TaskKind.BASELINE_PROPOSAL,
                    Optional.empty(),
                    arose,
                    Optional.of(arose),
                    Ears.of(proposal.ear()),
                    now.word(),
                    now.paragraph(Step.REVISED_BASELINE).place()));
        }
        tasks.forEach(task -> booking(task, cases).ifPresent(task::book));
        putOff(tasks, stored.worker(), postponed);
        return tasks;
    }

    /** When and where a retest is booked for, as the last booking says. */
    private static Optional<String> booking(StoredTask task, WorkerCases cases) {
        TaskKey key = task.key("");
        return key.testDate()
                .filter(day -> key.kind() == TaskKind.RETEST)
                .flatMap(cases::about)
                .flatMap(life -> life.history().stream()
                        .filter(event -> event.move() == CaseMove.RETEST_BOOKED)
                        .reduce((earlier, later) -> later))
                .map(event -> event.reason().isEmpty() ? "Booked on " + Words.day(event.day()) + "." : event.reason());
    }

    /** Nobody fits protectors for, or trains, a worker who has left. */
    private static boolean isForWorkersAtWork(TaskKind kind) {
        return kind == TaskKind.REFIT || kind == TaskKind.TRAINING;
    }

    /** The day of the move that leaves it owed. */
    private static LocalDate since(CaseLife life, TaskKind kind, Ears ears) {
        CaseMove move = switch (kind) {
            case RECORDABILITY -> CaseMove.LEFT_UNDECIDED;
            case LINE_OUT -> CaseMove.FOUND_NOT_WORK_RELATED;
            default -> CaseMove.CONFIRMED;
        };
        return Stream.of(Ear.values())
                .filter(ears::include)
                .flatMap(ear -> life.latest(ear, move).stream())
                .map(CaseEvent::day)
                .min(LocalDate::compareTo)
                .orElse(life.testDate());
    }

    /** Keeps what has changed after a notice or an entry about these workers, and that nobody has acknowledged. */
    void addAlterations(List<StoredWorker> workers, Map<Long, List<StoredPostponement>> postponed) {
        Map<Long, StoredWorker> byKey = new HashMap<>();
        workers.forEach(worker -> byKey.put(worker.key(), worker));
        entityManager
                .createQuery(
                        "from StoredAlteration a where a.workerId in :keys and a.acknowledgedAt is null order by a.id",
                        StoredAlteration.class)
                .setParameter("keys", byKey.keySet())
                .getResultList()
                .forEach(alteration -> {
                    StoredWorker worker = byKey.get(alteration.workerKey());
                    StoredTask task = alteration.toTask();
                    if (worker != null) {
                        putOff(List.of(task), worker, postponed.getOrDefault(worker.key(), List.of()));
                    }
                    entityManager.persist(task);
                });
    }

    /** Keeps anew what has changed after a notice or an entry about a worker, since something was acknowledged. */
    void renewAlterations(StoredWorker worker) {
        entityManager
                .createQuery("delete from StoredTask t where t.workerId = :worker and t.kind = :kind")
                .setParameter("worker", worker.key())
                .setParameter("kind", TaskKind.ALTERATION)
                .executeUpdate();
        addAlterations(List.of(worker), postponements(List.of(worker.key())));
    }

    private static void putOff(List<StoredTask> tasks, StoredWorker worker, List<StoredPostponement> postponed) {
        if (postponed.isEmpty()) {
            return;
        }
        String number = worker.details().workerId();
        Map<TaskKey, StoredPostponement> latest = new HashMap<>();
        postponed.forEach(postponement -> latest.put(postponement.task(number), postponement));
        for (StoredTask task : tasks) {
            Optional.ofNullable(latest.get(task.key(number))).ifPresent(task::postpone);
        }
    }
}
