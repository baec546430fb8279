package org.thresholdregister.core.validity;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

/**
 * What a worker's other tests usually show around the time of a test: at each ear and frequency the middle threshold of
 * the nearest tests in time, earlier and later, so that one bad test among them does not count.
 *
 * @param thresholds the middle thresholds, none of them calculated: each was found on a test
 * @param tests how many tests they are the middle of
 */
record UsualHearing(Audiogram thresholds, int tests) {

    private static final int MOST_TESTS = 5;

    private static final Comparator<Threshold> BY_LEVEL =
            Comparator.comparingInt(threshold -> threshold.range().lowest().orElseThrow());

    /** None where there is no other test. */
    static Optional<UsualHearing> around(Audiogram test, List<Audiogram> otherTests) {
        List<Audiogram> nearest = otherTests.stream()
                .sorted(Comparator.comparingLong(
                                (Audiogram other) -> Math.abs(ChronoUnit.DAYS.between(test.date(), other.date())))
                        .thenComparing(Audiogram.CHRONOLOGICAL))
                .limit(MOST_TESTS)
                .toList();
        if (nearest.isEmpty()) {
            return Optional.empty();
        }
        var usual = new Audiogram.Builder(test.date(), TestPurpose.OTHER);
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                usual.set(ear, frequency, middle(nearest, ear, frequency));
            }
        }
        return Optional.of(new UsualHearing(usual.build(), nearest.size()));
    }

    /** Of an even number of tests the one farthest in time is left out, so that there is a middle one. */
    private static Threshold middle(List<Audiogram> nearest, Ear ear, Frequency frequency) {
        List<Threshold> known = new ArrayList<>(nearest.size());
        for (Audiogram test : nearest) {
            Threshold threshold = test.threshold(ear, frequency);
            if (threshold.range().lowest().isPresent()) {
                known.add(threshold);
            }
        }
        if (known.isEmpty()) {
            return Threshold.notGiven();
        }
        if (known.size() % 2 == 0) {
            known.removeLast();
        }
        known.sort(BY_LEVEL);
        return known.get(known.size() / 2);
    }
}
