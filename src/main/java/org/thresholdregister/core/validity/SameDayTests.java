package org.thresholdregister.core.validity;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.judging.WorkerHistory;

/**
 * Looks up who else was tested on a day at the worker's site. It is asked only about tests that do not look like the
 * worker's own, so that it may be slow.
 */
@FunctionalInterface
public interface SameDayTests {

    /** Nobody else is known. */
    SameDayTests NONE = day -> List.of();

    /** The tests of others on that day. */
    List<OthersTest> on(LocalDate day);

    /**
     * Looks in histories.
     *
     * @param testedOn gives the histories of others who were tested on a day at the site
     */
    static SameDayTests in(Function<LocalDate, List<WorkerHistory>> testedOn) {
        return day -> testedOn.apply(day).stream()
                .flatMap(history -> OthersTest.on(day, history).stream())
                .toList();
    }

    /**
     * Another worker's test.
     *
     * @param otherTests the same worker's other tests
     */
    record OthersTest(String workerId, Audiogram test, List<Audiogram> otherTests) {
        public OthersTest {
            otherTests = List.copyOf(otherTests);
        }

        /** The worker's tests on that day, each beside all the other tests. */
        private static List<OthersTest> on(LocalDate day, WorkerHistory history) {
            List<Audiogram> tests = Measures.of(history);
            return tests.stream()
                    .filter(test -> test.date().equals(day))
                    .map(test -> new OthersTest(
                            history.worker().workerId(),
                            test,
                            tests.stream().filter(other -> other != test).toList()))
                    .toList();
        }
    }
}
