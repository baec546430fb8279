package org.thresholdregister.protection;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.training.Training;
import org.thresholdregister.core.training.TrainingRule;
import org.thresholdregister.platform.documents.DocumentStore;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.rulesets.RulesBySite;
import org.thresholdregister.rulesets.SiteRulesStore;

/** The trainings on record, and who is due. It checks no role. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class TrainingBook {

    private final EntityManager entityManager;
    private final SiteRulesStore siteRules;
    private final DocumentStore documents;

    TrainingBook(EntityManager entityManager, SiteRulesStore siteRules, DocumentStore documents) {
        this.entityManager = entityManager;
        this.siteRules = siteRules;
        this.documents = documents;
    }

    /** All that one worker took part in, the latest first. */
    List<AttendedTraining> of(long workerKey) {
        return entityManager
                .createQuery(
                        "select a.id, s.id, s.heldOn, s.topics, s.trainer, a.withdrawnReason from StoredAttendance a"
                                + " join StoredSession s on s.id = a.sessionId where a.workerId = :worker"
                                + " order by s.heldOn desc, a.id desc",
                        Tuple.class)
                .setParameter("worker", workerKey)
                .getResultStream()
                .map(tuple -> new AttendedTraining(
                        tuple.get(0, Long.class),
                        tuple.get(1, Long.class),
                        new Training(tuple.get(2, LocalDate.class), StoredSession.topics(tuple.get(3, String.class))),
                        tuple.get(4, String.class),
                        tuple.get(5, String.class)))
                .toList();
    }

    /** Everybody of the scope to whom the rules of their site owe training, whoever is due first in front. */
    List<TrainingRow> due(SiteScope scope, LocalDate today) {
        RulesBySite rules = siteRules.all();
        Map<Long, List<Training>> trainings = byWorker(scope);
        return PersonRow.employed(entityManager, scope, today).stream()
                .filter(person -> person.isEnrolledOn(today))
                .flatMap(person -> row(person, trainings.getOrDefault(person.key(), List.of()), rules, today))
                .sorted(Comparator.comparing(TrainingRow::due))
                .toList();
    }

    private static Stream<TrainingRow> row(
            PersonRow person, List<Training> trainings, RulesBySite rules, LocalDate today) {
        var inForce = rules.of(person.site());
        return TrainingRule.of(inForce.on(today).ruleSet())
                .map(rule -> new TrainingRow(
                        person.key(),
                        person.workerId(),
                        person.name(),
                        person.site(),
                        person.department(),
                        TrainingRule.coveredOn(trainings),
                        rule.due(person.enrolledFrom().orElseThrow(), trainings, inForce.holidays()),
                        rule))
                .stream();
    }

    private Map<Long, List<Training>> byWorker(SiteScope scope) {
        Map<Long, List<Training>> byWorker = new HashMap<>();
        ListQuery.ofOwned(
                        entityManager,
                        "StoredAttendance a join StoredSession s on s.id = a.sessionId",
                        "Worker w on w.id = a.workerId",
                        "w.site",
                        scope)
                .where("a.withdrawnReason = ''")
                .forEach(
                        "a.workerId, s.heldOn, s.topics",
                        "",
                        tuple -> byWorker.computeIfAbsent(tuple.get(0, Long.class), key -> new ArrayList<>())
                                .add(new Training(
                                        tuple.get(1, LocalDate.class),
                                        StoredSession.topics(tuple.get(2, String.class)))));
        return byWorker;
    }

    /** By day, the latest first, without who took part. */
    List<TrainingSession> sessions(SiteScope scope) {
        return ListQuery.of(entityManager, "StoredSession s", "s.site", scope)
                .all("s", "order by s.heldOn desc, s.id desc", tuple -> tuple.get(0, StoredSession.class))
                .stream()
                .map(this::toSession)
                .toList();
    }

    Optional<TrainingSession> find(long key, SiteScope scope) {
        return stored(key, scope).map(this::toSession);
    }

    Optional<StoredSession> stored(long key, SiteScope scope) {
        return Optional.ofNullable(entityManager.find(StoredSession.class, key))
                .filter(session -> scope.includes(session.site().isEmpty() ? null : session.site()));
    }

    Optional<StoredAttendance> attendance(long key, long sessionKey) {
        return Optional.ofNullable(entityManager.find(StoredAttendance.class, key))
                .filter(attendance -> attendance.sessionKey() == sessionKey && attendance.counts());
    }

    private TrainingSession toSession(StoredSession stored) {
        return new TrainingSession(
                stored.key(), stored.details(), stored.sheet().flatMap(documents::find), attendants(stored.key()));
    }

    private List<TrainingSession.Attendant> attendants(long sessionKey) {
        return entityManager
                .createQuery(
                        "select a.id, w.workerId, w.familyName, w.givenName, w.department, a.withdrawnReason"
                                + " from StoredAttendance a join Worker w on w.id = a.workerId"
                                + " where a.sessionId = :session order by w.search, a.id",
                        Tuple.class)
                .setParameter("session", sessionKey)
                .getResultStream()
                .map(tuple -> new TrainingSession.Attendant(
                        tuple.get(0, Long.class),
                        tuple.get(1, String.class),
                        PersonRow.name(
                                tuple.get(2, String.class), tuple.get(3, String.class), tuple.get(1, String.class)),
                        tuple.get(4, String.class),
                        tuple.get(5, String.class)))
                .toList();
    }
}
