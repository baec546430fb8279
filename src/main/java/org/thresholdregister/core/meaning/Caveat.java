package org.thresholdregister.core.meaning;

/** What a result is not, so that nobody takes it for more than it says. */
public enum Caveat {
    NO_DIAGNOSIS,
    /** Jurisdictions differ in formula, age and cause; a percentage decides no claim. */
    NO_COMPENSATION_DECISION,
    /** Made for a clinic or for statistics; no criterion of a hearing-conservation programme. */
    NO_PROGRAMME_CRITERION,
    /** A shape or a difference says nothing of where it came from. */
    NO_STATEMENT_OF_CAUSE,
    /** Whether to refer is a professional's to decide. */
    NO_REFERRAL_DECISION,
    /** It describes many people of this kind and does not judge this one. */
    POPULATION_ESTIMATE
}
