package org.thresholdregister.core.watch;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What speaks for it that a unit reads too high or too low.
 *
 * @param from day of the first test that the sums rest on
 * @param signalledOn day of the test that made a sum pass its limit
 * @param until day of the last test at which a sum stood at its limit; empty while any has not fallen back to nothing
 * @param testsUntilSignal tests on the unit from the first to the signalling one, both included
 * @param signs what showed it, wide ones first; never empty
 * @param tests made on the unit from {@code from} on to the end, in order: those to look at again
 */
public record Suspicion(
        String unit,
        LocalDate from,
        LocalDate signalledOn,
        Optional<LocalDate> until,
        int testsUntilSignal,
        List<Sign> signs,
        List<WatchedTest> tests) {

    public Suspicion {
        signs = List.copyOf(signs);
        tests = List.copyOf(tests);
    }

    /**
     * A channel whose sum passed its limit.
     *
     * @param biasDb how much the tests lie above (worse, positive) or below what their workers' earlier tests lead one
     *     to expect, in dB: an estimate, somewhat too large because it was large enough to be noticed
     */
    public record Sign(Channel channel, double biasDb, int tests) {}
}
