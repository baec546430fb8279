package org.thresholdregister.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.thresholdregister.drawing.Drawings.all;
import static org.thresholdregister.drawing.Drawings.centre;
import static org.thresholdregister.drawing.Drawings.flat;
import static org.thresholdregister.drawing.Drawings.number;
import static org.thresholdregister.drawing.Drawings.parse;
import static org.thresholdregister.drawing.Drawings.reading;
import static org.thresholdregister.drawing.Drawings.withClass;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.population.AgeEdition;
import org.thresholdregister.core.population.ExposureLevel;
import org.thresholdregister.core.population.NoiseExposure;
import org.thresholdregister.core.population.Population;
import org.thresholdregister.core.population.PopulationComparison;
import org.w3c.dom.Element;

class PopulationCurvesTest {

    private static final Population MEN_OF_60 = Population.withoutNoise(AgeEdition.ISO_7029_2000, Sex.MALE, 60);

    private static Element draw(Population population, int level) {
        Audiogram test = flat(Threshold.measured(level));
        return parse(AudiogramSvg.forScreen(
                AudiogramComparison.of(test), PopulationCurves.of(PopulationComparison.of(population, test))));
    }

    /** ISO 7029:2000, men of 60: median 28.2 dB at 4000 Hz. */
    @Test
    void theMedianRunsWhereASymbolOfItsLevelWouldStand() {
        Element svg = draw(MEN_OF_60, 28);
        List<Element> median = all(svg, withClass("median"));
        assertThat(median).hasSize(6);
        assertThat(number(median.get(4), "x1"))
                .isEqualTo(centre(reading(svg, Ear.RIGHT, Series.LATEST, Frequency.HZ_4000))
                        .x());
        assertThat(number(median.get(4), "y1"))
                .isCloseTo(
                        centre(reading(svg, Ear.RIGHT, Series.LATEST, Frequency.HZ_4000))
                                        .y()
                                + 0.22 * Plot.DECIBEL_PX,
                        within(0.05));
        assertThat(all(svg, withClass("best-tenth"))).hasSize(6);
        assertThat(all(svg, withClass("worst-tenth"))).hasSize(6);
    }

    @Test
    void aCurveEndsWhereTheModelSaysNothing() {
        var exposure = new NoiseExposure(ExposureLevel.lex8h(95), 20);
        assertThat(all(draw(MEN_OF_60.with(exposure), 28), withClass("median"))).hasSize(5);
        assertThat(all(draw(Population.withoutNoise(AgeEdition.ISO_7029_2000, Sex.MALE, 80), 28), withClass("median")))
                .isEmpty();
    }

    @Test
    void theCurvesAreToldInWords() {
        Element svg = draw(MEN_OF_60, 28);
        assertThat(svg.getAttribute("aria-label")).endsWith(PopulationCurves.LEGEND);
        assertThat(svg.getTextContent()).contains(PopulationCurves.LEGEND);
    }
}
