package org.thresholdregister.audiograms;

import java.time.Instant;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;

/**
 * A hearing test on record.
 *
 * @param key the register's own key, by which records of other features name the test
 * @param workerKey the worker tested
 * @param signature who signed it; absent for a test that came with an import
 */
public record RecordedTest(
        long key, long workerKey, Audiogram audiogram, TestFacts facts, Optional<Signature> signature) {

    /**
     * Who signed a test that was entered by hand.
     *
     * @param by the account
     * @param name the person's name as it was then
     */
    public record Signature(String by, String name, Instant at) {}

    /** A test without a signature. */
    public RecordedTest(long key, long workerKey, Audiogram audiogram, TestFacts facts) {
        this(key, workerKey, audiogram, facts, Optional.empty());
    }

    /** The same without the remark, which may be a clinical note. */
    public RecordedTest withoutRemark() {
        return new RecordedTest(key, workerKey, audiogram, facts.withoutRemark(), signature);
    }
}
