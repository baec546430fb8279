package org.thresholdregister.testing;

/** What came of taking a test out that was entered in error. */
public enum WithdrawResult {
    WITHDRAWN,
    /** The worker has no such test that counts, or is not open to the user. */
    NOT_ON_RECORD,
    REASON_MISSING,
    REASON_TOO_LONG
}
