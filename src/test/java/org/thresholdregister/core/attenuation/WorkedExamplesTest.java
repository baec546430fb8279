package org.thresholdregister.core.attenuation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.thresholdregister.core.attenuation.Estimate.Estimated;
import org.thresholdregister.core.wording.ProtectionWords;

/** The worked examples of the published methods; the file says of each row whether its numbers are published. */
class WorkedExamplesTest {

    /** Means and standard deviations of 40 CFR 211.207 Figure 2; the 6.5 dB at 6300 Hz are from memory. */
    static final OctaveAttenuation FIGURE_2 = new OctaveAttenuation(
            decimals("21 22 23 29 41 43 47 37 40"), decimals("3.7 3.3 3.8 4.7 3.3 3.3 3.4 6.1 6.5"));

    private static List<BigDecimal> decimals(String text) {
        return Arrays.stream(text.split(" ")).map(BigDecimal::new).toList();
    }

    private static Optional<BigDecimal> level(String text) {
        return Optional.ofNullable(text).map(BigDecimal::new);
    }

    private static Worn worn(String method, String kind, String rating) {
        List<BigDecimal> values =
                Arrays.stream(rating.split("/")).map(BigDecimal::new).toList();
        if (kind.equals("two")) {
            return new Worn.Both(
                    new Protector("plug", ProtectorKind.FORMABLE_PLUG, LabelValues.NONE.withNrr(values.get(0))),
                    new Protector("muff", ProtectorKind.MUFF, LabelValues.NONE.withNrr(values.get(1))));
        }
        BigDecimal value = values.getFirst();
        LabelValues label = switch (method) {
            case "snr" -> LabelValues.NONE.withSnr(value);
            case "hml" -> LabelValues.NONE.withHml(value, values.get(1), values.get(2));
            case "nrs-80", "nrs-20" -> LabelValues.NONE.withNrs(value, value);
            case "fit-test" -> LabelValues.NONE;
            default -> LabelValues.NONE.withNrr(value);
        };
        ProtectorKind of = Arrays.stream(ProtectorKind.values())
                .filter(some -> some.word().equals(kind))
                .findFirst()
                .orElseThrow();
        return new Worn.One(new Protector("example", of, label));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/vectors/attenuation/worked-examples.csv", useHeadersInDisplayName = true)
    void theLevelUnderTheProtectorIsTheWorkedOne(
            String name, String method, String kind, String rating, String dba, String dbc, String under) {
        var noise = new Noise(MeasuredBy.DOSIMETER, level(dba), level(dbc), Optional.empty());
        Optional<BigDecimal> personal =
                method.equals("fit-test") ? Optional.of(new BigDecimal(rating)) : Optional.empty();

        Estimate estimate = Attenuation.estimate(
                AttenuationMethod.find(method).orElseThrow(), worn(method, kind, rating), noise, personal);

        assertThat(estimate)
                .isInstanceOfSatisfying(
                        Estimated.class, found -> assertThat(found.levelUnder()).isEqualByComparingTo(under));
    }

    @Test
    void theFileHoldsAllOfItsRows() throws Exception {
        try (var file = WorkedExamplesTest.class.getResourceAsStream("/vectors/attenuation/worked-examples.csv")) {
            assertThat(new String(file.readAllBytes(), "UTF-8").lines().filter(line -> !line.startsWith("#")))
                    .hasSize(1 + 31);
        }
    }

    /** D1: the appendix lists six cases with their formulas, and no numbers. */
    @Test
    void d1AppendixBHasSixCasesOfWhichThoseInDbaTakeSevenOffTheRating() {
        var worn = new Worn.One(new Protector("any", ProtectorKind.MUFF, LabelValues.ofNrr(20)));
        var noise = Noise.ofDba(BigDecimal.valueOf(100)).withDbc(BigDecimal.valueOf(100));
        List<Estimate> estimates = Arrays.stream(AppendixBCase.values())
                .map(AttenuationMethod.AppendixB::new)
                .map(method -> Attenuation.estimate(method, worn, noise, Optional.empty()))
                .toList();

        assertThat(estimates)
                .extracting(estimate -> ((Estimated) estimate).levelUnder().intValueExact())
                .containsExactly(80, 87, 87, 80, 87, 80);
        assertThat(estimates)
                .extracting(estimate -> estimate.method().basis().place())
                .containsExactly(
                        "29 CFR 1910.95 Appendix B (i)",
                        "29 CFR 1910.95 Appendix B (ii)",
                        "29 CFR 1910.95 Appendix B (iii)",
                        "29 CFR 1910.95 Appendix B (iv)",
                        "29 CFR 1910.95 Appendix B (v)",
                        "29 CFR 1910.95 Appendix B (vi)");
    }

    /** 40 CFR 211.207 Figure 2. */
    @Test
    void theOctaveDataOfFigure2GiveAnNrrOf19Point8() {
        assertThat(NoiseReductionRating.of(FIGURE_2)).isCloseTo(new BigDecimal("19.8"), within(new BigDecimal("0.05")));
    }

    /** The protected level of Figure 2, 85.1 dBA, is what the band method gives for a noise of 100 dB in each octave. */
    @Test
    void theBandMethodGivesTheProtectedLevelOfFigure2() {
        var worn = new Worn.One(new Protector("figure", ProtectorKind.MUFF, LabelValues.NONE.withOctaves(FIGURE_2)));
        var noise = new Noise(
                MeasuredBy.AREA_MONITORING,
                Optional.empty(),
                Optional.empty(),
                Optional.of(NoiseBands.flat(BigDecimal.valueOf(100))));

        Estimate estimate = Attenuation.estimate(new AttenuationMethod.OctaveBands(), worn, noise, Optional.empty());

        assertThat(((Estimated) estimate).levelUnder())
                .isCloseTo(new BigDecimal("85.1"), within(new BigDecimal("0.05")));
        var bands = (Reckoning.ByBands) ((Estimated) estimate).reckoning();
        assertThat(bands.steps())
                .extracting(step -> step.level().toPlainString())
                .as("the A-weighted bands of the figure")
                .containsExactly("83.9", "91.4", "96.8", "100", "101.2", "101.0", "98.9");
    }

    @Test
    void practiceInTheUnitedKingdomAddsFourDecibelsToTheHmlExample() {
        var worn = new Worn.One(new Protector(
                "muff",
                ProtectorKind.MUFF,
                LabelValues.NONE.withHml(BigDecimal.valueOf(30), BigDecimal.valueOf(24), BigDecimal.valueOf(22))));
        var noise = Noise.ofDba(BigDecimal.valueOf(96)).withDbc(BigDecimal.valueOf(99));
        var estimate =
                (Estimated) Attenuation.estimate(new AttenuationMethod.HighMediumLow(), worn, noise, Optional.empty());

        assertThat(estimate.notes()).isEqualTo(Set.of(EstimateNote.UK_ADDS_4_DB));
        assertThat(ProtectionWords.note(EstimateNote.UK_ADDS_4_DB, estimate)).contains("76.25 dBA");
    }
}
