package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;

class TestStoryTest {

    private static final Decision SET_ASIDE = new Decision(
            Ears.LEFT,
            LocalDate.of(2026, 4, 20),
            DecisionKind.INVALID_TEST,
            LocalDate.of(2026, 6, 1),
            "Dr. Vale",
            "a cold");

    private static Records history() {
        return new Records()
                .test("2025-03-02", TestPurpose.BASELINE, 10, 10)
                .test("2026-04-20", TestPurpose.ANNUAL, 40, 10)
                .test("2026-05-12", TestPurpose.RETEST, 40, 10)
                .test("2025-06-01", TestPurpose.OTHER, 50, 50);
    }

    @Test
    void everyTestIsToldInOrderOfTime() {
        assertThat(history().asOf("2026-06-07").stories())
                .extracting(TestStory::name, story -> story.finding(Ear.LEFT))
                .containsExactly(
                        tuple("Baseline test of 2 Mar 2025", "baseline"),
                        tuple("Other test of 1 Jun 2025", "not judged, as a test of this purpose never is"),
                        tuple("Annual test of 20 Apr 2026", "shift confirmed, recordable"),
                        tuple("Retest of 12 May 2026", "retest, answered with the annual test of 20 Apr 2026"));
    }

    @Test
    void anEarThatWasSetAsideSaysSoAndTheOtherIsJudged() {
        TestStory annual =
                history().decision(SET_ASIDE).asOf("2026-06-07").stories().get(2);

        assertThat(annual.of(Ear.LEFT)).isEmpty();
        assertThat(annual.finding(Ear.LEFT)).isEqualTo("not judged, set aside as invalid on 1 Jun 2026: a cold");
        assertThat(annual.finding(Ear.RIGHT)).isEqualTo("no shift, not recordable");
    }

    /** Table F-2 at 35 and at 36 years: 2000 Hz 6 and 7, 3000 and 4000 Hz 7 and 7 (29 CFR 1910.95 App. F). */
    @Test
    void theMeansStandBesideTheFinding() {
        TestStory annual = history().asOf("2026-06-07").stories().get(2);

        assertThat(FindingWords.means(annual.of(Ear.LEFT).orElseThrow()))
                .isEqualTo("Mean shift 29.67 dB, 30.00 dB without the age allowance; mean level 40.00 dB HL");
    }

    @Test
    void aDecisionThatChangesWhatIsFoundAndOwedIsToldInSentences() {
        WorkerRecord before = history().asOf("2026-06-07");
        WorkerRecord after = history().decision(SET_ASIDE).asOf("2026-06-07");

        assertThat(WhatChanged.between(before, before)).isEmpty();
        assertThat(WhatChanged.between(before, after))
                .containsExactly(
                        "Retest of 12 May 2026, left ear: awaiting retest, also for the injury log (before: retest,"
                                + " answered with the annual test of 20 Apr 2026).",
                        "Retest of 12 May 2026, right ear: no shift, not recordable (before: retest, answered with the"
                                + " annual test of 20 Apr 2026).",
                        "Annual test of 20 Apr 2026, left ear: not judged, set aside as invalid on 1 Jun 2026: a cold"
                                + " (before: shift confirmed, recordable).",
                        "No longer owed: entry on the injury log by 19 May 2026, after the test of 20 Apr 2026.",
                        "No longer owed: written notice by 2 Jun 2026, after the test of 20 Apr 2026.",
                        "Owed now: written notice by 2 Jun 2026, after the test of 12 May 2026.",
                        "Owed now: retest (optional) by 11 Jun 2026, after the test of 12 May 2026.");
    }
}
