package org.thresholdregister.core.caselife;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Determination.Resolution;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.recording.Recording.Comparison;
import org.thresholdregister.core.regulation.Answer;

/**
 * What a determination says of one ear's shift, in the terms of a case.
 *
 * @param foundBy the test or retest that showed the shift first
 * @param settlement how it was settled; empty while a retest may still take the test's place
 * @param answer for the injury log, before anybody's finding on work-relatedness
 */
record ShiftFacts(
        Judged judged, CaseScope scope, Audiogram foundBy, Optional<Settlement> settlement, Recordability answer) {

    /**
     * @param day on which it was settled
     * @param by the test or retest that settled it; empty where the time for a retest ran out
     */
    record Settlement(LocalDate day, boolean stands, Optional<Audiogram> by) {}

    /** The test that the question of the log is asked of. */
    Audiogram decidingTest() {
        return judged.recording().comparison().map(Comparison::decidingTest).orElse(judged.settledBy());
    }

    /** Empty where the ear shows no shift, neither from the baseline nor from the recording reference. */
    static Optional<ShiftFacts> of(Judged judged, LocalDate asOf) {
        Recordability answer = answerOfTheTests(judged, asOf);
        boolean standsForTheLog = isShiftFromReference(judged.recording())
                && (answer == Recordability.YES
                        || answer == Recordability.UNDECIDED
                        || answer == Recordability.AWAITING_RETEST);
        boolean ownShift = judged.comparison().isShift() == Answer.YES;
        return switch (judged.outcome()) {
            case AWAITING_RETEST -> Optional.of(ofShift(judged, judged.test(), Optional.empty(), answer));
            case CONFIRMED ->
                Optional.of(ofShift(
                        judged,
                        ownShift ? judged.test() : judged.settledBy(),
                        Optional.of(confirmation(judged)),
                        answer));
            case NOT_CONFIRMED ->
                Optional.of(
                        standsForTheLog
                                ? forTheLog(judged, answer)
                                : ofShift(
                                        judged,
                                        judged.test(),
                                        Optional.of(settledBy(judged.settledBy(), false)),
                                        answer));
            case NO_SHIFT, UNDECIDED ->
                standsForTheLog
                        ? Optional.of(forTheLog(judged, answer))
                        : ownShift
                                ? Optional.of(ofShift(judged, judged.test(), Optional.empty(), answer))
                                : Optional.empty();
            case BASELINE, BEFORE_BASELINE, RETEST ->
                throw new IllegalArgumentException("not judged by itself: " + judged.outcome());
        };
    }

    private static ShiftFacts ofShift(
            Judged judged, Audiogram foundBy, Optional<Settlement> settlement, Recordability answer) {
        return new ShiftFacts(judged, CaseScope.SHIFT_AND_LOG, foundBy, settlement, answer);
    }

    private static Settlement confirmation(Judged judged) {
        return switch (judged.resolution()) {
            case Resolution.ByTestItself ignored -> withoutRetest(judged);
            case Resolution.ByRetest ignored -> settledBy(judged.settledBy(), true);
            case Resolution.BySecondTest ignored -> settledBy(judged.settledBy(), true);
        };
    }

    private static ShiftFacts forTheLog(Judged judged, Recordability answer) {
        Audiogram deciding =
                judged.recording().comparison().map(Comparison::decidingTest).orElse(judged.test());
        Optional<Settlement> settlement = answer == Recordability.AWAITING_RETEST
                ? Optional.empty()
                : Optional.of(deciding.equals(judged.test()) ? withoutRetest(judged) : settledBy(deciding, true));
        return new ShiftFacts(judged, CaseScope.LOG_ONLY, deciding, settlement, answer);
    }

    private static Settlement settledBy(Audiogram test, boolean stands) {
        return new Settlement(test.date(), stands, Optional.of(test));
    }

    /** The day after the last one for a retest; at once where the rule set knows none. */
    private static Settlement withoutRetest(Judged judged) {
        return judged.ruleSet()
                .retest()
                .map(retest ->
                        new Settlement(retest.lastDay(judged.test().date()).plusDays(1), true, Optional.empty()))
                .orElseGet(() -> settledBy(judged.test(), true));
    }

    /** The recorded answer, or, where the finding that the loss is not work-related made it no, the one before that. */
    private static Recordability answerOfTheTests(Judged judged, LocalDate asOf) {
        Recording recording = judged.recording();
        boolean notWorkRelated = recording
                .workRelatedness()
                .filter(decision -> decision.kind() == DecisionKind.NOT_WORK_RELATED)
                .isPresent();
        if (!notWorkRelated || recording.answer() != Recordability.NO) {
            return recording.answer();
        }
        if (judged.outcome() == Outcome.AWAITING_RETEST || awaitsRetestForTheLog(judged, asOf)) {
            return Recordability.AWAITING_RETEST;
        }
        return recording
                .comparison()
                .filter(comparison -> judged.outcome() == Outcome.CONFIRMED || comparison.shifted() == Answer.YES)
                .map(Comparison::forStandingShift)
                .orElse(Recordability.NO);
    }

    private static boolean awaitsRetestForTheLog(Judged judged, LocalDate asOf) {
        return judged.outcome() != Outcome.CONFIRMED
                && isShiftFromReference(judged.recording())
                && judged.recording()
                        .comparison()
                        .filter(comparison -> comparison.decidingTest().equals(judged.test()))
                        .isPresent()
                && judged.ruleSet()
                        .retest()
                        .filter(retest ->
                                !asOf.isAfter(retest.lastDay(judged.test().date())))
                        .isPresent();
    }

    private static boolean isShiftFromReference(Recording recording) {
        return recording
                .comparison()
                .filter(comparison -> comparison.shifted() == Answer.YES)
                .isPresent();
    }
}
