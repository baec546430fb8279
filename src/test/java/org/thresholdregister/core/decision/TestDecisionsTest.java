package org.thresholdregister.core.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.audiometry.Ears;

class TestDecisionsTest {

    private static final LocalDate TESTED = LocalDate.parse("2026-03-09");

    @ParameterizedTest
    @EnumSource
    void onlyADecisionOfTheKindIsFound(DecisionKind kind) {
        TestDecisions decisions = new TestDecisions(List.of(decision(kind, 1, "Dr A")));
        for (DecisionKind asked : DecisionKind.values()) {
            assertThat(decisions.has(asked)).isEqualTo(asked == kind);
        }
        assertThat(TestDecisions.NONE.has(kind)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "WORK_RELATED, 1, NOT_WORK_RELATED, 2, NOT_WORK_RELATED",
        "NOT_WORK_RELATED, 1, WORK_RELATED, 2, WORK_RELATED",
        "NOT_WORK_RELATED, 1, WORK_RELATED, 1, WORK_RELATED"
    })
    void theLatestFindingOnTheCauseCountsInWhateverOrder(
            DecisionKind one, int oneDay, DecisionKind other, int otherDay, DecisionKind counts) {
        Decision first = decision(one, oneDay, "Dr A");
        Decision second = decision(other, otherDay, "Dr B");
        Decision aside = decision(DecisionKind.NOTICE_GIVEN, 9, "Dr C");
        for (List<Decision> order : List.of(List.of(first, second, aside), List.of(aside, second, first))) {
            assertThat(new TestDecisions(order).workRelatedness())
                    .hasValueSatisfying(found -> assertThat(found.kind()).isEqualTo(counts));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "RECORDED, 1, LINED_OUT, 2, LINED_OUT",
        "LINED_OUT, 1, RECORDED, 2, RECORDED",
        "RECORDED, 1, LINED_OUT, 1, LINED_OUT"
    })
    void theLatestDecisionOnTheEntryCountsInWhateverOrder(
            DecisionKind one, int oneDay, DecisionKind other, int otherDay, DecisionKind counts) {
        Decision first = decision(one, oneDay, "Dr A");
        Decision second = decision(other, otherDay, "Dr B");
        for (List<Decision> order : List.of(List.of(first, second), List.of(second, first))) {
            assertThat(new TestDecisions(order).entry())
                    .hasValueSatisfying(found -> assertThat(found.kind()).isEqualTo(counts));
        }
    }

    /** So that two records which list the same decisions in another order are judged alike, to the word. */
    @Test
    void ofTwoOfAKindOnOneDayTheOrderOfTheTextsDecides() {
        Decision first = decision(DecisionKind.RECORDED, 1, "Dr A");
        Decision last = decision(DecisionKind.RECORDED, 1, "Dr B");
        assertThat(new TestDecisions(List.of(first, last)).entry()).hasValue(last);
        assertThat(new TestDecisions(List.of(last, first)).entry()).hasValue(last);
    }

    @Test
    void ofTwoWithTheSameTextsTheNamedTestAndEarsDecide() {
        Decision ofTest = new Decision(Ears.BOTH, TESTED, DecisionKind.RECORDED, TESTED.plusDays(30), "Dr A", "");
        Decision ofRetest =
                new Decision(Ears.LEFT, TESTED.plusDays(9), DecisionKind.RECORDED, TESTED.plusDays(30), "Dr A", "");
        Decision ofOneEar = new Decision(Ears.LEFT, TESTED, DecisionKind.RECORDED, TESTED.plusDays(30), "Dr A", "");
        assertThat(new TestDecisions(List.of(ofTest, ofRetest)).entry()).hasValue(ofRetest);
        assertThat(new TestDecisions(List.of(ofRetest, ofTest)).entry()).hasValue(ofRetest);
        assertThat(new TestDecisions(List.of(ofTest, ofOneEar)).entry()).hasValue(ofTest);
        assertThat(new TestDecisions(List.of(ofOneEar, ofTest)).entry()).hasValue(ofTest);
    }

    @ParameterizedTest
    @CsvSource({
        "NOT_WORK_RELATED, true, false",
        "WORK_RELATED, false, false",
        "RECORDED, false, false",
        "LINED_OUT, true, false",
        "NOTICE_GIVEN, false, false",
        "BASELINE, true, true",
        "INVALID_TEST, true, true"
    })
    void whatADecisionAsksForAndMayChange(DecisionKind kind, boolean needsReason, boolean changesComparisons) {
        assertThat(kind.needsReason()).isEqualTo(needsReason);
        assertThat(kind.changesComparisons()).isEqualTo(changesComparisons);
    }

    /** The words that decision files are written in. */
    @ParameterizedTest
    @CsvSource({
        "NOT_WORK_RELATED, not-work-related",
        "WORK_RELATED, work-related",
        "RECORDED, recorded",
        "LINED_OUT, lined-out",
        "NOTICE_GIVEN, notice-given",
        "BASELINE, baseline",
        "INVALID_TEST, invalid-test"
    })
    void filesWriteEachKindInItsWord(DecisionKind kind, String word) {
        assertThat(kind.word()).isEqualTo(word);
    }

    private static Decision decision(DecisionKind kind, int daysLater, String by) {
        return new Decision(Ears.BOTH, TESTED, kind, TESTED.plusDays(daysLater), by, "as the test says");
    }
}
