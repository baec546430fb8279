package org.thresholdregister.core.baseline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

class BaselineChangeTest {

    private static final LocalDate CHANGED = LocalDate.parse("2026-03-09");

    @ParameterizedTest
    @EnumSource(
            value = BaselineChange.Kind.class,
            names = {"PERSISTENT_IMPROVEMENT", "PERSISTENT_SHIFT"})
    void aProposalCountsOnlyAfterTheTestThatCompletedIt(BaselineChange.Kind kind) {
        BaselineChange change = change(kind, test(CHANGED, 20), test(CHANGED, 10), CHANGED);
        assertThat(change.appliesTo(test(CHANGED.minusDays(1), 10))).isFalse();
        assertThat(change.appliesTo(test(CHANGED, 10))).isFalse();
        assertThat(change.appliesTo(Vectors.flat(CHANGED, TestPurpose.RETEST, 10, 10)))
                .isTrue();
        assertThat(change.appliesTo(test(CHANGED.plusDays(1), 10))).isTrue();
    }

    /** A decision may be dated before the test that it names, as a slip of the pen is. */
    @Test
    void aChosenBaselineIsNotComparedWithItself() {
        BaselineChange change =
                change(BaselineChange.Kind.DECIDED, test(CHANGED, 20), test(CHANGED, 10), CHANGED.minusDays(5));
        assertThat(change.appliesTo(test(CHANGED, 10))).isFalse();
        assertThat(change.appliesTo(test(CHANGED.plusDays(1), 10))).isTrue();
    }

    @Test
    void aChosenBaselineCountsForTestsAfterTheDayOfDecision() {
        BaselineChange change =
                change(BaselineChange.Kind.DECIDED, test(CHANGED, 20), test(CHANGED, 10), CHANGED.plusDays(30));
        assertThat(change.appliesTo(test(CHANGED.plusDays(30), 10))).isFalse();
        assertThat(change.appliesTo(test(CHANGED.plusDays(31), 10))).isTrue();
    }

    @ParameterizedTest(name = "from {0} to {1} dB: {2}")
    @CsvSource({"20, 19, true", "20, 20, false", "20, 21, false"})
    void aChosenBaselineIsForBetterHearingOnlyIfItIsLower(int from, int to, boolean better) {
        assertThat(decided(test(CHANGED, from), test(CHANGED, to)).isForBetterHearing())
                .isEqualTo(better);
    }

    /** A missing level may be any level, so that nothing is better or worse than it. */
    @Test
    void nothingIsBetterHearingWhereALevelIsMissing() {
        Audiogram complete = test(CHANGED, 20);
        Audiogram missing = test(CHANGED, 5).with(Ear.LEFT, Frequency.HZ_3000, Threshold.notGiven());
        assertThat(decided(complete, missing).isForBetterHearing()).isFalse();
        assertThat(decided(missing, complete).isForBetterHearing()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"PERSISTENT_IMPROVEMENT, true", "PERSISTENT_SHIFT, false"})
    void aProposalSaysByItselfWhetherHearingIsBetter(BaselineChange.Kind kind, boolean better) {
        assertThat(change(kind, test(CHANGED, 20), test(CHANGED, 20), CHANGED).isForBetterHearing())
                .isEqualTo(better);
    }

    @Test
    void onlyTheSameChoiceOfTheSameDayIsTheSameDecision() {
        Audiogram chosen = test(CHANGED, 10);
        BaselineChange decision = decided(test(CHANGED, 20), chosen);
        // What the ear was compared with before does not make it another decision.
        assertThat(decision.isSameDecision(decided(test(CHANGED, 30), chosen))).isTrue();
        assertThat(decision.isSameDecision(decided(test(CHANGED, 20), test(CHANGED, 15))))
                .isFalse();
        assertThat(decision.isSameDecision(
                        change(BaselineChange.Kind.DECIDED, test(CHANGED, 20), chosen, CHANGED.plusDays(1))))
                .isFalse();
        BaselineChange proposal =
                change(BaselineChange.Kind.PERSISTENT_IMPROVEMENT, test(CHANGED, 20), chosen, CHANGED);
        assertThat(decision.isSameDecision(proposal)).isFalse();
        assertThat(proposal.isSameDecision(decision)).isFalse();
        assertThat(proposal.isSameDecision(proposal)).isFalse();
    }

    private static BaselineChange decided(Audiogram from, Audiogram to) {
        return change(BaselineChange.Kind.DECIDED, from, to, CHANGED);
    }

    private static BaselineChange change(BaselineChange.Kind kind, Audiogram from, Audiogram to, LocalDate decidedOn) {
        return new BaselineChange(Ear.LEFT, kind, from, to, to, decidedOn, List.of(to.date()));
    }

    private static Audiogram test(LocalDate date, int decibels) {
        return Vectors.flat(date, TestPurpose.ANNUAL, decibels, 10);
    }
}
