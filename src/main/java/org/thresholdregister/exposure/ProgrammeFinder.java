package org.thresholdregister.exposure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.noise.NoiseResult;
import org.thresholdregister.roster.WorkerPlace;

/** Finds where measurements and the roster disagree about who is in the programme. */
final class ProgrammeFinder {

    private final MeasuredNoise measured;
    private final Map<Long, ProgrammeAct> lastEntries;
    private final LocalDate today;

    /** @param lastEntries the last time that each worker entered the programme by a person's act, by worker's key */
    ProgrammeFinder(MeasuredNoise measured, Map<Long, ProgrammeAct> lastEntries, LocalDate today) {
        this.measured = measured;
        this.lastEntries = Map.copyOf(lastEntries);
        this.today = today;
    }

    /** What is suggested about one worker; empty where roster and measurements agree, or nothing was measured. */
    Optional<ProgrammeProposal> about(WorkerPlace worker) {
        List<NoiseMeasurement> all = measured.of(worker, today);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        NoiseMeasurement latest = all.getLast();
        boolean within = latest.result().reachesActionLevel();
        if (within && worker.enrolledFrom().isEmpty()) {
            return Optional.of(proposal(worker, ProgrammeAct.Kind.ENTERED, firstDay(worker, all), latest));
        }
        if (!within && worker.enrolledFrom().isPresent() && !keptBy(worker, latest)) {
            return Optional.of(
                    proposal(worker, ProgrammeAct.Kind.LEFT, latest.details().measuredOn(), latest));
        }
        return sameAverage(worker.twaDba(), onRoster(latest.result()))
                ? Optional.empty()
                : Optional.of(proposal(
                        worker, ProgrammeAct.Kind.TAKEN_OVER, latest.details().measuredOn(), latest));
    }

    /** A person who enrols somebody knowing this measurement has decided; leaving is not proposed again because of it. */
    private boolean keptBy(WorkerPlace worker, NoiseMeasurement latest) {
        ProgrammeAct entry = lastEntries.get(worker.key());
        return entry != null && !entry.enteredAt().isBefore(latest.enteredAt());
    }

    /** The first day of the measurements at or above the action level that reach up to now, no earlier than the hire. */
    private static LocalDate firstDay(WorkerPlace worker, List<NoiseMeasurement> all) {
        LocalDate first = all.getLast().details().measuredOn();
        for (NoiseMeasurement measurement : all.reversed()) {
            if (!measurement.result().reachesActionLevel()) {
                break;
            }
            first = measurement.details().measuredOn();
        }
        LocalDate hired = worker.hireDate().orElse(first);
        return hired.isAfter(first) ? hired : first;
    }

    private static ProgrammeProposal proposal(
            WorkerPlace worker, ProgrammeAct.Kind kind, LocalDate on, NoiseMeasurement measurement) {
        return new ProgrammeProposal(
                worker,
                kind,
                on,
                onRoster(measurement.result()),
                measurement.result(),
                measurement.subject(),
                measurement.key());
    }

    /** The roster keeps averages to a hundredth of a decibel. */
    static Optional<BigDecimal> onRoster(NoiseResult result) {
        return result.average()
                .map(twa -> BigDecimal.valueOf(twa.decibels())
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros())
                .filter(twa -> twa.signum() >= 0);
    }

    private static boolean sameAverage(Optional<BigDecimal> one, Optional<BigDecimal> other) {
        return one.isPresent() == other.isPresent()
                && (one.isEmpty() || one.get().compareTo(other.get()) == 0);
    }
}
