package org.thresholdregister.core.meaning.referral;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.regulation.Answer;

/** AAO-HNS otologic referral criteria, 1983, revised 1997: boundaries derived by hand; "more than" throughout. */
class ReferralFindingTest {

    private static final String ZERO = "0 0 0 0 0 0 0";

    private static Answer atBaseline(Audiogram test, Ear ear, ReferralCriterion criterion) {
        return ReferralFinding.atBaseline(test, ear).stream()
                .filter(finding -> finding.criterion() == criterion)
                .map(ReferralFinding::met)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "BASELINE_LEVEL, 25 25 25 25 0 0 0, NO",
        "BASELINE_LEVEL, 25 25 25 26 0 0 0, YES",
        "BASELINE_LEVEL, 25 25 25 - 0 0 0, UNDECIDED",
        "BASELINE_LEVEL, 25 25 0 >90 0 0 0, YES",
        "BASELINE_DIFFERENCE_LOW, 15 15 15 90 90 90 90, NO",
        "BASELINE_DIFFERENCE_LOW, 15 16 15 0 0 0 0, YES",
        "BASELINE_DIFFERENCE_LOW, 15 NR 15 0 0 0 0, UNDECIDED",
        "BASELINE_DIFFERENCE_HIGH, 0 0 0 30 30 30 90, NO",
        "BASELINE_DIFFERENCE_HIGH, 0 0 0 30 30 31 0, YES",
        "BASELINE_DIFFERENCE_HIGH, 0 0 0 30 30 - 0, UNDECIDED"
    })
    void theBaselineCriteriaHaveToBeExceeded(ReferralCriterion criterion, String cells, Answer met) {
        assertThat(atBaseline(Audiograms.of(cells, ZERO), Ear.LEFT, criterion)).isEqualTo(met);
        assertThat(atBaseline(Audiograms.of(ZERO, cells), Ear.RIGHT, criterion)).isEqualTo(met);
        assertThat(atBaseline(Audiograms.of(ZERO, ZERO), Ear.LEFT, criterion)).isEqualTo(Answer.NO);
    }

    @ParameterizedTest
    @CsvSource({
        "WORSENING_LOW, 20 20 20 5 5 5 5, NO",
        "WORSENING_LOW, 20 21 20 5 5 5 5, YES",
        "WORSENING_LOW, 20 DNT 20 5 5 5 5, UNDECIDED",
        "WORSENING_LOW, -10 -10 -10 90 90 90 90, NO",
        "WORSENING_HIGH, 5 5 5 25 25 25 90, NO",
        "WORSENING_HIGH, 5 5 5 25 25 26 5, YES",
        "WORSENING_HIGH, 5 5 5 25 25 >95 5, YES",
        "WORSENING_HIGH, 90 90 90 25 25 CNT 5, UNDECIDED"
    })
    void aLaterTestIsComparedWithTheBaseline(ReferralCriterion criterion, String cells, Answer met) {
        Audiogram baseline = Audiograms.flat(5);
        Audiogram test = Audiograms.of(cells, cells);
        for (Ear ear : Ear.values()) {
            assertThat(ReferralFinding.atLaterTest(baseline, test, ear))
                    .filteredOn(finding -> finding.criterion() == criterion)
                    .singleElement()
                    .satisfies(finding -> {
                        assertThat(finding.met()).isEqualTo(met);
                        assertThat(finding.ear()).isEqualTo(ear);
                        assertThat(finding.test()).isEqualTo(test);
                    });
        }
    }

    @Test
    void eachCriterionIsAskedOnItsOccasion() {
        assertThat(ReferralFinding.atBaseline(Audiograms.flat(5), Ear.LEFT))
                .extracting(finding -> finding.criterion().occasion())
                .containsOnly(ReferralCriterion.Occasion.BASELINE)
                .hasSize(3);
        assertThat(ReferralFinding.atLaterTest(Audiograms.flat(5), Audiograms.flat(5), Ear.LEFT))
                .extracting(finding -> finding.criterion().occasion())
                .containsOnly(ReferralCriterion.Occasion.LATER_TEST)
                .hasSize(2);
    }

    @Test
    void aCriterionOrdersNothing() {
        assertThat(ReferralFinding.atBaseline(Audiograms.flat(5), Ear.LEFT))
                .allSatisfy(finding -> assertThat(finding.isNot()).contains(Caveat.NO_REFERRAL_DECISION));
    }
}
