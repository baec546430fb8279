package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.exposure.NoiseSubject.Kind;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.WorkerPlace;
import org.thresholdregister.roster.WorkerStore;

/** Puts places together from what was measured and who works there. It checks no role. */
@Component
@Transactional(propagation = Propagation.MANDATORY, readOnly = true)
class NoisePlaces {

    private static final Comparator<NoisePlace> ORDER = Comparator.comparing(
                    (NoisePlace place) -> place.subject().site())
            .thenComparing(place -> place.subject().kind(), Comparator.reverseOrder())
            .thenComparing(place -> place.subject().name());

    private final MeasurementBook book;
    private final NoiseBook noise;
    private final WorkerStore workers;

    NoisePlaces(MeasurementBook book, NoiseBook noise, WorkerStore workers) {
        this.book = book;
        this.noise = noise;
        this.workers = workers;
    }

    /** Those that were measured, and the noise groups of the roster for whose people nothing speaks. */
    List<NoisePlace> all(SiteScope scope, LocalDate today) {
        var measured = new MeasuredNoise(book.all(scope));
        Map<Long, List<WorkerPlace>> speaking = new HashMap<>();
        Map<NoiseSubject, Integer> unmeasured = new LinkedHashMap<>();
        for (WorkerPlace worker : workers.working(scope, today)) {
            Optional<NoiseMeasurement> speaks = measured.speakingFor(worker, today);
            if (speaks.isPresent()) {
                speaking.computeIfAbsent(speaks.get().key(), key -> new ArrayList<>())
                        .add(worker);
            } else if (!worker.noiseGroup().isBlank()) {
                unmeasured.merge(new NoiseSubject(Kind.GROUP, worker.site(), worker.noiseGroup()), 1, Integer::sum);
            }
        }
        List<NoisePlace> all = new ArrayList<>();
        unmeasured.forEach((subject, count) -> all.add(new NoisePlace(subject, Optional.empty(), count, 0)));
        for (NoiseMeasurement measurement : measured.current(today)) {
            List<WorkerPlace> people = speaking.getOrDefault(measurement.key(), List.of());
            all.add(new NoisePlace(
                    measurement.subject(),
                    Optional.of(measurement),
                    people.size(),
                    untold(measurement, people).size()));
        }
        return all.stream().sorted(ORDER).toList();
    }

    /** Who is not in the programme though measurements reach the action level, by name. */
    List<ProgrammeProposal> proposals(SiteScope scope, LocalDate today) {
        var measured = new MeasuredNoise(book.all(scope));
        return workers.working(scope, today).stream()
                .flatMap(worker -> measured.proposal(worker, today).stream())
                .toList();
    }

    PlaceRecord record(NoiseSubject subject, List<NoiseMeasurement> history, SiteScope scope, LocalDate today) {
        var measured = new MeasuredNoise(book.all(scope));
        Optional<NoiseMeasurement> current = measured.current(subject, today);
        List<WorkerPlace> people =
                current.map(found -> people(found, measured, scope, today)).orElse(List.of());
        return new PlaceRecord(
                subject,
                today,
                history,
                current,
                people,
                current.map(found -> untold(found, people)).orElse(List.of()));
    }

    /** For whom this measurement speaks today and who were not told that it reaches the action level. */
    List<WorkerPlace> untold(NoiseMeasurement measurement, SiteScope scope, LocalDate today) {
        return untold(measurement, people(measurement, new MeasuredNoise(book.all(scope)), scope, today));
    }

    private List<WorkerPlace> untold(NoiseMeasurement measurement, List<WorkerPlace> people) {
        if (people.isEmpty() || !measurement.result().reachesActionLevel()) {
            return List.of();
        }
        Set<Long> told = noise.told(measurement.key()).keySet();
        return people.stream().filter(worker -> !told.contains(worker.key())).toList();
    }

    private List<WorkerPlace> people(
            NoiseMeasurement measurement, MeasuredNoise measured, SiteScope scope, LocalDate today) {
        return workers.working(scope, today).stream()
                .filter(worker -> measured.speakingFor(worker, today)
                        .filter(found -> found.key() == measurement.key())
                        .isPresent())
                .toList();
    }
}
