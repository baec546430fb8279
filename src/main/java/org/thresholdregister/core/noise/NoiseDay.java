package org.thresholdregister.core.noise;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The levels of one day and the time spent in each, in whatever order they came.
 *
 * @param periods at least one, together at most 24 hours
 */
public record NoiseDay(List<NoisePeriod> periods) {

    /** @throws IllegalArgumentException where there is no period, or more than 24 hours of them */
    public NoiseDay {
        periods = List.copyOf(periods);
        if (periods.isEmpty() || sum(periods).compareTo(NoisePeriod.HOURS_OF_A_DAY) > 0) {
            throw new IllegalArgumentException("a day has at least one period and at most 24 hours");
        }
    }

    public static NoiseDay of(NoisePeriod... periods) {
        return new NoiseDay(List.of(periods));
    }

    public BigDecimal hours() {
        return sum(periods);
    }

    /** The hours at each level, the loudest first: equal for the same day told in another order or in other pieces. */
    NavigableMap<SoundLevel, BigDecimal> hoursByLevel() {
        var hours = new TreeMap<SoundLevel, BigDecimal>(Collections.reverseOrder());
        periods.forEach(period -> hours.merge(period.level(), period.hours(), BigDecimal::add));
        return hours;
    }

    private static BigDecimal sum(List<NoisePeriod> periods) {
        return periods.stream().map(NoisePeriod::hours).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
