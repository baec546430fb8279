package org.thresholdregister.core.noise;

import java.math.BigDecimal;

/**
 * Time spent at one level.
 *
 * @param hours more than nothing, at most 24
 */
public record NoisePeriod(SoundLevel level, BigDecimal hours) {

    public static final BigDecimal HOURS_OF_A_DAY = BigDecimal.valueOf(24);

    /** @throws IllegalArgumentException where the hours are out of range */
    public NoisePeriod {
        if (hours.signum() <= 0 || hours.compareTo(HOURS_OF_A_DAY) > 0) {
            throw new IllegalArgumentException("a period lasts more than 0 and at most 24 hours");
        }
    }

    public static NoisePeriod of(double dba, String hours) {
        return new NoisePeriod(SoundLevel.ofDba(dba), new BigDecimal(hours));
    }
}
