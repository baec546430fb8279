package org.thresholdregister.testing;

import java.util.List;
import org.thresholdregister.review.TestStory;
import org.thresholdregister.review.WorkerRecord;

/** What came of signing. */
public sealed interface SignResult {

    /**
     * The test is on record.
     *
     * @param story the test with what was found
     */
    record Signed(WorkerRecord record, TestStory story) implements SignResult {}

    /** Nothing was signed; what is typed is kept. */
    record Refused(List<EntryProblem> problems) implements SignResult {}

    /** The draft is there no more, or was never this person's: it was signed or thrown away in another window. */
    record Gone() implements SignResult {}
}
