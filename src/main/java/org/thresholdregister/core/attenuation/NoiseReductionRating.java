package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import org.thresholdregister.core.regulation.Citation;

/**
 * The rating that octave-band data give, to hold the label against: the C-weighted level of a noise of 100 dB in each
 * octave, less the A-weighted level under the protector, less 3 dB.
 *
 * <p>Source: 40 CFR 211.207 Figure 2, worked there to 19.8 dB.
 */
public final class NoiseReductionRating {

    public static final Citation SOURCE = new Citation("40 CFR 211.207 Figure 2");

    private static final BigDecimal LEVEL = BigDecimal.valueOf(100);
    private static final BigDecimal C_WEIGHTED_SUM = new BigDecimal("107.9");
    private static final BigDecimal SPECTRUM_UNCERTAINTY = BigDecimal.valueOf(3);

    private NoiseReductionRating() {}

    /** In dB, before the label rounds it. */
    public static BigDecimal of(OctaveAttenuation data) {
        return C_WEIGHTED_SUM
                .subtract(BandStep.sum(BandStep.all(NoiseBands.flat(LEVEL), data)))
                .subtract(SPECTRUM_UNCERTAINTY);
    }
}
