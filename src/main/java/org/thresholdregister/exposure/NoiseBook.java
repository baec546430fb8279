package org.thresholdregister.exposure;

import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/** What is on record beside the measurements: who was told, acts, changes, controls, postings, intervals. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class NoiseBook {

    private final EntityManager entityManager;

    NoiseBook(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    void add(Object entity) {
        entityManager.persist(entity);
    }

    /** Whom a measurement was told to, by worker's key. */
    Map<Long, Told> told(long measurement) {
        Map<Long, Told> told = new HashMap<>();
        entityManager
                .createQuery("select t from StoredTelling t where t.measurementId = :measurement", StoredTelling.class)
                .setParameter("measurement", measurement)
                .getResultStream()
                .forEach(telling -> told.put(telling.worker(), telling.toTold()));
        return told;
    }

    /** What a worker was told, by the measurement's key. */
    Map<Long, Told> toldTo(long worker) {
        Map<Long, Told> told = new HashMap<>();
        entityManager
                .createQuery("select t from StoredTelling t where t.workerId = :worker", StoredTelling.class)
                .setParameter("worker", worker)
                .getResultStream()
                .forEach(telling -> told.put(telling.measurement(), telling.toTold()));
        return told;
    }

    /** In the order in which they were entered. */
    List<ProgrammeAct> acts(long worker) {
        return entityManager
                .createQuery(
                        "select a from StoredProgrammeAct a where a.workerId = :worker order by a.id",
                        StoredProgrammeAct.class)
                .setParameter("worker", worker)
                .getResultStream()
                .map(StoredProgrammeAct::toAct)
                .toList();
    }

    /** The last time that each worker entered the programme, by worker's key. */
    Map<Long, ProgrammeAct> lastEntries() {
        Map<Long, ProgrammeAct> last = new HashMap<>();
        entityManager
                .createQuery(
                        "select a from StoredProgrammeAct a where a.kind = :entered order by a.id",
                        StoredProgrammeAct.class)
                .setParameter("entered", ProgrammeAct.Kind.ENTERED)
                .getResultStream()
                .forEach(act -> last.put(act.worker(), act.toAct()));
        return last;
    }

    /** The latest change first. */
    List<ProcessChange> changes(SiteScope scope) {
        return ListQuery.of(entityManager, "StoredProcessChange c", "c.site", scope).all(
                "c",
                "order by c.changedOn desc, c.id desc",
                tuple -> tuple.get(0, StoredProcessChange.class).toChange());
    }

    Optional<StoredProcessChange> change(long key, SiteScope scope) {
        return ListQuery.of(entityManager, "StoredProcessChange c", "c.site", scope)
                .where("c.id = ?", key)
                .all("c", "", tuple -> tuple.get(0, StoredProcessChange.class))
                .stream()
                .findFirst();
    }

    /** Changes at a place that nobody has settled. */
    List<StoredProcessChange> openChanges(NoiseSubject subject) {
        return entityManager
                .createQuery(
                        "select c from StoredProcessChange c where c.site = :site and c.subjectKind = :kind"
                                + " and c.subjectName = :name and c.settledOn is null",
                        StoredProcessChange.class)
                .setParameter("site", subject.site())
                .setParameter("kind", subject.kind())
                .setParameter("name", subject.name())
                .getResultList();
    }

    /** The first due first. */
    List<NoiseControl> controls(SiteScope scope) {
        return ListQuery.of(entityManager, "StoredControl c", "c.site", scope).all(
                "c", "order by c.dueOn, c.id", tuple -> tuple.get(0, StoredControl.class)
                        .toControl());
    }

    Optional<StoredControl> control(long key, SiteScope scope) {
        return ListQuery.of(entityManager, "StoredControl c", "c.site", scope)
                .where("c.id = ?", key)
                .all("c", "", tuple -> tuple.get(0, StoredControl.class))
                .stream()
                .findFirst();
    }

    /** The latest look first. */
    List<Posting> postings(SiteScope scope) {
        return ListQuery.of(entityManager, "StoredPosting p", "p.site", scope).all(
                "p",
                "order by p.seenOn desc, p.id desc",
                tuple -> tuple.get(0, StoredPosting.class).toPosting());
    }

    /** After how many months a site measures again, by site; those that do not are left out. */
    Map<String, Integer> intervals(SiteScope scope) {
        Map<String, Integer> months = new LinkedHashMap<>();
        ListQuery.of(entityManager, "StoredInterval i", "i.site", scope).forEach("i", "order by i.id", tuple -> {
            var interval = tuple.get(0, StoredInterval.class);
            months.put(interval.site(), interval.months());
        });
        months.values().removeIf(number -> number == 0);
        return months;
    }
}
