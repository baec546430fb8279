package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A worker's noise without any protector. What was not measured is absent, and no value is drawn from another.
 *
 * @param aWeighted time-weighted average in dBA
 * @param cWeighted time-weighted average in dBC
 * @param bands octave-band levels in dB
 */
public record Noise(
        MeasuredBy measuredBy,
        Optional<BigDecimal> aWeighted,
        Optional<BigDecimal> cWeighted,
        Optional<NoiseBands> bands) {

    private static final BigDecimal HIGHEST = BigDecimal.valueOf(160);

    /** @throws IllegalArgumentException where a level lies outside 0 to 160 dB */
    public Noise {
        if (Stream.of(aWeighted, cWeighted)
                .flatMap(Optional::stream)
                .anyMatch(level -> level.signum() < 0 || level.compareTo(HIGHEST) > 0)) {
            throw new IllegalArgumentException("a level outside 0 to 160 dB");
        }
    }

    /** Known by its A-weighted average alone. */
    public static Noise ofDba(BigDecimal level) {
        return new Noise(MeasuredBy.DOSIMETER, Optional.of(level), Optional.empty(), Optional.empty());
    }

    public Noise withDbc(BigDecimal level) {
        return new Noise(measuredBy, aWeighted, Optional.of(level), bands);
    }

    public Noise withBands(NoiseBands levels) {
        return new Noise(measuredBy, aWeighted, cWeighted, Optional.of(levels));
    }

    Optional<BigDecimal> level(Weighting weighting) {
        return switch (weighting) {
            case A -> aWeighted;
            case C -> cWeighted;
        };
    }
}
