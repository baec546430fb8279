package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
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
import org.thresholdregister.core.attenuation.Estimate.Estimated;
import org.thresholdregister.core.attenuation.Estimate.Unavailable;
import org.thresholdregister.core.attenuation.Reckoning.ByBands;
import org.thresholdregister.core.attenuation.Reckoning.ByHml;
import org.thresholdregister.core.attenuation.Reckoning.ByRating;

/** Estimates the level under what somebody wears, by each method. */
public final class Attenuation {

    /** Under this, in dBA, a wearer may be cut off from speech and warnings. */
    public static final BigDecimal OVER_PROTECTED_BELOW = BigDecimal.valueOf(70);

    private static final BigDecimal WHOLE = BigDecimal.ONE;
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal NOTHING = BigDecimal.ZERO;

    /** What an A-weighted level lacks beside a C-weighted one. */
    private static final BigDecimal SEVEN = BigDecimal.valueOf(7);

    /** What the second protector adds, 5 dB. */
    private static final BigDecimal SECOND_ADDS = BigDecimal.valueOf(5);

    private static final BigDecimal STATE_PLAN_OFF = BigDecimal.valueOf(2);

    private Attenuation() {}

    /**
     * By each of the methods that apply to a noise measured so, in the order in which they are shown.
     *
     * @param personal the wearer's own attenuation in dB from a fit test of what is worn, where there is one
     */
    public static List<Estimate> byEveryMethod(Worn worn, Noise noise, Optional<BigDecimal> personal) {
        return AttenuationMethod.forNoise(noise.measuredBy()).stream()
                .map(method -> estimate(method, worn, noise, personal))
                .toList();
    }

    /** By one method. */
    public static Estimate estimate(AttenuationMethod method, Worn worn, Noise noise, Optional<BigDecimal> personal) {
        var needs = new Needs(worn, noise);
        return switch (method) {
            case AppendixB(AppendixBCase which) -> {
                BigDecimal nrr = needs.nrrOfOne();
                BigDecimal level = needs.level(which.weighting());
                yield needs.rated(method, which.weighting(), level, nrr, WHOLE, seven(which.weighting()), NOTHING);
            }
            case Halved(Weighting weighting) -> {
                BigDecimal nrr = needs.highestNrr();
                BigDecimal level = needs.level(weighting);
                BigDecimal added = worn instanceof Worn.Both ? SECOND_ADDS.negate() : NOTHING;
                yield needs.rated(method, weighting, level, nrr, HALF, seven(weighting), added);
            }
            case NioshDerated(Weighting weighting) -> {
                BigDecimal nrr = needs.nrrOfOne();
                BigDecimal level = needs.level(weighting);
                yield needs.rated(method, weighting, level, nrr, needs.nioshShare(), NOTHING, seven(weighting));
            }
            case FraDerated() -> {
                BigDecimal nrr = needs.nrrOfOne();
                BigDecimal level = needs.level(Weighting.A);
                yield needs.rated(method, Weighting.A, level, nrr, needs.fraShare(), SEVEN, NOTHING);
            }
            case SingleNumber() -> {
                BigDecimal snr = needs.ofOne(needs.label().flatMap(LabelValues::snr), Missing.SNR);
                BigDecimal level = needs.level(Weighting.C);
                yield needs.rated(method, Weighting.C, level, snr, WHOLE, NOTHING, NOTHING);
            }
            case ReductionStatistic(ReductionStatistic.Wearers wearers) -> {
                BigDecimal nrs = needs.ofOne(
                        needs.label().flatMap(label -> switch (wearers) {
                            case MOST -> label.nrsMost();
                            case FEW -> label.nrsFew();
                        }),
                        Missing.NRS_A);
                BigDecimal level = needs.level(Weighting.A);
                yield needs.rated(method, Weighting.A, level, nrs, WHOLE, NOTHING, NOTHING);
            }
            case PersonalFit() -> {
                BigDecimal par = needs.given(personal, Missing.FIT_TEST);
                BigDecimal level = needs.level(Weighting.A);
                yield needs.rated(method, Weighting.A, level, par, WHOLE, NOTHING, NOTHING);
            }
            case StatePlanDual() -> {
                needs.two();
                BigDecimal nrr = needs.highestNrr();
                BigDecimal level = needs.level(Weighting.A);
                yield needs.rated(method, Weighting.A, level, nrr, WHOLE, STATE_PLAN_OFF, NOTHING);
            }
            case HighMediumLow() -> {
                BigDecimal high = needs.ofOne(needs.label().flatMap(LabelValues::high), Missing.HML);
                BigDecimal medium = needs.ofOne(needs.label().flatMap(LabelValues::medium), Missing.HML);
                BigDecimal low = needs.ofOne(needs.label().flatMap(LabelValues::low), Missing.HML);
                var reckoning = new ByHml(needs.level(Weighting.A), needs.level(Weighting.C), high, medium, low);
                yield needs.estimate(method, reckoning, () -> reckoning.dba().subtract(reckoning.attenuation()));
            }
            case OctaveBands() -> needs.byBands(method);
        };
    }

    private static BigDecimal seven(Weighting weighting) {
        return switch (weighting) {
            case A -> SEVEN;
            case C -> NOTHING;
        };
    }

    /** Gathers what a method needs, and what of it is missing. */
    private static final class Needs {

        private final Worn worn;
        private final Noise noise;
        private final Set<Missing> missing = EnumSet.noneOf(Missing.class);

        Needs(Worn worn, Noise noise) {
            this.worn = worn;
            this.noise = noise;
        }

        BigDecimal given(Optional<BigDecimal> value, Missing otherwise) {
            if (value.isEmpty()) {
                missing.add(otherwise);
            }
            return value.orElse(NOTHING);
        }

        BigDecimal level(Weighting weighting) {
            return given(
                    noise.level(weighting),
                    switch (weighting) {
                        case A -> Missing.A_WEIGHTED_LEVEL;
                        case C -> Missing.C_WEIGHTED_LEVEL;
                    });
        }

        Optional<LabelValues> label() {
            return switch (worn) {
                case Worn.One(Protector protector) -> Optional.of(protector.label());
                case Worn.Both both -> Optional.empty();
            };
        }

        /** A value of the label, for methods that speak of one protector. */
        BigDecimal ofOne(Optional<BigDecimal> value, Missing otherwise) {
            return given(value, label().isPresent() ? otherwise : Missing.ONE_PROTECTOR);
        }

        BigDecimal nrrOfOne() {
            return ofOne(label().flatMap(LabelValues::nrr), Missing.NRR);
        }

        void two() {
            if (worn instanceof Worn.One) {
                missing.add(Missing.TWO_PROTECTORS);
            }
        }

        BigDecimal highestNrr() {
            return switch (worn) {
                case Worn.One(Protector protector) -> given(protector.label().nrr(), Missing.NRR);
                case Worn.Both(Protector plug, Protector muff) ->
                    given(plug.label().nrr().flatMap(one -> muff.label().nrr().map(one::max)), Missing.NRR_OF_BOTH);
            };
        }

        /** What is left of the rating after 25, 50 or 70 % are taken off. */
        BigDecimal nioshShare() {
            return switch (kind()) {
                case MUFF -> new BigDecimal("0.75");
                case FORMABLE_PLUG -> HALF;
                case OTHER_PLUG, CUSTOM_PLUG -> new BigDecimal("0.30");
                case DUAL -> NOTHING;
            };
        }

        /** What is left after 20, 40 or 60 % are taken off. */
        BigDecimal fraShare() {
            return switch (kind()) {
                case MUFF -> new BigDecimal("0.8");
                case FORMABLE_PLUG -> new BigDecimal("0.6");
                case OTHER_PLUG, CUSTOM_PLUG -> new BigDecimal("0.4");
                case DUAL -> NOTHING;
            };
        }

        private ProtectorKind kind() {
            return switch (worn) {
                case Worn.One(Protector protector) -> protector.kind();
                case Worn.Both both -> ProtectorKind.DUAL;
            };
        }

        Estimate rated(
                AttenuationMethod method,
                Weighting weighting,
                BigDecimal level,
                BigDecimal rating,
                BigDecimal share,
                BigDecimal before,
                BigDecimal after) {
            var reckoning = new ByRating(weighting, level, rating, share, before, after);
            return estimate(method, reckoning, () -> level.subtract(reckoning.attenuation()));
        }

        Estimate byBands(AttenuationMethod method) {
            if (label().isEmpty()) {
                missing.add(Missing.ONE_PROTECTOR);
            }
            Optional<OctaveAttenuation> data = label().flatMap(LabelValues::octaves);
            if (label().isPresent() && data.isEmpty()) {
                missing.add(Missing.OCTAVE_ATTENUATION);
            }
            if (noise.bands().isEmpty()) {
                missing.add(Missing.OCTAVE_BANDS_OF_NOISE);
            }
            if (data.isEmpty() || noise.bands().isEmpty()) {
                return new Unavailable(method, missing);
            }
            var reckoning = new ByBands(BandStep.all(noise.bands().get(), data.get()));
            return estimate(method, reckoning, reckoning::under);
        }

        Estimate estimate(AttenuationMethod method, Reckoning reckoning, Supplier<BigDecimal> under) {
            if (!missing.isEmpty()) {
                return new Unavailable(method, missing);
            }
            Set<EstimateNote> notes = EnumSet.noneOf(EstimateNote.class);
            switch (method) {
                case Halved halved -> notes.add(EstimateNote.GUIDANCE_ONLY);
                case StatePlanDual plan -> notes.add(EstimateNote.STATE_PLAN_ONLY);
                case HighMediumLow hml -> notes.add(EstimateNote.UK_ADDS_4_DB);
                case ReductionStatistic(ReductionStatistic.Wearers wearers) -> {
                    if (wearers == ReductionStatistic.Wearers.FEW) {
                        notes.add(EstimateNote.FEW_REACH_IT);
                    }
                }
                case AppendixB plain -> {}
                case NioshDerated derated -> {}
                case FraDerated derated -> {}
                case OctaveBands bands -> {}
                case SingleNumber snr -> {}
                case PersonalFit fit -> {}
            }
            if (isWeak(reckoning)) {
                notes.add(EstimateNote.NO_ATTENUATION);
            }
            BigDecimal level = under.get();
            Optional<BigDecimal> outside = reckoning instanceof ByBands ? Optional.empty() : noise.aWeighted();
            if (outside.filter(dba -> level.compareTo(dba) > 0).isPresent()) {
                notes.add(EstimateNote.NOT_ABOVE_OUTSIDE);
            }
            BigDecimal capped = outside.map(level::min).orElse(level);
            if (capped.compareTo(OVER_PROTECTED_BELOW) < 0) {
                notes.add(EstimateNote.OVER_PROTECTION);
            }
            return new Estimated(method, reckoning, capped, notes);
        }

        private static boolean isWeak(Reckoning reckoning) {
            return switch (reckoning) {
                case ByRating rated -> rated.formula().signum() < 0;
                case ByHml hml -> hml.formula().signum() < 0;
                case ByBands bands -> false;
            };
        }
    }
}
