package org.thresholdregister.core.baseline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RuleSets;

/** Edges of the two rules of 49 CFR 227 Appendix C that the hand-derived sequences do not reach. */
class BaselineRevisionRuleTest {

    private static final LocalDate FIRST = LocalDate.parse("2020-03-09");
    private static final Audiogram BASELINE = Vectors.flat(FIRST, TestPurpose.BASELINE, 40, 40);
    private static final int RETEST_DAYS = 30;

    /** The improvement moves the baseline to the better of the two tests; the other one is a shift from there. */
    @Test
    void aTestIsLookedAtAgainOnTheBaselineThatItMoved() {
        BaselineRevisionRule rule = rule(BASELINE);
        Audiogram better = annual(1, 10);
        Audiogram lessSo = annual(2, 30);
        Audiogram lasting = annual(3, 30);

        assertThat(rule.consider(better, List.of())).isEmpty();
        assertThat(rule.consider(lessSo, List.of()))
                .hasValueSatisfying(change -> assertThat(change.to()).isEqualTo(better));
        assertThat(rule.consider(lasting, List.of())).hasValueSatisfying(change -> {
            assertThat(change.kind()).isEqualTo(BaselineChange.Kind.PERSISTENT_SHIFT);
            assertThat(change.evidence()).containsExactly(lessSo.date(), lasting.date());
        });
    }

    /** The shift moves the baseline to the lower of the two tests; the other one is a further shift from there. */
    @Test
    void aFurtherShiftStartsWithTheTestThatConfirmedTheFirst() {
        BaselineRevisionRule rule = rule(Vectors.flat(FIRST, TestPurpose.BASELINE, 10, 10));
        Audiogram worse = annual(1, 20);
        Audiogram muchWorse = annual(2, 40);
        Audiogram lasting = annual(3, 40);

        assertThat(rule.consider(worse, List.of())).isEmpty();
        assertThat(rule.consider(muchWorse, List.of()))
                .hasValueSatisfying(change -> assertThat(change.to()).isEqualTo(worse));
        assertThat(rule.consider(lasting, List.of()))
                .hasValueSatisfying(
                        change -> assertThat(change.evidence()).containsExactly(muchWorse.date(), lasting.date()));
    }

    @Test
    void ofTwoEquallyGoodTestsTheEarlierBecomesTheBaseline() {
        BaselineRevisionRule rule = rule(BASELINE);
        Audiogram first = annual(1, 30);
        rule.consider(first, List.of());
        assertThat(rule.consider(annual(2, 30), List.of()))
                .hasValueSatisfying(change -> assertThat(change.to()).isEqualTo(first));
    }

    @ParameterizedTest(name = "{0} days later at {1} dB: {2}")
    @CsvSource({"30, 25, true", "31, 25, false", "30, 30, false", "30, 35, false", "0, 25, true", "-5, 25, false"})
    void aBetterRetestInTheWindowStandsForATestWithAShift(int daysLater, int decibels, boolean stands) {
        Audiogram worse = Vectors.flat(FIRST.plusYears(1), TestPurpose.ANNUAL, 30, 30);
        Audiogram retest = Vectors.flat(worse.date().plusDays(daysLater), TestPurpose.RETEST, decibels, decibels);
        assertThat(dayOfFirstShift(worse, retest)).isEqualTo(stands ? retest.date() : worse.date());
    }

    @Test
    void aRetestWithAMissingLevelStandsForNothing() {
        Audiogram worse = Vectors.flat(FIRST.plusYears(1), TestPurpose.ANNUAL, 30, 30);
        Audiogram retest = Vectors.flat(worse.date().plusDays(9), TestPurpose.RETEST, 25, 25)
                .with(Ear.LEFT, Frequency.HZ_4000, Threshold.notGiven());
        assertThat(dayOfFirstShift(worse, retest)).isEqualTo(worse.date());
    }

    @Test
    void anotherTestThanARetestStandsForNothing() {
        Audiogram worse = Vectors.flat(FIRST.plusYears(1), TestPurpose.ANNUAL, 30, 30);
        Audiogram exit = Vectors.flat(worse.date().plusDays(9), TestPurpose.EXIT, 25, 25);
        assertThat(dayOfFirstShift(worse, exit)).isEqualTo(worse.date());
    }

    /** The first day among the evidence of the revision for a shift from 10 dB that a test two years later confirms. */
    private static LocalDate dayOfFirstShift(Audiogram worse, Audiogram other) {
        BaselineRevisionRule rule = rule(Vectors.flat(FIRST, TestPurpose.BASELINE, 10, 10));
        rule.consider(worse, List.of(worse, other));
        return rule.consider(annual(3, 30), List.of()).orElseThrow().evidence().getFirst();
    }

    @Test
    void aTestWithAMissingLevelProposesNothingAndClearsNothing() {
        BaselineRevisionRule rule = rule(BASELINE);
        rule.consider(annual(1, 30), List.of());
        Audiogram missing = annual(2, 30).with(Ear.LEFT, Frequency.HZ_2000, Threshold.notGiven());
        assertThat(rule.consider(missing, List.of())).isEmpty();
        assertThat(rule.consider(annual(3, 30), List.of())).isPresent();
    }

    private static Audiogram annual(int year, int decibels) {
        return Vectors.flat(FIRST.plusYears(year), TestPurpose.ANNUAL, decibels, decibels);
    }

    private static BaselineRevisionRule rule(Audiogram baseline) {
        return new BaselineRevisionRule(
                Ear.LEFT,
                baseline,
                RuleSets.OSHA.revision(),
                RETEST_DAYS,
                BaselineRevisionRuleTest::isShift,
                test -> false);
    }

    private static Answer isShift(Audiogram from, Audiogram to) {
        return to.levelSum(Ear.LEFT).minus(from.levelSum(Ear.LEFT)).isAtLeast(30);
    }
}
