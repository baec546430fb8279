package org.thresholdregister.core.population;

import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.regulation.Citation;

/** One test beside a population: the curves of that population, and where each ear stands in it. */
public record PopulationComparison(Population population, Audiogram test, List<Point> points) implements Meaning {

    /** ISO 1999 for people with noise; otherwise the edition of ISO 7029 alone. */
    private static final String WITH_NOISE = "ISO 1999:2013 with ";

    /**
     * What stands at one frequency.
     *
     * @param bestTenth the level in dB that nine in ten exceed
     * @param median the level that half exceed
     * @param worstTenth the level that one in ten exceeds
     * @param standing of each ear
     */
    public record Point(
            Frequency frequency,
            Estimate<Double> bestTenth,
            Estimate<Double> median,
            Estimate<Double> worstTenth,
            PerEar<Standing> standing) {}

    /** One ear's threshold, and the share of the population whose hearing is worse. */
    public record Standing(Threshold threshold, Estimate<Share> shareWorse) {}

    public static PopulationComparison of(Population population, Audiogram test) {
        return new PopulationComparison(
                population,
                test,
                Arrays.stream(Frequency.values())
                        .map(frequency -> point(population, test, frequency))
                        .toList());
    }

    private static Point point(Population population, Audiogram test, Frequency frequency) {
        return new Point(
                frequency,
                population.decibels(frequency, Fractile.BEST_TENTH),
                population.decibels(frequency, Fractile.MEDIAN),
                population.decibels(frequency, Fractile.WORST_TENTH),
                PerEar.from(ear -> standing(population, test, ear, frequency)));
    }

    private static Standing standing(Population population, Audiogram test, Ear ear, Frequency frequency) {
        Threshold threshold = test.threshold(ear, frequency);
        return new Standing(threshold, population.shareWorseThan(frequency, threshold.range()));
    }

    @Override
    public Basis basis() {
        Basis age = population.edition().basis();
        return population.noise().isEmpty()
                ? age
                : new Basis(new Citation(WITH_NOISE + age.source().place()), age.provenance());
    }

    @Override
    public List<Caveat> isNot() {
        return List.of(
                Caveat.POPULATION_ESTIMATE,
                Caveat.NO_DIAGNOSIS,
                Caveat.NO_STATEMENT_OF_CAUSE,
                Caveat.NO_COMPENSATION_DECISION);
    }
}
