package org.thresholdregister.exposure;

import java.time.Instant;
import java.util.Optional;
import org.thresholdregister.core.noise.NoiseResult;

/**
 * A measurement on record. It is never changed; one that was entered by mistake is withdrawn, and stays readable.
 */
public record NoiseMeasurement(
        long key, NewMeasurement details, String enteredBy, Instant enteredAt, Optional<Withdrawal> withdrawal) {

    /** That a measurement does not count, and why. */
    public record Withdrawal(String reason, String by, Instant at) {}

    public NoiseSubject subject() {
        return details.subject();
    }

    public NoiseResult result() {
        return details.result();
    }

    public boolean counts() {
        return withdrawal.isEmpty();
    }
}
