package org.thresholdregister.core.watch;

import java.util.Comparator;
import org.thresholdregister.core.audiometry.Audiogram;

/**
 * A test with what it was made on.
 *
 * @param unit instrument and headset together, as they are called; one that is not known is not watched
 * @param worker whose test it is
 */
public record WatchedTest(String unit, String worker, Audiogram test) {

    /** By time, then by worker: within a day the record knows no order. */
    static final Comparator<WatchedTest> IN_ORDER =
            Comparator.comparing(WatchedTest::test, Audiogram.CHRONOLOGICAL).thenComparing(WatchedTest::worker);
}
