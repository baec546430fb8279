package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a protector's label or data sheet says, in dB; each value may be absent, and none stands for another: NRR and SNR
 * are not interchangeable.
 *
 * @param nrr noise reduction rating, 40 CFR 211
 * @param snr single number rating, ISO 4869-2
 * @param high H of ISO 4869-2
 * @param medium M of ISO 4869-2
 * @param low L of ISO 4869-2
 * @param nrsMost NRS_A that most wearers (80 %) reach, ANSI/ASA S12.68
 * @param nrsFew NRS_A that a skilled few (20 %) reach
 * @param octaves attenuation at the test frequencies
 */
public record LabelValues(
        Optional<BigDecimal> nrr,
        Optional<BigDecimal> snr,
        Optional<BigDecimal> high,
        Optional<BigDecimal> medium,
        Optional<BigDecimal> low,
        Optional<BigDecimal> nrsMost,
        Optional<BigDecimal> nrsFew,
        Optional<OctaveAttenuation> octaves) {

    /** The most that a label is believed to say. */
    public static final int HIGHEST = 60;

    public static final LabelValues NONE = new LabelValues(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** @throws IllegalArgumentException where a value lies outside 0 to {@value #HIGHEST} dB */
    public LabelValues {
        checked(nrr);
        checked(snr);
        checked(high);
        checked(medium);
        checked(low);
        checked(nrsMost);
        checked(nrsFew);
    }

    private static void checked(Optional<BigDecimal> value) {
        value.ifPresent(given -> {
            if (given.signum() < 0 || given.compareTo(BigDecimal.valueOf(HIGHEST)) > 0) {
                throw new IllegalArgumentException("a label value outside 0 to " + HIGHEST + " dB: " + given);
            }
        });
    }

    /** Only a noise reduction rating. */
    public static LabelValues ofNrr(int nrr) {
        return NONE.withNrr(BigDecimal.valueOf(nrr));
    }

    public LabelValues withNrr(BigDecimal value) {
        return new LabelValues(Optional.of(value), snr, high, medium, low, nrsMost, nrsFew, octaves);
    }

    public LabelValues withSnr(BigDecimal value) {
        return new LabelValues(nrr, Optional.of(value), high, medium, low, nrsMost, nrsFew, octaves);
    }

    public LabelValues withHml(BigDecimal h, BigDecimal m, BigDecimal l) {
        return new LabelValues(nrr, snr, Optional.of(h), Optional.of(m), Optional.of(l), nrsMost, nrsFew, octaves);
    }

    public LabelValues withNrs(BigDecimal most, BigDecimal few) {
        return new LabelValues(nrr, snr, high, medium, low, Optional.of(most), Optional.of(few), octaves);
    }

    public LabelValues withOctaves(OctaveAttenuation data) {
        return new LabelValues(nrr, snr, high, medium, low, nrsMost, nrsFew, Optional.of(data));
    }
}
