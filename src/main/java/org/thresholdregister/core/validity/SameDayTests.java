package org.thresholdregister.core.validity;

import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;

/**
 * Looks up who else was tested on a day at the worker's site. It is asked only about tests that do not look like the
 * worker's own, so that it may be slow.
 */
@FunctionalInterface
public interface SameDayTests {

    /** Nobody else is known. */
    SameDayTests NONE = day -> List.of();

    /** The tests of others on that day, in a fixed order. */
    List<OthersTest> on(LocalDate day);

    /**
     * Another worker's test.
     *
     * @param otherTests the same worker's tests of other days
     */
    record OthersTest(String workerId, Audiogram test, List<Audiogram> otherTests) {
        public OthersTest {
            otherTests = List.copyOf(otherTests);
        }
    }
}
