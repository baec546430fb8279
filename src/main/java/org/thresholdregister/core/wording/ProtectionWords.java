package org.thresholdregister.core.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.attenuation.Attenuation;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.AttenuationMethod.AppendixB;
import org.thresholdregister.core.attenuation.AttenuationMethod.FraDerated;
import org.thresholdregister.core.attenuation.AttenuationMethod.Halved;
import org.thresholdregister.core.attenuation.AttenuationMethod.HighMediumLow;
import org.thresholdregister.core.attenuation.AttenuationMethod.NioshDerated;
import org.thresholdregister.core.attenuation.AttenuationMethod.OctaveBands;
import org.thresholdregister.core.attenuation.AttenuationMethod.PersonalFit;
import org.thresholdregister.core.attenuation.AttenuationMethod.ReductionStatistic;
import org.thresholdregister.core.attenuation.AttenuationMethod.SingleNumber;
import org.thresholdregister.core.attenuation.AttenuationMethod.StatePlanDual;
import org.thresholdregister.core.attenuation.Estimate;
import org.thresholdregister.core.attenuation.EstimateNote;
import org.thresholdregister.core.attenuation.MeasuredBy;
import org.thresholdregister.core.attenuation.Missing;
import org.thresholdregister.core.attenuation.MustWear;
import org.thresholdregister.core.attenuation.ProtectionTarget;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.attenuation.Reckoning;
import org.thresholdregister.core.attenuation.Reckoning.ByBands;
import org.thresholdregister.core.attenuation.Reckoning.ByHml;
import org.thresholdregister.core.attenuation.Reckoning.ByRating;
import org.thresholdregister.core.attenuation.Weighting;
import org.thresholdregister.core.regulation.Provenance;

/** Protectors, the estimates of what they keep off, and what the rules ask of them, in words. */
public final class ProtectionWords {

    private static final int DECIMALS = 2;

    private ProtectionWords() {}

    public static String kind(ProtectorKind kind) {
        return switch (kind) {
            case MUFF -> "muff";
            case FORMABLE_PLUG -> "formable plug";
            case OTHER_PLUG -> "plug";
            case CUSTOM_PLUG -> "custom-moulded plug";
            case DUAL -> "plug and muff together";
        };
    }

    public static String measuredBy(MeasuredBy measuredBy) {
        return switch (measuredBy) {
            case DOSIMETER -> "dosimeter";
            case SOUND_LEVEL_METER -> "sound level meter";
            case AREA_MONITORING -> "area monitoring";
        };
    }

    /** {@code Appendix B (ii)}, as a row or a choice names it. */
    public static String method(AttenuationMethod method) {
        return switch (method) {
            case AppendixB(var which) ->
                "Appendix B " + which.number() + ", " + measuredBy(which.measuredBy()) + " in "
                        + which.weighting().unit();
            case Halved(var weighting) -> "Half the rating (guidance), " + weighting.unit();
            case NioshDerated(var weighting) -> "NIOSH derating by kind, " + weighting.unit();
            case FraDerated() -> "FRA derating by kind";
            case OctaveBands() -> "Octave bands, mean less two standard deviations";
            case SingleNumber() -> "SNR";
            case HighMediumLow() -> "HML";
            case ReductionStatistic(var wearers) ->
                switch (wearers) {
                    case MOST -> "NRS_A that most wearers reach";
                    case FEW -> "NRS_A that a skilled few reach";
                };
            case PersonalFit() -> "The wearer's own fit test";
            case StatePlanDual() -> "Two together by one state's plan";
        };
    }

    /** How a sentence about an estimate begins: {@code By the label and Appendix B (ii)}. */
    private static String by(AttenuationMethod method) {
        return switch (method) {
            case AppendixB(var which) -> "By the label and Appendix B " + which.number();
            case Halved halved -> "By half of the label's rating (guidance)";
            case NioshDerated derated -> "By the label as NIOSH derates it";
            case FraDerated derated -> "By the label as 49 CFR 227 Appendix B derates it";
            case OctaveBands bands -> "By the octave bands";
            case SingleNumber snr -> "By the SNR";
            case HighMediumLow hml -> "By H, M and L";
            case ReductionStatistic(var wearers) ->
                switch (wearers) {
                    case MOST -> "By the NRS_A that most wearers reach";
                    case FEW -> "By the NRS_A that a skilled few reach";
                };
            case PersonalFit fit -> "By the wearer's own fit test";
            case StatePlanDual plan -> "By one state's plan for two together";
        };
    }

    /** A level or a difference to two decimals at most, rounded up, so that it never reads as less than it is. */
    public static String decibels(BigDecimal value) {
        BigDecimal rounded = value.setScale(DECIMALS, RoundingMode.CEILING).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded)
                .toPlainString()
                .replace("-", "−");
    }

    /** A rating that was computed, to a tenth as its source prints it. */
    public static String rating(BigDecimal computed) {
        return computed.setScale(1, RoundingMode.HALF_UP).toPlainString() + " dB";
    }

    /** {@code 79 dBA}. */
    public static String dba(BigDecimal value) {
        return decibels(value) + " dBA";
    }

    /**
     * {@code By the label and Appendix B (ii), 79 dBA under the muff; the target is 85 dBA after the shift of
     * 9 Mar 2026: reached.}
     */
    public static String standing(ProtectorKind kind, Estimate estimate, ProtectionTarget target) {
        return switch (estimate) {
            case Estimate.Estimated level ->
                by(level.method()) + ", " + dba(level.levelUnder()) + " under the " + kind(kind) + "; "
                        + targetAndAnswer(level, target) + ".";
            case Estimate.Unavailable none ->
                by(none.method()) + ", no level under the " + kind(kind) + ": " + lacks(none) + ".";
        };
    }

    private static String targetAndAnswer(Estimate estimate, ProtectionTarget target) {
        return switch (target) {
            case ProtectionTarget.AtMost most -> "the target is " + aim(most) + ": " + reached(estimate, target);
            case ProtectionTarget.NotNamed none -> "the rule set names no target";
        };
    }

    private static String aim(ProtectionTarget.AtMost target) {
        return dba(target.dba())
                + target.shiftOn()
                        .map(day -> " after the shift of " + Words.day(day))
                        .orElse("");
    }

    /** {@code reached}, {@code not reached}, {@code undecided}. */
    public static String reached(Estimate estimate, ProtectionTarget target) {
        return switch (target.isReachedBy(estimate)) {
            case YES -> "reached";
            case NO -> "not reached";
            case UNDECIDED -> "undecided";
        };
    }

    /** {@code At most 85 dBA are asked for under the protector, after the shift of 9 Mar 2026.} */
    public static Sentence target(ProtectionTarget target) {
        return switch (target) {
            case ProtectionTarget.AtMost most ->
                Sentence.of(
                        "The protector has to bring the exposure down to " + dba(most.dba()) + " or less"
                                + most.shiftOn()
                                        .map(day -> ", after the shift of " + Words.day(day))
                                        .orElse("") + ".",
                        most.basis());
            case ProtectionTarget.NotNamed none ->
                Sentence.plain(
                        "The rule set names no level under the protector, as far as this program knows its text.");
        };
    }

    /** The arithmetic in one sentence, with its source. */
    public static Sentence working(Estimate.Estimated estimate) {
        return Sentence.of(
                arithmetic(estimate.reckoning(), estimate.levelUnder()),
                estimate.method().basis());
    }

    private static String arithmetic(Reckoning reckoning, BigDecimal under) {
        return switch (reckoning) {
            case ByRating rated -> rated(rated) + " = " + dba(under) + ".";
            case ByHml hml ->
                "The noise is " + decibels(hml.dbc()) + " dBC and " + dba(hml.dba()) + ", " + decibels(hml.difference())
                        + " dB apart; " + reduction(hml) + " = " + decibels(hml.formula()) + " dB; "
                        + decibels(hml.dba()) + " − " + decibels(hml.attenuation()) + " = " + dba(under) + ".";
            case ByBands bands -> bands(bands, under);
        };
    }

    private static String rated(ByRating rated) {
        String rating = decibels(rated.rating());
        if (rated.before().signum() > 0) {
            rating = "(" + rating + " − " + decibels(rated.before()) + ")";
        }
        if (rated.share().compareTo(BigDecimal.ONE) != 0) {
            rating = decibels(rated.share()) + " × " + rating;
        }
        if (rated.after().signum() > 0) {
            rating = rating + " − " + decibels(rated.after());
        } else if (rated.after().signum() < 0) {
            rating = rating + " + " + decibels(rated.after().negate());
        }
        if (rated.formula().signum() < 0) {
            return decibels(rated.level()) + " − 0, as " + rating + " is less than nothing,";
        }
        return decibels(rated.level()) + " − " + (rated.after().signum() == 0 ? rating : "(" + rating + ")");
    }

    private static String reduction(ByHml hml) {
        String m = decibels(hml.medium());
        String beyond = "(" + decibels(hml.difference()) + " − 2)";
        return hml.isUpToTwo()
                ? m + " − (" + decibels(hml.high()) + " − " + m + ") / 4 × " + beyond
                : m + " − (" + m + " − " + decibels(hml.low()) + ") / 8 × " + beyond;
    }

    private static String bands(ByBands bands, BigDecimal under) {
        List<String> each = new ArrayList<>();
        bands.steps()
                .forEach(step -> each.add(step.band().hertz() + " Hz: " + decibels(step.level()) + " − ("
                        + decibels(step.mean()) + " − " + decibels(step.twoDeviations()) + ") = "
                        + decibels(step.levelUnder())));
        return "Band by band, dBA less the mean attenuation less two standard deviations: " + String.join("; ", each)
                + "; together by their energy " + dba(under) + ".";
    }

    /** What a method lacks: {@code The noise has no C-weighted level.} */
    public static String missing(Estimate.Unavailable estimate) {
        return Words.capitalised(lacks(estimate)) + ".";
    }

    private static String lacks(Estimate.Unavailable estimate) {
        return Words.listed(
                estimate.missing().stream().map(ProtectionWords::missing).toList());
    }

    private static String missing(Missing missing) {
        return switch (missing) {
            case A_WEIGHTED_LEVEL -> "the noise has no A-weighted level on record";
            case C_WEIGHTED_LEVEL -> "the noise has no C-weighted level on record";
            case OCTAVE_BANDS_OF_NOISE -> "the noise has no octave bands on record";
            case NRR -> "the protector has no NRR on record";
            case NRR_OF_BOTH -> "the NRR of both protectors is needed";
            case SNR -> "the protector has no SNR on record";
            case HML -> "the protector has no H, M and L on record";
            case NRS_A -> "the protector has no such NRS_A on record";
            case OCTAVE_ATTENUATION -> "the protector has no octave-band attenuation on record";
            case FIT_TEST -> "there is no fit test of this protector on record";
            case ONE_PROTECTOR -> "the method speaks of one protector, not of two together";
            case TWO_PROTECTORS -> "the method is for a plug and a muff together";
        };
    }

    public static String note(EstimateNote note, Estimate.Estimated estimate) {
        return switch (note) {
            case NO_ATTENUATION -> "The formula would add noise; no protector does, so nothing is taken off.";
            case NOT_ABOVE_OUTSIDE -> "The formula gives more than the A-weighted level outside, which stands instead.";
            case OVER_PROTECTION ->
                "Under " + decibels(Attenuation.OVER_PROTECTED_BELOW)
                        + " dBA speech and warnings may be missed: look for a protector that keeps off less"
                        + " (European practice, from memory).";
            case GUIDANCE_ONLY ->
                "Guidance for weighing protectors against controls; Appendix B itself does not derate.";
            case STATE_PLAN_ONLY -> "One state's own plan, not federal.";
            case UK_ADDS_4_DB ->
                "Practice in the United Kingdom adds 4 dB for how protectors are worn: "
                        + dba(estimate.levelUnder().add(BigDecimal.valueOf(4))) + ".";
            case FEW_REACH_IT -> "Only a skilled and motivated fifth of wearers reaches it.";
        };
    }

    /** What the screens add to a source whose text was not read; empty for one that was. */
    public static String mark(AttenuationMethod method) {
        return method.provenance() == Provenance.LOOKED_UP ? "" : RuleSetWording.mark(method.provenance());
    }

    public static Sentence reason(MustWear.Reason reason, MustWear.Facts facts) {
        String level = facts.twaDba().map(ProtectionWords::dba).orElse("a level that is not on record");
        return Sentence.of(
                switch (reason.why()) {
                    case OVER_LIMIT -> "Exposed to " + level + ", over the limit.";
                    case PLUG_AND_MUFF -> "Exposed to " + level + ": a plug and a muff together.";
                    case NO_BASELINE_IN_TIME ->
                        "No baseline six months after the first exposure"
                                + facts.enrolledFrom()
                                        .map(day -> " on " + Words.day(day))
                                        .orElse("") + ".";
                    case SHIFT ->
                        "A shift at or above the action level"
                                + facts.shiftOn()
                                        .map(day -> ", test of " + Words.day(day))
                                        .orElse("") + ".";
                },
                reason.basis());
    }

    /** What is known of the noise: {@code 92.5 dBA, 95 dBC}. */
    public static String noise(Optional<BigDecimal> dba, Optional<BigDecimal> dbc) {
        List<String> parts = new ArrayList<>();
        dba.ifPresent(level -> parts.add(decibels(level) + " " + Weighting.A.unit()));
        dbc.ifPresent(level -> parts.add(decibels(level) + " " + Weighting.C.unit()));
        return parts.isEmpty() ? Words.NOT_KNOWN : String.join(", ", parts);
    }

    /** {@code Fern foam plug, size M, issued 9 Mar 2026}, as the reason of the entry that a case gets. */
    public static String refitReason(String protector, String size, LocalDate issuedOn) {
        return protector + (size.isBlank() ? "" : ", size " + size) + ", issued " + Words.day(issuedOn);
    }
}
