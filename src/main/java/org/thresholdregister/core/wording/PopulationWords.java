package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.thresholdregister.core.population.AgeEdition;
import org.thresholdregister.core.population.Estimate;
import org.thresholdregister.core.population.Estimate.Limit;
import org.thresholdregister.core.population.Estimate.Mark;
import org.thresholdregister.core.population.ImpairmentRisk;
import org.thresholdregister.core.population.NoiseExposure;
import org.thresholdregister.core.population.Population;
import org.thresholdregister.core.population.PopulationComparison;
import org.thresholdregister.core.population.Share;

/** The population models in words. */
public final class PopulationWords {

    private PopulationWords() {}

    public static String edition(AgeEdition edition) {
        return switch (edition) {
            case ISO_7029_2000 -> "ISO 7029:2000, which ISO 1999:2013 was written with";
            case ISO_7029_2017 -> "ISO 7029:2017, the current edition";
        };
    }

    /** {@code Women of 36 years without noise, by ISO 7029:2017}. */
    public static String name(PopulationComparison comparison) {
        Population population = comparison.population();
        String people = switch (population.sex()) {
            case FEMALE -> "Women of ";
            case MALE -> "Men of ";
        };
        return people + population.ageYears() + " years"
                + population.noise().map(PopulationWords::exposure).orElse(" without noise") + ", by "
                + MeaningWords.citation(comparison.basis()).place();
    }

    private static String exposure(NoiseExposure exposure) {
        String level = switch (exposure.level().origin()) {
            case LEX_8H -> " dB LEX,8h";
            case TWA_OF_5_DB_EXCHANGE -> " dBA, a TWA of 5 dB exchange taken as LEX,8h";
        };
        return " after " + decimal(exposure.years()) + " years at "
                + decimal(exposure.level().decibels()) + level;
    }

    /** {@code 12.9}, or a dash where the model says nothing. */
    public static String level(Estimate<Double> estimate) {
        return switch (estimate) {
            case Estimate.Within<Double> within -> decimal(within.value());
            case Estimate.Outside<Double> outside -> "outside the range";
        };
    }

    /** The share whose hearing is worse: {@code 34 %}, {@code under 5 %}, {@code over 95 %}, or why there is none. */
    public static String share(Estimate<Share> estimate) {
        return switch (estimate) {
            case Estimate.Within<Share> within -> share(within.value());
            case Estimate.Outside<Share> outside -> "outside the range";
        };
    }

    private static String share(Share share) {
        if (share.isExact()) {
            return percent(share.least()) + " %";
        }
        if (share.least() == 0 && share.most() == 1) {
            return Words.NOT_KNOWN;
        }
        if (share.least() == 0) {
            return percent(share.most()) + " % or fewer";
        }
        return share.most() == 1
                ? percent(share.least()) + " % or more"
                : percent(share.least()) + " to " + percent(share.most()) + " %";
    }

    private static String percent(double share) {
        return decimal(100 * share);
    }

    private static String decimal(double value) {
        String rounded = String.format(Locale.ENGLISH, "%.1f", value);
        return rounded.equals("-0.0") ? "0.0" : rounded;
    }

    /** What has to be said with the values of a comparison, and why some are missing. */
    public static List<String> notes(PopulationComparison comparison) {
        Set<Mark> marks = EnumSet.noneOf(Mark.class);
        Set<Limit> limits = EnumSet.noneOf(Limit.class);
        comparison.points().stream()
                .flatMap(point -> Stream.of(
                        point.bestTenth(),
                        point.median(),
                        point.worstTenth(),
                        point.standing().left().shareWorse(),
                        point.standing().right().shareWorse()))
                .forEach(estimate -> {
                    switch (estimate) {
                        case Estimate.Within<?> within -> marks.addAll(within.marks());
                        case Estimate.Outside<?> outside -> limits.addAll(outside.reasons());
                    }
                });
        return Stream.concat(
                        marks.stream().map(PopulationWords::mark),
                        limits.stream().map(PopulationWords::limit))
                .toList();
    }

    private static String mark(Mark mark) {
        return switch (mark) {
            case LEVEL_ABOVE_100_DB -> "Extrapolated: the standard covers levels up to 100 dB.";
            case SPREAD_UNDER_TEN_YEARS ->
                "Extrapolated: the standard defines no spread for less than ten years of exposure.";
            case INFORMATION_ONLY_ABOVE_70_YEARS ->
                "Above 70 years the edition gives 3000 Hz and higher for information only.";
            case LEVEL_OF_5_DB_EXCHANGE ->
                "The level is a time-weighted average of 5 dB exchange, as the roster gives it. ISO 1999 asks for LEX,8h,"
                        + " of 3 dB exchange. Taken for it here, it misstates what varying noise or a shift of other than"
                        + " eight hours would do; hearing protectors are not counted.";
        };
    }

    private static String limit(Limit limit) {
        return "Outside the range: "
                + switch (limit) {
                    case AGE_UNDER_18 -> "the standard begins at 18 years.";
                    case AGE_OVER_70 -> "this edition ends at 70 years.";
                    case AGE_OVER_80 -> "this edition ends at 80 years.";
                    case SPREAD_OVER_70_YEARS -> "above 70 years this edition has no usable spread from 3000 Hz up.";
                    case FRACTILE_BEYOND_5_TO_95_PERCENT -> "the standards cover 5 to 95 % of people.";
                    case NO_NOISE_COMPONENT_AT_8000_HZ -> "ISO 1999 says nothing of noise at 8000 Hz.";
                    case LEVEL_UNDER_75_DB -> "ISO 1999 begins at 75 dB.";
                    case LEVEL_OVER_105_DB -> "above 105 dB nothing is extrapolated.";
                    case EXPOSURE_UNDER_1_YEAR -> "less than a year of exposure is not estimated.";
                    case EXPOSURE_OVER_40_YEARS -> "ISO 1999 ends at 40 years of exposure.";
                };
    }

    /** How many of such people are over a fence, and how many more than without noise. */
    public static Sentence risk(ImpairmentRisk risk) {
        return MeaningWords.sentence(
                "Of such people " + share(risk.exposed()) + " have a mean of "
                        + MeaningWords.hertz(risk.frequencies()) + " over " + risk.fenceDecibels()
                        + " dB; without noise "
                        + share(risk.unexposed()) + "; the difference is " + share(risk.excess())
                        + " of all. Equal fractiles are averaged, which overstates the tails.",
                risk);
    }

    public static String isNot(PopulationComparison comparison) {
        return MeaningWords.isNot(comparison.isNot()) + " Levels of the model are deviations from the median of"
                + " 18-year-olds, taken as 0 dB HL.";
    }

    /** From which day the years of exposure are counted. */
    public static String exposedSince(LocalDate firstDay, boolean isEnrolment) {
        return "Years of exposure are counted from the first day "
                + (isEnrolment ? "of enrolment, " : "of employment, as no day of enrolment is given, ")
                + Words.day(firstDay) + ", to the test; noise before that day is not on record.";
    }

    /** Why people with this noise are not shown. */
    public static String noNoise(boolean levelMissing) {
        return levelMissing
                ? "No noise level is on record, so that only people without noise are compared."
                : "No first day of exposure is on record, so that only people without noise are compared.";
    }

    /** Why no population can be named. */
    public static String missing(boolean birthDateMissing, boolean sexMissing) {
        if (birthDateMissing && sexMissing) {
            return "No comparison with a population: birth date and sex are not on record.";
        }
        return birthDateMissing
                ? "No comparison with a population: the birth date is not on record."
                : "No comparison with a population: the sex is not on record.";
    }
}
