package org.thresholdregister.core.caselife;

/** What one ear's shift counts for. */
public enum CaseScope {
    /** A shift from the current baseline: notice, protectors and training follow, and the question of the log. */
    SHIFT_AND_LOG,
    /**
     * A shift from the recording reference only, which a revised baseline hides, 29 CFR 1904.10(b)(2)(i): nothing but
     * the question of the log follows.
     */
    LOG_ONLY
}
