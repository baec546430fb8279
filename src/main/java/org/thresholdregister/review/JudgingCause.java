package org.thresholdregister.review;

import java.util.Optional;

/** Why a worker is judged anew. */
public sealed interface JudgingCause {

    /** A decision was entered by hand. */
    record ByDecision(long decisionKey) implements JudgingCause {}

    /** An import brought something about the worker. */
    record ByImport(long importBatch) implements JudgingCause {}

    /** A test was entered by hand. */
    record ByTest(long testKey) implements JudgingCause {}

    /**
     * A test on record counts no more.
     *
     * @param successor the test that took its place; none where it was entered in error
     */
    record BySuperseding(long formerTest, Optional<Long> successor) implements JudgingCause {}

    /** A day has come on which the same record says something else. */
    record ByCalendar() implements JudgingCause {}

    /** The worker moved, left or came back, so that other rules or other dates apply. */
    record ByWorkingLife() implements JudgingCause {}

    /** Anything else: a new edition of the rules. */
    record ByOther() implements JudgingCause {}
}
