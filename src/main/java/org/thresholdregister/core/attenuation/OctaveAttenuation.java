package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A protector's attenuation at the test frequencies of the label, mean and standard deviation in dB.
 *
 * <p>Source: 40 CFR 211.207 Figure 2. The bands at 4000 and 8000 Hz rest on two test frequencies each: the mean of
 * the two means, and the sum of the two standard deviations in place of twice one.
 *
 * @param means at 125, 250, 500, 1000, 2000, 3150, 4000, 6300 and 8000 Hz
 * @param deviations at the same
 */
public record OctaveAttenuation(List<BigDecimal> means, List<BigDecimal> deviations) {

    /** The test frequencies in hertz. */
    public static final List<Integer> FREQUENCIES = List.of(125, 250, 500, 1000, 2000, 3150, 4000, 6300, 8000);

    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal HIGHEST = BigDecimal.valueOf(80);

    /** @throws IllegalArgumentException where a value is missing, negative or above 80 dB */
    public OctaveAttenuation {
        if (means.size() != FREQUENCIES.size() || deviations.size() != FREQUENCIES.size()) {
            throw new IllegalArgumentException("nine means and nine standard deviations are needed");
        }
        if (Stream.concat(means.stream(), deviations.stream())
                .anyMatch(value -> value.signum() < 0 || value.compareTo(HIGHEST) > 0)) {
            throw new IllegalArgumentException("attenuation lies between 0 and 80 dB");
        }
        means = List.copyOf(means);
        deviations = List.copyOf(deviations);
    }

    /** Mean attenuation in the band, in dB. */
    public BigDecimal mean(OctaveBand band) {
        return switch (band) {
            case HZ_125, HZ_250, HZ_500, HZ_1000, HZ_2000 -> Objects.requireNonNull(means.get(band.ordinal()));
            case HZ_4000 -> half(means.get(5), means.get(6));
            case HZ_8000 -> half(means.get(7), means.get(8));
        };
    }

    /** Two standard deviations in the band, in dB. */
    public BigDecimal twoDeviations(OctaveBand band) {
        return switch (band) {
            case HZ_125, HZ_250, HZ_500, HZ_1000, HZ_2000 -> TWO.multiply(deviations.get(band.ordinal()));
            case HZ_4000 -> deviations.get(5).add(deviations.get(6));
            case HZ_8000 -> deviations.get(7).add(deviations.get(8));
        };
    }

    private static BigDecimal half(BigDecimal one, BigDecimal other) {
        return one.add(other).divide(TWO);
    }
}
