package org.thresholdregister.core.attenuation;

/** What has to be said with an estimate. */
public enum EstimateNote {
    /** The formula gave less than nothing; no protector adds noise, so nothing is taken off. */
    NO_ATTENUATION,
    /** The formula gave more than the level outside, which then stands. */
    NOT_ABOVE_OUTSIDE,
    /** Under about 70 dBA the wearer may not hear speech and warnings: European practice, from memory. */
    OVER_PROTECTION,
    /** Guidance for weighing protectors against controls; Appendix B itself does not derate. */
    GUIDANCE_ONLY,
    /** One state's plan, no federal rule. */
    STATE_PLAN_ONLY,
    /** Practice in the United Kingdom adds 4 dB for how protectors are worn. */
    UK_ADDS_4_DB,
    /** A skilled and motivated few reach it. */
    FEW_REACH_IT
}
