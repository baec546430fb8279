package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.roster.WorkerStore;

/** Those who wear protectors until a mobile unit makes the baseline: a nurse notes it, a safety officer reads. */
@Service
@Transactional
public class AwaitsBaselineService {

    /** How many days ahead somebody is listed; our choice. */
    public static final int DAYS_AHEAD = 30;

    private final EntityManager entityManager;
    private final AwaitsBaselineFinder finder;
    private final WorkerStore workers;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    AwaitsBaselineService(
            EntityManager entityManager,
            AwaitsBaselineFinder finder,
            WorkerStore workers,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.finder = finder;
        this.workers = workers;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** Those whose six months have ended, or end within {@value #DAYS_AHEAD} days. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<AwaitsBaseline> find() {
        return finder.find(currentUser.scope(), LocalDate.now(clock).plusDays(DAYS_AHEAD));
    }

    /** Notes from when on protectors are worn. Returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<String> wornFrom(String workerId, LocalDate day) {
        if (day.isAfter(LocalDate.now(clock))) {
            return Optional.of("The day is still to come.");
        }
        return workers.find(workerId, currentUser.scope())
                .map(worker -> {
                    entityManager.merge(
                            new ProtectorsUntilBaseline(worker.key(), day, currentUser.username(), clock.instant()));
                    auditTrail.record(
                            TestDayAction.PROTECTORS_UNTIL_BASELINE_NOTED, "worker", workerId, "worn from " + day);
                    return Optional.<String>empty();
                })
                .orElse(Optional.of("No worker of this number is among those whose records you may see."));
    }
}
