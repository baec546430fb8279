package org.thresholdregister.exposure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.thresholdregister.core.noise.NoiseResult;

/**
 * A measurement of noise.
 *
 * @param instrument make, model and number, as the person who measured wrote it
 * @param calibratedBefore whether it was calibrated in the field before, and {@code calibratedAfter} after, measuring
 * @param shiftHours how long the shift is that the result speaks of
 * @param result A-weighted, slow, without regard to protectors
 * @param cWeightedDbc C-weighted average or representative level in dBC, which Appendix B (i), (iv) and (vi) ask for
 * @param octaveBandsDb sound pressure level in dB by middle frequency in Hz, of {@link #BANDS}; may be empty
 * @param peakDb highest peak of impulsive noise in dB
 * @param process what ran while it was measured
 */
public record NewMeasurement(
        NoiseSubject subject,
        LocalDate measuredOn,
        MeasurementKind kind,
        String instrument,
        boolean calibratedBefore,
        boolean calibratedAfter,
        BigDecimal shiftHours,
        NoiseResult result,
        Optional<BigDecimal> cWeightedDbc,
        NavigableMap<Integer, BigDecimal> octaveBandsDb,
        Optional<BigDecimal> peakDb,
        String process,
        String measuredBy) {

    /** The octave bands that may be given, by middle frequency in Hz. */
    public static final int[] BANDS = {63, 125, 250, 500, 1000, 2000, 4000, 8000};

    /** The longest instrument or name that is kept, in characters. */
    public static final int LONGEST_NAME = 200;

    /** The longest description that is kept, in characters. */
    public static final int LONGEST_PROCESS = 2000;

    public NewMeasurement {
        octaveBandsDb = new TreeMap<>(Map.copyOf(octaveBandsDb));
    }
}
