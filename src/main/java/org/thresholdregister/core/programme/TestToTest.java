package org.thresholdregister.core.programme;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.statistics.Proportion;

/**
 * How much people's tests change from one to the next: the two percentages of ANSI/ASA S12.13 TR-2002 and the standard
 * deviation of differences, which has no published range. Better hearing alone, counted in {@code worseOrBetter} only, is
 * commonly learning.
 *
 * @param pairs people with two successive tests whose thresholds are all plain numbers
 * @param incomplete people whose pair is counted nowhere, since a threshold is missing or has no upper bound
 * @param worse people at least 15 dB worse at some frequency of some ear
 * @param worseOrBetter people at least 15 dB worse or better at some frequency of some ear
 */
public record TestToTest(int pairs, int incomplete, int worse, int worseOrBetter, Spread low, Spread high) {

    /** Fewer people than this say little (ANSI/ASA S12.13 TR-2002, from memory). */
    public static final int FEWEST_PEOPLE = 30;

    /**
     * The standard deviation, over people, of the change of an ear's mean over some frequencies.
     *
     * @param deviations of each ear in dB, left then right; empty for fewer than two people
     */
    public record Spread(List<Frequency> frequencies, OptionalDouble left, OptionalDouble right) {
        private static Spread of(Collection<TestPair> pairs, List<Frequency> frequencies) {
            return new Spread(
                    frequencies, deviation(pairs, frequencies, Ear.LEFT), deviation(pairs, frequencies, Ear.RIGHT));
        }

        public OptionalDouble of(Ear ear) {
            return ear == Ear.LEFT ? left : right;
        }

        private static OptionalDouble deviation(Collection<TestPair> pairs, List<Frequency> frequencies, Ear ear) {
            if (pairs.size() < 2) {
                return OptionalDouble.empty();
            }
            double[] changes = pairs.stream()
                    .mapToDouble(pair -> pair.meanChange(ear, frequencies))
                    .toArray();
            double mean = 0;
            for (double change : changes) {
                mean += change / changes.length;
            }
            double squares = 0;
            for (double change : changes) {
                squares += (change - mean) * (change - mean);
            }
            return OptionalDouble.of(Math.sqrt(squares / (changes.length - 1)));
        }
    }

    private static final List<Frequency> LOW =
            List.of(Frequency.HZ_500, Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_3000);
    private static final List<Frequency> HIGH = List.of(Frequency.HZ_3000, Frequency.HZ_4000, Frequency.HZ_6000);

    /** @param pairs at most one of each person */
    public static TestToTest of(Collection<TestPair> pairs) {
        List<TestPair> complete = pairs.stream().filter(TestPair::isComplete).toList();
        return new TestToTest(
                complete.size(),
                pairs.size() - complete.size(),
                (int) complete.stream().filter(TestPair::isWorse).count(),
                (int) complete.stream().filter(TestPair::isWorseOrBetter).count(),
                Spread.of(complete, LOW),
                Spread.of(complete, HIGH));
    }

    /** Empty where there is no pair. */
    public Optional<Proportion> worseOfPairs() {
        return pairs == 0 ? Optional.empty() : Optional.of(new Proportion(worse, pairs));
    }

    /** Empty where there is no pair. */
    public Optional<Proportion> worseOrBetterOfPairs() {
        return pairs == 0 ? Optional.empty() : Optional.of(new Proportion(worseOrBetter, pairs));
    }

    /** Whether there are people enough to rate. */
    public boolean hasEnoughPeople() {
        return pairs >= FEWEST_PEOPLE;
    }
}
