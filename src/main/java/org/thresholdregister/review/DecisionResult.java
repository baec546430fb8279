package org.thresholdregister.review;

import org.thresholdregister.core.caselife.WorkerCases;

/** What came of entering a decision. */
public sealed interface DecisionResult {

    /** It is on record, and the worker has been judged anew. */
    record Recorded() implements DecisionResult {}

    /** The very same decision is on record already; nothing was changed. */
    record AlreadyOnRecord() implements DecisionResult {}

    /** It cannot be taken; nothing was changed. */
    record Refused(Reason reason) implements DecisionResult {}

    /** The case is not where such a decision could be made; nothing was changed. */
    record OutOfOrder(WorkerCases.Objection objection) implements DecisionResult {}

    /** Why a decision cannot be taken. */
    enum Reason {
        /** There is no such worker among those that the user may see. */
        UNKNOWN_WORKER,
        /** The worker has no test of that day. */
        NO_SUCH_TEST,
        /** The decision is dated before the test that it is about. */
        BEFORE_THE_TEST,
        IN_THE_FUTURE,
        /** Decisions of this kind need a reason. */
        REASON_MISSING,
        TEXT_TOO_LONG,
        /** It was said to have been done, and not by what. */
        EVIDENCE_MISSING
    }
}
