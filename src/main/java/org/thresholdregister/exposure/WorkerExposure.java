package org.thresholdregister.exposure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.NavigableMap;
import java.util.Optional;
import org.thresholdregister.core.noise.TimeWeightedAverage;

/**
 * A worker's noise on a day, without regard to protectors.
 *
 * @param twa A-weighted eight-hour average of 5 dB exchange; empty where nothing reaches 80 dBA
 * @param atActionLevel whether it is at or above the action level
 * @param cWeightedDbc C-weighted average or representative level in dBC, where it was measured
 * @param octaveBandsDb sound pressure level in dB by middle frequency in Hz; empty where none was measured
 * @param source what it rests on
 */
public record WorkerExposure(
        Optional<TimeWeightedAverage> twa,
        boolean atActionLevel,
        Optional<BigDecimal> cWeightedDbc,
        NavigableMap<Integer, BigDecimal> octaveBandsDb,
        Source source) {

    /** What an exposure rests on. */
    public sealed interface Source {
        /** A measurement of the worker, the noise group or the job. */
        record Measured(long measurementKey, NoiseSubject subject, MeasurementKind kind, LocalDate on)
                implements Source {}

        /** The roster alone, which does not say when and how it was measured. */
        record Roster() implements Source {}
    }
}
