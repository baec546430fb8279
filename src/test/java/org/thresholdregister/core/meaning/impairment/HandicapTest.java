package org.thresholdregister.core.meaning.impairment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.impairment.HandicapFormula.ThresholdLimit;
import org.thresholdregister.core.regulation.Provenance;

/** The formula of AAO-HNS 1979 and its use in the AMA Guides (examples: see {@code vectors/README.md}). */
@DisplayName("Percentage of hearing handicap (AAO-HNS 1979, AMA Guides)")
class HandicapTest {

    static Stream<Map<String, String>> examples() {
        return Vectors.rows("hearing-handicap-examples.csv").stream();
    }

    @Test
    void noExampleIsMissing() {
        assertThat(examples()).hasSize(2);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theExamplesComeOut(Map<String, String> row) {
        Handicap handicap = Handicap.of(Audiograms.of(row.get("left"), row.get("right")), HandicapFormula.AMA_GUIDES);
        assertThat(shown(handicap.monaural().right())).isEqualTo(row.get("right_percent"));
        assertThat(shown(handicap.monaural().left())).isEqualTo(row.get("left_percent"));
        assertThat(shown(handicap.binaural())).isEqualTo(row.get("binaural_percent"));
        assertThat(shown(handicap.wholePerson().orElseThrow())).isEqualTo(row.get("whole_person_percent"));
    }

    private static String shown(PercentRange range) {
        return range.exact().orElseThrow().rounded(2);
    }

    /** Low fence 25 dB, high fence 92 dB: 100 % is reached at a mean of 91.67 dB, a sum of 367. */
    @ParameterizedTest
    @CsvSource({
        "25 25 25 25, 0",
        "25 25 25 26, 0.38",
        "26 26 26 26, 1.5",
        "26 25 25 29, 1.88",
        "91 92 92 91, 99.75",
        "92 92 92 91, 100",
        "92 92 92 92, 100",
        "-10 -10 -10 -10, 0",
        "100 100 100 100, 100"
    })
    void theFencesAreTheEnds(String cells, String percent) {
        for (HandicapFormula formula : List.of(HandicapFormula.AMA_GUIDES, HandicapFormula.AAO_HNS_1979)) {
            Handicap handicap = Handicap.of(Audiograms.of(cells, cells), formula);
            assertThat(shown(handicap.monaural().left())).isEqualTo(percent);
            assertThat(shown(handicap.binaural())).isEqualTo(percent);
        }
    }

    /** The AMA Guides limit each threshold to 0 to 100 dB; others who use the formula do not. */
    @Test
    void theLimitOfEachThresholdIsASetting() {
        Audiogram test = Audiograms.of("-10 40 50 120", "10 10 10 10");
        HandicapFormula unlimited = HandicapFormula.AMA_GUIDES.with(ThresholdLimit.AS_MEASURED);
        assertThat(HandicapFormula.AMA_GUIDES.limit()).isEqualTo(ThresholdLimit.FROM_0_TO_100);
        assertThat(shown(
                        Handicap.of(test, HandicapFormula.AMA_GUIDES).monaural().left()))
                .isEqualTo("33.75");
        assertThat(shown(Handicap.of(test, unlimited).monaural().left())).isEqualTo("37.5");
        assertThat(Handicap.of(test, unlimited).formula()).isEqualTo(unlimited);
    }

    @Test
    void aMissingThresholdGivesARange() {
        Handicap limited = Handicap.of(Audiograms.of("20 25 - 40", "20 25 35 40"), HandicapFormula.AMA_GUIDES);
        assertThat(limited.monaural().left().exact()).isEmpty();
        assertThat(limited.monaural().left())
                .isEqualTo(new PercentRange(new Percent(0, 1), new Percent(3 * (185 - 100), 8)));
        assertThat(limited.binaural()).isEqualTo(new PercentRange(new Percent(60, 48), new Percent(5 * 60 + 255, 48)));
        Handicap asMeasured = Handicap.of(Audiograms.of("20 25 NR 40", "20 25 35 40"), HandicapFormula.AAO_HNS_1979);
        assertThat(asMeasured.monaural().left()).isEqualTo(new PercentRange(new Percent(0, 1), new Percent(100, 1)));
        assertThat(asMeasured.wholePerson()).isEmpty();
    }

    @Test
    void noResponseCountsUpwards() {
        Audiogram test = Audiograms.of("20 25 >95 40", "0 0 0 0");
        assertThat(shown(
                        Handicap.of(test, HandicapFormula.AMA_GUIDES).monaural().left()))
                .isEqualTo("31.88");
        assertThat(Handicap.of(test, HandicapFormula.AAO_HNS_1979).monaural().left())
                .isEqualTo(new PercentRange(new Percent(255, 8), new Percent(100, 1)));
    }

    @Test
    void everyFillingOfABlankLiesInTheRange() {
        var random = new Random(1979);
        for (int i = 0; i < 300; i++) {
            Audiogram full = Audiograms.random(random, 110);
            Ear ear = Ear.values()[random.nextInt(2)];
            Frequency frequency = Frequency.values()[random.nextInt(4)];
            for (HandicapFormula formula : List.of(HandicapFormula.AMA_GUIDES, HandicapFormula.AAO_HNS_1979)) {
                PercentRange open = Handicap.of(full.with(ear, frequency, Threshold.notGiven()), formula)
                        .binaural();
                Percent filled = Handicap.of(full, formula).binaural().exact().orElseThrow();
                assertThat(filled).isBetween(open.least(), open.most());
            }
        }
    }

    @Test
    void whatTheFormulaIsAndIsNotTravelsWithTheResult() {
        Handicap handicap = Handicap.of(Audiograms.flat(30), HandicapFormula.AMA_GUIDES);
        assertThat(handicap.formula().id()).isEqualTo("AMA Guides");
        assertThat(handicap.formula().version()).isEqualTo("6th edition");
        assertThat(handicap.basis().provenance()).isEqualTo(Provenance.UNVERIFIED);
        assertThat(handicap.isNot()).contains(Caveat.NO_DIAGNOSIS, Caveat.NO_COMPENSATION_DECISION);
    }

    @Test
    void swappingTheEarsChangesNothingForBoth() {
        Audiogram test = Audiograms.of("20 25 35 40", "25 35 45 55");
        Audiogram swapped = Audiograms.of("25 35 45 55", "20 25 35 40");
        Handicap one = Handicap.of(test, HandicapFormula.AMA_GUIDES);
        Handicap other = Handicap.of(swapped, HandicapFormula.AMA_GUIDES);
        assertThat(one.binaural()).isEqualTo(other.binaural());
        assertThat(one.monaural().left()).isEqualTo(other.monaural().right());
    }
}
