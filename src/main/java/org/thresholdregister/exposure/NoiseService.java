package org.thresholdregister.exposure;

import java.time.Clock;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.exposure.NoiseSubject.Kind;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerPlace;
import org.thresholdregister.roster.WorkerStore;

/** Measurements of noise at the sites that the signed-in user may see. */
@Service
@Transactional(readOnly = true)
@PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
public class NoiseService {

    private static final String MEASUREMENT = "noise-measurement";

    private final MeasurementBook book;
    private final NoiseBook noise;
    private final NoisePlaces places;
    private final WorkerStore workers;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;
    private final InstantSource systemTime = InstantSource.system();

    NoiseService(
            MeasurementBook book,
            NoiseBook noise,
            NoisePlaces places,
            WorkerStore workers,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.book = book;
        this.noise = noise;
        this.places = places;
        this.workers = workers;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** All about noise at the user's sites. */
    public NoiseOverview overview() {
        LocalDate today = LocalDate.now(clock);
        SiteScope scope = currentUser.scope();
        return new NoiseOverview(today, places.all(scope, today), places.proposals(scope, today));
    }

    /** What can be measured for, as the roster of today names it. */
    public RosterNames names() {
        List<WorkerPlace> people = workers.working(currentUser.scope(), LocalDate.now(clock));
        return new RosterNames(
                people.stream().map(WorkerPlace::site).distinct().sorted().toList(),
                bySite(people, WorkerPlace::noiseGroup),
                bySite(people, WorkerPlace::jobTitle));
    }

    private static SortedMap<String, List<String>> bySite(
            List<WorkerPlace> people, Function<WorkerPlace, String> name) {
        var names = new TreeMap<String, TreeSet<String>>();
        people.stream()
                .filter(worker -> !name.apply(worker).isBlank())
                .forEach(worker -> names.computeIfAbsent(worker.site(), site -> new TreeSet<>())
                        .add(name.apply(worker)));
        var lists = new TreeMap<String, List<String>>();
        names.forEach((site, set) -> lists.put(site, List.copyOf(set)));
        return lists;
    }

    /** Everything on record about a place; empty where nothing was measured there that the user may see. */
    public Optional<PlaceRecord> place(NoiseSubject subject) {
        SiteScope scope = currentUser.scope();
        List<NoiseMeasurement> history = book.ofSubject(subject, scope);
        LocalDate today = LocalDate.now(clock);
        return history.isEmpty() ? Optional.empty() : Optional.of(places.record(subject, history, scope, today));
    }

    /** What is known of one worker's noise; empty also for a worker of a site that the user may not see. */
    public Optional<WorkerNoise> ofWorker(String workerId) {
        LocalDate today = LocalDate.now(clock);
        return workers.find(workerId, currentUser.scope()).map(stored -> {
            WorkerPlace worker = WorkerPlace.of(stored);
            var measured = new MeasuredNoise(book.all(currentUser.scope()));
            Optional<NoiseMeasurement> measurement = measured.speakingFor(worker, today);
            boolean working = stored.details().endDate().filter(today::isAfter).isEmpty();
            return new WorkerNoise(
                    ExposureStore.of(worker, measured, today),
                    measurement,
                    measurement.flatMap(
                            found -> Optional.ofNullable(noise.told(found.key()).get(worker.key()))),
                    working ? measured.proposal(worker, today) : Optional.empty());
        });
    }

    /**
     * Takes down a measurement; it counts from its day on.
     * Returns what stands against it; where that is nothing it is stored.
     */
    @Transactional
    public Optional<NoiseEntryProblem> enter(NewMeasurement measurement) {
        NoiseSubject subject = measurement.subject();
        Optional<StoredWorker> worker = subject.kind() == Kind.WORKER
                ? workers.find(subject.name(), currentUser.scope())
                        .filter(found -> found.details().site().equals(subject.site()))
                : Optional.empty();
        Optional<NoiseEntryProblem> problem = problemOf(measurement, worker);
        if (problem.isEmpty()) {
            var stored = new StoredNoiseMeasurement(
                    measurement, worker.map(StoredWorker::key), currentUser.username(), systemTime.instant());
            noise.add(stored);
            auditTrail.record(
                    ExposureAction.NOISE_MEASURED,
                    MEASUREMENT,
                    Long.toString(stored.key()),
                    Audited.subject(subject) + ", measured on " + measurement.measuredOn());
        }
        return problem;
    }

    private Optional<NoiseEntryProblem> problemOf(NewMeasurement measurement, Optional<StoredWorker> worker) {
        NoiseSubject subject = measurement.subject();
        RosterNames names = names();
        if (!currentUser.scope().includes(subject.site().isEmpty() ? null : subject.site())
                || !names.sites().contains(subject.site())) {
            return Optional.of(NoiseEntryProblem.UNKNOWN_SITE);
        }
        boolean known = switch (subject.kind()) {
            case AREA -> true;
            case JOB -> names.jobs().getOrDefault(subject.site(), List.of()).contains(subject.name());
            case GROUP -> names.groups().getOrDefault(subject.site(), List.of()).contains(subject.name());
            case WORKER -> worker.isPresent();
        };
        if (!known) {
            return Optional.of(NoiseEntryProblem.NOBODY_OF_THAT_NAME);
        }
        if (measurement.measuredOn().isAfter(LocalDate.now(clock))) {
            return Optional.of(NoiseEntryProblem.IN_THE_FUTURE);
        }
        if (measurement.instrument().isBlank() || measurement.measuredBy().isBlank()) {
            return Optional.of(NoiseEntryProblem.TEXT_MISSING);
        }
        return measurement.instrument().length() > NewMeasurement.LONGEST_NAME
                        || measurement.measuredBy().length() > NewMeasurement.LONGEST_NAME
                        || measurement.process().length() > NewMeasurement.LONGEST_PROCESS
                ? Optional.of(NoiseEntryProblem.TEXT_TOO_LONG)
                : Optional.empty();
    }

    /** Says that a measurement does not count, and why; it stays readable. Returns what stands against it. */
    @Transactional
    public Optional<NoiseEntryProblem> withdraw(long key, String reason) {
        if (reason.isBlank()) {
            return Optional.of(NoiseEntryProblem.TEXT_MISSING);
        }
        if (reason.length() > NewMeasurement.LONGEST_PROCESS) {
            return Optional.of(NoiseEntryProblem.TEXT_TOO_LONG);
        }
        Optional<NoiseMeasurement> measurement = find(key).filter(NoiseMeasurement::counts);
        if (measurement.isEmpty()) {
            return Optional.of(NoiseEntryProblem.NOT_OPEN);
        }
        noise.add(new StoredWithdrawal(key, reason, currentUser.username(), systemTime.instant()));
        auditTrail.record(
                ExposureAction.NOISE_MEASUREMENT_WITHDRAWN,
                MEASUREMENT,
                Long.toString(key),
                Audited.subject(measurement.get().subject()));
        return Optional.empty();
    }

    /**
     * Takes down that all for whom this measurement speaks, and who were not told, were told its result (29 CFR
     * 1910.95(e)). Returns what stands against it; where that is nothing it is stored.
     */
    @Transactional
    public Optional<NoiseEntryProblem> tell(long key, Told told) {
        LocalDate today = LocalDate.now(clock);
        Optional<NoiseMeasurement> measurement = find(key).filter(NoiseMeasurement::counts);
        List<WorkerPlace> untold = measurement
                .map(found -> places.untold(found, currentUser.scope(), today))
                .orElse(List.of());
        if (measurement.isEmpty() || untold.isEmpty()) {
            return Optional.of(NoiseEntryProblem.NOT_OPEN);
        }
        if (told.on().isAfter(today)) {
            return Optional.of(NoiseEntryProblem.IN_THE_FUTURE);
        }
        if (told.on().isBefore(measurement.get().details().measuredOn())) {
            return Optional.of(NoiseEntryProblem.TOO_EARLY);
        }
        untold.forEach(worker -> {
            noise.add(new StoredTelling(
                    key, worker.key(), told.on(), told.how(), currentUser.username(), systemTime.instant()));
            auditTrail.record(
                    ExposureAction.NOISE_RESULT_TOLD, "worker", worker.workerId(), "noise measurement " + key);
        });
        return Optional.empty();
    }

    private Optional<NoiseMeasurement> find(long key) {
        return book.find(key, currentUser.scope());
    }
}
