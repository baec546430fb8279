package org.thresholdregister.core.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.shift.Limit;
import org.thresholdregister.core.shift.ShiftCriterion;

/**
 * The kinds of question that the rules of hearing conservation ask of a test. A jurisdiction is data over these kinds.
 * None makes an allowance for age; a missing or one-sided threshold leaves an answer undecided unless every possible
 * value agrees.
 */
public sealed interface Criterion {

    /** What is asked of each ear by itself. */
    sealed interface OfEar extends Criterion {
        /** Empty where the question does not arise, as a change does not on the baseline itself. */
        Optional<Reading> read(TestSeen seen, Ear ear);
    }

    /** What is asked of the person, from both ears. */
    sealed interface OfPerson extends Criterion {
        Optional<Reading> read(TestSeen seen);
    }

    /** The change from the ear's baseline meets a criterion of shifts. */
    record FromBaseline(ShiftCriterion shift) implements OfEar {
        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            return seen.baselines()
                    .of(ear)
                    .map(baseline -> Reading.of(
                            shift.metBy(changes(ear, baseline, seen.test())),
                            Changes.quantities(shift, ear, baseline, seen.test())));
        }
    }

    /**
     * The change from the ear's baseline meets a criterion on this test and on so many less one before it, none left
     * out; where the criterion looks for any frequency, at one and the same frequency.
     */
    record Persistent(ShiftCriterion shift, int tests) implements OfEar {
        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            return seen.baselines().of(ear).map(baseline -> {
                List<Audiogram> running =
                        new ArrayList<>(since(baseline, seen.earlier().of(ear)));
                running.add(seen.test());
                if (running.size() < tests) {
                    return Reading.of(Answer.NO, Changes.quantities(shift, ear, baseline, seen.test()));
                }
                List<Audiogram> last = running.subList(running.size() - tests, running.size());
                return new Reading(
                        new Verdict.Answered(persists(ear, baseline, last)),
                        last.stream()
                                .flatMap(test -> List.of(Changes.quantities(shift, ear, baseline, test)).stream())
                                .toList());
            });
        }

        private Answer persists(Ear ear, Audiogram baseline, List<Audiogram> running) {
            if (shift instanceof ShiftCriterion.AnyFrequency any) {
                return Answer.anyOf(any.frequencies().stream()
                        .map(frequency -> Answer.allOf(
                                running.stream().map(test -> any.metAt(Changes.at(frequency, ear, baseline, test))))));
            }
            return Answer.allOf(running.stream().map(test -> shift.metBy(changes(ear, baseline, test))));
        }

        private static List<Audiogram> since(Audiogram baseline, List<Audiogram> earlier) {
            return earlier.stream()
                    .filter(test -> Audiogram.CHRONOLOGICAL.compare(test, baseline) > 0)
                    .toList();
        }
    }

    /**
     * The sum of the changes from the latest earlier test, not older than so many years, reaches a limit. Without such
     * a test it does not.
     */
    record SumSinceRecentTest(List<Frequency> frequencies, Limit sumLimit, int years) implements OfEar {
        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            List<Audiogram> recent = seen.earlier().of(ear).stream()
                    .filter(earlier ->
                            !earlier.date().isBefore(seen.test().date().minusYears(years)))
                    .toList();
            if (recent.isEmpty()) {
                return Optional.of(Reading.of(Answer.NO));
            }
            Quantity sum = Changes.sum(frequencies, ear, recent.getLast(), seen.test());
            return Optional.of(Reading.of(sumLimit.reachedBy(sum.total()), sum));
        }
    }

    /** The sum of the levels put into categories by a table for age and sex. */
    record SumByAgeAndSex(List<Frequency> frequencies, SumTable table) implements OfEar {
        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            Quantity sum = Levels.sum(frequencies, ear, seen.test());
            List<SumTable.Row> rows = table.rows(seen.age(), seen.sex());
            return Optional.of(new Reading(SumTable.category(sum.total(), rows), List.of(sum), rows));
        }
    }

    /** The mean of the levels reaches a limit. */
    record MeanLevel(List<Frequency> frequencies, Limit limit) implements OfEar {
        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            Quantity sum = Levels.sum(frequencies, ear, seen.test());
            return Optional.of(Reading.of(limit.reachedByMean(sum.total(), frequencies.size()), sum));
        }
    }

    /** The level at one of the frequencies reaches a limit. */
    record AnyLevel(List<Frequency> frequencies, Limit limit) implements OfEar {
        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            return Optional.of(Reading.of(
                    Answer.anyOf(frequencies.stream()
                            .map(frequency -> limit.reachedBy(
                                    seen.test().threshold(ear, frequency).range()))),
                    Levels.highest(frequencies, ear, seen.test())));
        }
    }

    /** The ear is worse than the other by a mean that reaches a limit. */
    record WorseThanOtherEar(List<Frequency> frequencies, Limit limit) implements OfEar {
        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            Quantity difference = Levels.difference(frequencies, ear, seen.test());
            return Optional.of(Reading.of(limit.reachedByMean(difference.total(), frequencies.size()), difference));
        }
    }

    /** The sum of the levels is greater than the other ear's by a limit. */
    record SumWorseThanOtherEar(List<Frequency> frequencies, Limit sumLimit) implements OfEar {
        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            Quantity difference = Levels.difference(frequencies, ear, seen.test());
            return Optional.of(Reading.of(sumLimit.reachedBy(difference.total()), difference));
        }
    }

    /** One of several questions about an ear is answered with yes. */
    record AnyOf(List<OfEar> criteria) implements OfEar {
        public AnyOf {
            criteria = List.copyOf(criteria);
        }

        @Override
        public Optional<Reading> read(TestSeen seen, Ear ear) {
            List<Reading> readings = criteria.stream()
                    .flatMap(criterion -> criterion.read(seen, ear).stream())
                    .toList();
            return readings.isEmpty() ? Optional.empty() : Optional.of(Reading.anyOf(readings));
        }
    }

    /** Either ear answers with yes. */
    record EitherEar(OfEar criterion) implements OfPerson {
        @Override
        public Optional<Reading> read(TestSeen seen) {
            List<Reading> readings = new ArrayList<>();
            for (Ear ear : Ear.values()) {
                criterion.read(seen, ear).ifPresent(readings::add);
            }
            return readings.isEmpty() ? Optional.empty() : Optional.of(Reading.anyOf(readings));
        }
    }

    /** The worse category of the two ears, or a higher one where another question is answered with yes. */
    record WorseEarCategory(OfEar categories, OfEar lifting, int liftedTo) implements OfPerson {
        @Override
        public Optional<Reading> read(TestSeen seen) {
            List<Reading> categorised = new ArrayList<>();
            List<Reading> lifts = new ArrayList<>();
            for (Ear ear : Ear.values()) {
                categories.read(seen, ear).ifPresent(categorised::add);
                lifting.read(seen, ear).ifPresent(lifts::add);
            }
            List<Reading> all = new ArrayList<>(categorised);
            all.addAll(lifts);
            return categorised.stream()
                    .map(reading -> (Verdict.Category) reading.verdict())
                    .reduce(Verdict.Category::worseOf)
                    .map(worse -> new Reading(lifted(worse, Reading.anyOf(lifts).answer()), Reading.quantitiesOf(all)));
        }

        private Verdict.Category lifted(Verdict.Category worse, Answer lift) {
            return switch (lift) {
                case YES -> new Verdict.Category(liftedTo, liftedTo);
                case NO -> worse;
                case UNDECIDED -> new Verdict.Category(worse.lowest(), liftedTo);
            };
        }
    }

    private static Function<Frequency, DecibelRange> changes(Ear ear, Audiogram earlier, Audiogram later) {
        return frequency -> Changes.at(frequency, ear, earlier, later);
    }
}
