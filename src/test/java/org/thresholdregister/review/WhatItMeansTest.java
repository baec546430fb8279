package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.population.AgeEdition;
import org.thresholdregister.core.wording.Sentence;

/** A woman born on 1 January 1990, without a noise level on record. */
class WhatItMeansTest {

    private static WhatItMeans meaning(Records records) {
        return WhatItMeans.of(records.asOf("2026-03-09")).orElseThrow();
    }

    private static String referral(WhatItMeans meaning) {
        return meaning.chapters().getLast().sentences().stream()
                .map(Sentence::text)
                .reduce("", (a, b) -> a + b + "\n");
    }

    @Test
    void theLatestJudgedTestIsMeant() {
        WhatItMeans meaning = meaning(new Records()
                .test("2024-03-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-03-01", TestPurpose.ANNUAL, 40, 10)
                .test("2025-06-01", TestPurpose.OTHER, 90, 90));
        assertThat(meaning.testName()).isEqualTo("Annual test of 1 Mar 2025");
        assertThat(meaning.leftOut()).isEmpty();
        assertThat(referral(meaning))
                .contains("Of 10 criteria that an audiogram answers, 2 are met and 0 are undecided.")
                .contains(
                        "Met: left ear, test of 1 Mar 2025, the mean of 500, 1000 and 2000 Hz is 30.00 dB worse against"
                                + " the baseline of 1 Mar 2024; the criterion is more than 15 dB.")
                .contains("Not met: right ear, test of 1 Mar 2024, at the baseline,");
    }

    @Test
    void onTheBaselineOnlyItsOwnCriteriaAreAsked() {
        WhatItMeans meaning = meaning(new Records().test("2024-03-01", TestPurpose.BASELINE, 30, 10));
        assertThat(referral(meaning)).contains("Of 6 criteria that an audiogram answers, 2 are met");
    }

    /** What a professional set aside is no number to reckon with. */
    @Test
    void anEarThatIsSetAsideCountsAsNotTested() {
        WhatItMeans meaning = meaning(new Records()
                .test("2024-03-01", TestPurpose.BASELINE, 10, 10)
                .test("2025-03-01", TestPurpose.ANNUAL, 90, 10)
                .decision(new Decision(
                        Ears.LEFT,
                        LocalDate.of(2025, 3, 1),
                        DecisionKind.INVALID_TEST,
                        LocalDate.of(2025, 3, 2),
                        "A. Reviewer",
                        "wax")));
        assertThat(meaning.testName()).isEqualTo("Annual test of 1 Mar 2025");
        assertThat(meaning.leftOut())
                .containsExactly("Left ear: this test is not judged, so its thresholds are left out here.");
        assertThat(meaning.test().threshold(Ear.LEFT, Frequency.HZ_4000)).isEqualTo(Threshold.notGiven());
        assertThat(meaning.test().threshold(Ear.RIGHT, Frequency.HZ_4000)).isEqualTo(Threshold.measured(10));
    }

    @Test
    void withoutANoiseLevelOnlyAgeIsCompared() {
        WhatItMeans meaning = meaning(new Records().test("2024-03-01", TestPurpose.BASELINE, 10, 10));
        assertThat(meaning.comparisons(AgeEdition.ISO_7029_2000))
                .singleElement()
                .satisfies(comparison -> {
                    assertThat(comparison.population().ageYears()).isEqualTo(34);
                    assertThat(comparison.population().edition()).isEqualTo(AgeEdition.ISO_7029_2000);
                    assertThat(comparison.population().noise()).isEmpty();
                });
        assertThat(meaning.aboutComparisons())
                .containsExactly("No noise level is on record, so that only people without noise are compared.");
    }

    @Test
    void aRecordWithoutAJudgedTestMeansNothing() {
        assertThat(WhatItMeans.of(new Records()
                        .test("2025-06-01", TestPurpose.OTHER, 90, 90)
                        .asOf("2026-03-09")))
                .isEmpty();
    }
}
