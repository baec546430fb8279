package org.thresholdregister.core.shift;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;

/**
 * What makes a change between two tests of one ear a shift. It is asked of the changes in dB per frequency, positive
 * for worse hearing, and answers yes or no only where every possible value agrees.
 */
public sealed interface ShiftCriterion {

    /** The frequencies that it looks at, from low to high. */
    List<Frequency> frequencies();

    /** Whether these changes meet it. */
    Answer metBy(Function<Frequency, DecibelRange> changes);

    /** The mean change over the frequencies reaches a limit. */
    record Mean(List<Frequency> frequencies, Limit limit, Direction direction) implements ShiftCriterion {
        public Mean {
            frequencies = List.copyOf(frequencies);
        }

        @Override
        public Answer metBy(Function<Frequency, DecibelRange> changes) {
            return limit.reachedByMean(turned(sum(frequencies, changes), direction), frequencies.size());
        }
    }

    /** The change at one of the frequencies, whichever, reaches a limit. */
    record AnyFrequency(List<Frequency> frequencies, Limit limit, Direction direction) implements ShiftCriterion {
        public AnyFrequency {
            frequencies = List.copyOf(frequencies);
        }

        @Override
        public Answer metBy(Function<Frequency, DecibelRange> changes) {
            return Answer.anyOf(frequencies.stream().map(frequency -> metAt(changes.apply(frequency))));
        }

        /** Whether a change at one frequency meets it by itself. */
        public Answer metAt(DecibelRange change) {
            return limit.reachedBy(turned(change, direction));
        }
    }

    /** The change reaches a limit at so many neighbours of an ordered list of frequencies. */
    record Neighbours(List<Frequency> frequencies, int count, Limit limit) implements ShiftCriterion {
        public Neighbours {
            frequencies = List.copyOf(frequencies);
            if (count < 1 || count > frequencies.size()) {
                throw new IllegalArgumentException(count + " neighbours among " + frequencies.size() + " frequencies");
            }
        }

        @Override
        public Answer metBy(Function<Frequency, DecibelRange> changes) {
            return Answer.anyOf(Stream.iterate(0, first -> first + count <= frequencies.size(), first -> first + 1)
                    .map(first -> Answer.allOf(frequencies.subList(first, first + count).stream()
                            .map(frequency -> limit.reachedBy(changes.apply(frequency))))));
        }
    }

    /** One of several criteria is met. */
    record AnyOf(List<ShiftCriterion> criteria) implements ShiftCriterion {
        public AnyOf {
            criteria = List.copyOf(criteria);
        }

        @Override
        public List<Frequency> frequencies() {
            return criteria.stream()
                    .flatMap(criterion -> criterion.frequencies().stream())
                    .distinct()
                    .sorted()
                    .toList();
        }

        @Override
        public Answer metBy(Function<Frequency, DecibelRange> changes) {
            return Answer.anyOf(criteria.stream().map(criterion -> criterion.metBy(changes)));
        }
    }

    private static DecibelRange sum(List<Frequency> frequencies, Function<Frequency, DecibelRange> changes) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : frequencies) {
            sum = sum.plus(changes.apply(frequency));
        }
        return sum;
    }

    private static DecibelRange turned(DecibelRange change, Direction direction) {
        return switch (direction) {
            case WORSE -> change;
            case BETTER -> DecibelRange.exactly(0).minus(change);
        };
    }
}
