package org.thresholdregister.core.validity;

import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.QuietRule;

/** What the limit of a flag rests on, and how firmly. */
public record FlagSource(Citation citation, Standing standing) {

    /** How firmly a source holds. */
    public enum Standing {
        /** The text of a regulation. */
        REGULATION,
        /** Published guidance, without the force of a rule. */
        GUIDANCE,
        /** What is usually done; no single text is quoted. */
        COMMON_PRACTICE,
        /** A published text that is quoted from memory and has not been checked against it. */
        UNVERIFIED,
        /** A measure of this register's own, with rates that its tests measure. */
        OWN_MEASURE
    }

    static final FlagSource REQUIRED_FREQUENCIES = of("29 CFR 1910.95(h)(1)", Standing.REGULATION);
    static final FlagSource REPEAT_AT_1000 =
            of("ISO 8253-1 and the British Society of Audiology's procedure", Standing.UNVERIFIED);
    static final FlagSource CROSS_HEARING_SUPRA_AURAL =
            of("what supra-aural earphones keep from the other ear, 40 dB", Standing.COMMON_PRACTICE);
    static final FlagSource CROSS_HEARING_INSERT =
            of("what insert earphones keep from the other ear, 55 dB", Standing.UNVERIFIED);
    static final FlagSource IMPROVEMENT =
            of("draft criteria of the National Hearing Conservation Association", Standing.GUIDANCE);
    static final FlagSource WORSENING = of("HSE L108 (2021)", Standing.GUIDANCE);
    static final FlagSource ENTRY_AND_EQUIPMENT =
            of("checks for faults of entry and equipment", Standing.COMMON_PRACTICE);
    static final FlagSource ROOM_NOISE =
            of("room noise masks the low frequencies of all who are tested in it", Standing.COMMON_PRACTICE);
    static final FlagSource ACOUSTIC_CALIBRATION = of("29 CFR 1910.95(h)(5)(ii)", Standing.REGULATION);
    static final FlagSource EXHAUSTIVE_CALIBRATION = of("29 CFR 1910.95(h)(5)(iii)", Standing.REGULATION);
    static final FlagSource FUNCTIONAL_CHECK = of("29 CFR 1910.95(h)(5)(i)", Standing.REGULATION);
    static final FlagSource FAULT_HEARD =
            of("a unit with a fault is not used until it is mended", Standing.COMMON_PRACTICE);
    static final FlagSource SINCE_LAST_GOOD =
            of("tests since the last good check are in doubt", Standing.COMMON_PRACTICE);
    static final FlagSource TRANSDUCER_AND_UNIT =
            of("earphones are calibrated to their unit", Standing.COMMON_PRACTICE);
    static final FlagSource ROOM_LIMITS = of("29 CFR 1910.95(h)(4) and Appendix D, Table D-1", Standing.REGULATION);
    static final FlagSource ROOM_RECORD = of("29 CFR 1910.95(m)(2)(ii)(F)", Standing.REGULATION);
    static final FlagSource TESTER = of("29 CFR 1910.95(g)(3)", Standing.REGULATION);
    static final FlagSource EQUIPMENT_RECORD =
            of("what a test was made with can be looked up", Standing.COMMON_PRACTICE);
    static final FlagSource OWN_TESTS = of("comparison with the worker's other tests", Standing.OWN_MEASURE);
    static final FlagSource TESTS_OF_THE_DAY =
            of("comparison with others tested on the same day at the site", Standing.OWN_MEASURE);

    /** A rule that was read in its text is quoted as one; any other is marked. */
    static FlagSource of(QuietRule rule) {
        return new FlagSource(
                rule.source(), rule.provenance() == Provenance.LOOKED_UP ? Standing.REGULATION : Standing.UNVERIFIED);
    }

    private static FlagSource of(String place, Standing standing) {
        return new FlagSource(new Citation(place), standing);
    }
}
