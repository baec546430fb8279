package org.thresholdregister.audiograms;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A test that counts no more, kept as it was.
 *
 * @param successor the key of the test that took its place; none where it was entered in error
 * @param by the account of the person who took it out
 */
public record SupersededTest(
        RecordedTest test, Optional<Long> successor, String reason, String by, Instant at, LocalDate on) {

    /** The same without the remark of the test, which may be a clinical note. */
    public SupersededTest withoutRemark() {
        return new SupersededTest(test.withoutRemark(), successor, reason, by, at, on);
    }
}
