package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.BulkResult.Left;
import org.thresholdregister.review.BulkResult.Why;

/**
 * Does one thing for many open tasks at once, in one transaction. What cannot be done for a task leaves it as it is and
 * is told with the reason.
 */
@Service
public class BulkService {

    private final EntityManager entityManager;
    private final BoardService board;
    private final DecisionService decisions;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    BulkService(
            EntityManager entityManager,
            BoardService board,
            DecisionService decisions,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.board = board;
        this.decisions = decisions;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /**
     * That something was done.
     *
     * @param on the day of it
     * @param by who did it
     * @param reason why, where the record asks for it; may be empty
     * @param evidence how, and what shows it; a file in it is stored once
     */
    public record Settlement(LocalDate on, String by, String reason, Evidence evidence) {}

    /** Takes down that the tasks have been done. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public BulkResult settle(Collection<TaskKey> tasks, Settlement settlement) {
        var evidence = new SharedEvidence(settlement.evidence());
        return forEach(tasks, row -> {
            Optional<DecisionKind> kind = row.kind().doneBy();
            if (kind.isEmpty() || row.key().testDate().isEmpty()) {
                return Optional.of(new Why.SettledElsewhere());
            }
            return enter(
                    row,
                    new Decision(
                            row.key().ears(),
                            row.key().testDate().get(),
                            kind.get(),
                            settlement.on(),
                            settlement.by(),
                            settlement.reason()),
                    Optional.of(evidence));
        });
    }

    /** Takes down that retests are booked for a day, which is told in the reason of the decision. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public BulkResult book(Collection<TaskKey> tasks, LocalDate day, String by, String note) {
        return forEach(tasks, row -> {
            if (row.kind() != TaskKind.RETEST || row.key().testDate().isEmpty()) {
                return Optional.of(new Why.SettledElsewhere());
            }
            if (row.due().filter(day::isAfter).isPresent()) {
                return Optional.of(new Why.AfterTheWindow());
            }
            return enter(
                    row,
                    new Decision(
                            row.key().ears(),
                            row.key().testDate().get(),
                            DecisionKind.RETEST_BOOKED,
                            LocalDate.now(clock),
                            by,
                            ("Booked for " + Words.day(day) + ". " + note).strip()),
                    Optional.empty());
        });
    }

    /**
     * Puts the tasks off until a day. No due date moves: what a rule makes due before that day is overdue from its own
     * day on.
     *
     * @throws IllegalArgumentException where the day is not after today, or the reason is blank or too long
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public BulkResult postpone(Collection<TaskKey> tasks, LocalDate until, String reason) {
        if (!until.isAfter(LocalDate.now(clock))
                || reason.isBlank()
                || reason.length() > DecisionService.LONGEST_REASON) {
            throw new IllegalArgumentException("put off until a later day, with a reason");
        }
        return forEach(tasks, row -> {
            StoredTask task = stored(row.key());
            var postponement = new StoredPostponement(
                    task, row.key(), until, reason.strip(), currentUser.username(), clock.instant());
            entityManager.persist(postponement);
            task.postpone(postponement);
            auditTrail.record(
                    ReviewAction.POSTPONED,
                    "worker",
                    row.workerId(),
                    row.kind().word()
                            + row.key()
                                    .testDate()
                                    .map(day -> ", test of " + day)
                                    .orElse("") + ", until " + until);
            return Optional.empty();
        });
    }

    private BulkResult forEach(Collection<TaskKey> tasks, Function<BoardRow.OfTask, Optional<Why>> act) {
        if (tasks.size() > BoardService.MOST_AT_ONCE) {
            throw new IllegalArgumentException("more than " + BoardService.MOST_AT_ONCE + " at once");
        }
        Map<TaskKey, BoardRow.OfTask> open = board.ofTasks(tasks);
        List<TaskKey> done = new ArrayList<>();
        List<Left> left = new ArrayList<>();
        for (TaskKey key : tasks) {
            Optional<Why> why =
                    Optional.ofNullable(open.get(key)).map(act).orElseGet(() -> Optional.of(new Why.NotOpen()));
            why.ifPresentOrElse(reason -> left.add(new Left(key, reason)), () -> done.add(key));
        }
        return new BulkResult(done, left);
    }

    /** The first decision stores the file, and the others name it. */
    private static final class SharedEvidence {
        private Evidence evidence;

        SharedEvidence(Evidence evidence) {
            this.evidence = evidence;
        }

        Evidence get() {
            return evidence;
        }

        void keptAs(long document) {
            evidence =
                    new Evidence(evidence.means(), evidence.note(), Optional.of(new Evidence.Attached.Kept(document)));
        }
    }

    private Optional<Why> enter(BoardRow.OfTask row, Decision decision, Optional<SharedEvidence> evidence) {
        if (!decisions.kindsToEnter().contains(decision.kind())) {
            return Optional.of(new Why.NotThisRole());
        }
        DecisionService.Entered entered = decisions.enter(row.workerId(), decision, evidence.map(SharedEvidence::get));
        entered.kept().ifPresent(key -> evidence.ifPresent(some -> some.keptAs(key)));
        return switch (entered.result()) {
            case DecisionResult.Recorded() -> Optional.empty();
            case DecisionResult.AlreadyOnRecord() -> Optional.of(new Why.AlreadyOnRecord());
            case DecisionResult.Refused(var reason) -> Optional.of(new Why.Refused(reason));
            case DecisionResult.OutOfOrder(var objection) -> Optional.of(new Why.OutOfOrder(objection));
        };
    }

    private StoredTask stored(TaskKey key) {
        TypedQuery<StoredTask> query = entityManager
                .createQuery(
                        "select t from StoredTask t join Worker w on w.id = t.workerId where w.workerId = :number"
                                + " and t.kind = :kind and t.ears = :ears and t.testDate "
                                + (key.testDate().isPresent() ? "= :test" : "is null") + " order by t.id",
                        StoredTask.class)
                .setParameter("number", key.workerId())
                .setParameter("kind", key.kind())
                .setParameter("ears", key.ears());
        key.testDate().ifPresent(day -> query.setParameter("test", day));
        return query.getResultList().getFirst();
    }
}
