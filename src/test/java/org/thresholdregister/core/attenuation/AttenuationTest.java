package org.thresholdregister.core.attenuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.attenuation.Estimate.Estimated;
import org.thresholdregister.core.attenuation.Estimate.Unavailable;
import org.thresholdregister.core.wording.ProtectionWords;

/** What holds of every estimate, and what is said where there is none. */
class AttenuationTest {

    private static final Worn NOTHING_KNOWN =
            new Worn.One(new Protector("plain", ProtectorKind.OTHER_PLUG, LabelValues.NONE));

    private static Worn nrr(ProtectorKind kind, int nrr) {
        return new Worn.One(new Protector("some", kind, LabelValues.ofNrr(nrr)));
    }

    private static Estimate estimate(String method, Worn worn, Noise noise) {
        return Attenuation.estimate(AttenuationMethod.find(method).orElseThrow(), worn, noise, Optional.empty());
    }

    private static BigDecimal under(Estimate estimate) {
        return ((Estimated) estimate).levelUnder();
    }

    @Test
    void aMissingLevelIsSaidAndNothingIsPutInItsPlace() {
        Noise dbaOnly = Noise.ofDba(BigDecimal.valueOf(95));
        Estimate estimate = estimate("appendix-b-i", nrr(ProtectorKind.MUFF, 25), dbaOnly);

        assertThat(estimate).isInstanceOfSatisfying(Unavailable.class, none -> {
            assertThat(none.missing()).containsExactly(Missing.C_WEIGHTED_LEVEL);
            assertThat(ProtectionWords.missing(none)).isEqualTo("The noise has no C-weighted level on record.");
        });
    }

    @Test
    void aRatingOfAnotherKindNeverStandsInForTheOneThatTheMethodAsksFor() {
        Noise noise = Noise.ofDba(BigDecimal.valueOf(95)).withDbc(BigDecimal.valueOf(97));
        Worn onlySnr = new Worn.One(
                new Protector("plug", ProtectorKind.OTHER_PLUG, LabelValues.NONE.withSnr(BigDecimal.valueOf(30))));

        assertThat(((Unavailable) estimate("appendix-b-ii", onlySnr, noise)).missing())
                .containsExactly(Missing.NRR);
        assertThat(((Unavailable) estimate("snr", nrr(ProtectorKind.MUFF, 30), noise)).missing())
                .containsExactly(Missing.SNR);
    }

    @Test
    void everyMethodSaysWhatItLacksWhereNothingIsKnown() {
        Noise nothing = new Noise(MeasuredBy.DOSIMETER, Optional.empty(), Optional.empty(), Optional.empty());

        for (AttenuationMethod method : AttenuationMethod.ALL) {
            Estimate estimate = Attenuation.estimate(method, NOTHING_KNOWN, nothing, Optional.empty());
            assertThat(estimate).as(method.word()).isInstanceOf(Unavailable.class);
            assertThat(ProtectionWords.missing((Unavailable) estimate)).endsWith(".");
        }
    }

    @Test
    void aWeakPlugByNioshKeepsNothingOffAndAddsNothing() {
        Noise noise = Noise.ofDba(BigDecimal.valueOf(95));
        var estimate = (Estimated) estimate("niosh-derated-dba", nrr(ProtectorKind.OTHER_PLUG, 20), noise);

        assertThat(estimate.levelUnder())
                .as("30 % of 20 are less than the 7 dB")
                .isEqualByComparingTo("95");
        assertThat(estimate.notes()).containsExactly(EstimateNote.NO_ATTENUATION);
        assertThat(ProtectionWords.working(estimate).text())
                .isEqualTo("95 − 0, as 0.3 × 20 − 7 is less than nothing, = 95 dBA.");
    }

    @Test
    void halvingComesAfterTheSevenDecibelsAndTheNioshShareBeforeThem() {
        Noise noise = Noise.ofDba(BigDecimal.valueOf(100));
        Worn plug = nrr(ProtectorKind.FORMABLE_PLUG, 27);

        assertThat(under(estimate("halved-dba", plug, noise))).as("half of 20").isEqualByComparingTo("90");
        assertThat(under(estimate("niosh-derated-dba", plug, noise)))
                .as("13.5 less 7")
                .isEqualByComparingTo("93.5");
    }

    @Test
    void appendixBSpeaksOfOneProtectorAndTheStatesPlanOfTwo() {
        Noise noise = Noise.ofDba(BigDecimal.valueOf(100));
        var both = new Worn.Both(
                new Protector("plug", ProtectorKind.FORMABLE_PLUG, LabelValues.ofNrr(29)),
                new Protector("muff", ProtectorKind.MUFF, LabelValues.ofNrr(25)));

        assertThat(((Unavailable) estimate("appendix-b-ii", both, noise)).missing())
                .containsExactly(Missing.ONE_PROTECTOR);
        assertThat(((Unavailable) estimate("state-plan-dual", nrr(ProtectorKind.MUFF, 25), noise)).missing())
                .containsExactly(Missing.TWO_PROTECTORS);
        assertThat(((Estimated) estimate("state-plan-dual", both, noise)).notes())
                .contains(EstimateNote.STATE_PLAN_ONLY);
    }

    @Test
    void underSeventyDecibelsOverProtectionIsSaid() {
        Worn muff = nrr(ProtectorKind.MUFF, 30);

        assertThat(((Estimated) estimate("appendix-b-ii", muff, Noise.ofDba(BigDecimal.valueOf(93)))).notes())
                .as("exactly 70")
                .isEmpty();
        assertThat(((Estimated) estimate("appendix-b-ii", muff, Noise.ofDba(new BigDecimal("92.9")))).notes())
                .containsExactly(EstimateNote.OVER_PROTECTION);
    }

    @Test
    void anEstimateInTheCWeightingNeverLiesAboveTheLevelOutside() {
        Noise hum = Noise.ofDba(BigDecimal.valueOf(88)).withDbc(BigDecimal.valueOf(100));
        var estimate = (Estimated) estimate("niosh-derated-dbc", nrr(ProtectorKind.OTHER_PLUG, 20), hum);

        assertThat(estimate.levelUnder()).isEqualByComparingTo("88");
        assertThat(estimate.notes()).containsExactly(EstimateNote.NOT_ABOVE_OUTSIDE);
    }

    @Test
    void onlyTheTwoCasesOfTheInstrumentAreShown() {
        List<String> words = Attenuation.byEveryMethod(
                        nrr(ProtectorKind.MUFF, 25),
                        new Noise(
                                MeasuredBy.SOUND_LEVEL_METER,
                                Optional.of(BigDecimal.TEN),
                                Optional.empty(),
                                Optional.empty()),
                        Optional.empty())
                .stream()
                .map(estimate -> estimate.method().word())
                .filter(word -> word.startsWith("appendix-b"))
                .toList();

        assertThat(words).containsExactly("appendix-b-iii", "appendix-b-iv");
        assertThat(AttenuationMethod.ALL.stream().map(AttenuationMethod::word)).doesNotHaveDuplicates();
    }

    private static BigDecimal tenths(Random random, int from, int to) {
        return BigDecimal.valueOf(random.nextInt(from * 10, to * 10 + 1), 1);
    }

    private static LabelValues label(Random random) {
        List<BigDecimal> means = new ArrayList<>();
        List<BigDecimal> deviations = new ArrayList<>();
        for (int i = 0; i < OctaveAttenuation.FREQUENCIES.size(); i++) {
            means.add(tenths(random, 0, 45));
            deviations.add(tenths(random, 0, 9));
        }
        BigDecimal low = tenths(random, 0, 20);
        BigDecimal medium = low.add(tenths(random, 0, 10));
        return LabelValues.ofNrr(random.nextInt(34))
                .withSnr(tenths(random, 0, 38))
                .withHml(medium.add(tenths(random, 0, 10)), medium, low)
                .withNrs(tenths(random, 0, 25), tenths(random, 0, 38))
                .withOctaves(new OctaveAttenuation(means, deviations));
    }

    private static Noise noise(Random random) {
        BigDecimal dba = tenths(random, 75, 115);
        BigDecimal[] bands = new BigDecimal[OctaveBand.values().length];
        for (int i = 0; i < bands.length; i++) {
            bands[i] = tenths(random, 60, 110);
        }
        return new Noise(
                MeasuredBy.DOSIMETER,
                Optional.of(dba),
                Optional.of(dba.add(tenths(random, 0, 12))),
                Optional.of(NoiseBands.of(bands)));
    }

    @Test
    void noProtectorEverAddsNoiseByAnyMethod() {
        Random random = new Random(41);
        for (int i = 0; i < 2000; i++) {
            Noise noise = noise(random);
            ProtectorKind kind = ProtectorKind.values()[random.nextInt(4)];
            var worn = new Worn.One(new Protector("p", kind, label(random)));
            Optional<BigDecimal> personal = Optional.of(tenths(random, 0, 40));
            for (Estimate estimate : Attenuation.byEveryMethod(worn, noise, personal)) {
                if (estimate instanceof Estimated found) {
                    assertThat(found.reckoning().attenuation().signum()).isNotNegative();
                    BigDecimal outside = found.reckoning() instanceof Reckoning.ByBands bands
                            ? bands.outside()
                            : noise.aWeighted().orElseThrow();
                    assertThat(found.levelUnder()).as(found.method().word()).isLessThanOrEqualTo(outside);
                }
            }
        }
    }

    @Test
    void aHigherRatingNeverLeavesMoreNoiseUnderTheProtector() {
        Random random = new Random(42);
        for (int i = 0; i < 2000; i++) {
            Noise noise = noise(random);
            ProtectorKind kind = ProtectorKind.values()[random.nextInt(4)];
            int nrr = random.nextInt(33);
            int more = nrr + 1 + random.nextInt(5);
            for (String method : List.of(
                    "appendix-b-i",
                    "appendix-b-ii",
                    "halved-dba",
                    "halved-dbc",
                    "niosh-derated-dba",
                    "niosh-derated-dbc",
                    "fra-derated")) {
                assertThat(under(estimate(method, nrr(kind, more), noise)))
                        .as(method)
                        .isLessThanOrEqualTo(under(estimate(method, nrr(kind, nrr), noise)));
            }
        }
    }

    @Test
    void moreNoiseOutsideNeverMeansLessUnderTheSameProtector() {
        Random random = new Random(43);
        for (int i = 0; i < 1000; i++) {
            Noise noise = noise(random);
            Noise louder = new Noise(
                    MeasuredBy.DOSIMETER,
                    noise.aWeighted().map(BigDecimal.ONE::add),
                    noise.cWeighted().map(BigDecimal.ONE::add),
                    Optional.empty());
            var worn = new Worn.One(new Protector("p", ProtectorKind.values()[random.nextInt(4)], label(random)));
            List<Estimate> soft = Attenuation.byEveryMethod(worn, noise, Optional.empty());
            List<Estimate> loud = Attenuation.byEveryMethod(worn, louder, Optional.empty());
            for (int m = 0; m < soft.size(); m++) {
                if (soft.get(m) instanceof Estimated one && loud.get(m) instanceof Estimated other) {
                    assertThat(other.levelUnder())
                            .isEqualByComparingTo(one.levelUnder().add(BigDecimal.ONE));
                }
            }
        }
    }

    @Test
    void deratingNeverLeavesLessNoiseThanTheWholeRating() {
        Random random = new Random(44);
        for (int i = 0; i < 1000; i++) {
            Noise noise = noise(random);
            Worn worn = nrr(ProtectorKind.values()[random.nextInt(4)], random.nextInt(34));
            BigDecimal whole = under(estimate("appendix-b-ii", worn, noise));
            assertThat(under(estimate("halved-dba", worn, noise))).isGreaterThanOrEqualTo(whole);
            assertThat(under(estimate("niosh-derated-dba", worn, noise))).isGreaterThanOrEqualTo(whole);
            assertThat(under(estimate("fra-derated", worn, noise))).isGreaterThanOrEqualTo(whole);
        }
    }

    @Test
    void impossibleValuesAreRefused() {
        assertThatThrownBy(() -> LabelValues.ofNrr(61)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LabelValues.ofNrr(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Noise.ofDba(BigDecimal.valueOf(161))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NoiseBands.of(BigDecimal.ONE)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new OctaveAttenuation(List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Protector("two", ProtectorKind.DUAL, LabelValues.NONE))
                .isInstanceOf(IllegalArgumentException.class);
        var muff = new Protector("muff", ProtectorKind.MUFF, LabelValues.NONE);
        assertThatThrownBy(() -> new Worn.Both(muff, muff)).isInstanceOf(IllegalArgumentException.class);
        assertThat(Set.of(AttenuationMethod.find("no-such"))).containsExactly(Optional.empty());
    }
}
