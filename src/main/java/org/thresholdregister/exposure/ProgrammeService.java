package org.thresholdregister.exposure;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.JudgementStore;
import org.thresholdregister.review.JudgingCause;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerPlace;
import org.thresholdregister.roster.WorkerStore;

/** Who is in the programme because of noise. Measurements propose; a person enters, keeps or takes out. */
@Service
@Transactional
@PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
public class ProgrammeService {

    /** The longest reason that is kept, in characters. */
    public static final int LONGEST_REASON = 2000;

    private final MeasurementBook book;
    private final NoiseBook noise;
    private final WorkerStore workers;
    private final JudgementStore judgements;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;
    private final InstantSource systemTime = InstantSource.system();

    ProgrammeService(
            MeasurementBook book,
            NoiseBook noise,
            WorkerStore workers,
            JudgementStore judgements,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.book = book;
        this.noise = noise;
        this.workers = workers;
        this.judgements = judgements;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** What measurements suggest, by name of the worker. */
    @Transactional(readOnly = true)
    public List<ProgrammeProposal> proposals() {
        LocalDate today = LocalDate.now(clock);
        var finder = finder(today);
        return workers.working(currentUser.scope(), today).stream()
                .flatMap(worker -> finder.about(worker).stream())
                .toList();
    }

    /**
     * Confirms every proposal of a kind that is open for these workers, as it is proposed, and judges them anew. Returns
     * how many there were.
     */
    public int confirm(ProgrammeAct.Kind kind, List<String> workerIds, String reason) {
        List<ProgrammeProposal> open = proposals().stream()
                .filter(proposal -> proposal.kind() == kind
                        && workerIds.contains(proposal.worker().workerId()))
                .toList();
        Map<String, StoredWorker> stored = workers
                .withNumbers(open.stream()
                        .map(proposal -> proposal.worker().workerId())
                        .toList())
                .stream()
                .collect(Collectors.toMap(worker -> worker.details().workerId(), worker -> worker));
        List<Long> changed = new ArrayList<>();
        for (ProgrammeProposal proposal : open) {
            StoredWorker worker = stored.get(proposal.worker().workerId());
            if (worker != null) {
                enter(worker, kind, proposal.on(), proposal.twaDba(), Optional.of(proposal.measurement()), reason);
                changed.add(worker.key());
            }
        }
        judgements.judge(changed, new JudgingCause.ByOther());
        return changed.size();
    }

    /**
     * Takes down that a worker entered or left the programme, or that the measured average goes into the roster, and
     * judges the worker anew. Returns what stands against it; where that is nothing it is stored.
     *
     * @param on the day it counts from
     */
    public Optional<NoiseEntryProblem> enter(String workerId, ProgrammeAct.Kind kind, LocalDate on, String reason) {
        LocalDate today = LocalDate.now(clock);
        if (on.isAfter(today)) {
            return Optional.of(NoiseEntryProblem.IN_THE_FUTURE);
        }
        if (reason.length() > LONGEST_REASON) {
            return Optional.of(NoiseEntryProblem.TEXT_TOO_LONG);
        }
        Optional<StoredWorker> worker = workers.find(workerId, currentUser.scope());
        if (worker.isEmpty()) {
            return Optional.of(NoiseEntryProblem.NOBODY_OF_THAT_NAME);
        }
        WorkerPlace place = WorkerPlace.of(worker.get());
        var measured = new MeasuredNoise(book.all(currentUser.scope()));
        Optional<NoiseMeasurement> latest = measured.speakingFor(place, today);
        Optional<NoiseEntryProblem> problem = problemOf(place, kind, on, reason, latest);
        if (problem.isEmpty()) {
            enter(
                    worker.get(),
                    kind,
                    on,
                    latest.map(measurement -> ProgrammeFinder.onRoster(measurement.result()))
                            .orElse(place.twaDba()),
                    latest.map(NoiseMeasurement::key),
                    reason);
            judgements.judge(List.of(place.key()), new JudgingCause.ByOther());
        }
        return problem;
    }

    /** Leaving always needs a reason; entering does where no measurement speaks for it. */
    private static Optional<NoiseEntryProblem> problemOf(
            WorkerPlace worker,
            ProgrammeAct.Kind kind,
            LocalDate on,
            String reason,
            Optional<NoiseMeasurement> latest) {
        return switch (kind) {
            case ENTERED -> {
                if (worker.enrolledFrom().isPresent()) {
                    yield Optional.of(NoiseEntryProblem.NOT_OPEN);
                }
                if (worker.hireDate().filter(on::isBefore).isPresent()) {
                    yield Optional.of(NoiseEntryProblem.TOO_EARLY);
                }
                boolean measured = latest.filter(measurement -> measurement.result().reachesActionLevel())
                        .isPresent();
                yield measured || !reason.isBlank()
                        ? Optional.empty()
                        : Optional.of(NoiseEntryProblem.TEXT_MISSING);
            }
            case LEFT -> {
                if (worker.enrolledFrom().isEmpty()) {
                    yield Optional.of(NoiseEntryProblem.NOT_OPEN);
                }
                if (worker.enrolledFrom().filter(on::isBefore).isPresent()) {
                    yield Optional.of(NoiseEntryProblem.TOO_EARLY);
                }
                yield reason.isBlank() ? Optional.of(NoiseEntryProblem.TEXT_MISSING) : Optional.empty();
            }
            case TAKEN_OVER -> latest.isPresent() ? Optional.empty() : Optional.of(NoiseEntryProblem.NOT_OPEN);
        };
    }

    private void enter(
            StoredWorker worker,
            ProgrammeAct.Kind kind,
            LocalDate on,
            Optional<BigDecimal> twa,
            Optional<Long> measurement,
            String reason) {
        Optional<LocalDate> enrolled =
                switch (kind) {
                    case ENTERED -> Optional.of(on);
                    case LEFT -> Optional.empty();
                    case TAKEN_OVER -> worker.details().enrolledFrom();
                };
        workers.update(worker.details().withExposure(twa, enrolled));
        noise.add(new StoredProgrammeAct(
                worker.key(),
                new ProgrammeAct(kind, on, twa, reason.strip(), currentUser.username(), systemTime.instant()),
                measurement));
        auditTrail.record(
                switch (kind) {
                    case ENTERED -> ExposureAction.PROGRAMME_ENTERED;
                    case LEFT -> ExposureAction.PROGRAMME_LEFT;
                    case TAKEN_OVER -> ExposureAction.EXPOSURE_TAKEN_OVER;
                },
                "worker",
                worker.details().workerId(),
                "from " + on
                        + measurement.map(key -> ", by noise measurement " + key).orElse(""));
    }

    private ProgrammeFinder finder(LocalDate today) {
        return new ProgrammeFinder(new MeasuredNoise(book.all(currentUser.scope())), noise.lastEntries(), today);
    }
}
