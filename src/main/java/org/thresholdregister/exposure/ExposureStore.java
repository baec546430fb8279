package org.thresholdregister.exposure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.noise.NoiseResult;
import org.thresholdregister.core.noise.TimeWeightedAverage;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerPlace;
import org.thresholdregister.roster.WorkerStore;

/**
 * How much noise a worker is exposed to, for the services of other features. It checks no role: the service that calls it
 * does, and screens never call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY, readOnly = true)
public class ExposureStore {

    private final MeasurementBook book;
    private final WorkerStore workers;

    ExposureStore(MeasurementBook book, WorkerStore workers) {
        this.workers = workers;
        this.book = book;
    }

    /**
     * The worker's noise on a day, by the latest measurement up to that day of the worker, the noise group or the job in
     * which the roster places the worker now; without any, by the average on the roster. Empty where neither is given.
     */
    public Optional<WorkerExposure> of(StoredWorker worker, LocalDate day) {
        return of(WorkerPlace.of(worker), new MeasuredNoise(book.all(SiteScope.all())), day);
    }

    /** The same of everybody in the scope who is employed on this day, by worker's key. */
    public Map<Long, WorkerExposure> ofWorking(SiteScope scope, LocalDate day) {
        var measured = new MeasuredNoise(book.all(scope));
        Map<Long, WorkerExposure> exposures = new HashMap<>();
        workers.working(scope, day)
                .forEach(worker ->
                        of(worker, measured, day).ifPresent(exposure -> exposures.put(worker.key(), exposure)));
        return exposures;
    }

    static Optional<WorkerExposure> of(WorkerPlace worker, MeasuredNoise measured, LocalDate day) {
        return measured.speakingFor(worker, day)
                .map(ExposureStore::measured)
                .or(() -> worker.twaDba().map(ExposureStore::ofRoster));
    }

    private static WorkerExposure measured(NoiseMeasurement measurement) {
        NewMeasurement details = measurement.details();
        return new WorkerExposure(
                details.result().average(),
                details.result().reachesActionLevel(),
                details.cWeightedDbc(),
                details.octaveBandsDb(),
                new WorkerExposure.Source.Measured(
                        measurement.key(), details.subject(), details.kind(), details.measuredOn()));
    }

    private static WorkerExposure ofRoster(BigDecimal twaDba) {
        var average = new NoiseResult.Average(TimeWeightedAverage.ofDba(twaDba.doubleValue()));
        return new WorkerExposure(
                average.average(),
                average.reachesActionLevel(),
                Optional.empty(),
                Collections.unmodifiableNavigableMap(new TreeMap<>()),
                new WorkerExposure.Source.Roster());
    }
}
