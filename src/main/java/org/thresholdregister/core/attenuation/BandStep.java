package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

/**
 * One octave band of an estimate.
 *
 * @param level the band's A-weighted level outside the protector, dBA
 * @param mean mean attenuation, dB
 * @param twoDeviations two standard deviations, dB
 */
public record BandStep(OctaveBand band, BigDecimal level, BigDecimal mean, BigDecimal twoDeviations) {

    /** Far finer than any measurement; it only ends the digits of a logarithm. */
    private static final int DIGITS_OF_SUM = 6;

    /**
     * What the protector takes off in this band for nearly every wearer; never less than nothing, since no protector
     * adds noise.
     */
    public BigDecimal attenuation() {
        return mean.subtract(twoDeviations).max(BigDecimal.ZERO);
    }

    /** The band's A-weighted level under the protector, dBA. */
    public BigDecimal levelUnder() {
        return level.subtract(attenuation());
    }

    static List<BandStep> all(NoiseBands noise, OctaveAttenuation data) {
        return Arrays.stream(OctaveBand.values())
                .map(band -> new BandStep(band, noise.aWeighted(band), data.mean(band), data.twoDeviations(band)))
                .toList();
    }

    /** The bands under the protector together, by their energy, in dBA. */
    static BigDecimal sum(List<BandStep> steps) {
        return energySum(steps.stream()
                .mapToDouble(step -> step.levelUnder().doubleValue())
                .toArray());
    }

    /** The bands outside the protector together, in dBA. */
    static BigDecimal sumOutside(List<BandStep> steps) {
        return energySum(
                steps.stream().mapToDouble(step -> step.level().doubleValue()).toArray());
    }

    private static BigDecimal energySum(double[] levels) {
        double energy =
                Arrays.stream(levels).map(level -> Math.pow(10, level / 10)).sum();
        return BigDecimal.valueOf(10 * Math.log10(energy)).setScale(DIGITS_OF_SUM, RoundingMode.HALF_UP);
    }
}
