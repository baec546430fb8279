package org.thresholdregister.exposure;

import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

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
}
