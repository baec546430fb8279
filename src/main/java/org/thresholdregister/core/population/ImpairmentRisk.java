package org.thresholdregister.core.population;

import java.util.List;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.Meaning;

/**
 * How many of a population have a mean level over a fence, and how many more than of the same people without noise.
 *
 * <p>Method: the mean over the frequencies of equal fractiles. It takes a person to stand at the same fractile at every
 * frequency, which overstates the spread of the mean and so the shares in its tails.
 *
 * @param exposed the share with noise
 * @param unexposed the share of the same sex and age without
 * @param excess the difference
 */
public record ImpairmentRisk(
        Population population,
        List<Frequency> frequencies,
        int fenceDecibels,
        Estimate<Share> exposed,
        Estimate<Share> unexposed,
        Estimate<Share> excess)
        implements Meaning {

    private static final Basis BASIS = Basis.lookedUp("ISO 1999:2013, risk of hearing impairment");

    /** @param population people with noise; without, the excess is nothing */
    public static ImpairmentRisk of(Population population, List<Frequency> frequencies, int fenceDecibels) {
        Estimate<Share> exposed = share(population, frequencies, fenceDecibels);
        Population quiet = Population.withoutNoise(population.edition(), population.sex(), population.ageYears());
        Estimate<Share> unexposed = share(quiet, frequencies, fenceDecibels);
        return new ImpairmentRisk(
                population,
                List.copyOf(frequencies),
                fenceDecibels,
                exposed,
                unexposed,
                exposed.with(unexposed, Share::excessOver));
    }

    private static Estimate<Share> share(Population population, List<Frequency> frequencies, int fenceDecibels) {
        return Population.shareAbove(
                quantile -> frequencies.stream()
                        .map(frequency -> population.atQuantile(frequency, quantile))
                        .reduce((a, b) -> a.with(b, Double::sum))
                        .orElseThrow()
                        .map(sum -> sum / frequencies.size()),
                fenceDecibels);
    }

    @Override
    public Basis basis() {
        return BASIS;
    }

    @Override
    public List<Caveat> isNot() {
        return exposed.isNot();
    }
}
