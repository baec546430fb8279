package org.thresholdregister.employment;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Inconsistency;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.core.employment.WorkingLife;
import org.thresholdregister.employment.SalePreview.Going;
import org.thresholdregister.employment.SalePreview.Held;
import org.thresholdregister.employment.SaleResult.Reason;
import org.thresholdregister.employment.SaleResult.Refused;
import org.thresholdregister.employment.StoredWorkEvent.Origin;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.JudgementStore;
import org.thresholdregister.review.JudgingCause;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/** A plant is sold: its workers go to the new owner, and so do the records. */
@Service
@Transactional
public class SoldPlantService {

    private static final int WORKERS_AT_A_TIME = 500;

    private final WorkerStore workers;
    private final LifeStore lives;
    private final SaleStore sales;
    private final JudgementStore judgements;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final EntityManager entityManager;
    private final Clock clock;

    SoldPlantService(
            WorkerStore workers,
            LifeStore lives,
            SaleStore sales,
            JudgementStore judgements,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            EntityManager entityManager,
            Clock clock) {
        this.workers = workers;
        this.lives = lives;
        this.sales = sales;
        this.judgements = judgements;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.entityManager = entityManager;
        this.clock = clock;
    }

    private record Candidate(StoredWorker worker, WorkingLife life) {}

    /** The sales of the user's sites, the latest first. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<PlantSale> sales() {
        return sales.sales(currentUser.scope());
    }

    /** The sites that workers of the user's sites belong to, in order. */
    @PreAuthorize(Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<String> sites() {
        return ListQuery.of(entityManager, "Worker w", "w.site", currentUser.scope())
                .where("w.site <> ''")
                .all("distinct w.site", "order by w.site", tuple -> tuple.get(0, String.class));
    }

    /** Whom the sale would take along; empty for a site that the user may not see. */
    @PreAuthorize(Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public Optional<SalePreview> preview(String site, LocalDate soldOn, String successor) {
        return currentUser.scope().includes(site)
                ? Optional.of(preview(site, soldOn, successor, candidates(site, soldOn)))
                : Optional.empty();
    }

    private SalePreview preview(String site, LocalDate soldOn, String successor, List<Candidate> candidates) {
        List<Going> going = new ArrayList<>();
        List<Held> held = new ArrayList<>();
        for (Candidate candidate : candidates) {
            var details = candidate.worker().details();
            String name = details.familyName().isEmpty() && details.givenName().isEmpty()
                    ? details.workerId()
                    : (details.givenName() + " " + details.familyName()).strip();
            misfit(candidate, soldOn, successor)
                    .ifPresentOrElse(
                            found -> held.add(new Held(details.workerId(), name, found)),
                            () -> going.add(new Going(
                                    details.workerId(),
                                    name,
                                    details.department(),
                                    candidate.life().on(soldOn))));
        }
        return new SalePreview(site, soldOn, successor, going, held);
    }

    private static Optional<Inconsistency> misfit(Candidate candidate, LocalDate soldOn, String successor) {
        List<Inconsistency> known = candidate.life().inconsistencies();
        return after(candidate.life(), transfer(soldOn, successor)).inconsistencies().stream()
                .filter(found -> !known.contains(found))
                .findFirst();
    }

    /** The life with the transfer, which takes the place of a last day that was to come later. */
    private static WorkingLife after(WorkingLife life, DatedEvent transfer) {
        List<DatedEvent> events = new ArrayList<>(life.events());
        events.removeIf(event -> isLaterEnd(event, transfer.day()));
        events.add(transfer);
        return WorkingLife.of(events);
    }

    private static boolean isLaterEnd(DatedEvent event, LocalDate soldOn) {
        return event.event().ends() && event.day().isAfter(soldOn);
    }

    private static DatedEvent transfer(LocalDate soldOn, String successor) {
        return new DatedEvent(soldOn, new WorkEvent.TransferredToSuccessor(successor));
    }

    /** Those who work at the site and are employed on the day. */
    private List<Candidate> candidates(String site, LocalDate soldOn) {
        List<Long> keys = ListQuery.of(entityManager, "Worker w", "w.site", currentUser.scope())
                .where("w.site = ?", site)
                .where("(w.endDate is null or w.endDate >= ?)", soldOn)
                .all("w.id", "order by w.search, w.id", tuple -> tuple.get(0, Long.class));
        List<Candidate> candidates = new ArrayList<>();
        for (int from = 0; from < keys.size(); from += WORKERS_AT_A_TIME) {
            List<Long> some = keys.subList(from, Math.min(from + WORKERS_AT_A_TIME, keys.size()));
            Map<Long, List<StoredWorkEvent>> rows = lives.rows(some);
            Map<Long, StoredWorker> byKey =
                    workers.withKeys(some).stream().collect(Collectors.toMap(StoredWorker::key, worker -> worker));
            for (Long key : some) {
                StoredWorker worker = byKey.get(key);
                if (worker != null) {
                    List<StoredWorkEvent> own = rows.getOrDefault(key, List.of());
                    candidates.add(new Candidate(
                            worker,
                            own.isEmpty()
                                    ? WorkingLife.of(Opening.of(worker.details(), lives.today()))
                                    : LifeStore.life(own)));
                }
            }
        }
        return candidates.stream()
                .filter(candidate -> candidate.life().on(soldOn).standing().isEmployed())
                .toList();
    }

    /**
     * Has everybody of the site go to the successor, as the preview showed it.
     *
     * @param agreed the preview that was agreed to
     */
    @PreAuthorize(Roles.HAS_SAFETY_OFFICER)
    public SaleResult transfer(SalePreview agreed) {
        if (!currentUser.scope().includes(agreed.site())) {
            return new Refused(Reason.SITE_NOT_OPEN);
        }
        if (agreed.successor().isBlank()) {
            return new Refused(Reason.SUCCESSOR_MISSING);
        }
        if (agreed.successor().length() > WorkingLifeService.LONGEST_NAME) {
            return new Refused(Reason.TEXT_TOO_LONG);
        }
        List<Candidate> candidates = candidates(agreed.site(), agreed.soldOn());
        SalePreview now = preview(agreed.site(), agreed.soldOn(), agreed.successor(), candidates);
        if (!now.equals(agreed)) {
            return new SaleResult.PreviewOutdated();
        }
        if (!now.held().isEmpty()) {
            return new Refused(Reason.SOMEONE_HELD);
        }
        if (now.going().isEmpty()) {
            return new Refused(Reason.NOBODY_THERE);
        }
        store(agreed, candidates);
        return new SaleResult.Done(candidates.size());
    }

    private void store(SalePreview agreed, List<Candidate> candidates) {
        String user = currentUser.username();
        StoredPlantSale sale = new StoredPlantSale(
                agreed.site(), agreed.soldOn(), agreed.successor().strip(), user, clock.instant());
        entityManager.persist(sale);
        Origin origin = new Origin(user, clock.instant(), null, sale.key());
        DatedEvent event = transfer(agreed.soldOn(), agreed.successor().strip());
        for (Candidate candidate : candidates) {
            StoredWorker worker = candidate.worker();
            Optional<StoredWorkEvent> laterEnd = LifeStore.inForce(lives.begun(worker.key(), worker.details())).stream()
                    .filter(row -> row.event()
                            .filter(one -> isLaterEnd(one, agreed.soldOn()))
                            .isPresent())
                    .findFirst();
            lives.add(worker.key(), event, laterEnd.orElse(null), "Went with the sold plant", origin);
            workers.follow(new StoredWorker(
                    worker.key(),
                    WorkingLifeService.follow(
                            worker.details(), after(candidate.life(), event).asEnteredOn(lives.today()))));
        }
        auditTrail.record(
                EmploymentAction.PLANT_SOLD,
                "plant-sale",
                Long.toString(sale.key()),
                candidates.size() + " workers on " + agreed.soldOn());
        judgements.judge(
                candidates.stream().map(candidate -> candidate.worker().key()).toList(),
                new JudgingCause.ByWorkingLife());
    }

    /** Takes down that the records were handed over. */
    @PreAuthorize(Roles.HAS_SAFETY_OFFICER)
    public SaleResult handOver(long saleKey, PlantSale.HandOver handOver) {
        Optional<PlantSale> sale = sales.sales(currentUser.scope()).stream()
                .filter(one -> one.key() == saleKey)
                .max(Comparator.comparing(PlantSale::key));
        if (sale.isEmpty()) {
            return new Refused(Reason.SITE_NOT_OPEN);
        }
        if (sale.get().handOver().isPresent()) {
            return new Refused(Reason.DONE_ALREADY);
        }
        if (handOver.receivedBy().isBlank()) {
            return new Refused(Reason.RECEIVER_MISSING);
        }
        if (handOver.receivedBy().length() > WorkingLifeService.LONGEST_NAME
                || handOver.remark().length() > WorkingLifeService.LONGEST_REASON) {
            return new Refused(Reason.TEXT_TOO_LONG);
        }
        if (handOver.on().isAfter(lives.today())) {
            return new Refused(Reason.IN_THE_FUTURE);
        }
        entityManager.persist(new StoredRecordsHandOver(saleKey, handOver, currentUser.username(), clock.instant()));
        auditTrail.record(
                EmploymentAction.RECORDS_HANDED_OVER, "plant-sale", Long.toString(saleKey), "on " + handOver.on());
        return new SaleResult.Done(sale.get().workers());
    }
}
