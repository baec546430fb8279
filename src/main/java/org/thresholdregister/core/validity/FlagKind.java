package org.thresholdregister.core.validity;

/** What a flag is about, in the order in which flags are listed. */
public enum FlagKind {
    QUIET_TIME_SHORT("quiet-time-short", Weight.DOUBT),
    QUIET_TIME_NOT_ON_RECORD("quiet-time-not-on-record", Weight.NOTE),
    FREQUENCIES_MISSING("frequencies-missing", Weight.DOUBT),
    COULD_NOT_BE_TESTED("could-not-be-tested", Weight.DOUBT),
    REPEAT_UNRELIABLE("repeat-unreliable", Weight.DOUBT),
    REPEAT_DIFFERS("repeat-differs", Weight.DOUBT),
    EARS_SWAPPED("ears-look-swapped", Weight.DOUBT),
    EXCHANGED_WITH_ANOTHER("looks-exchanged-with-another-worker", Weight.DOUBT),
    LIKE_ANOTHER("looks-like-another-worker", Weight.NOTE),
    MEAN_BETTER_THAN_BASELINE("mean-better-than-baseline", Weight.DOUBT),
    BETTER_THAN_BASELINE("better-than-baseline", Weight.NOTE),
    WORSE_THAN_PREVIOUS("worse-than-previous", Weight.NOTE),
    MASKING_CALLED_FOR("masking-called-for", Weight.DOUBT),
    NO_RESPONSE_THROUGHOUT("no-response-throughout", Weight.DOUBT),
    SAME_LEVEL_THROUGHOUT("same-level-throughout", Weight.NOTE),
    OFF_THE_STEP("off-the-step", Weight.NOTE),
    ROOM_NOISE("room-noise", Weight.DOUBT),
    CALIBRATION_OUT_OF_DATE("calibration-out-of-date", Weight.DOUBT),
    CALIBRATION_FOUND_OUTSIDE("calibration-found-outside-tolerance", Weight.DOUBT),
    FUNCTIONAL_CHECK_MISSING("functional-check-missing", Weight.DOUBT),
    FUNCTIONAL_CHECK_FAILED("functional-check-failed", Weight.DOUBT),
    FUNCTIONAL_CHECK_FAILED_LATER("since-last-good-check", Weight.DOUBT),
    TRANSDUCER_OF_ANOTHER_UNIT("transducer-of-another-unit", Weight.DOUBT),
    ROOM_TOO_LOUD("room-too-loud", Weight.DOUBT),
    ROOM_NOT_ON_RECORD("room-not-on-record", Weight.NOTE),
    TESTER_CERTIFICATE_EXPIRED("tester-certificate-expired", Weight.DOUBT),
    TESTER_WITHOUT_SUPERVISOR("tester-without-supervisor", Weight.NOTE),
    INSTRUMENT_NOT_REGISTERED("instrument-not-registered", Weight.NOTE),
    TRANSDUCER_NOT_REGISTERED("transducer-not-registered", Weight.NOTE),
    TESTER_NOT_ON_RECORD("tester-not-on-record", Weight.NOTE);

    /** How much a flag says. */
    public enum Weight {
        /** The test, or a part of it, may not show how the worker hears. */
        DOUBT,
        /** Worth a look; on most tests that carry it nothing is wrong. */
        NOTE
    }

    private final String word;
    private final Weight weight;

    FlagKind(String word, Weight weight) {
        this.word = word;
        this.weight = weight;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }

    public Weight weight() {
        return weight;
    }

    /** Whether it is about the equipment, the room or the tester, so that a test is listed for repeat because of it. */
    public boolean isOfEquipment() {
        return compareTo(CALIBRATION_OUT_OF_DATE) >= 0;
    }
}
