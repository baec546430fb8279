package org.thresholdregister.protection;

/** Why something about protectors or training cannot be taken down; nothing was changed. */
public enum ProtectionProblem {
    /** There is no such worker among those that the user may see. */
    UNKNOWN_WORKER,
    /** There is no such protector at this site. */
    UNKNOWN_PROTECTOR,
    /** There is no such entry any more, or it is ended or withdrawn already. */
    UNKNOWN_ENTRY,
    /** The site is not among the user's own. */
    SITE_NOT_OPEN,
    NAME_MISSING,
    /** A protector of this name is given out at this site already. */
    NAME_TAKEN,
    /** A pair is a plug and a muff of the same site. */
    NO_PAIR,
    /** It is retired. */
    RETIRED,
    IN_THE_FUTURE,
    /** Before the day on which it began. */
    BEFORE_IT_BEGAN,
    REASON_MISSING,
    TEXT_TOO_LONG,
    TOPICS_MISSING,
    TRAINER_MISSING,
    /** A training takes 1 to 600 minutes. */
    MINUTES_OUT_OF_RANGE,
    /** A fit test gives 0 to 60 dB, at a percentile of 1 to 99. */
    FIT_TEST_OUT_OF_RANGE,
    /** The worker's case is not where such an entry could be made. */
    CASE_REFUSES
}
