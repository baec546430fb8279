package org.thresholdregister.review;

import java.util.List;
import org.thresholdregister.core.caselife.WorkerCases;

/**
 * What came of doing one thing for many tasks.
 *
 * @param done those that it was done for
 * @param left those that it was not done for, with the reason
 */
public record BulkResult(List<TaskKey> done, List<Left> left) {

    public BulkResult {
        done = List.copyOf(done);
        left = List.copyOf(left);
    }

    /** A task that nothing was changed about. */
    public record Left(TaskKey task, Why why) {}

    /** Why nothing was changed. */
    public sealed interface Why {

        /** It is open no more, or not among what the user may see. */
        record NotOpen() implements Why {}

        /** Another role enters this. */
        record NotThisRole() implements Why {}

        /** It is settled by a test, or on a page of its own. */
        record SettledElsewhere() implements Why {}

        /** A retest on this day would come after the last day on which it may take the test's place. */
        record AfterTheWindow() implements Why {}

        /** It was on record already. */
        record AlreadyOnRecord() implements Why {}

        /** The decision cannot be taken. */
        record Refused(DecisionResult.Reason reason) implements Why {}

        /** The case is not where such a decision could be made. */
        record OutOfOrder(WorkerCases.Objection objection) implements Why {}
    }
}
