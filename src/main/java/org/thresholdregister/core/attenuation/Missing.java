package org.thresholdregister.core.attenuation;

/** What a method needs and the record does not hold. */
public enum Missing {
    A_WEIGHTED_LEVEL,
    C_WEIGHTED_LEVEL,
    OCTAVE_BANDS_OF_NOISE,
    NRR,
    NRR_OF_BOTH,
    SNR,
    HML,
    NRS_A,
    OCTAVE_ATTENUATION,
    FIT_TEST,
    /** The method speaks of one protector, and two are worn. */
    ONE_PROTECTOR,
    /** The method speaks of two protectors worn together, and one is worn. */
    TWO_PROTECTORS
}
