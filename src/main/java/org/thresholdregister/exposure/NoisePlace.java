package org.thresholdregister.exposure;

import java.util.Optional;

/**
 * A noise group, job, area or worker at a glance.
 *
 * @param current the measurement that counts today; empty where nothing was measured
 * @param workers how many people it speaks for today; none for an area
 * @param untold how many of them are at or above the action level and were not told
 */
public record NoisePlace(NoiseSubject subject, Optional<NoiseMeasurement> current, int workers, int untold) {

    public boolean reachesActionLevel() {
        return current.filter(measurement -> measurement.result().reachesActionLevel())
                .isPresent();
    }
}
