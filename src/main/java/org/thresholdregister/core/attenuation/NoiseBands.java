package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** A noise by its octave bands: unweighted sound pressure levels in dB, one for each band. */
public record NoiseBands(Map<OctaveBand, BigDecimal> levels) {

    private static final int HIGHEST = 160;

    /** @throws IllegalArgumentException where a band is missing or its level lies outside 0 to 160 dB */
    public NoiseBands {
        for (OctaveBand band : OctaveBand.values()) {
            BigDecimal level = levels.get(band);
            if (level == null || level.signum() < 0 || level.compareTo(BigDecimal.valueOf(HIGHEST)) > 0) {
                throw new IllegalArgumentException("each octave band from 125 to 8000 Hz has a level of 0 to 160 dB");
            }
        }
        levels = Map.copyOf(levels);
    }

    /** The levels from 125 to 8000 Hz. */
    public static NoiseBands of(BigDecimal... levels) {
        if (levels.length != OctaveBand.values().length) {
            throw new IllegalArgumentException("there are seven octave bands from 125 to 8000 Hz");
        }
        Map<OctaveBand, BigDecimal> byBand = new EnumMap<>(OctaveBand.class);
        for (OctaveBand band : OctaveBand.values()) {
            byBand.put(band, levels[band.ordinal()]);
        }
        return new NoiseBands(byBand);
    }

    /** The same level in each band. */
    public static NoiseBands flat(BigDecimal level) {
        Map<OctaveBand, BigDecimal> byBand = new EnumMap<>(OctaveBand.class);
        for (OctaveBand band : OctaveBand.values()) {
            byBand.put(band, level);
        }
        return new NoiseBands(byBand);
    }

    /** The band's share of the A-weighted level, in dBA. */
    public BigDecimal aWeighted(OctaveBand band) {
        return Objects.requireNonNull(levels.get(band)).add(band.aWeightingDecibels());
    }
}
