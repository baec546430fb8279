package org.thresholdregister.review;

/** What came of acknowledging an alteration. */
public enum AcknowledgeResult {
    ACKNOWLEDGED,
    /** It was acknowledged before, or is not among those that the user may see; nothing was changed. */
    NOT_OPEN,
    /** It is acknowledged only with a reason. */
    REASON_MISSING,
    REASON_TOO_LONG
}
