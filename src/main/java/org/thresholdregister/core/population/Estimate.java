package org.thresholdregister.core.population;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.thresholdregister.core.meaning.Caveat;

/** What a model says of a population: a value, with marks where it goes beyond its text, or that it says nothing. */
public sealed interface Estimate<T> {

    /** The value and what has to be said with it. */
    record Within<T>(T value, Set<Mark> marks) implements Estimate<T> {
        public Within {
            marks = Set.copyOf(marks);
        }
    }

    /** The question lies outside the range of the model, for these reasons. */
    record Outside<T>(Set<Limit> reasons) implements Estimate<T> {
        public Outside {
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("outside for no reason");
            }
            reasons = Set.copyOf(reasons);
        }
    }

    /** Something that has to be said with a value. */
    enum Mark {
        /** Extrapolated: the level is above 100 dB. */
        LEVEL_ABOVE_100_DB,
        /** Extrapolated: the standard defines no spread for less than ten years of exposure. */
        SPREAD_UNDER_TEN_YEARS,
        /** From 3000 Hz up and above 70 years, ISO 7029:2017 informs only. */
        INFORMATION_ONLY_ABOVE_70_YEARS,
        /** The level is a time-weighted average of 5 dB exchange, taken as LEX,8h. */
        LEVEL_OF_5_DB_EXCHANGE
    }

    /** A limit of the models that a question lies beyond. */
    enum Limit {
        AGE_UNDER_18,
        AGE_OVER_70,
        AGE_OVER_80,
        /** From 3000 Hz up the spread of ISO 7029:2017 is not usable above 70 years. */
        SPREAD_OVER_70_YEARS,
        /** The standards give 5 to 95 %. */
        FRACTILE_BEYOND_5_TO_95_PERCENT,
        NO_NOISE_COMPONENT_AT_8000_HZ,
        LEVEL_UNDER_75_DB,
        /** Our own limit of extrapolation: above it the combination with age stops making sense. */
        LEVEL_OVER_105_DB,
        EXPOSURE_UNDER_1_YEAR,
        EXPOSURE_OVER_40_YEARS
    }

    static <T> Estimate<T> within(T value, Set<Mark> marks) {
        return new Within<>(value, marks);
    }

    static <T> Estimate<T> outside(Set<Limit> reasons) {
        return new Outside<>(reasons);
    }

    default <R> Estimate<R> map(Function<T, R> function) {
        return switch (this) {
            case Within<T> here -> within(function.apply(here.value()), here.marks());
            case Outside<T> out -> outside(out.reasons());
        };
    }

    /** The value of two together; outside as soon as either is, with the reasons of both. */
    default <U, R> Estimate<R> with(Estimate<U> other, BiFunction<T, U, R> function) {
        return switch (this) {
            case Within<T> here ->
                switch (other) {
                    case Within<U> there -> {
                        Set<Mark> marks = EnumSet.noneOf(Mark.class);
                        marks.addAll(here.marks());
                        marks.addAll(there.marks());
                        yield within(function.apply(here.value(), there.value()), marks);
                    }
                    case Outside<U> out -> outside(out.reasons());
                };
            case Outside<T> out -> {
                Set<Limit> reasons = EnumSet.copyOf(out.reasons());
                if (other instanceof Outside<U> outToo) {
                    reasons.addAll(outToo.reasons());
                }
                yield outside(reasons);
            }
        };
    }

    /** What no estimate is. */
    default List<Caveat> isNot() {
        return List.of(
                Caveat.POPULATION_ESTIMATE,
                Caveat.NO_DIAGNOSIS,
                Caveat.NO_STATEMENT_OF_CAUSE,
                Caveat.NO_COMPENSATION_DECISION);
    }
}
