package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.scheduling.WorkShift;
import org.thresholdregister.roster.WorkerDetails;

/** Knows the shifts that people work. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ShiftFinder {

    private final EntityManager entityManager;

    ShiftFinder(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    /** Who works when; read once and asked for many workers. */
    record Shifts(
            Map<Long, StoredWorkShift> byKey,
            Map<Long, Long> ofWorkers,
            Map<DepartmentShift.Department, Long> ofDepartments) {

        /** The worker's own shift, else the department's; none of another site, where the worker has moved. */
        Optional<WorkShift> of(long workerKey, WorkerDetails worker) {
            return find(ofWorkers.get(workerKey), worker)
                    .or(() -> find(
                            ofDepartments.get(new DepartmentShift.Department(worker.site(), worker.department())),
                            worker));
        }

        private Optional<WorkShift> find(@Nullable Long shiftKey, WorkerDetails worker) {
            return Optional.ofNullable(shiftKey)
                    .map(byKey::get)
                    .filter(shift -> shift.site().equals(worker.site()))
                    .map(StoredWorkShift::toWorkShift);
        }
    }

    Shifts all() {
        Map<Long, StoredWorkShift> byKey = new HashMap<>();
        entityManager
                .createQuery("select s from StoredWorkShift s", StoredWorkShift.class)
                .getResultList()
                .forEach(shift -> byKey.put(shift.key(), shift));
        Map<Long, Long> ofWorkers = new HashMap<>();
        entityManager
                .createQuery("select w from WorkerShift w", WorkerShift.class)
                .getResultList()
                .forEach(row -> ofWorkers.put(row.workerKey(), row.shiftKey()));
        Map<DepartmentShift.Department, Long> ofDepartments = new HashMap<>();
        entityManager
                .createQuery("select d from DepartmentShift d", DepartmentShift.class)
                .getResultList()
                .forEach(row -> ofDepartments.put(row.department(), row.shiftKey()));
        return new Shifts(byKey, ofWorkers, ofDepartments);
    }
}
