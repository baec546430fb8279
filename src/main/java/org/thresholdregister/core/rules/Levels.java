package org.thresholdregister.core.rules;

import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

/** Levels of one test, as quantities. */
final class Levels {

    private Levels() {}

    static Quantity sum(List<Frequency> frequencies, Ear ear, Audiogram test) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : frequencies) {
            sum = sum.plus(test.threshold(ear, frequency).range());
        }
        return new Quantity(Quantity.Kind.LEVELS, frequencies, ear, Optional.empty(), sum);
    }

    static Quantity highest(List<Frequency> frequencies, Ear ear, Audiogram test) {
        return new Quantity(
                Quantity.Kind.HIGHEST_LEVEL,
                frequencies,
                ear,
                Optional.empty(),
                frequencies.stream()
                        .map(frequency -> test.threshold(ear, frequency).range())
                        .reduce(DecibelRange::max)
                        .orElse(DecibelRange.UNKNOWN));
    }

    static Quantity difference(List<Frequency> frequencies, Ear ear, Audiogram test) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : frequencies) {
            sum = sum.plus(test.threshold(ear, frequency)
                    .range()
                    .minus(test.threshold(ear.other(), frequency).range()));
        }
        return new Quantity(Quantity.Kind.DIFFERENCES, frequencies, ear, Optional.empty(), sum);
    }
}
