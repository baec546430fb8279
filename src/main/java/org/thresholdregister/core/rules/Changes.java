package org.thresholdregister.core.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.shift.FrequencyShift;
import org.thresholdregister.core.shift.ShiftCriterion;

/** Changes between two tests of an ear, as quantities. */
final class Changes {

    private Changes() {}

    static Quantity sum(List<Frequency> frequencies, Ear ear, Audiogram earlier, Audiogram later) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : frequencies) {
            sum = sum.plus(at(frequency, ear, earlier, later));
        }
        return new Quantity(Quantity.Kind.CHANGES, frequencies, ear, Optional.of(earlier), sum);
    }

    /** The numbers that a criterion of shifts looks at. */
    static Quantity[] quantities(ShiftCriterion criterion, Ear ear, Audiogram earlier, Audiogram later) {
        return stream(criterion, ear, earlier, later).toArray(Quantity[]::new);
    }

    private static Stream<Quantity> stream(ShiftCriterion criterion, Ear ear, Audiogram earlier, Audiogram later) {
        return switch (criterion) {
            case ShiftCriterion.Mean mean -> Stream.of(sum(mean.frequencies(), ear, earlier, later));
            case ShiftCriterion.AnyFrequency any -> Stream.of(largest(any.frequencies(), ear, earlier, later));
            case ShiftCriterion.Neighbours neighbours ->
                Stream.of(largest(neighbours.frequencies(), ear, earlier, later));
            case ShiftCriterion.AnyOf anyOf ->
                anyOf.criteria().stream().flatMap(each -> stream(each, ear, earlier, later));
        };
    }

    private static Quantity largest(List<Frequency> frequencies, Ear ear, Audiogram earlier, Audiogram later) {
        return new Quantity(
                Quantity.Kind.LARGEST_CHANGE,
                frequencies,
                ear,
                Optional.of(earlier),
                frequencies.stream()
                        .map(frequency -> at(frequency, ear, earlier, later))
                        .reduce(DecibelRange::max)
                        .orElse(DecibelRange.UNKNOWN));
    }

    static DecibelRange at(Frequency frequency, Ear ear, Audiogram earlier, Audiogram later) {
        return FrequencyShift.uncorrected(earlier.threshold(ear, frequency), later.threshold(ear, frequency));
    }
}
