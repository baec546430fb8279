package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.TestDecisions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.rules.RetestRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.wording.Words;

/**
 * What has gone out of the house on a determination.
 *
 * @param noticeGivenOn the last day on which the worker was told in writing
 * @param recordedOn the day on which the case was entered on the injury log, unless the entry was lined out
 */
public record SentAndRecorded(Optional<LocalDate> noticeGivenOn, Optional<LocalDate> recordedOn) {

    /**
     * What the decisions say of this ear on the test of that day; they may name a retest of it as well.
     *
     * @param ruleSet by which the test is judged
     */
    static SentAndRecorded of(
            LocalDate testDate, Ear ear, RuleSet ruleSet, List<Audiogram> tests, List<Decision> decisions) {
        LocalDate lastRetestDay =
                testDate.plusDays(ruleSet.retest().map(RetestRule::days).orElse(0));
        List<LocalDate> days = new ArrayList<>(List.of(testDate));
        tests.stream()
                .filter(test -> test.purpose() == TestPurpose.RETEST
                        && test.date().isAfter(testDate)
                        && !test.date().isAfter(lastRetestDay))
                .forEach(retest -> days.add(retest.date()));
        List<Decision> about = decisions.stream()
                .filter(decision ->
                        days.contains(decision.testDate()) && decision.ears().include(ear))
                .toList();
        return new SentAndRecorded(
                about.stream()
                        .filter(decision -> decision.kind() == DecisionKind.NOTICE_GIVEN)
                        .map(Decision::decidedOn)
                        .max(Comparator.naturalOrder()),
                new TestDecisions(about)
                        .entry()
                        .filter(decision -> decision.kind() == DecisionKind.RECORDED)
                        .map(Decision::decidedOn));
    }

    public boolean isAnything() {
        return noticeGivenOn.isPresent() || recordedOn.isPresent();
    }

    /**
     * Whether a person must look, because something was sent or recorded and the finding is another one. Nobody needs to
     * where what was open has come out as was to be expected then, or where there is no shift now as there was none.
     *
     * @param after empty where the test is judged no more
     */
    boolean isOvertakenBy(EarFinding before, Optional<EarFinding> after) {
        return isAnything()
                && after.filter(now -> isExpected(before, now) || isNothingStill(before, now))
                        .isEmpty();
    }

    /** A notice may name both ears where one has a shift. */
    private static boolean isNothingStill(EarFinding before, EarFinding now) {
        return isNothing(before) && isNothing(now) && before.recordable().equals(now.recordable());
    }

    private static boolean isNothing(EarFinding finding) {
        return finding.outcome() == Outcome.NO_SHIFT
                && finding.recordable()
                        .filter(answer -> answer == Recordability.NO || answer == Recordability.NOT_ASKED)
                        .isPresent();
    }

    private boolean isExpected(EarFinding before, EarFinding now) {
        boolean sameShift =
                before.baseline().equals(now.baseline()) && before.shiftSum().equals(now.shiftSum());
        boolean sameOutcome = before.outcome() == now.outcome()
                || (before.outcome() == Outcome.AWAITING_RETEST && now.outcome() == Outcome.CONFIRMED);
        boolean sameAnswer = before.recordable().equals(now.recordable())
                || (before.recordable().equals(Optional.of(Recordability.AWAITING_RETEST))
                        && (recordedOn.isEmpty() || now.recordable().equals(Optional.of(Recordability.YES))));
        return sameShift && sameOutcome && sameAnswer;
    }

    /** {@code notice given on 9 Mar 2026, recorded on 12 Mar 2026}; empty where there is neither. */
    public String inWords() {
        List<String> parts = new ArrayList<>();
        noticeGivenOn.ifPresent(day -> parts.add("notice given on " + Words.day(day)));
        recordedOn.ifPresent(day -> parts.add("recorded on " + Words.day(day)));
        return String.join(", ", parts);
    }
}
