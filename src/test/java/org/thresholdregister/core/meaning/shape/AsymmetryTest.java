package org.thresholdregister.core.meaning.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;

/** AAO-HNS (referral criteria, red flags), the rule of 3000 and its variants, HSE L108: boundaries by hand. */
class AsymmetryTest {

    private static final String ZERO = "0 0 0 0 0 0 0";

    @ParameterizedTest
    @CsvSource({
        "AAO_HNS_RED_FLAG, 15 15 15 15 0 0 0, NO",
        "AAO_HNS_RED_FLAG, 15 15 15 16 0 0 0, YES",
        "AAO_HNS_CONSERVATION_PROGRAMME, 15 15 15 30 30 30 0, NO",
        "AAO_HNS_CONSERVATION_PROGRAMME, 15 15 16 0 0 0 0, YES",
        "AAO_HNS_CONSERVATION_PROGRAMME, 0 0 0 30 31 30 0, YES",
        "RULE_3000, 50 50 50 14 50 50 50, NO",
        "RULE_3000, 0 0 0 15 0 0 0, YES",
        "TEN_AT_TWO_OR_FIFTEEN_AT_ONE, 10 9 10 9 14 9 10, NO",
        "TEN_AT_TWO_OR_FIFTEEN_AT_ONE, 10 10 0 0 0 0 0, YES",
        "TEN_AT_TWO_OR_FIFTEEN_AT_ONE, 0 0 0 0 0 10 10, YES",
        "TEN_AT_TWO_OR_FIFTEEN_AT_ONE, 0 0 0 0 15 0 0, YES",
        "TWENTY_AT_TWO, 60 19 60 19 60 19 60, NO",
        "TWENTY_AT_TWO, 0 0 0 20 20 0 0, YES",
        "HSE_SUMS, 50 10 10 10 10 50 50, NO",
        "HSE_SUMS, 0 10 10 10 11 0 0, YES"
    })
    void theBoundariesAreAsDefined(AsymmetryRule rule, String worse, Answer answer) {
        Asymmetry left = Asymmetry.of(Audiograms.of(worse, ZERO), rule);
        assertThat(left.answer()).isEqualTo(answer);
        assertThat(left.isWorse().left()).isEqualTo(answer);
        assertThat(left.isWorse().right()).isEqualTo(Answer.NO);
        Asymmetry right = Asymmetry.of(Audiograms.of(ZERO, worse), rule);
        assertThat(right.isWorse().right()).isEqualTo(answer);
        assertThat(right.isWorse().left()).isEqualTo(Answer.NO);
    }

    /** Two frequencies count together only where the same ear is the worse one at both. */
    @Test
    void differencesToOppositeSidesDoNotAddUp() {
        var crossed = Audiograms.of("10 0 0 0 0 0 0", "0 10 0 0 0 0 0");
        assertThat(Asymmetry.of(crossed, AsymmetryRule.TEN_AT_TWO_OR_FIFTEEN_AT_ONE)
                        .answer())
                .isEqualTo(Answer.NO);
    }

    @Test
    void theDifferenceIsTold() {
        Asymmetry found = Asymmetry.of(Audiograms.of("0 0 0 40 0 0 0", ZERO), AsymmetryRule.RULE_3000);
        assertThat(found.differences().left()).containsExactly(new DecibelMean(DecibelRange.exactly(40), 1));
        assertThat(found.differences().right()).containsExactly(new DecibelMean(DecibelRange.exactly(-40), 1));
    }

    /** A single unknown between equal ears cannot make two neighbours differ: that much is decided. */
    @Test
    void oneUnknownDecidesWhatNeedsTwo() {
        assertThat(Asymmetry.of(Audiograms.of("0 0 0 - 0 0 0", ZERO), AsymmetryRule.TWENTY_AT_TWO)
                        .answer())
                .isEqualTo(Answer.NO);
        assertThat(Asymmetry.of(Audiograms.of("0 0 0 - 20 0 0", ZERO), AsymmetryRule.TWENTY_AT_TWO)
                        .answer())
                .isEqualTo(Answer.UNDECIDED);
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "TWENTY_AT_TWO")
    void missingAndNoResponseAreNotInvented(AsymmetryRule rule) {
        assertThat(Asymmetry.of(Audiograms.of("0 0 0 - 0 0 0", ZERO), rule).answer())
                .isEqualTo(Answer.UNDECIDED);
        assertThat(Asymmetry.of(Audiograms.of("0 0 0 NR 0 0 0", ZERO), rule).answer())
                .isEqualTo(Answer.UNDECIDED);
        Asymmetry noResponse = Asymmetry.of(Audiograms.of("90 90 90 >90 90 90 90", ZERO), rule);
        assertThat(noResponse.isWorse().left()).isEqualTo(Answer.YES);
        assertThat(noResponse.isWorse().right()).isEqualTo(Answer.NO);
    }

    @ParameterizedTest
    @EnumSource
    void fillingInBlanksNeverContradicts(AsymmetryRule rule) {
        var random = new Random(3000);
        for (int i = 0; i < 25; i++) {
            assertThat(Audiograms.withTwoBlank(
                            random, test -> Asymmetry.of(test, rule).answer()))
                    .matches(Audiograms.Open::agree);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "30 30 30 31, 30 30 30 31, YES",
        "30 30 30 30, 30 30 30 31, NO",
        "30 30 30 31, - 30 30 31, UNDECIDED",
        "30 30 30 30, - 30 30 31, NO"
    })
    void lossInBothEarsIsOverThirtyInEach(String left, String right, Answer answer) {
        assertThat(BilateralLoss.of(Audiograms.of(left, right)).answer()).isEqualTo(answer);
    }

    @Test
    void everyRuleIsAsked() {
        assertThat(Asymmetry.all(Audiograms.flat(20)))
                .extracting(Asymmetry::rule)
                .containsExactly(AsymmetryRule.values());
    }
}
