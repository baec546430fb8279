package org.thresholdregister.employment;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Inconsistency;
import org.thresholdregister.core.employment.Placement;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.core.employment.WorkState;
import org.thresholdregister.core.employment.WorkingLife;
import org.thresholdregister.employment.EntryResult.Reason;
import org.thresholdregister.employment.EntryResult.Refused;
import org.thresholdregister.employment.StoredWorkEvent.Origin;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.review.JudgementStore;
import org.thresholdregister.review.JudgingCause;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;

/** Takes down what happens in a working life; the roster row follows, and the worker is judged anew. */
@Service
@Transactional
public class WorkingLifeService {

    /** The most characters of a site, department, job or other employer's name. */
    public static final int LONGEST_NAME = 200;

    /** The most characters of a reason. */
    public static final int LONGEST_REASON = 2000;

    private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

    private static final String WHO_MAY = Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER;

    private final WorkerStore workers;
    private final LifeStore lives;
    private final JudgementStore judgements;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final EntityManager entityManager;
    private final Clock clock;

    WorkingLifeService(
            WorkerStore workers,
            LifeStore lives,
            JudgementStore judgements,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            EntityManager entityManager,
            Clock clock) {
        this.workers = workers;
        this.lives = lives;
        this.judgements = judgements;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.entityManager = entityManager;
        this.clock = clock;
    }

    /** The life of the worker with this number; empty also for a worker of a site that the user may not see. */
    @PreAuthorize(WHO_MAY)
    @Transactional(readOnly = true)
    public Optional<WorkerLife> of(String workerId) {
        return find(workerId).map(worker -> lives.workerLife(worker.key(), worker.details()));
    }

    /**
     * Takes down an event.
     *
     * @param remark may be empty
     * @param certain whether a site at which nobody works yet is meant as it is written
     */
    @PreAuthorize(WHO_MAY)
    public EntryResult enter(String workerId, DatedEvent event, String remark, boolean certain) {
        return find(workerId)
                .map(worker -> enter(worker, Optional.empty(), Optional.of(event), remark, certain))
                .orElse(new Refused(Reason.UNKNOWN_WORKER));
    }

    /**
     * Puts another event in the place of one that is in force, or takes it back.
     *
     * @param instead empty to take it back
     * @param reason why; never empty
     */
    @PreAuthorize(WHO_MAY)
    public EntryResult correct(
            String workerId, DatedEvent wrong, Optional<DatedEvent> instead, String reason, boolean certain) {
        if (reason.isBlank()) {
            return new Refused(Reason.REASON_MISSING);
        }
        return find(workerId)
                .map(worker -> enter(worker, Optional.of(wrong), instead, reason, certain))
                .orElse(new Refused(Reason.UNKNOWN_WORKER));
    }

    private Optional<StoredWorker> find(String workerId) {
        return workers.find(workerId, currentUser.scope());
    }

    private EntryResult enter(
            StoredWorker worker,
            Optional<DatedEvent> wrong,
            Optional<DatedEvent> event,
            String reason,
            boolean certain) {
        Optional<Reason> objection = event.flatMap(this::objection)
                .or(() -> reason.length() > LONGEST_REASON ? Optional.of(Reason.TEXT_TOO_LONG) : Optional.empty());
        if (objection.isPresent()) {
            return new Refused(objection.get());
        }
        WorkingLife before = lives.life(worker.key(), worker.details());
        if (wrong.isPresent() && !before.events().contains(wrong.get())) {
            return new Refused(Reason.NO_SUCH_ENTRY);
        }
        List<DatedEvent> events = new ArrayList<>(before.events());
        wrong.ifPresent(events::remove);
        event.ifPresent(events::add);
        WorkingLife after = WorkingLife.of(events);
        List<Inconsistency> known = before.inconsistencies();
        Optional<Inconsistency> misfit = after.inconsistencies().stream()
                .filter(found -> !known.contains(found))
                .findFirst();
        if (misfit.isPresent()) {
            return new EntryResult.Misfit(
                    misfit.get(), event.filter(misfit.get().about()::equals).isPresent());
        }
        Optional<String> newSite = event.flatMap(entered -> entered.event().placement())
                .map(Placement::site)
                .filter(site -> !certain && !site.isEmpty() && !someoneWorksAt(site));
        if (newSite.isPresent()) {
            return new EntryResult.SiteNotKnown(newSite.get());
        }
        write(worker, wrong, event, reason);
        return new EntryResult.Entered(follow(worker, after));
    }

    private void write(StoredWorker worker, Optional<DatedEvent> wrong, Optional<DatedEvent> event, String reason) {
        List<StoredWorkEvent> rows = LifeStore.inForce(lives.begun(worker.key(), worker.details()));
        StoredWorkEvent corrected = wrong.flatMap(other -> rows.stream()
                        .filter(row -> row.event().filter(other::equals).isPresent())
                        .reduce((earlier, later) -> later))
                .orElse(null);
        Origin origin = new Origin(currentUser.username(), clock.instant(), null, null);
        if (event.isPresent()) {
            lives.add(worker.key(), event.get(), corrected, reason, origin);
        } else if (corrected != null) {
            lives.takeBack(corrected, reason, origin);
        }
        EmploymentAction action = event.isEmpty()
                ? EmploymentAction.WORK_EVENT_TAKEN_BACK
                : wrong.isPresent() ? EmploymentAction.WORK_EVENT_CORRECTED : EmploymentAction.WORK_EVENT_ENTERED;
        auditTrail.record(
                action,
                "worker",
                worker.details().workerId(),
                event.or(() -> wrong).map(WorkingLifeService::inShort).orElse(""));
    }

    private static String inShort(DatedEvent event) {
        return EventKind.of(event.event()).name().toLowerCase(Locale.ROOT).replace('_', ' ') + " on " + event.day();
    }

    /** Has the roster row follow and the worker judged anew; says whether the user still sees the worker. */
    private boolean follow(StoredWorker worker, WorkingLife life) {
        WorkerDetails details = follow(worker.details(), life.asEnteredOn(lives.today()));
        workers.follow(new StoredWorker(worker.key(), details));
        judgements.judge(List.of(worker.key()), new JudgingCause.ByWorkingLife());
        return currentUser.scope().includes(details.siteIfGiven());
    }

    /** What the state makes of the roster row. */
    static WorkerDetails follow(WorkerDetails details, WorkState state) {
        return details.employed(
                state.hired(),
                state.lastDay(),
                state.place().site(),
                state.place().department(),
                state.place().jobTitle(),
                state.firstEnrolled());
    }

    /** What lies ahead is entered only where nothing but a date follows from it. */
    private Optional<Reason> objection(DatedEvent dated) {
        if (dated.day().isBefore(EARLIEST)) {
            return Optional.of(Reason.BEFORE_ANYONE_LIVED);
        }
        boolean mayLieAhead = dated.event().ends() || dated.event() instanceof WorkEvent.LeaveBegan;
        if (!mayLieAhead && dated.day().isAfter(lives.today())) {
            return Optional.of(Reason.IN_THE_FUTURE);
        }
        Optional<Reason> badPlace = dated.event().placement().flatMap(WorkingLifeService::objection);
        return badPlace.or(() -> switch (dated.event()) {
            case WorkEvent.TakenOver(var predecessor, var place) -> name(predecessor);
            case WorkEvent.TransferredToSuccessor(var successor) -> name(successor);
            case WorkEvent.Engaged(var engagement) ->
                engagement.employer().isEmpty() ? Optional.empty() : name(engagement.employer());
            case WorkEvent.Hired hired -> Optional.empty();
            case WorkEvent.Listed listed -> Optional.empty();
            case WorkEvent.Moved moved -> Optional.empty();
            case WorkEvent.Enrolled enrolled -> Optional.empty();
            case WorkEvent.EnrolmentEnded ended -> Optional.empty();
            case WorkEvent.LeaveBegan leave -> Optional.empty();
            case WorkEvent.Returned returned -> Optional.empty();
            case WorkEvent.Left left -> Optional.empty();
        });
    }

    private static Optional<Reason> name(String name) {
        return name.isBlank()
                ? Optional.of(Reason.NAME_MISSING)
                : name.length() > LONGEST_NAME ? Optional.of(Reason.TEXT_TOO_LONG) : Optional.empty();
    }

    private static Optional<Reason> objection(Placement place) {
        boolean tooLong = List.of(place.site(), place.department(), place.jobTitle()).stream()
                .anyMatch(text -> text.length() > LONGEST_NAME);
        return tooLong ? Optional.of(Reason.TEXT_TOO_LONG) : Optional.empty();
    }

    /** Of whatever scope: that a site exists is nobody's health record. */
    private boolean someoneWorksAt(String site) {
        return ListQuery.of(entityManager, "Worker w", "w.site", SiteScope.all())
                        .where("w.site = ?", site)
                        .count()
                > 0;
    }
}
