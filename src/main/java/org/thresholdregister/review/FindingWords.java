package org.thresholdregister.review;

import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.shift.ThresholdShift;
import org.thresholdregister.core.wording.Words;

/** One line for a determination: what was found, and the two means that it turns on. */
public final class FindingWords {

    private FindingWords() {}

    /** {@code shift confirmed, recordable}. */
    public static String finding(Determination determination) {
        return switch (determination) {
            case Judged judged ->
                judged.recording().answer() == Recordability.NOT_ASKED
                        ? Words.outcome(judged.outcome())
                        : Words.outcome(judged.outcome()) + ", " + forTheLog(judged);
            case Determination.Retest retest ->
                Words.outcome(retest.outcome()) + ", answered with the "
                        + Words.purpose(retest.resolves().purpose())
                        + " of " + Words.day(retest.resolves().date());
            case Determination.BaselineTest baseline -> Words.outcome(baseline.outcome());
            case Determination.BeforeBaseline before -> Words.outcome(before.outcome()) + ", not compared";
        };
    }

    /** Whether the test is a case for the injury log, with the finding that it is not work-related where there is one. */
    static String forTheLog(Judged judged) {
        Recordability answer = judged.recording().answer();
        return switch (answer) {
            case YES, ALREADY_RECORDED -> Words.recordability(answer);
            case NO -> Words.recordability(answer) + notWorkRelated(judged);
            case AWAITING_RETEST ->
                judged.outcome() == Outcome.AWAITING_RETEST
                        ? "also for the injury log"
                        : Words.recordability(answer) + " for the injury log";
            case UNDECIDED -> "recordability undecided";
            case NOT_ASKED -> "no log is kept";
        };
    }

    private static String notWorkRelated(Judged judged) {
        return judged.recording()
                .workRelatedness()
                .filter(decision -> decision.kind() == DecisionKind.NOT_WORK_RELATED)
                .map(decision -> ", " + Words.decision(decision.kind()) + " on " + Words.day(decision.decidedOn()))
                .orElse("");
    }

    /** {@code Mean shift 11.67 dB, 14.67 dB without the age allowance; mean level 28.33 dB HL}. */
    public static String means(Determination determination) {
        String level = "mean level " + Words.meanLevel(determination.levelSum());
        return Words.capitalised(
                determination.shift().map(shift -> shift(shift) + "; " + level).orElse(level));
    }

    private static String shift(ThresholdShift shift) {
        String corrected = Words.mean(shift.sum());
        String uncorrected = Words.mean(shift.uncorrectedSum());
        return "mean shift " + corrected
                + (corrected.equals(uncorrected)
                        ? ", with and without the age allowance"
                        : ", " + uncorrected + " without the age allowance");
    }
}
