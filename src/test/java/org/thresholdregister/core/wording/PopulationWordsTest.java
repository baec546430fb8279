package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.population.AgeEdition;
import org.thresholdregister.core.population.ExposureLevel;
import org.thresholdregister.core.population.ImpairmentRisk;
import org.thresholdregister.core.population.NoiseExposure;
import org.thresholdregister.core.population.Population;
import org.thresholdregister.core.population.PopulationComparison;

class PopulationWordsTest {

    private static final Population MEN_OF_60 = Population.withoutNoise(AgeEdition.ISO_7029_2000, Sex.MALE, 60);

    private static PopulationComparison of(Population population, String left, String right) {
        return PopulationComparison.of(population, Audiograms.of(left, right));
    }

    private static Population with(ExposureLevel level, double years) {
        return new Population(AgeEdition.ISO_7029_2000, Sex.MALE, 60, Optional.of(new NoiseExposure(level, years)));
    }

    @Test
    void theNameSaysWhoAndByWhichEdition() {
        assertThat(PopulationWords.name(of(MEN_OF_60, "", "")))
                .isEqualTo("Men of 60 years without noise, by ISO 7029:2000; not verified against the text");
        assertThat(PopulationWords.name(of(with(ExposureLevel.lex8h(90), 40), "", "")))
                .startsWith("Men of 60 years after 40.0 years at 90.0 dB LEX,8h, by ISO 1999:2013 with ISO 7029:2000");
    }

    /** By hand: at 4000 Hz median 28.22, spreads 20.90 and 16.72 dB; at 8000 Hz median 38.81, lower spread 22.26 dB. */
    @Test
    void aShareReadsAsFarAsItIsKnown() {
        PopulationComparison comparison = of(MEN_OF_60, "- NR 120 -10 28 >95 5", "0 0 0 0 >25 0 0");
        assertThat(comparison.points().stream()
                        .map(point -> PopulationWords.share(
                                point.standing().of(Ear.LEFT).shareWorse()))
                        .toList())
                .containsExactly(
                        "not known",
                        "not known",
                        "5.0 % or fewer",
                        "95.0 % or more",
                        "50.5 %",
                        "5.0 % or fewer",
                        "93.6 %");
        PopulationComparison.Point at4000 = comparison.points().get(4);
        assertThat(PopulationWords.level(at4000.median())).isEqualTo("28.2");
        assertThat(PopulationWords.share(at4000.standing().right().shareWorse()))
                .isEqualTo("46.6 % or fewer");
    }

    @Test
    void aLevelOfFiveDecibelExchangeIsSaidToBeOne() {
        PopulationComparison comparison = of(with(ExposureLevel.takingAsLex8h(90), 5), "10 10 10 10 10 10 10", "");
        assertThat(PopulationWords.name(comparison))
                .contains("at 90.0 dBA, a TWA of 5 dB exchange taken as LEX,8h, by");
        assertThat(PopulationWords.notes(comparison))
                .anySatisfy(note -> assertThat(note).contains("ISO 1999 asks for LEX,8h, of 3 dB exchange"))
                .contains(
                        "Extrapolated: the standard defines no spread for less than ten years of exposure.",
                        "Outside the range: ISO 1999 says nothing of noise at 8000 Hz.");
        assertThat(PopulationWords.level(comparison.points().getLast().median()))
                .isEqualTo("outside the range");
        assertThat(PopulationWords.share(
                        comparison.points().getLast().standing().left().shareWorse()))
                .isEqualTo("outside the range");
    }

    /** The worked value for 90 dB: 29.5 % without noise, 17.2 of a hundred more with it. */
    @Test
    void theRiskIsSaidWithItsMethod() {
        ImpairmentRisk risk = ImpairmentRisk.of(
                with(ExposureLevel.lex8h(90), 40),
                List.of(Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_3000, Frequency.HZ_4000),
                25);
        assertThat(PopulationWords.risk(risk).withBasis())
                .isEqualTo(
                        "Of such people 46.7 % have a mean of 1000, 2000, 3000 and 4000 Hz over 25 dB; without noise 29.5"
                                + " %; the difference is 17.2 % of all. Equal fractiles are averaged, which overstates the tails."
                                + " [ISO 1999:2013, risk of hearing impairment]");
    }

    @Test
    void everyComparisonSaysWhatItIsNot() {
        assertThat(PopulationWords.isNot(of(MEN_OF_60, "", "")))
                .startsWith(
                        "What this is not: no statement about this person, but a population estimate; no diagnosis;");
    }
}
