package org.thresholdregister.exposure;

import java.time.Clock;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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
import org.thresholdregister.platform.documents.Document;
import org.thresholdregister.platform.documents.DocumentStore;
import org.thresholdregister.platform.documents.NewDocument;
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
    private final WorkerStore workers;
    private final DocumentStore documents;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;
    private final InstantSource systemTime = InstantSource.system();

    NoiseService(
            MeasurementBook book,
            NoiseBook noise,
            WorkerStore workers,
            DocumentStore documents,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.book = book;
        this.noise = noise;
        this.workers = workers;
        this.documents = documents;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** All about noise at the user's sites. */
    public NoiseOverview overview() {
        SiteScope scope = currentUser.scope();
        LocalDate today = LocalDate.now(clock);
        var measured = new MeasuredNoise(book.all(scope));
        List<WorkerPlace> people = workers.working(scope, today);
        List<NoiseControl> controls = noise.controls(scope);
        var finder = new ProgrammeFinder(measured, noise.lastEntries(), today);
        return new NoiseOverview(
                today,
                new Places(measured, people, controls, today).all(noise::told),
                people.stream().flatMap(worker -> finder.about(worker).stream()).toList(),
                noise.changes(scope),
                controls,
                noise.postings(scope),
                noise.intervals(scope));
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

    /** Everything measured for a place, those that were withdrawn among it, in order of time. */
    public List<NoiseMeasurement> history(NoiseSubject subject) {
        return book.ofSubject(subject, currentUser.scope());
    }

    public Optional<NoiseMeasurement> find(long key) {
        return book.find(key, currentUser.scope());
    }

    /** What is known of one worker's noise; empty also for a worker of a site that the user may not see. */
    public Optional<WorkerNoise> ofWorker(String workerId) {
        LocalDate today = LocalDate.now(clock);
        return workers.find(workerId, currentUser.scope()).map(stored -> ofWorker(stored, today));
    }

    private WorkerNoise ofWorker(StoredWorker stored, LocalDate today) {
        WorkerPlace worker = WorkerPlace.of(stored);
        var measured = new MeasuredNoise(book.all(currentUser.scope()));
        boolean working = stored.details().endDate().filter(today::isAfter).isEmpty();
        return new WorkerNoise(
                ExposureStore.of(worker, measured, today),
                measured.of(worker, today),
                noise.toldTo(worker.key()),
                noise.acts(worker.key()),
                working
                        ? new ProgrammeFinder(measured, noise.lastEntries(), today).about(worker)
                        : Optional.empty(),
                worker.enrolledFrom());
    }

    /**
     * Takes down a measurement; it counts from its day on, and settles a change of process of that place up to then.
     * Returns what stands against it; where that is nothing it is stored.
     *
     * @param report to be attached
     */
    @Transactional
    public Optional<NoiseEntryProblem> enter(NewMeasurement measurement, Optional<NewDocument> report) {
        NoiseSubject subject = measurement.subject();
        Optional<StoredWorker> worker = subject.kind() == Kind.WORKER
                ? workers.find(subject.name(), currentUser.scope())
                        .filter(found -> found.details().site().equals(subject.site()))
                : Optional.empty();
        Optional<NoiseEntryProblem> problem = problemOf(measurement, worker);
        if (problem.isEmpty()) {
            var stored = new StoredMeasurement(
                    measurement,
                    worker.map(StoredWorker::key),
                    report.map(documents::add),
                    currentUser.username(),
                    systemTime.instant());
            noise.add(stored);
            noise.openChanges(subject).stream()
                    .filter(change -> !change.toChange().changedOn().isAfter(measurement.measuredOn()))
                    .forEach(change -> change.settle(measurement.measuredOn(), "", currentUser.username()));
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
        boolean known =
                switch (subject.kind()) {
                    case AREA -> true;
                    case JOB ->
                        names.jobs().getOrDefault(subject.site(), List.of()).contains(subject.name());
                    case GROUP ->
                        names.groups().getOrDefault(subject.site(), List.of()).contains(subject.name());
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

    /** The report attached to a measurement. */
    public Optional<Document> report(long key) {
        return find(key).flatMap(NoiseMeasurement::document).flatMap(documents::find);
    }

    /**
     * The file of the report attached to a measurement.
     *
     * @throws IllegalArgumentException where there is none that the user may see
     */
    @Transactional
    public byte[] reportContent(long key) {
        long document = find(key).flatMap(NoiseMeasurement::document)
                .orElseThrow(() -> new IllegalArgumentException("no report is attached"));
        auditTrail.record(ExposureAction.NOISE_REPORT_FETCHED, MEASUREMENT, Long.toString(key), "");
        return documents.content(document);
    }

    /** Puts places together from what was measured and who works there. */
    static final class Places {

        private final MeasuredNoise measured;
        private final List<WorkerPlace> people;
        private final List<NoiseControl> controls;
        private final LocalDate today;

        Places(MeasuredNoise measured, List<WorkerPlace> people, List<NoiseControl> controls, LocalDate today) {
            this.measured = measured;
            this.people = people;
            this.controls = controls;
            this.today = today;
        }

        /** @param told whom a measurement was told to, by worker's key */
        List<NoisePlace> all(Function<Long, Map<Long, Told>> told) {
            var speaking = new TreeMap<Long, List<WorkerPlace>>();
            var subjects = new ArrayList<NoiseSubject>();
            for (WorkerPlace worker : people) {
                measured.speakingFor(worker, today)
                        .ifPresentOrElse(
                                measurement -> speaking.computeIfAbsent(
                                                measurement.key(), key -> new ArrayList<>())
                                        .add(worker),
                                () -> {
                                    if (!worker.noiseGroup().isBlank()) {
                                        subjects.add(
                                                new NoiseSubject(Kind.GROUP, worker.site(), worker.noiseGroup()));
                                    }
                                });
            }
            var unmeasured = new ArrayList<NoisePlace>();
            subjects.stream().distinct().forEach(subject -> {
                if (measured.current(subject, today).isEmpty()) {
                    int count = (int) subjects.stream().filter(subject::equals).count();
                    unmeasured.add(new NoisePlace(subject, Optional.empty(), count, 0, open(subject)));
                }
            });
            List<NoisePlace> all = new ArrayList<>(unmeasured);
            for (NoiseMeasurement measurement : measured.current(today)) {
                List<WorkerPlace> those = speaking.getOrDefault(measurement.key(), List.of());
                int untold = 0;
                if (measurement.result().reachesActionLevel() && !those.isEmpty()) {
                    Map<Long, Told> already = told.apply(measurement.key());
                    untold = (int) those.stream()
                            .filter(worker -> !already.containsKey(worker.key()))
                            .count();
                }
                all.add(new NoisePlace(
                        measurement.subject(),
                        Optional.of(measurement),
                        those.size(),
                        untold,
                        open(measurement.subject())));
            }
            return all.stream()
                    .sorted(Comparator.comparing((NoisePlace place) -> place.subject().site())
                            .thenComparing(place -> place.subject().kind(), Comparator.reverseOrder())
                            .thenComparing(place -> place.subject().name()))
                    .toList();
        }

        private int open(NoiseSubject subject) {
            return (int) controls.stream()
                    .filter(control -> control.isOpen() && control.subject().equals(subject))
                    .count();
        }
    }
}
