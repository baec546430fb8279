package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.review.HistoryStore.StoredHistory;

/**
 * Lets new determinations take the place of those on record. One that says the same stands as it was made; one that
 * says something else, or is made no more, is kept as a former one. Where a notice was given or a case recorded on it,
 * that it changed is put before a person.
 */
final class Succession {

    private static final Set<DecisionKind> SENT_OR_RECORDED =
            EnumSet.of(DecisionKind.NOTICE_GIVEN, DecisionKind.RECORDED, DecisionKind.LINED_OUT);

    private final EntityManager entityManager;
    private final JudgingCause cause;
    private final Instant at;
    private final LocalDate on;
    private final Map<Long, Map<DeterminationRow.Subject, StoredDetermination>> onRecord = new HashMap<>();

    /** Begins with what is on record about these workers, before it is deleted. */
    Succession(EntityManager entityManager, Collection<Long> workerKeys, JudgingCause cause, Instant at, LocalDate on) {
        this.entityManager = entityManager;
        this.cause = cause;
        this.at = at;
        this.on = on;
        entityManager
                .createQuery(
                        "from StoredDetermination d where d.workerId in :keys order by d.id", StoredDetermination.class)
                .setParameter("keys", workerKeys)
                .getResultStream()
                .forEach(determination -> onRecord.computeIfAbsent(
                                determination.workerKey(), key -> new LinkedHashMap<>())
                        .put(determination.subject(), determination));
    }

    /** Stores a worker's determinations in the place of those on record. */
    void put(StoredHistory stored, RulesInForce rules, List<StoredDetermination> determinations) {
        Map<DeterminationRow.Subject, StoredDetermination> earlier =
                Objects.requireNonNullElseGet(onRecord.remove(stored.worker().key()), LinkedHashMap::new);
        Map<StoredDetermination, Optional<EarFinding>> replaced = new LinkedHashMap<>();
        for (StoredDetermination determination : determinations) {
            Optional<StoredDetermination> former = Optional.ofNullable(earlier.remove(determination.subject()));
            Optional<StoredDetermination> unchanged = former.filter(determination::saysTheSameAs);
            entityManager.persist(unchanged.map(StoredDetermination::new).orElse(determination));
            if (unchanged.isEmpty()) {
                former.ifPresent(row -> replaced.put(row, Optional.of(determination.finding())));
            }
        }
        earlier.values().forEach(row -> replaced.put(row, ofSuccessor(row, determinations)));
        if (!replaced.isEmpty()) {
            keep(stored, rules, replaced);
        }
    }

    /** What is found on the test that took this one's place, where one did and it is of the same day. */
    private Optional<EarFinding> ofSuccessor(StoredDetermination row, List<StoredDetermination> determinations) {
        return cause instanceof JudgingCause.BySuperseding(long former, Optional<Long> successor)
                        && row.subject().testKey() == former
                ? determinations.stream()
                        .filter(now -> Optional.of(now.subject().testKey()).equals(successor)
                                && now.subject().ear() == row.subject().ear()
                                && now.testDate().equals(row.testDate()))
                        .findFirst()
                        .map(StoredDetermination::finding)
                : Optional.empty();
    }

    private void keep(
            StoredHistory stored, RulesInForce rules, Map<StoredDetermination, Optional<EarFinding>> replaced) {
        List<Decision> sentOrRecorded = sentOrRecordedBefore(stored);
        Optional<Decision> entered = enteredByHand();
        replaced.forEach((row, now) -> {
            StoredFormerDetermination former = new StoredFormerDetermination(row, at, on, cause);
            entityManager.persist(former);
            SentAndRecorded sent = SentAndRecorded.of(
                    row.testDate(),
                    row.subject().ear(),
                    rules.on(row.testDate()).ruleSet(),
                    stored.history().audiograms(),
                    sentOrRecorded);
            boolean decidedKnowingly = sent.recordedOn().isEmpty()
                    && entered.filter(decision -> decision.testDate().equals(row.testDate()))
                            .isPresent();
            if (!decidedKnowingly && sent.isOvertakenBy(row.finding(), now)) {
                entityManager.persist(new StoredAlteration(former, sent, now, on));
            }
        });
    }

    /** Who decides on a test himself need not be told that it changed, unless an entry on the log is left behind. */
    private Optional<Decision> enteredByHand() {
        return cause instanceof JudgingCause.ByDecision(long key)
                ? Optional.ofNullable(entityManager.find(StoredDecision.class, key))
                        .map(decision -> decision.toRecordedDecision().decision())
                : Optional.empty();
    }

    /** What was sent or recorded before whatever has the worker judged anew. */
    private List<Decision> sentOrRecordedBefore(StoredHistory stored) {
        if (stored.history().decisions().stream().noneMatch(decision -> SENT_OR_RECORDED.contains(decision.kind()))) {
            return List.of();
        }
        return entityManager
                .createQuery(
                        "from StoredDecision d where d.workerId = :key and d.kind in :kinds order by d.id",
                        StoredDecision.class)
                .setParameter("key", stored.worker().key())
                .setParameter("kinds", SENT_OR_RECORDED)
                .getResultStream()
                .filter(decision -> !isTheCause(decision))
                .map(decision -> decision.toRecordedDecision().decision())
                .toList();
    }

    private boolean isTheCause(StoredDecision decision) {
        return switch (cause) {
            case JudgingCause.ByDecision(long key) -> decision.key() == key;
            case JudgingCause.ByImport(long batch) -> decision.isOfImport(batch);
            case JudgingCause.ByTest test -> false;
            case JudgingCause.BySuperseding superseding -> false;
            case JudgingCause.ByCalendar calendar -> false;
            case JudgingCause.ByWorkingLife life -> false;
            case JudgingCause.ByOther other -> false;
        };
    }
}
