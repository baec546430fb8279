package org.thresholdregister.testing;

import java.util.List;
import java.util.Optional;
import org.thresholdregister.review.TestStory;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.WorkerRecordService;

/**
 * What a typed test would say, were it on record as it stands.
 *
 * @param record with the test; none while it cannot be judged
 * @param problems what keeps it from being signed
 */
public record Outlook(Optional<WorkerRecord> record, List<EntryProblem> problems) {

    /** The typed test with what would be found. */
    public Optional<TestStory> story() {
        return record.stream()
                .flatMap(with -> with.stories().stream())
                .filter(story -> story.test().key() == WorkerRecordService.NOT_ON_RECORD)
                .findFirst();
    }
}
