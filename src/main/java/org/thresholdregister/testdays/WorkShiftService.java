package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.scheduling.WorkShift;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;
import org.thresholdregister.testdays.ShiftFinder.Shifts;

/** The hours that people work in noise: a nurse keeps them, a safety officer reads. */
@Service
@Transactional
public class WorkShiftService {

    /** The most characters of a shift's name. */
    public static final int LONGEST_NAME = 60;

    private final EntityManager entityManager;
    private final ShiftFinder finder;
    private final WorkerStore workers;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;

    WorkShiftService(
            EntityManager entityManager,
            ShiftFinder finder,
            WorkerStore workers,
            AuditTrail auditTrail,
            CurrentUser currentUser) {
        this.entityManager = entityManager;
        this.finder = finder;
        this.workers = workers;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
    }

    /** The shifts of the user's sites, by site and time. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<SiteShift> shifts() {
        Shifts all = finder.all();
        return all.byKey().values().stream()
                .filter(shift -> sees(shift.site()))
                .map(shift -> new SiteShift(
                        shift.key(),
                        shift.site(),
                        shift.toWorkShift(),
                        all.ofDepartments().entrySet().stream()
                                .filter(entry -> entry.getValue() == shift.key())
                                .map(entry -> entry.getKey().department())
                                .sorted()
                                .toList(),
                        (int) all.ofWorkers().values().stream()
                                .filter(key -> key == shift.key())
                                .count()))
                .sorted(Comparator.comparing(SiteShift::site)
                        .thenComparing(shift -> shift.shift().starts())
                        .thenComparing(shift -> shift.shift().name()))
                .toList();
    }

    /** Stores a shift, or other hours for the one of that name. Returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<String> save(String site, String name, LocalTime starts, LocalTime ends) {
        String called = name.strip();
        if (!sees(site)) {
            return Optional.of("Choose a site whose records you may see.");
        }
        if (called.isEmpty() || called.length() > LONGEST_NAME) {
            return Optional.of("Give the shift a name of 1 to " + LONGEST_NAME + " characters.");
        }
        if (starts.equals(ends)) {
            return Optional.of("A shift begins and ends at different times.");
        }
        var shift = new WorkShift(called, starts, ends);
        finder.all().byKey().values().stream()
                .filter(stored -> stored.site().equals(site)
                        && stored.toWorkShift().name().equals(called))
                .findFirst()
                .ifPresentOrElse(
                        stored -> stored.set(shift), () -> entityManager.persist(new StoredWorkShift(site, shift)));
        auditTrail.record(TestDayAction.WORK_SHIFT_SAVED, "site", site, called + ", " + starts + " to " + ends);
        return Optional.empty();
    }

    /** Removes a shift; those who worked it are without one. */
    @PreAuthorize(Roles.HAS_NURSE)
    public void remove(long key) {
        find(key).ifPresent(shift -> {
            entityManager
                    .createQuery("delete from WorkerShift w where w.workShiftId = :shift")
                    .setParameter("shift", key)
                    .executeUpdate();
            entityManager
                    .createQuery("delete from DepartmentShift d where d.workShiftId = :shift")
                    .setParameter("shift", key)
                    .executeUpdate();
            entityManager.remove(shift);
            auditTrail.record(
                    TestDayAction.WORK_SHIFT_REMOVED,
                    "site",
                    shift.site(),
                    shift.toWorkShift().name());
        });
    }

    /** Has the people of a department of the shift's site work it, but for those with a shift of their own. */
    @PreAuthorize(Roles.HAS_NURSE)
    public void assignDepartment(long key, String department) {
        find(key).ifPresent(shift -> {
            entityManager.merge(new DepartmentShift(new DepartmentShift.Department(shift.site(), department), key));
            auditTrail.record(
                    TestDayAction.WORK_SHIFT_ASSIGNED,
                    "site",
                    shift.site(),
                    shift.toWorkShift().name() + ", department " + department);
        });
    }

    /** Gives a worker a shift of the worker's site, or none of their own. Returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<String> assignWorker(Optional<Long> key, String workerId) {
        Optional<StoredWorker> worker = workers.find(workerId.strip(), currentUser.scope());
        if (worker.isEmpty()) {
            return Optional.of("No worker of this number is among those whose records you may see.");
        }
        Optional<StoredWorkShift> shift = key.flatMap(this::find);
        if (key.isPresent()
                && shift.filter(found ->
                                found.site().equals(worker.get().details().site()))
                        .isEmpty()) {
            return Optional.of("The worker belongs to another site than the shift.");
        }
        shift.ifPresentOrElse(
                found -> entityManager.merge(new WorkerShift(worker.get().key(), found.key())),
                () -> entityManager
                        .createQuery("delete from WorkerShift w where w.workerId = :worker")
                        .setParameter("worker", worker.get().key())
                        .executeUpdate());
        auditTrail.record(
                TestDayAction.WORK_SHIFT_ASSIGNED,
                "worker",
                worker.get().details().workerId(),
                shift.map(found -> found.toWorkShift().name()).orElse("none"));
        return Optional.empty();
    }

    private Optional<StoredWorkShift> find(long key) {
        return Optional.ofNullable(entityManager.find(StoredWorkShift.class, key))
                .filter(shift -> sees(shift.site()));
    }

    private boolean sees(String site) {
        return currentUser.scope().includes(site.isEmpty() ? null : site);
    }
}
