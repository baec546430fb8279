package org.thresholdregister.testing;

import java.util.Optional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.review.WorkerRecord;

/**
 * All that the page of a test that is typed shows when it is opened.
 *
 * @param record without the test
 * @param former the test on record that it is to supersede, if any
 */
public record TestEntry(WorkerRecord record, TestDraft draft, Optional<RecordedTest> former, Suggestions suggestions) {}
