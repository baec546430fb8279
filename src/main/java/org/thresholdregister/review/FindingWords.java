package org.thresholdregister.review;

import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
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
                Words.outcome(judged.outcome()) + ", "
                        + forTheLog(judged.recording().answer(), Words.outcome(judged.outcome()));
            case Determination.Retest retest ->
                Words.outcome(retest.outcome()) + ", answered with the "
                        + Words.purpose(retest.resolves().purpose())
                        + " of " + Words.day(retest.resolves().date());
            case Determination.BaselineTest baseline -> Words.outcome(baseline.outcome());
            case Determination.BeforeBaseline before -> Words.outcome(before.outcome()) + ", not compared";
        };
    }

    private static String forTheLog(Recordability recordability, String outcome) {
        String words = Words.recordability(recordability);
        return words.equals(outcome) ? "also for the injury log" : words;
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
