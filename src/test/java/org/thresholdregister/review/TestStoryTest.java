package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.wording.Sentence;
import org.thresholdregister.core.wording.Working;

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

    /**
     * A baseline revised for a lasting shift under 25 dB. From the first baseline the shift is 20 dB less 1 for age (29
     * CFR 1904.10(b)(2)(i)), from the revised one 8 less 1 (67 FR 77169); Table F-2 gives 6 dB at 32 and 34 years, 7 at 36.
     */
    @Test
    void whereTheTwoReadingsOfTheReferenceDifferTheWorkingGivesBoth() {
        Records records = new Records()
                .test("2022-03-01", TestPurpose.BASELINE, 6, 6)
                .test("2024-03-01", TestPurpose.ANNUAL, 18, 6)
                .decision(new Decision(
                        Ears.LEFT,
                        LocalDate.of(2024, 3, 1),
                        DecisionKind.BASELINE,
                        LocalDate.of(2024, 6, 1),
                        "Dr. Vale",
                        "a lasting shift"))
                .test("2026-03-01", TestPurpose.ANNUAL, 26, 6);
        List<String> said = workingOfTheLatest(records.asOf("2026-06-01"));

        assertThat(said)
                .anySatisfy(
                        sentence -> assertThat(sentence).contains("measured from the first baseline, of 1 Mar 2022"))
                .contains(
                        "The official readings differ here: measured from the current baseline the shift has a mean of"
                                + " 7.00 dB, no shift. A professional decides which applies. [67 FR 77169, 17 December 2002]")
                .contains("Both tests are met in the same ear: recordable, if the loss is work-related. [29 CFR"
                        + " 1904.10(a)]");
    }

    @Test
    void whereTheyAgreeOnlyOneIsGiven() {
        assertThat(workingOfTheLatest(history().asOf("2026-06-07")))
                .noneMatch(sentence -> sentence.contains("official readings"));
    }

    private static List<String> workingOfTheLatest(WorkerRecord record) {
        return record.judgement().determinations().stream()
                .filter(determination ->
                        determination.ear() == Ear.LEFT && determination instanceof Determination.Judged)
                .map(Working::of)
                .reduce((earlier, later) -> later)
                .orElseThrow()
                .stream()
                .map(Sentence::withBasis)
                .toList();
    }
}
