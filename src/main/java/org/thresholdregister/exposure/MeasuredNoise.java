package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.exposure.NoiseSubject.Kind;
import org.thresholdregister.roster.WorkerPlace;

/**
 * Measurements that count, and which of them speaks for whom. A later one takes the place of an earlier one from its day
 * on, whether it is of the worker, the noise group or the job; of one day the more particular counts.
 */
final class MeasuredNoise {

    static final Comparator<NoiseMeasurement> IN_ORDER = Comparator.comparing(
                    (NoiseMeasurement measurement) -> measurement.details().measuredOn())
            .thenComparing(measurement -> measurement.subject().kind())
            .thenComparingLong(NoiseMeasurement::key);

    private final Map<NoiseSubject, List<NoiseMeasurement>> bySubject = new HashMap<>();

    MeasuredNoise(List<NoiseMeasurement> measurements) {
        measurements.stream()
                .filter(NoiseMeasurement::counts)
                .sorted(IN_ORDER)
                .forEach(measurement -> bySubject
                        .computeIfAbsent(measurement.subject(), subject -> new ArrayList<>())
                        .add(measurement));
    }

    /** The latest measurement of each subject no later than this day. */
    List<NoiseMeasurement> current(LocalDate day) {
        return bySubject.keySet().stream()
                .flatMap(subject -> current(subject, day).stream())
                .toList();
    }

    Optional<NoiseMeasurement> current(NoiseSubject subject, LocalDate day) {
        return upTo(day, subject).stream().max(IN_ORDER);
    }

    /** Everything that was measured for this worker, as the roster places the worker now, in order of time. */
    List<NoiseMeasurement> of(WorkerPlace worker, LocalDate day) {
        List<NoiseMeasurement> all = new ArrayList<>(upTo(day, own(worker)));
        if (!worker.noiseGroup().isBlank()) {
            all.addAll(upTo(day, new NoiseSubject(Kind.GROUP, worker.site(), worker.noiseGroup())));
        }
        if (!worker.jobTitle().isBlank()) {
            all.addAll(upTo(day, new NoiseSubject(Kind.JOB, worker.site(), worker.jobTitle())));
        }
        return all.stream().sorted(IN_ORDER).toList();
    }

    /** The measurement that speaks for this worker on this day. */
    Optional<NoiseMeasurement> speakingFor(WorkerPlace worker, LocalDate day) {
        List<NoiseMeasurement> all = of(worker, day);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.getLast());
    }

    /** That this worker belongs to the programme by what was measured, where the roster does not have the worker in it. */
    Optional<ProgrammeProposal> proposal(WorkerPlace worker, LocalDate today) {
        List<NoiseMeasurement> all = of(worker, today);
        if (worker.enrolledFrom().isPresent()
                || all.isEmpty()
                || !all.getLast().result().reachesActionLevel()) {
            return Optional.empty();
        }
        LocalDate first = firstDay(all);
        LocalDate on = worker.hireDate().filter(first::isBefore).orElse(first);
        return Optional.of(new ProgrammeProposal(worker, on, all.getLast()));
    }

    /** The first day of the measurements at or above the action level that reach up to now. */
    private static LocalDate firstDay(List<NoiseMeasurement> all) {
        LocalDate first = all.getLast().details().measuredOn();
        for (NoiseMeasurement measurement : all.reversed()) {
            if (!measurement.result().reachesActionLevel()) {
                break;
            }
            first = measurement.details().measuredOn();
        }
        return first;
    }

    static NoiseSubject own(WorkerPlace worker) {
        return new NoiseSubject(Kind.WORKER, worker.site(), worker.workerId());
    }

    private List<NoiseMeasurement> upTo(LocalDate day, NoiseSubject subject) {
        return bySubject.getOrDefault(subject, List.of()).stream()
                .filter(measurement -> !measurement.details().measuredOn().isAfter(day))
                .toList();
    }
}
