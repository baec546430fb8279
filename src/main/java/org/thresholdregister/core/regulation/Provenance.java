package org.thresholdregister.core.regulation;

/** How well a number or a step of a rule is known to agree with its published text. */
public enum Provenance {
    /** Read in a copy of the text. */
    LOOKED_UP,
    /** Written from memory and held to be right. */
    FROM_MEMORY,
    /** Written from memory without that confidence: a setting, shown as unverified. */
    UNVERIFIED
}
