package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.roster.WorkerPlace;

/**
 * Everything on record about one place.
 *
 * @param history every measurement, those that were withdrawn among them, in order of time
 * @param current the measurement that counts today
 * @param people for whom it speaks today, by name
 * @param untold those of them who are at or above the action level and were not told
 */
public record PlaceRecord(
        NoiseSubject subject,
        LocalDate today,
        List<NoiseMeasurement> history,
        Optional<NoiseMeasurement> current,
        List<WorkerPlace> people,
        List<WorkerPlace> untold) {}
