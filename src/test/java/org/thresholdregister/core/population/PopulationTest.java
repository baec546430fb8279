package org.thresholdregister.core.population;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.population.Estimate.Limit;
import org.thresholdregister.core.population.Estimate.Mark;

/** Properties of ISO 1999:2013 and ISO 7029, and where they end. */
class PopulationTest {

    private static final Frequency AT_4000 = Frequency.HZ_4000;

    private static NoiseExposure noise(double level, double years) {
        return new NoiseExposure(ExposureLevel.lex8h(level), years);
    }

    private static Population men(AgeEdition edition, int age) {
        return Population.withoutNoise(edition, Sex.MALE, age);
    }

    private static double value(Estimate<Double> estimate) {
        return ((Estimate.Within<Double>) estimate).value();
    }

    private static Set<Mark> marks(Estimate<?> estimate) {
        return ((Estimate.Within<?>) estimate).marks();
    }

    private static Set<Limit> limits(Estimate<?> estimate) {
        return ((Estimate.Outside<?>) estimate).reasons();
    }

    private static Share share(Estimate<Share> estimate) {
        return ((Estimate.Within<Share>) estimate).value();
    }

    private static Share worseThan(Population population, Frequency frequency, int level) {
        return share(population.shareWorseThan(frequency, DecibelRange.exactly(level)));
    }

    /** ISO 1999:2013 Tables 1 and 3: L0 is 93 dB at 500 Hz and 89 dB at 1000 Hz. */
    @ParameterizedTest
    @CsvSource({"85, HZ_500", "85, HZ_1000", "90, HZ_500", "93, HZ_500", "89, HZ_1000", "75, HZ_4000"})
    void upToItsOwnLevelNoiseDoesNothing(double level, Frequency frequency) {
        for (double worse : new double[] {0.05, 0.5, 0.95}) {
            assertThat(value(NoiseComponent.decibels(noise(level, 40), frequency, new Fractile(worse))))
                    .isZero();
        }
    }

    /** By the formula of clause 6.3: (0.025 + 0.025 log 20) * 15^2. */
    @Test
    void theMedianAt4000HzIsAsComputedByHand() {
        assertThat(value(NoiseComponent.decibels(noise(90, 20), AT_4000, Fractile.MEDIAN)))
                .isCloseTo((0.025 + 0.025 * 1.30103) * 225, within(0.0001));
    }

    @Test
    void theTwoFormulasOfTheMedianMeetAtTenYears() {
        double justUnder = value(NoiseComponent.decibels(noise(95, 9.9999), AT_4000, Fractile.MEDIAN));
        double at = value(NoiseComponent.decibels(noise(95, 10), AT_4000, Fractile.MEDIAN));
        assertThat(justUnder).isLessThan(at).isCloseTo(at, within(0.001));
        assertThat(value(NoiseComponent.decibels(noise(95, 1), AT_4000, Fractile.MEDIAN)))
                .isCloseTo(at * Math.log(2) / Math.log(11), within(1e-9));
    }

    @Test
    void noiseNeverImprovesHearing() {
        for (int level = 75; level <= 105; level += 5) {
            for (int years = 1; years <= 40; years++) {
                for (Frequency frequency : List.of(Frequency.HZ_500, Frequency.HZ_2000, AT_4000, Frequency.HZ_6000)) {
                    for (double worse : new double[] {0.05, 0.3, 0.5, 0.7, 0.95}) {
                        assertThat(value(NoiseComponent.decibels(noise(level, years), frequency, new Fractile(worse))))
                                .isNotNegative();
                    }
                }
            }
        }
    }

    /** Clause 6.1, at all values: also where H + N is under 40 dB. */
    @ParameterizedTest
    @CsvSource({"30, 85, 10", "60, 85, 30", "60, 100, 40"})
    void ageAndNoiseCombineWithTheProductAtAllValues(int age, double level, double years) {
        Population quiet = men(AgeEdition.ISO_7029_2000, age);
        double h = value(quiet.decibels(AT_4000, Fractile.MEDIAN));
        double n = value(NoiseComponent.decibels(noise(level, years), AT_4000, Fractile.MEDIAN));
        assertThat(value(quiet.with(noise(level, years)).decibels(AT_4000, Fractile.MEDIAN)))
                .isCloseTo(h + n - h * n / 120, within(1e-9))
                .isLessThan(h + n);
    }

    /** ISO 7029:2000 and :2017, men, median, 4000 Hz. */
    @ParameterizedTest
    @CsvSource({"30, 2.3, 1.1", "40, 7.7, 4.5", "50, 16.4, 10.7", "60, 28.2, 20.2", "70, 43.3, 33.2"})
    void theEditionsDiffer(int age, double in2000, double in2017) {
        assertThat(value(men(AgeEdition.ISO_7029_2000, age).decibels(AT_4000, Fractile.MEDIAN)))
                .isCloseTo(in2000, within(0.05));
        assertThat(value(men(AgeEdition.ISO_7029_2017, age).decibels(AT_4000, Fractile.MEDIAN)))
                .isCloseTo(in2017, within(0.05));
    }

    @ParameterizedTest
    @EnumSource
    void atEighteenTheMedianIsNothing(AgeEdition edition) {
        for (Frequency frequency : Frequency.values()) {
            assertThat(value(men(edition, 18).decibels(frequency, Fractile.MEDIAN)))
                    .isZero();
        }
    }

    /** The upper spread of 2017 is c0 at 18 years: 4.68 dB for men at 4000 Hz. */
    @Test
    void atEighteenTheSpreadIsItsFirstCoefficient() {
        assertThat(value(men(AgeEdition.ISO_7029_2017, 18).decibels(AT_4000, Fractile.WORST_TENTH)))
                .isCloseTo(4.68 * 1.2816, within(0.001));
        assertThat(value(men(AgeEdition.ISO_7029_2017, 18).decibels(AT_4000, Fractile.BEST_TENTH)))
                .isCloseTo(-4.09 * 1.2816, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({
        "ISO_7029_2000, 17, HZ_4000, AGE_UNDER_18",
        "ISO_7029_2000, 71, HZ_4000, AGE_OVER_70",
        "ISO_7029_2017, 17, HZ_500, AGE_UNDER_18",
        "ISO_7029_2017, 71, HZ_3000, SPREAD_OVER_70_YEARS",
        "ISO_7029_2017, 80, HZ_8000, SPREAD_OVER_70_YEARS",
        "ISO_7029_2017, 81, HZ_500, AGE_OVER_80",
        "ISO_7029_2017, 81, HZ_8000, AGE_OVER_80"
    })
    void agesOutsideTheEditionAreRefused(AgeEdition edition, int age, Frequency frequency, Limit limit) {
        assertThat(limits(men(edition, age).decibels(frequency, Fractile.WORST_TENTH)))
                .containsExactly(limit);
        assertThat(limits(men(edition, age).shareWorseThan(frequency, DecibelRange.exactly(20))))
                .containsExactly(limit);
    }

    @ParameterizedTest
    @CsvSource({
        "ISO_7029_2000, 18, HZ_8000",
        "ISO_7029_2000, 70, HZ_8000",
        "ISO_7029_2017, 18, HZ_8000",
        "ISO_7029_2017, 70, HZ_8000",
        "ISO_7029_2017, 80, HZ_2000"
    })
    void agesInsideTheEditionAreAnsweredWithoutAMark(AgeEdition edition, int age, Frequency frequency) {
        assertThat(marks(men(edition, age).decibels(frequency, Fractile.WORST_TENTH)))
                .isEmpty();
    }

    @Test
    void theMedianOfTheOldIsForInformation() {
        Estimate<Double> median = men(AgeEdition.ISO_7029_2017, 80).decibels(Frequency.HZ_3000, Fractile.MEDIAN);
        assertThat(marks(median)).containsExactly(Mark.INFORMATION_ONLY_ABOVE_70_YEARS);
        assertThat(value(median)).isPositive();
    }

    @ParameterizedTest
    @CsvSource({
        "74.9, 20, LEVEL_UNDER_75_DB",
        "105.1, 20, LEVEL_OVER_105_DB",
        "NaN, 20, LEVEL_UNDER_75_DB",
        "90, 0.9, EXPOSURE_UNDER_1_YEAR",
        "90, NaN, EXPOSURE_UNDER_1_YEAR",
        "90, 40.1, EXPOSURE_OVER_40_YEARS"
    })
    void exposuresOutsideTheStandardAreRefused(double level, double years, Limit limit) {
        assertThat(limits(NoiseComponent.decibels(noise(level, years), AT_4000, Fractile.MEDIAN)))
                .containsExactly(limit);
    }

    @Test
    void everyReasonIsTold() {
        Estimate<Double> far =
                men(AgeEdition.ISO_7029_2000, 75).with(noise(60, 50)).decibels(Frequency.HZ_8000, Fractile.MEDIAN);
        assertThat(limits(far))
                .containsExactlyInAnyOrder(
                        Limit.AGE_OVER_70,
                        Limit.LEVEL_UNDER_75_DB,
                        Limit.EXPOSURE_OVER_40_YEARS,
                        Limit.NO_NOISE_COMPONENT_AT_8000_HZ);
    }

    @ParameterizedTest
    @CsvSource({"0.049, false", "0.05, true", "0.95, true", "0.951, false"})
    void fractilesBeyondFivePercentAreRefused(double worse, boolean covered) {
        Estimate<Double> age = men(AgeEdition.ISO_7029_2000, 50).decibels(AT_4000, new Fractile(worse));
        Estimate<Double> shift = NoiseComponent.decibels(noise(90, 20), AT_4000, new Fractile(worse));
        Estimate<Double> both =
                men(AgeEdition.ISO_7029_2000, 50).with(noise(90, 20)).decibels(AT_4000, new Fractile(worse));
        assertThat(List.of(age, shift, both))
                .allSatisfy(estimate ->
                        assertThat(estimate instanceof Estimate.Within).isEqualTo(covered));
    }

    @Test
    void extrapolationIsMarked() {
        assertThat(marks(NoiseComponent.decibels(noise(100, 10), AT_4000, Fractile.WORST_TENTH)))
                .isEmpty();
        assertThat(marks(NoiseComponent.decibels(noise(100.1, 10), AT_4000, Fractile.WORST_TENTH)))
                .containsExactly(Mark.LEVEL_ABOVE_100_DB);
        assertThat(marks(NoiseComponent.decibels(noise(90, 9), AT_4000, Fractile.WORST_TENTH)))
                .containsExactly(Mark.SPREAD_UNDER_TEN_YEARS);
        assertThat(marks(NoiseComponent.decibels(noise(90, 9), AT_4000, Fractile.MEDIAN)))
                .isEmpty();
    }

    /** ISO 1999 wants LEX,8h; a level of 5 dB exchange can be taken for it, but never unmarked. */
    @Test
    void aLevelOfFiveDecibelExchangeIsMarkedEverywhere() {
        var taken = new NoiseExposure(ExposureLevel.takingAsLex8h(90), 20);
        Population population = men(AgeEdition.ISO_7029_2017, 50).with(taken);
        PopulationComparison comparison = PopulationComparison.of(population, Audiograms.flat(30));
        for (PopulationComparison.Point point : comparison.points()) {
            if (point.frequency() != Frequency.HZ_8000) {
                assertThat(marks(point.median())).contains(Mark.LEVEL_OF_5_DB_EXCHANGE);
                assertThat(marks(point.standing().left().shareWorse())).contains(Mark.LEVEL_OF_5_DB_EXCHANGE);
            }
        }
        ImpairmentRisk risk = ImpairmentRisk.of(population, List.of(AT_4000), 25);
        assertThat(marks(risk.excess())).contains(Mark.LEVEL_OF_5_DB_EXCHANGE);
        assertThat(marks(risk.unexposed())).isEmpty();
    }

    private static List<Population> populations() {
        List<Population> populations = new ArrayList<>();
        for (AgeEdition edition : AgeEdition.values()) {
            for (Sex sex : Sex.values()) {
                for (int age = 18; age <= 70; age++) {
                    Population quiet = Population.withoutNoise(edition, sex, age);
                    populations.add(quiet);
                    populations.add(quiet.with(noise(85, 5)));
                    populations.add(quiet.with(noise(105, 40)));
                }
            }
        }
        return populations;
    }

    /** What a place in the population rests on. */
    @Test
    void worseFractilesHearWorse() {
        for (Population population : populations()) {
            for (Frequency frequency : Frequency.values()) {
                if (population.noise().isEmpty() || frequency != Frequency.HZ_8000) {
                    double before = Double.NEGATIVE_INFINITY;
                    for (double quantile = -1.65; quantile < 1.65; quantile += 0.15) {
                        double level = value(population.atQuantile(frequency, quantile));
                        assertThat(level)
                                .as("%s, %d Hz, quantile %f", population, frequency.hertz(), quantile)
                                .isGreaterThan(before);
                        before = level;
                    }
                }
            }
        }
    }

    @Test
    void aPlaceIsTheInverseOfAFractile() {
        Population population = men(AgeEdition.ISO_7029_2000, 60).with(noise(95, 30));
        for (int level = 20; level <= 60; level++) {
            Share share = worseThan(population, AT_4000, level);
            if (share.isExact()) {
                assertThat(value(population.decibels(AT_4000, new Fractile(share.least()))))
                        .isCloseTo(level, within(1e-6));
            }
        }
        assertThat(worseThan(population, AT_4000, 50).isExact()).isTrue();
    }

    /** ISO 1999:2013 Annex A, men of 50, 4000 Hz: 10 % are worse than 36 dB (printed), half than 16 dB. */
    @Test
    void theMedianIsTheMiddle() {
        Population population = men(AgeEdition.ISO_7029_2000, 50);
        double worstTenth = value(population.decibels(AT_4000, Fractile.WORST_TENTH));
        Share here = worseThan(population, AT_4000, (int) Math.round(worstTenth));
        assertThat(here.least()).isCloseTo(0.10, within(0.01));
        assertThat(worseThan(population, AT_4000, 16).least()).isCloseTo(0.51, within(0.01));
    }

    @Test
    void beyondTheLastTwentiethNothingIsSaidMoreClosely() {
        Population population = men(AgeEdition.ISO_7029_2000, 50);
        assertThat(worseThan(population, AT_4000, 60)).isEqualTo(new Share(0, 0.05));
        assertThat(worseThan(population, AT_4000, -10)).isEqualTo(new Share(0.95, 1));
    }

    @Test
    void anUnknownThresholdHasNoPlace() {
        Population population = men(AgeEdition.ISO_7029_2000, 60);
        assertThat(share(population.shareWorseThan(AT_4000, DecibelRange.UNKNOWN)))
                .isEqualTo(new Share(0, 1));
        double at30 = worseThan(population, AT_4000, 30).least();
        assertThat(share(population.shareWorseThan(AT_4000, DecibelRange.atLeast(30))))
                .isEqualTo(new Share(0, at30));
        assertThat(share(population.shareWorseThan(AT_4000, DecibelRange.atMost(30))))
                .isEqualTo(new Share(at30, 1));
        assertThat(share(population.shareWorseThan(AT_4000, DecibelRange.atLeast(100))))
                .isEqualTo(new Share(0, 0.05));
    }

    /** Men of 60 after 40 years, mean of 1000 to 4000 Hz over 25 dB, ISO 7029:2000: worked from the formulas. */
    @ParameterizedTest
    @CsvSource({"80, 1.1", "85, 6.5", "90, 17.2", "95, 37.1", "100, 56.5"})
    void theExcessRiskIsAsWorked(double level, double points) {
        List<Frequency> frequencies =
                List.of(Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_3000, Frequency.HZ_4000);
        ImpairmentRisk risk =
                ImpairmentRisk.of(men(AgeEdition.ISO_7029_2000, 60).with(noise(level, 40)), frequencies, 25);
        assertThat(100 * share(risk.unexposed()).least()).isCloseTo(29.5, within(0.05));
        assertThat(100 * share(risk.excess()).least()).isCloseTo(points, within(0.05));
        assertThat(share(risk.excess()).isExact()).isTrue();
        assertThat(risk.isNot()).contains(Caveat.POPULATION_ESTIMATE);
    }

    /** Fewer than 5 % of young men without noise are over the fence; how many, the standard does not say. */
    @Test
    void anExcessOverAnOpenShareIsOpen() {
        ImpairmentRisk risk = ImpairmentRisk.of(
                men(AgeEdition.ISO_7029_2000, 30).with(noise(100, 12)),
                List.of(Frequency.HZ_3000, AT_4000, Frequency.HZ_6000),
                25);
        assertThat(share(risk.unexposed())).isEqualTo(new Share(0, 0.05));
        double exposed = share(risk.exposed()).least();
        assertThat(share(risk.excess())).isEqualTo(new Share(exposed - 0.05, exposed));
    }

    @Test
    void aComparisonNamesItsStandardsAndWhatItIsNot() {
        Audiogram test = Audiograms.flat(20);
        PopulationComparison quiet = PopulationComparison.of(men(AgeEdition.ISO_7029_2017, 40), test);
        PopulationComparison noisy =
                PopulationComparison.of(men(AgeEdition.ISO_7029_2000, 40).with(noise(90, 10)), test);
        assertThat(quiet.basis().source().place()).isEqualTo("ISO 7029:2017");
        assertThat(noisy.basis().source().place()).isEqualTo("ISO 1999:2013 with ISO 7029:2000");
        assertThat(noisy.isNot()).contains(Caveat.POPULATION_ESTIMATE, Caveat.NO_DIAGNOSIS);
        assertThat(noisy.points()).hasSize(7);
        assertThat(limits(noisy.points().getLast().median())).containsExactly(Limit.NO_NOISE_COMPONENT_AT_8000_HZ);
    }
}
