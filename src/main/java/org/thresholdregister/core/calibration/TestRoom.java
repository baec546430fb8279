package org.thresholdregister.core.calibration;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A room for hearing tests with what was measured in it.
 *
 * @param name as tests name it
 */
public record TestRoom(String name, LocalDate from, Optional<LocalDate> to, List<Measurement> measurements) {

    /** Background levels in dB; a band that was not measured is absent. */
    public record Measurement(LocalDate day, Map<OctaveBand, MeterReading> levels) {
        public Measurement {
            levels = Map.copyOf(levels);
        }
    }

    public TestRoom {
        measurements = List.copyOf(measurements);
    }

    public boolean isInUse(LocalDate day) {
        return !day.isBefore(from) && to.map(last -> !day.isAfter(last)).orElse(true);
    }

    /** The measurement that stands on a day: the latest one by then. */
    public Optional<Measurement> standing(LocalDate day) {
        return measurements.stream()
                .filter(measurement -> !measurement.day().isAfter(day))
                .max(Comparator.comparing(Measurement::day));
    }
}
