package org.thresholdregister.core.population;

import java.util.EnumSet;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.population.Estimate.Limit;

/**
 * People of one sex and age, without noise or all with the same exposure.
 *
 * @param edition where the age component comes from
 * @param ageYears completed years
 * @param noise absent for people without noise
 */
public record Population(AgeEdition edition, Sex sex, int ageYears, Optional<NoiseExposure> noise) {

    /** Age and noise together are H + N - H*N/120 at the same fractile, at all values, ISO 1999:2013 clause 6.1. */
    private static final double COMPRESSION_DB = 120;

    private static final double WORST_QUANTILE = NormalDistribution.quantileAbove(Fractile.LEAST_WORSE);
    private static final double BEST_QUANTILE = NormalDistribution.quantileAbove(Fractile.MOST_WORSE);

    /** Halvings that bring the quantiles far below what a percentage shows. */
    private static final int HALVINGS = 50;

    public static Population withoutNoise(AgeEdition edition, Sex sex, int ageYears) {
        return new Population(edition, sex, ageYears, Optional.empty());
    }

    public Population with(NoiseExposure exposure) {
        return new Population(edition, sex, ageYears, Optional.of(exposure));
    }

    /** The threshold level in dB at a fractile: HTLA without noise, HTLAN with it. */
    public Estimate<Double> decibels(Frequency frequency, Fractile fractile) {
        if (!fractile.isCovered()) {
            return Estimate.outside(EnumSet.of(Limit.FRACTILE_BEYOND_5_TO_95_PERCENT));
        }
        return atQuantile(frequency, fractile.quantile());
    }

    Estimate<Double> atQuantile(Frequency frequency, double quantile) {
        Estimate<Double> age = AgeComponent.atQuantile(edition, sex, ageYears, frequency, quantile);
        return noise.map(exposure ->
                        age.with(NoiseComponent.atQuantile(exposure, frequency, quantile), Population::combined))
                .orElse(age);
    }

    private static double combined(double age, double noise) {
        return age + noise - age * noise / COMPRESSION_DB;
    }

    /**
     * The share of these people whose hearing is worse than a level that was measured, as far as the level is known. A
     * level beyond the worst or the best twentieth is placed there and no closer.
     */
    public Estimate<Share> shareWorseThan(Frequency frequency, DecibelRange level) {
        Estimate<Share> least = level.highest().isPresent()
                ? shareAbove(
                        quantile -> atQuantile(frequency, quantile),
                        level.highest().getAsInt())
                : everything(frequency);
        Estimate<Share> most = level.lowest().isPresent()
                ? shareAbove(
                        quantile -> atQuantile(frequency, quantile),
                        level.lowest().getAsInt())
                : everything(frequency);
        return least.with(most, (a, b) -> new Share(a.least(), b.most()));
    }

    private Estimate<Share> everything(Frequency frequency) {
        return atQuantile(frequency, WORST_QUANTILE).map(ignored -> new Share(0, 1));
    }

    /** @param atQuantile what grows with the quantile, in dB */
    static Estimate<Share> shareAbove(DoubleFunction<Estimate<Double>> atQuantile, double decibels) {
        Estimate<Double> worst = atQuantile.apply(WORST_QUANTILE);
        Estimate<Double> best = atQuantile.apply(BEST_QUANTILE);
        return worst.with(best, (high, low) -> {
            if (decibels > high) {
                return new Share(0, Fractile.LEAST_WORSE);
            }
            if (decibels < low) {
                return new Share(Fractile.MOST_WORSE, 1);
            }
            return Share.exactly(NormalDistribution.shareAbove(quantileOf(atQuantile, decibels)));
        });
    }

    private static double quantileOf(DoubleFunction<Estimate<Double>> atQuantile, double decibels) {
        double low = BEST_QUANTILE;
        double high = WORST_QUANTILE;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (atQuantile.apply(middle) instanceof Estimate.Within<Double> here && here.value() > decibels) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }
}
