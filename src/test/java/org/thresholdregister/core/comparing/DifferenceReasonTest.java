package org.thresholdregister.core.comparing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.comparing.Difference.Reason;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.RuleSets;

/** The same record, judged in two ways. The right ear stays at 10 dB HL throughout. */
class DifferenceReasonTest {

    private static final LocalDate FIRST = LocalDate.parse("2020-03-09");
    private static final Audiogram BASELINE = annual(0, "10 10 10");

    @Test
    void theSameWayTwiceDiffersNowhere() {
        WorkerHistory history = history(BASELINE, annual(1, "40 40 40"));
        assertThat(Difference.between(judge(history, "osha"), judge(history, "osha")))
                .isEmpty();
    }

    /** A man from 40 to 45 (29 CFR 1910.95 Appendix F, Table F-1, at 2000, 3000 and 4000 Hz): some dB are allowed. */
    @Test
    void theAllowanceForAgeIsNamedWhereTheShiftTurnsOnIt() {
        WorkerHistory history = history(BASELINE, annual(5, "20 20 20"));
        WorkerJudgement with = Judge.judge(history, options("osha", AgeCorrection.ON));
        WorkerJudgement without = judge(history, "osha");
        assertThat(Difference.between(with, without)).singleElement().satisfies(difference -> {
            assertThat(difference.test()).isEqualTo(annual(5, "20 20 20"));
            assertThat(difference.ear()).isEqualTo(Ear.LEFT);
            assertThat(difference.one().outcome().word()).isEqualTo("no-shift");
            assertThat(difference.other().outcome().word()).isEqualTo("confirmed");
            assertThat(difference.reason()).isEqualTo(Reason.AGE_ALLOWANCE);
        });
    }

    /** A mean of 10 dB without 15 dB at any one frequency. */
    @Test
    void anotherCriterionIsNamedWhereItFindsAnotherShift() {
        assertThat(reasons("osha", "niosh", BASELINE, annual(1, "20 20 20"))).containsExactly(Reason.CRITERION);
    }

    @Test
    void anotherConfirmationIsNamedWhereTheShiftIsTheSame() {
        assertThat(reasons("osha", "niosh", BASELINE, annual(1, "40 40 40"))).containsExactly(Reason.CONFIRMATION);
    }

    /** 29 CFR 1904.10 records a shift with a mean level of 25 dB; 30 CFR 62.101 reports a shift of 25 dB. */
    @Test
    void theRecordingIsNamedWhereOnlyItDiffers() {
        assertThat(reasons("osha", "msha", BASELINE, annual(1, "30 30 30"))).containsExactly(Reason.RECORDING);
        assertThat(reasons("osha", "msha", BASELINE, annual(1, "35 35 35"))).isEmpty();
    }

    /** The second test is compared with the first by one rule set and is too late for the other. */
    @Test
    void anotherEarlierTestIsNamedWhereOnlyOneWayComparesWithAny() {
        List<Difference> differences = differences("osha", "uk-l108", BASELINE, annual(5, "10 10 10"));
        assertThat(differences)
                .extracting(Difference::ear, Difference::reason)
                .containsExactly(tuple(Ear.LEFT, Reason.REFERENCE), tuple(Ear.RIGHT, Reason.REFERENCE));
        assertThat(differences("uk-l108", "osha", BASELINE, annual(5, "10 10 10")))
                .extracting(Difference::reason)
                .containsOnly(Reason.REFERENCE);
    }

    /** Compared with the baseline there is a shift, compared with the year before there is none. */
    @Test
    void anotherEarlierTestIsNamedWhereTheShiftDependsOnIt() {
        assertThat(differences("osha", "uk-l108", BASELINE, annual(1, "40 40 40"), annual(2, "40 40 40")))
                .filteredOn(difference -> difference.test().equals(annual(2, "40 40 40")))
                .extracting(Difference::reason)
                .containsExactly(Reason.REFERENCE);
    }

    /** The rule set of Alberta keeps no log: that says nothing different about a case. */
    @Test
    void aRuleSetWithoutALogDiffersInNoRecording() {
        assertThat(reasons("osha", "alberta", BASELINE, annual(1, "40 40 40"))).isEmpty();
        assertThat(reasons("alberta", "osha", BASELINE, annual(1, "40 40 40"))).isEmpty();
    }

    @Test
    void judgementsOfTwoRecordsAreRefused() {
        WorkerJudgement one = judge(history(BASELINE, annual(1, "10 10 10")), "osha");
        WorkerJudgement other = judge(history(BASELINE, annual(2, "10 10 10")), "osha");
        WorkerJudgement mixed = new WorkerJudgement(
                List.of(one.determinations().get(1), one.determinations().get(0)), List.of(), List.of(), List.of());
        WorkerJudgement inOrder =
                new WorkerJudgement(one.determinations().subList(0, 2), List.of(), List.of(), List.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Difference.between(one, other))
                .withMessage("not two judgements of the same record");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Difference.between(inOrder, mixed))
                .withMessage("not two judgements of the same record");
    }

    private static List<Reason> reasons(String one, String other, Audiogram... tests) {
        return differences(one, other, tests).stream().map(Difference::reason).toList();
    }

    private static List<Difference> differences(String one, String other, Audiogram... tests) {
        WorkerHistory history = history(tests);
        return Difference.between(judge(history, one), judge(history, other));
    }

    private static WorkerJudgement judge(WorkerHistory history, String ruleSet) {
        return Judge.judge(history, options(ruleSet, AgeCorrection.OFF));
    }

    private static JudgingOptions options(String ruleSet, AgeCorrection ageCorrection) {
        return new JudgingOptions(
                FIRST.plusYears(20), RuleSets.find(ruleSet).orElseThrow(), ageCorrection, BaselineRevision.OFF);
    }

    private static WorkerHistory history(Audiogram... tests) {
        WorkerFacts worker = new WorkerFacts(
                "C1", Optional.of(FIRST.minusYears(40)), Optional.of(Sex.MALE), Optional.empty(), Optional.empty());
        return new WorkerHistory(worker, List.of(tests), List.of());
    }

    private static Audiogram annual(int year, String left) {
        return Vectors.audiogram(
                FIRST.plusYears(year), TestPurpose.ANNUAL, List.of(left.split(" ")), List.of("10", "10", "10"));
    }
}
