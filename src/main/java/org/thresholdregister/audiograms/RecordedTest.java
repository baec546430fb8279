package org.thresholdregister.audiograms;

import org.thresholdregister.core.audiometry.Audiogram;

/**
 * A hearing test on record.
 *
 * @param key the register's own key, by which records of other features name the test
 * @param workerKey the worker tested
 */
public record RecordedTest(long key, long workerKey, Audiogram audiogram, TestFacts facts) {

    /** The same without the remark, which may be a clinical note. */
    public RecordedTest withoutRemark() {
        return new RecordedTest(key, workerKey, audiogram, facts.withoutRemark());
    }
}
