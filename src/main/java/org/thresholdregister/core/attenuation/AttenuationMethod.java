package org.thresholdregister.core.attenuation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/** A published way of estimating the level under a protector. */
public sealed interface AttenuationMethod {

    /** The noise reduction rating as 29 CFR 1910.95 Appendix B has it, the whole of the rating. */
    record AppendixB(AppendixBCase which) implements AttenuationMethod {
        @Override
        public String word() {
            return "appendix-b" + which.number().replace("(", "-").replace(")", "");
        }

        @Override
        public Citation basis() {
            return which.basis();
        }

        @Override
        public Provenance provenance() {
            return Provenance.LOOKED_UP;
        }
    }

    /**
     * Half of the rating, after 7 dB are taken off an A-weighted level; of two protectors half of the higher, and 5 dB.
     * Guidance for weighing protectors against engineering controls, no part of Appendix B.
     */
    record Halved(Weighting weighting) implements AttenuationMethod {
        @Override
        public String word() {
            return "halved-" + weighting.unit().toLowerCase(Locale.ROOT);
        }

        @Override
        public Citation basis() {
            return new Citation("OSHA Technical Manual, section III chapter 5");
        }

        @Override
        public Provenance provenance() {
            return Provenance.FROM_MEMORY;
        }
    }

    /** 75, 50 or 30 % of the rating by the kind of protector, before 7 dB are taken off for an A-weighted level. */
    record NioshDerated(Weighting weighting) implements AttenuationMethod {
        @Override
        public String word() {
            return "niosh-derated-" + weighting.unit().toLowerCase(Locale.ROOT);
        }

        @Override
        public Citation basis() {
            return new Citation("NIOSH 98-126");
        }

        /** The percentages were read; that the 7 dB come after them was not. */
        @Override
        public Provenance provenance() {
            return Provenance.FROM_MEMORY;
        }
    }

    /** 80, 60 or 40 % of the rating less 7 dB, by the kind of protector. */
    record FraDerated() implements AttenuationMethod {
        @Override
        public String word() {
            return "fra-derated";
        }

        @Override
        public Citation basis() {
            return new Citation("49 CFR 227 Appendix B (1)");
        }

        @Override
        public Provenance provenance() {
            return Provenance.LOOKED_UP;
        }
    }

    /** Band by band: the mean attenuation less two standard deviations, off the A-weighted bands of the noise. */
    record OctaveBands() implements AttenuationMethod {
        @Override
        public String word() {
            return "octave-bands";
        }

        @Override
        public Citation basis() {
            return new Citation("NIOSH method #1 (HEW 76-120), computed as in 40 CFR 211.207 Figure 2");
        }

        /** The computation was read; the document of the method was not. */
        @Override
        public Provenance provenance() {
            return Provenance.FROM_MEMORY;
        }
    }

    /** The single number rating off the C-weighted level. */
    record SingleNumber() implements AttenuationMethod {
        @Override
        public String word() {
            return "snr";
        }

        @Override
        public Citation basis() {
            return new Citation("ISO 4869-2, SNR");
        }

        @Override
        public Provenance provenance() {
            return Provenance.LOOKED_UP;
        }
    }

    /** H, M and L, weighed by how much lower the noise is in the A than in the C weighting. */
    record HighMediumLow() implements AttenuationMethod {
        @Override
        public String word() {
            return "hml";
        }

        @Override
        public Citation basis() {
            return new Citation("ISO 4869-2, HML");
        }

        @Override
        public Provenance provenance() {
            return Provenance.LOOKED_UP;
        }
    }

    /** NRS_A off the A-weighted level. */
    record ReductionStatistic(Wearers wearers) implements AttenuationMethod {

        /** Who reaches the value. */
        public enum Wearers {
            /** 80 % of wearers. */
            MOST,
            /** 20 %, who are skilled and motivated. */
            FEW
        }

        @Override
        public String word() {
            return switch (wearers) {
                case MOST -> "nrs-80";
                case FEW -> "nrs-20";
            };
        }

        @Override
        public Citation basis() {
            return new Citation("ANSI/ASA S12.68-2007, NRS_A");
        }

        @Override
        public Provenance provenance() {
            return Provenance.LOOKED_UP;
        }
    }

    /** The wearer's own measured attenuation, the whole of it, off the A-weighted level. */
    record PersonalFit() implements AttenuationMethod {
        @Override
        public String word() {
            return "fit-test";
        }

        @Override
        public Citation basis() {
            return new Citation("ANSI/ASA S12.71-2018, personal attenuation rating");
        }

        /** That there is such a rating was read; that it comes off the A-weighted level was not. */
        @Override
        public Provenance provenance() {
            return Provenance.FROM_MEMORY;
        }
    }

    /** Of two protectors worn together the higher rating less 2 dB: one state's own plan, no federal rule. */
    record StatePlanDual() implements AttenuationMethod {
        @Override
        public String word() {
            return "state-plan-dual";
        }

        @Override
        public Citation basis() {
            return new Citation("Wash. Admin. Code 296-307-63215 Table 2");
        }

        @Override
        public Provenance provenance() {
            return Provenance.LOOKED_UP;
        }
    }

    /** The word used in records and addresses. */
    String word();

    Citation basis();

    /** How well the method as a whole is known. */
    Provenance provenance();

    /** Every method, in the order in which they are shown. */
    List<AttenuationMethod> ALL = Stream.<Stream<? extends AttenuationMethod>>of(
                    Arrays.stream(AppendixBCase.values()).map(AppendixB::new),
                    Stream.of(new Halved(Weighting.A), new Halved(Weighting.C)),
                    Stream.of(new NioshDerated(Weighting.A), new NioshDerated(Weighting.C)),
                    Stream.of(
                            new FraDerated(),
                            new OctaveBands(),
                            new SingleNumber(),
                            new HighMediumLow(),
                            new ReductionStatistic(ReductionStatistic.Wearers.MOST),
                            new ReductionStatistic(ReductionStatistic.Wearers.FEW),
                            new PersonalFit(),
                            new StatePlanDual()))
            .<AttenuationMethod>flatMap(methods -> methods)
            .toList();

    /** The methods that apply to a noise measured so: of Appendix B, the two cases for that instrument. */
    static List<AttenuationMethod> forNoise(MeasuredBy measuredBy) {
        return ALL.stream()
                .filter(method -> !(method instanceof AppendixB(var which)) || which.measuredBy() == measuredBy)
                .toList();
    }

    static Optional<AttenuationMethod> find(String word) {
        return ALL.stream().filter(method -> method.word().equals(word)).findFirst();
    }
}
