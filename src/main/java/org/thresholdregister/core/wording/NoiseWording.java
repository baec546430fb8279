package org.thresholdregister.core.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.noise.ActionLevel;
import org.thresholdregister.core.noise.DailyExposureLevel;
import org.thresholdregister.core.noise.DoseRule;
import org.thresholdregister.core.noise.ImpulsePeak;
import org.thresholdregister.core.noise.MineExposure;
import org.thresholdregister.core.noise.NoiseDay;
import org.thresholdregister.core.noise.NoiseDose;
import org.thresholdregister.core.noise.NoisePeriod;
import org.thresholdregister.core.noise.NoiseResult;
import org.thresholdregister.core.noise.OneDecimal;
import org.thresholdregister.core.noise.PermissibleExposure;
import org.thresholdregister.core.noise.ReferenceLevel;
import org.thresholdregister.core.noise.SoundLevel;
import org.thresholdregister.core.noise.TimeWeightedAverage;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/** How much noise a day holds, told step by step. */
public final class NoiseWording {

    private static final double WHOLE_DOSE = 100;
    private static final String ONE = "1";
    private static final Citation APPENDIX_A = new Citation("29 CFR 1910.95 Appendix A and Table G-16a");
    private static final Citation APPENDIX_A_TWA = new Citation("29 CFR 1910.95 Appendix A II");

    private NoiseWording() {}

    /** {@code 91.2 dBA}. */
    public static String dba(double decibels) {
        return OneDecimal.of(decibels) + " dBA";
    }

    /** {@code 91.2 dBA}, or what stands for an average that does not exist. */
    public static String average(Optional<TimeWeightedAverage> twa) {
        return twa.map(average -> dba(average.decibels())).orElse("no level of 80 dBA or more");
    }

    /** {@code 118.8 %}, beside the 50 or the 100 percent that decides. */
    public static String dose(NoiseDose dose, double limitPercent) {
        return OneDecimal.beside(dose.percent(), limitPercent) + " %";
    }

    /** {@code 8} or {@code 7.5}, without digits that say nothing. */
    public static String hours(BigDecimal hours) {
        return hours.stripTrailingZeros().toPlainString();
    }

    /** The dose from 80 dBA, its average, and whether it reaches the action level. */
    public static List<Sentence> actionLevel(NoiseDay day) {
        List<Sentence> steps = doseSteps(day, DoseRule.OSHA_ACTION, APPENDIX_A);
        NoiseDose dose = NoiseDose.of(day, DoseRule.OSHA_ACTION);
        steps.add(together(dose, NoiseDose.ACTION_PERCENT));
        TimeWeightedAverage.of(dose).ifPresent(twa -> steps.add(averageOf(dose, twa)));
        steps.add(reached(dose));
        if (day.periods().stream().anyMatch(period -> period.level().decibels() > DoseRule.OSHA_ACTION.toDba())) {
            steps.add(Sentence.of(
                    "The rule asks for levels up to 130 dBA; what is louder is counted here by the same formula.",
                    DoseRule.OSHA_ACTION.basis()));
        }
        return steps;
    }

    private static Sentence reached(NoiseDose dose) {
        return Sentence.of(
                dose.reaches(NoiseDose.ACTION_PERCENT)
                        ? "That is at or above the action level of 50 %, which is an eight-hour average of 85 dBA: whoever"
                                + " works in it belongs to the programme, with or without protectors."
                        : "That is under the action level of 50 %, which is an eight-hour average of 85 dBA.",
                ActionLevel.BASIS);
    }

    /** The footnote's sum, whether the limit is exceeded, and the dose from 90 dBA. */
    public static List<Sentence> limit(NoiseDay day) {
        List<Sentence> steps = new ArrayList<>();
        for (NoisePeriod period : day.periods()) {
            SoundLevel level = period.level();
            String spent = hours(period.hours()) + " h at " + dba(level.decibels());
            if (!level.reaches(PermissibleExposure.LOWEST_DBA)) {
                steps.add(Sentence.plain(spent + " count nothing: the table has no level under 90 dBA."));
            } else if (PermissibleExposure.printedLevels().contains(level)) {
                double permitted = PermissibleExposure.permittedHours(level);
                steps.add(Sentence.plain(spent + ", where " + number(permitted) + " h are permitted: "
                        + hours(period.hours()) + " / " + number(permitted) + " = "
                        + fraction(period.hours().doubleValue() / permitted) + "."));
            } else {
                double permitted = PermissibleExposure.permittedHours(level);
                steps.add(Sentence.plain(spent
                        + ", a level that the table does not print: by the formula of Table G-16a "
                        + fraction(permitted) + " h, so " + hours(period.hours()) + " / " + fraction(permitted) + " = "
                        + fraction(period.hours().doubleValue() / permitted) + "."));
            }
        }
        var exposure = PermissibleExposure.of(day);
        String sum = "Together " + sum(exposure) + ". ";
        if (exposure.aboveTable()) {
            sum += "A level above 115 dBA is outside the table, which permits no time at it: the limit is exceeded.";
        } else if (exposure.exceeded()) {
            sum += "That is more than 1: the limit is exceeded, and feasible engineering or administrative controls"
                    + " come first, then protectors that have to be worn.";
        } else {
            sum += "The limit is exceeded only above 1: it is not exceeded.";
        }
        steps.add(Sentence.of(sum, PermissibleExposure.BASIS));
        NoiseDose dose = NoiseDose.of(day, DoseRule.OSHA_LIMIT);
        steps.add(Sentence.of(
                "Counted from 90 dBA the dose is " + dose(dose, WHOLE_DOSE) + averagePhrase(dose)
                        + "; the same day is another number from 80 dBA.",
                DoseRule.OSHA_LIMIT.basis()));
        return steps;
    }

    private static String sum(PermissibleExposure exposure) {
        String shown = fraction(exposure.sum());
        if (!shown.equals(ONE)) {
            return shown;
        }
        if (exposure.exceeded() && !exposure.aboveTable()) {
            return "a little more than 1";
        }
        return exposure.sum() == 1 ? "exactly 1" : "very nearly 1";
    }

    /** From which steady level on a shift of this length reaches the action level. */
    public static List<Sentence> shift(BigDecimal hours) {
        return List.of(
                Sentence.of(
                        "A steady level reaches the action level in " + hours(hours) + " h from "
                                + dba(ActionLevel.forShift(hours)) + " on: 16.61 × log10(50 / (12.5 × " + hours(hours)
                                + ")) + 90.",
                        ActionLevel.LONG_SHIFTS),
                Sentence.of("The limit of Table G-16 is not adjusted for long shifts.", ActionLevel.LONG_SHIFTS));
    }

    /** Equal energy: LEX,8h beside the levels that other rules speak of, and the dose that NIOSH recommends to count. */
    public static List<Sentence> equalEnergy(NoiseDay day) {
        List<Sentence> steps = new ArrayList<>();
        var level = DailyExposureLevel.of(day);
        steps.add(Sentence.of(
                "With 3 dB for each halving of time, LEX,8h is " + dba(level.decibels()) + ": 10 × log10 of "
                        + String.join(
                                " + ",
                                day.periods().stream()
                                        .map(period -> hours(period.hours()) + "/8 × 10^("
                                                + number(period.level().decibels()) + "/10)")
                                        .toList())
                        + ".",
                DailyExposureLevel.BASIS));
        for (ReferenceLevel reference : ReferenceLevel.ALL) {
            steps.add(Sentence.of(
                    reference.whose() + ", " + reference.name() + " of " + number(reference.dba()) + " dBA: "
                            + (reference.isMetBy(level) ? "" : "not ")
                            + (reference.strictly() ? "exceeded" : "reached")
                            + mark(reference.provenance()) + ".",
                    reference.basis()));
        }
        NoiseDose niosh = NoiseDose.of(day, DoseRule.NIOSH);
        steps.add(Sentence.of(
                "NIOSH recommends a criterion of 85 dBA: the dose is " + dose(niosh, WHOLE_DOSE) + averagePhrase(niosh)
                        + (niosh.reaches(WHOLE_DOSE)
                                ? ", at or above the recommended limit."
                                : ", under the recommended limit."),
                DoseRule.NIOSH.basis()));
        steps.add(Sentence.plain("Averages of 3 and of 5 dB are different quantities and are not to be compared."));
        return steps;
    }

    /** The same day in a mine. */
    public static List<Sentence> mine(NoiseDay day) {
        var mine = MineExposure.of(day);
        return List.of(
                Sentence.of(
                        "In a mine the dose from 80 dBA is " + dose(mine.action(), NoiseDose.ACTION_PERCENT)
                                + ": the action" + " level of 50 % is " + (mine.reachesActionLevel() ? "" : "not ")
                                + "reached.",
                        MineExposure.BASIS),
                Sentence.of(
                        "From 90 dBA it is " + dose(mine.limit(), WHOLE_DOSE) + ": the limit of 100 % is "
                                + (mine.exceedsLimit() ? "" : "not ")
                                + "exceeded, and the 800 % above which plug and muff"
                                + " are worn together are " + (mine.needsDualProtection() ? "" : "not ") + "exceeded"
                                + mark(DoseRule.MSHA_LIMIT.provenance()) + ".",
                        MineExposure.BASIS),
                Sentence.of(
                        mine.aboveCeiling()
                                ? "A level is above the ceiling of 115 dBA, which nobody may be exposed to at any time."
                                : "No level is above the ceiling of 115 dBA.",
                        MineExposure.BASIS));
    }

    public static Sentence peak(ImpulsePeak peak) {
        return Sentence.of(
                "The peak of " + OneDecimal.of(peak.decibels()) + " dB is "
                        + (peak.isAboveAdvisedLimit()
                                ? "above the 140 dB that impulsive noise should not exceed"
                                : "not above the 140 dB that impulsive noise should not exceed")
                        + "; that is advice, and states no weighting.",
                ImpulsePeak.BASIS);
    }

    /** What a measurement means: the average, the dose, the action level and the limit. */
    public static List<Sentence> result(NoiseResult result) {
        List<Sentence> steps = new ArrayList<>();
        switch (result) {
            case NoiseResult.Levels(NoiseDay day) -> {
                steps.addAll(actionLevel(day));
                steps.addAll(limit(day));
            }
            case NoiseResult.Dosimetry dosimetry -> {
                NoiseDose dose = dosimetry.actionDose();
                steps.add(together(dose, NoiseDose.ACTION_PERCENT));
                TimeWeightedAverage.of(dose).ifPresent(twa -> steps.add(averageOf(dose, twa)));
                steps.add(reached(dose));
                steps.add(limitOf(dosimetry));
            }
            case NoiseResult.Average average -> {
                steps.add(Sentence.of(
                        "An eight-hour average of " + dba(average.twa().decibels()) + " is a dose of "
                                + dose(average.actionDose(), NoiseDose.ACTION_PERCENT) + ".",
                        APPENDIX_A_TWA));
                steps.add(reached(average.actionDose()));
                steps.add(limitOf(average));
            }
        }
        return steps;
    }

    /** {@code at or above the action level, limit exceeded}, in short. */
    public static String standing(NoiseResult result) {
        String action = result.reachesActionLevel() ? "at or above the action level" : "under the action level";
        return switch (result.exceedsLimit()) {
            case YES -> action + ", limit exceeded";
            case NO -> action;
            case UNDECIDED -> action + ", limit undecided";
        };
    }

    private static Sentence limitOf(NoiseResult result) {
        Answer answer = result.exceedsLimit();
        String measured = result.limitDose()
                .map(dose -> "Counted from 90 dBA the dose is " + dose(dose, WHOLE_DOSE) + ": ")
                .orElse("");
        return Sentence.of(
                switch (answer) {
                    case YES -> measured + "the limit is exceeded.";
                    case NO -> measured + "the limit is not exceeded.";
                    case UNDECIDED ->
                        "Whether the limit is exceeded is undecided: the dose counted from 90 dBA is not on record.";
                },
                PermissibleExposure.BASIS);
    }

    private static List<Sentence> doseSteps(NoiseDay day, DoseRule rule, Citation basis) {
        List<Sentence> steps = new ArrayList<>();
        for (NoisePeriod period : day.periods()) {
            String spent = hours(period.hours()) + " h at " + dba(period.level().decibels());
            if (rule.counts(period.level())) {
                double reference = rule.referenceHours(period.level());
                steps.add(Sentence.of(
                        spent + ", where " + fraction(reference) + " h fill the dose: 100 × " + hours(period.hours())
                                + " / " + fraction(reference) + " = "
                                + OneDecimal.of(100 * period.hours().doubleValue() / reference) + " %.",
                        basis));
            } else {
                steps.add(Sentence.plain(
                        spent + " count nothing: levels under " + number(rule.fromDba()) + " dBA are left out."));
            }
        }
        return steps;
    }

    private static Sentence together(NoiseDose dose, double limit) {
        return Sentence.of("Counted from 80 dBA the dose is " + dose(dose, limit) + ".", DoseRule.OSHA_ACTION.basis());
    }

    private static Sentence averageOf(NoiseDose dose, TimeWeightedAverage twa) {
        return Sentence.of(
                "The eight-hour average is " + dba(twa.decibels()) + ": 16.61 × log10(" + OneDecimal.of(dose.percent())
                        + " / 100) + 90.",
                APPENDIX_A_TWA);
    }

    private static String averagePhrase(NoiseDose dose) {
        return TimeWeightedAverage.of(dose)
                .map(twa -> ", an average of " + dba(twa.decibels()))
                .orElse("");
    }

    private static String mark(Provenance provenance) {
        return switch (provenance) {
            case LOOKED_UP -> "";
            case FROM_MEMORY -> " (from memory)";
            case UNVERIFIED -> " (unverified)";
        };
    }

    /** Three places, as the published sums have them; fewer where they say nothing. */
    private static String fraction(double value) {
        return number(BigDecimal.valueOf(value)
                .setScale(value < 0.1 ? 4 : 3, RoundingMode.HALF_UP)
                .doubleValue());
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
