package org.thresholdregister.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The worked numbers are those of a department of 96 beside 310 others, computed apart with a standard library; the
 * formulas are Wilson 1927, Newcombe 1998, Fisher, Byar and Holm 1979, from memory.
 */
class StatisticsTest {

    private static final Proportion DEPARTMENT = new Proportion(7, 96);
    private static final Proportion REST = new Proportion(12, 310);

    @Test
    void aRateHasItsScoreInterval() {
        assertRate(DEPARTMENT, 7.29, 3.58, 14.29);
        assertRate(REST, 3.87, 2.23, 6.64);
        assertRate(new Proportion(19, 406), 4.68, 3.02, 7.19);
    }

    @Test
    void noneAndFewHaveOneToo() {
        assertRate(new Proportion(0, 12), 0, 0, 24.25);
        assertRate(new Proportion(1, 12), 8.33, 1.49, 35.39);
        assertRate(new Proportion(0, 40), 0, 0, 8.76);
        assertThat(new Proportion(12, 12).wilson().high()).isEqualTo(1);
    }

    private static void assertRate(Proportion proportion, double percent, double low, double high) {
        assertThat(proportion.percent()).isCloseTo(percent, within(0.005));
        assertThat(100 * proportion.wilson().low()).isCloseTo(low, within(0.006));
        assertThat(100 * proportion.wilson().high()).isCloseTo(high, within(0.006));
    }

    @Test
    void twoRatesDifferByAnIntervalThatMayHoldNought() {
        var two = new TwoProportions(DEPARTMENT, REST);
        assertThat(100 * two.difference()).isCloseTo(3.42, within(0.005));
        assertThat(100 * two.differenceInterval().low()).isCloseTo(-1.21, within(0.006));
        assertThat(100 * two.differenceInterval().high()).isCloseTo(10.61, within(0.006));
        assertThat(two.differenceInterval().contains(0)).isTrue();
    }

    @Test
    void theirRatioHasOneWhereBothCountSomebody() {
        var two = new TwoProportions(DEPARTMENT, REST);
        assertThat(two.ratio().orElseThrow()).isCloseTo(1.88, within(0.005));
        assertThat(two.ratioInterval().orElseThrow().low()).isCloseTo(0.76, within(0.005));
        assertThat(two.ratioInterval().orElseThrow().high()).isCloseTo(4.65, within(0.005));
        assertThat(new TwoProportions(new Proportion(0, 5), REST).ratio()).isEmpty();
        assertThat(new TwoProportions(new Proportion(0, 5), REST).ratioInterval())
                .isEmpty();
    }

    @Test
    void chanceAloneIsAskedExactly() {
        assertThat(new TwoProportions(DEPARTMENT, REST).fisher()).isCloseTo(0.172, within(0.0005));
        assertThat(DEPARTMENT.chanceOfAsManyOrMore(0.05)).isCloseTo(0.205, within(0.0005));
    }

    @Test
    void bothTailsTogetherCountTheFoundNumberTwice() {
        for (int count : new int[] {0, 3, 50, 399}) {
            var proportion = new Proportion(count, 400);
            double once = Chances.binomial(count, 400, 0.1);
            assertThat(proportion.chanceOfAsManyOrMore(0.1) + proportion.chanceOfAsManyOrFewer(0.1))
                    .isCloseTo(1 + once, within(1e-9));
        }
        assertThat(new Proportion(3, 10).chanceOfAsManyOrMore(0)).isZero();
        assertThat(new Proportion(3, 10).chanceOfAsManyOrFewer(1)).isZero();
    }

    @Test
    void logarithmsOfFactorialsMeetAtTheEndOfTheTable() {
        double byTable = Chances.logFactorial(255) + Math.log(256);
        assertThat(Chances.logFactorial(256)).isCloseTo(byTable, within(1e-9));
    }

    @Test
    void moreThanExpectedMayStillBeChance() {
        var department = new ObservedToExpected(7, 4.2);
        assertThat(department.ratio()).isCloseTo(1.67, within(0.005));
        assertThat(department.byar().low()).isCloseTo(0.67, within(0.005));
        assertThat(department.byar().high()).isCloseTo(3.43, within(0.006));
        assertThat(new ObservedToExpected(0, 2).byar().low()).isZero();
    }

    @Test
    void manyQuestionsRaiseEachP() {
        assertThat(Holm.adjusted(List.of(0.01, 0.04, 0.03, 0.005)))
                .usingElementComparator((x, y) -> Math.abs(x - y) < 1e-12 ? 0 : Double.compare(x, y))
                .containsExactly(0.03, 0.06, 0.06, 0.02);
        assertThat(Holm.adjusted(List.of())).isEmpty();
        assertThat(Holm.adjusted(List.of(0.6, 0.9))).containsExactly(1.0, 1.0);
    }

    @Test
    void fisherIsSymmetricAndNeverOutsideNoughtToOne() {
        var random = new Random(20261125);
        for (int i = 0; i < 500; i++) {
            Proportion a = randomProportion(random);
            Proportion b = randomProportion(random);
            double p = new TwoProportions(a, b).fisher();
            assertThat(p).isBetween(0.0, 1.0).isCloseTo(new TwoProportions(b, a).fisher(), within(1e-9));
        }
    }

    private static Proportion randomProportion(Random random) {
        int of = 1 + random.nextInt(60);
        return new Proportion(random.nextInt(of + 1), of);
    }

    @Test
    void countsOutsideTheirRangeAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Proportion(1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Proportion(3, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new ObservedToExpected(1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Interval(Double.NaN, 1));
    }
}
