package org.thresholdregister.review;

/** What came of answering a baseline proposal. */
public sealed interface ProposalResult {

    /** The answer is on record, and the worker has been judged anew. */
    record Answered() implements ProposalResult {}

    /** It cannot be taken; nothing was changed. */
    record Refused(Objection objection) implements ProposalResult {}

    /** Why an answer cannot be taken. */
    enum Objection {
        /** It has been answered in between, the tests have changed, or the worker is not among those to be seen. */
        NO_SUCH_PROPOSAL,
        /** A professional is named, with the profession. */
        PROFESSIONAL_MISSING,
        REASON_MISSING,
        /** The answer is dated before the test that completes the evidence. */
        BEFORE_THE_EVIDENCE,
        IN_THE_FUTURE,
        TEXT_TOO_LONG
    }
}
