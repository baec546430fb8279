package org.thresholdregister.core.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples, each with where it was published. */
class NoiseExamplesTest {

    private static NoiseDay day(NoisePeriod... periods) {
        return NoiseDay.of(periods);
    }

    private static double twa(NoiseDose dose) {
        return TimeWeightedAverage.of(dose).orElseThrow().decibels();
    }

    private static double twa(double percent) {
        return twa(new NoiseDose(percent, DoseRule.OSHA_ACTION));
    }

    private static double dose(NoiseDay day, DoseRule rule) {
        return NoiseDose.of(day, rule).percent();
    }

    /** 29 CFR 1910.95 Appendix A II. */
    @Test
    void aDoseOf91PercentIs89Point3() {
        assertThat(OneDecimal.of(twa(91))).isEqualTo("89.3");
        assertThat(twa(91)).isCloseTo(89.320, within(0.0005));
    }

    /** 29 CFR 1910.95 Appendix A II; the formula's factor is rounded, so that the dose and not the average decides. */
    @Test
    void aDoseOf50PercentIs85AndReachesTheActionLevelThoughTheFormulaGivesATrifleLess() {
        assertThat(OneDecimal.of(twa(50))).isEqualTo("85.0");
        assertThat(twa(50)).isCloseTo(84.99989, within(0.000005));
        assertThat(new NoiseDose(50, DoseRule.OSHA_ACTION).reaches(NoiseDose.ACTION_PERCENT))
                .isTrue();
        assertThat(TimeWeightedAverage.ofDba(85).dose(DoseRule.OSHA_ACTION).reaches(NoiseDose.ACTION_PERCENT))
                .isTrue();
    }

    /** 30 CFR 62, Table 62-2. */
    @ParameterizedTest
    @CsvSource({"132,92", "200,95", "800,105", "3200,115"})
    void theMinesTableGivesWholeLevels(double percent, String level) {
        assertThat(OneDecimal.of(twa(percent))).isEqualTo(level + ".0");
    }

    /** 29 CFR 1926.52(d)(2)(iv), from memory: 0.500 + 0.25 + 0.188 = 0.938; the arithmetic gives 0.9375. */
    @Test
    void theConstructionExampleIsWithinTheLimit() {
        var sum = PermissibleExposure.of(
                day(NoisePeriod.of(110, "0.25"), NoisePeriod.of(100, "0.5"), NoisePeriod.of(90, "1.5")));
        assertThat(sum.sum()).isEqualTo(0.9375);
        assertThat(sum.exceeded()).isFalse();
        assertThat(sum.exact()).isTrue();
    }

    /** A commentary page on the standard; it takes the printed 12.1 h where the formula has 12.126 h: 49.34 %. */
    @Test
    void theExampleOf85And87And80IsJustUnderTheActionLevel() {
        var dose = NoiseDose.of(
                day(NoisePeriod.of(85, "5"), NoisePeriod.of(87, "2"), NoisePeriod.of(80, "0.5")), DoseRule.OSHA_ACTION);
        assertThat(100 * (5 / 16.0 + 2 / 12.1 + 0.5 / 32)).isCloseTo(49.34, within(0.005));
        assertThat(dose.percent()).isCloseTo(49.34, within(0.04));
        assertThat(OneDecimal.of(dose.percent())).isEqualTo("49.3");
        assertThat(dose.reaches(NoiseDose.ACTION_PERCENT)).isFalse();
    }

    private static final NoiseDay ONE_DAY =
            day(NoisePeriod.of(100, "1"), NoisePeriod.of(90, "4"), NoisePeriod.of(85, "3"));

    /** The same page; the average is derived. */
    @Test
    void theDayOf100And90And85Is118Point75PercentForTheActionLevel() {
        var dose = NoiseDose.of(ONE_DAY, DoseRule.OSHA_ACTION);
        assertThat(dose.percent()).isCloseTo(118.75, within(1e-9));
        assertThat(OneDecimal.of(twa(dose))).isEqualTo("91.2");
    }

    /** The same page: for the limit the hours under 90 dBA do not count, and exactly 1 is not over. */
    @Test
    void theSameDayIsExactlyOneForTheLimitAndNotOverIt() {
        var sum = PermissibleExposure.of(ONE_DAY);
        assertThat(sum.sum()).isEqualTo(1.0);
        assertThat(sum.exceeded()).isFalse();
        assertThat(dose(ONE_DAY, DoseRule.OSHA_LIMIT)).isCloseTo(100, within(1e-9));
    }

    /** The same page says that controls are needed; the sum is derived. */
    @Test
    void twoHoursAt100AndSixAt90CallForControls() {
        var sum = PermissibleExposure.of(day(NoisePeriod.of(100, "2"), NoisePeriod.of(90, "6")));
        assertThat(sum.sum()).isEqualTo(1.75);
        assertThat(sum.exceeded()).isTrue();
    }

    /** A state plan's guidance page has the formula; the values are derived. Nine hours give 84.150. */
    @ParameterizedTest
    @CsvSource({"8,85.0", "9,84.2", "10,83.4", "11,82.7", "12,82.1", "16,80.0"})
    void theActionLevelOfALongShift(BigDecimal hours, String level) {
        double dba = ActionLevel.forShift(hours);
        assertThat(OneDecimal.of(dba)).isEqualTo(level);
        assertThat(dose(
                        day(new NoisePeriod(SoundLevel.ofDba(dba), hours)),
                        new DoseRule(
                                90,
                                ExchangeRate.FIVE_DB,
                                0,
                                130,
                                DoseRule.OSHA_ACTION.basis(),
                                DoseRule.OSHA_ACTION.provenance())))
                .as("that level over the whole shift is half the dose")
                .isCloseTo(50, within(0.005));
    }

    /** NIOSH 98-126: its two formulas do not lead back to each other. */
    @Test
    void eightHoursAt88Are200PercentAndOneHundredthMoreThan88ByNiosh() {
        var dose = NoiseDose.of(day(NoisePeriod.of(88, "8")), DoseRule.NIOSH);
        assertThat(dose.percent()).isCloseTo(200, within(1e-9));
        assertThat(twa(dose)).isCloseTo(88.01, within(0.005));
        assertThat(OneDecimal.of(twa(dose))).isEqualTo("88.0");
    }

    /** Derived from the schedule of the Control of Noise at Work Regulations 2005. */
    @Test
    void dailyAndWeeklyExposureLevels() {
        assertThat(OneDecimal.of(DailyExposureLevel.of(day(NoisePeriod.of(95, "2"), NoisePeriod.of(82, "6")))
                        .decibels()))
                .isEqualTo("89.6");
        assertThat(week(88, 88, 88, 82, 82)).isEqualTo("86.5");
        assertThat(week(90, 90, 90, 90)).isEqualTo("89.0");
        assertThat(week(86, 86, 86, 86, 86, 86)).as("the divisor stays 5").isEqualTo("86.8");
        assertThatIllegalArgumentException().isThrownBy(() -> DailyExposureLevel.ofWeek(List.of()));
    }

    private static String week(double... days) {
        return OneDecimal.of(DailyExposureLevel.ofWeek(java.util.Arrays.stream(days)
                        .mapToObj(DailyExposureLevel::new)
                        .toList())
                .decibels());
    }

    @Test
    void referenceLevelsAreReachedOrExceededAsTheirRulesSay() {
        var at85 = DailyExposureLevel.of(day(NoisePeriod.of(85, "8")));
        assertThat(ReferenceLevel.ALL.stream().filter(level -> level.isMetBy(at85)))
                .extracting(ReferenceLevel::whose, ReferenceLevel::name)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("Britain", "lower exposure action value"),
                        org.assertj.core.groups.Tuple.tuple("Alberta", "level from which exposure is assessed"),
                        org.assertj.core.groups.Tuple.tuple("Britain", "upper exposure action value"),
                        org.assertj.core.groups.Tuple.tuple("US Department of Defense", "hazardous noise"));
    }

    @Test
    void exactlyOneIsExactAlsoInThirds() {
        var sum = PermissibleExposure.of(
                day(NoisePeriod.of(92, "2"), NoisePeriod.of(97, "1"), NoisePeriod.of(102, "0.5")));
        assertThat(sum.sum()).isEqualTo(1.0);
        assertThat(sum.exceeded()).isFalse();
        assertThat(PermissibleExposure.of(day(NoisePeriod.of(92, "6.0001"))).exceeded())
                .isTrue();
    }

    @Test
    void aLevelBetweenThePrintedOnesTakesTheFormula() {
        var seven = PermissibleExposure.of(day(NoisePeriod.of(91, "7")));
        assertThat(seven.exact()).isFalse();
        assertThat(seven.sum()).isCloseTo(7 / 6.964, within(0.001));
        assertThat(seven.exceeded()).isTrue();
        assertThat(PermissibleExposure.of(day(NoisePeriod.of(91, "6.9"))).exceeded())
                .isFalse();
    }

    @Test
    void nothingIsPermittedAboveTheTable() {
        var sum = PermissibleExposure.of(day(NoisePeriod.of(116, "0.01")));
        assertThat(sum.aboveTable()).isTrue();
        assertThat(sum.sum()).isLessThan(1);
        assertThat(sum.exceeded()).isTrue();
        assertThat(PermissibleExposure.of(day(NoisePeriod.of(115, "0.25"))).exceeded())
                .isFalse();
        assertThat(PermissibleExposure.of(day(NoisePeriod.of(89.9, "24"))).sum())
                .isZero();
    }

    @Test
    void theTwoThresholdsAreDifferentNumbersOfOneDay() {
        assertThat(dose(day(NoisePeriod.of(89.9, "8")), DoseRule.OSHA_LIMIT)).isZero();
        assertThat(dose(day(NoisePeriod.of(89.9, "8")), DoseRule.OSHA_ACTION)).isCloseTo(98.6, within(0.05));
        assertThat(dose(day(NoisePeriod.of(79.9, "8")), DoseRule.OSHA_ACTION)).isZero();
        assertThat(TimeWeightedAverage.of(new NoiseDose(0, DoseRule.OSHA_ACTION)))
                .isEmpty();
        assertThat(dose(day(NoisePeriod.of(80, "8")), DoseRule.OSHA_ACTION)).isEqualTo(25);
    }

    @Test
    void theLimitsOfAMine() {
        var dual = MineExposure.of(day(NoisePeriod.of(105, "8")));
        assertThat(dual.exceedsLimit()).isTrue();
        assertThat(dual.needsDualProtection())
                .as("800 percent is not above 800")
                .isFalse();
        assertThat(dual.aboveCeiling()).isFalse();
        assertThat(MineExposure.of(day(NoisePeriod.of(105, "8.1"))).needsDualProtection())
                .isTrue();
        var quiet = MineExposure.of(day(NoisePeriod.of(85, "8"), NoisePeriod.of(115.1, "0.001")));
        assertThat(quiet.reachesActionLevel()).isTrue();
        assertThat(quiet.exceedsLimit()).isFalse();
        assertThat(quiet.aboveCeiling()).isTrue();
    }

    @Test
    void aPeakOf140IsNotAboveTheAdvisedLimit() {
        assertThat(new ImpulsePeak(140).isAboveAdvisedLimit()).isFalse();
        assertThat(new ImpulsePeak(140.1).isAboveAdvisedLimit()).isTrue();
        assertThatIllegalArgumentException().isThrownBy(() -> new ImpulsePeak(-1));
    }

    @Test
    void averagesOfTwoExchangeRatesAreNotMixed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TimeWeightedAverage.ofDba(85).dose(DoseRule.NIOSH));
    }

    @Test
    void whatIsNoDayIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new NoiseDay(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> NoisePeriod.of(90, "0"));
        assertThatIllegalArgumentException().isThrownBy(() -> NoisePeriod.of(90, "24.01"));
        assertThatIllegalArgumentException().isThrownBy(() -> day(NoisePeriod.of(90, "20"), NoisePeriod.of(80, "4.5")));
        assertThatIllegalArgumentException().isThrownBy(() -> SoundLevel.ofDba(160.1));
        assertThatIllegalArgumentException().isThrownBy(() -> SoundLevel.ofDba(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new NoiseDose(-1, DoseRule.NIOSH));
    }

    @Test
    void oneDecimalIsHalfUpAndNeverHidesWhichSideOfALimitAValueIsOn() {
        assertThat(OneDecimal.of(84.95)).isEqualTo("85.0");
        assertThat(OneDecimal.of(84.9499)).isEqualTo("84.9");
        assertThat(OneDecimal.beside(49.34, 50)).isEqualTo("49.3");
        assertThat(OneDecimal.beside(49.97, 50)).isEqualTo("49.97");
        assertThat(OneDecimal.beside(49.9999999, 50)).isEqualTo("49.9999");
        assertThat(OneDecimal.beside(50 - 1e-9, 50)).isEqualTo("50.0");
        assertThat(OneDecimal.beside(50, 50)).isEqualTo("50.0");
    }

    private static NoisePeriod any(Random random) {
        return new NoisePeriod(
                SoundLevel.ofDba(70 + random.nextInt(500) / 10.0), BigDecimal.valueOf(1 + random.nextInt(400), 2));
    }

    private static final List<DoseRule> RULES =
            List.of(DoseRule.OSHA_ACTION, DoseRule.OSHA_LIMIT, DoseRule.NIOSH, DoseRule.FRA_ACTION);

    @Test
    void doseAddsAndItsOrderAndItsPiecesDoNotMatter() {
        var random = new Random(20260309);
        for (int round = 0; round < 2000; round++) {
            NoisePeriod a = any(random);
            NoisePeriod b = any(random);
            NoisePeriod c = any(random);
            for (DoseRule rule : RULES) {
                double whole = dose(day(a, b, c), rule);
                assertThat(dose(day(c, a, b), rule)).isEqualTo(whole);
                assertThat(dose(day(a), rule) + dose(day(b), rule) + dose(day(c), rule))
                        .isCloseTo(whole, within(1e-9 * Math.max(1, whole)));
                BigDecimal half = a.hours().divide(BigDecimal.TWO);
                var first = new NoisePeriod(a.level(), half);
                assertThat(dose(day(first, b, first, c), rule)).isEqualTo(whole);
            }
            assertThat(PermissibleExposure.of(day(b, c, a))).isEqualTo(PermissibleExposure.of(day(a, b, c)));
        }
    }

    @Test
    void moreNoiseIsNeverALowerDoseAndAHigherThresholdNeverAHigherOne() {
        var random = new Random(1910);
        for (int round = 0; round < 2000; round++) {
            NoisePeriod a = any(random);
            NoisePeriod b = any(random);
            NoiseDay day = day(a, b);
            NoiseDay louder = day(new NoisePeriod(SoundLevel.ofDba(a.level().decibels() + 1), a.hours()), b);
            NoiseDay longer = day(new NoisePeriod(a.level(), a.hours().add(BigDecimal.ONE)), b);
            for (DoseRule rule : RULES) {
                assertThat(dose(louder, rule)).isGreaterThanOrEqualTo(dose(day, rule));
                assertThat(dose(longer, rule)).isGreaterThanOrEqualTo(dose(day, rule));
            }
            assertThat(dose(day, DoseRule.OSHA_LIMIT)).isLessThanOrEqualTo(dose(day, DoseRule.OSHA_ACTION));
            assertThat(DailyExposureLevel.of(louder).decibels())
                    .isGreaterThan(DailyExposureLevel.of(day).decibels());
            if (PermissibleExposure.of(day).exceeded()) {
                assertThat(PermissibleExposure.of(louder).exceeded() || louderIsRoundedDown(a))
                        .isTrue();
            }
        }
    }

    /** The printed durations of 92, 97 and 102 dBA are shorter than the formula's, so the next level may count less. */
    private static boolean louderIsRoundedDown(NoisePeriod period) {
        return Stream.of(92.0, 97.0, 102.0)
                .anyMatch(printed -> Math.abs(period.level().decibels() - printed) < 1.05);
    }

    @Test
    void eightHoursAtASteadyLevelAverageThatLevel() {
        for (double dba = 80; dba <= 130; dba += 0.5) {
            var day = day(NoisePeriod.of(dba, "8"));
            assertThat(twa(NoiseDose.of(day, DoseRule.OSHA_ACTION))).isCloseTo(dba, within(0.001));
            assertThat(DailyExposureLevel.of(day).decibels()).isCloseTo(dba, within(1e-9));
        }
    }
}
