package org.thresholdregister.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;

/** One ear of one test, drawn as one line of symbols. */
record Trace(Ear ear, Series series, Audiogram test) {

    Threshold at(Frequency frequency) {
        return test.threshold(ear, frequency);
    }

    /** The level at which a symbol stands; none where no level is known. */
    OptionalInt level(Frequency frequency) {
        return switch (at(frequency)) {
            case Threshold.Measured measured -> OptionalInt.of(measured.level().decibels());
            case Threshold.NoResponse none ->
                none.limit().map(limit -> OptionalInt.of(limit.decibels())).orElse(OptionalInt.empty());
            case Threshold.NotTested untested -> OptionalInt.empty();
        };
    }

    boolean isMeasured(Frequency frequency) {
        return at(frequency) instanceof Threshold.Measured;
    }

    boolean isNoResponse(Frequency frequency) {
        return at(frequency) instanceof Threshold.NoResponse;
    }

    /** Whether a symbol with an arrow stands anywhere. */
    boolean hasArrow() {
        return Arrays.stream(Frequency.values())
                .anyMatch(
                        frequency -> isNoResponse(frequency) && level(frequency).isPresent());
    }

    /** Where there was no response and the level is not known, so that no symbol can stand. */
    List<Frequency> withoutLevel() {
        return Arrays.stream(Frequency.values())
                .filter(frequency -> isNoResponse(frequency) && level(frequency).isEmpty())
                .toList();
    }
}
