package org.thresholdregister.core.columnar;

import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;

/** Day and purpose of a test in one {@code int}, whose order is {@link Audiogram#CHRONOLOGICAL}. */
final class Occasion {

    private static final TestPurpose[] PURPOSES = TestPurpose.values();
    private static final int PURPOSE_BITS = 3;
    private static final int PURPOSE_MASK = (1 << PURPOSE_BITS) - 1;

    private Occasion() {}

    /** @throws IllegalArgumentException for a day hundreds of thousands of years away */
    static int of(int epochDay, TestPurpose purpose) {
        int occasion = epochDay << PURPOSE_BITS | purpose.ordinal();
        if (day(occasion) != epochDay) {
            throw new IllegalArgumentException("too far away to be the day of a test");
        }
        return occasion;
    }

    static int day(int occasion) {
        return occasion >> PURPOSE_BITS;
    }

    static TestPurpose purpose(int occasion) {
        return PURPOSES[occasion & PURPOSE_MASK];
    }
}
