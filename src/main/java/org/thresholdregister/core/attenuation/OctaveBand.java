package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;

/**
 * The octave bands of the estimate, with the A-weighting of each.
 *
 * <p>Source: 40 CFR 211.207 Figure 2, whose A-weighted bands of a noise of 100 dB in each octave give these offsets.
 */
public enum OctaveBand {
    HZ_125(125, "-16.1"),
    HZ_250(250, "-8.6"),
    HZ_500(500, "-3.2"),
    HZ_1000(1000, "0"),
    HZ_2000(2000, "1.2"),
    HZ_4000(4000, "1.0"),
    HZ_8000(8000, "-1.1");

    private final int hertz;
    private final BigDecimal aWeighting;

    OctaveBand(int hertz, String aWeighting) {
        this.hertz = hertz;
        this.aWeighting = new BigDecimal(aWeighting);
    }

    public int hertz() {
        return hertz;
    }

    /** What is added to a band's level for its share of the A-weighted level, in dB. */
    public BigDecimal aWeightingDecibels() {
        return aWeighting;
    }
}
