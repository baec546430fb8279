package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.wording.Words;

/**
 * What was found about one ear on one test, as far as anybody acts on it.
 *
 * @param baseline the day of the baseline that it was compared with
 * @param shiftSum sum of the shifts at 2000, 3000 and 4000 Hz in dB after the age allowance; absent where it is no plain
 *     number
 */
public record EarFinding(
        Outcome outcome, Optional<Recordability> recordable, Optional<LocalDate> baseline, OptionalInt shiftSum) {

    static EarFinding of(Determination determination) {
        return new EarFinding(
                determination.outcome(),
                determination instanceof Judged judged
                        ? Optional.of(judged.recording().answer())
                        : Optional.empty(),
                determination.shift().map(shift -> shift.earlier().date()),
                determination.shift().map(shift -> shift.sum().exact()).orElse(OptionalInt.empty()));
    }

    /** {@code shift confirmed, recordable}. */
    public String answer() {
        return Words.outcome(outcome)
                + recordable
                        .map(answer -> switch (answer) {
                            case YES, NO, ALREADY_RECORDED -> ", " + Words.recordability(answer);
                            case AWAITING_RETEST -> ", for the injury log too";
                            case UNDECIDED -> ", recordability undecided";
                            case NOT_ASKED -> "";
                        })
                        .orElse("");
    }

    /** {@code baseline of 1 Mar 2020, mean shift 11.67 dB}. */
    public String comparison() {
        String shift = shiftSum.isPresent()
                ? ", mean shift " + MeanOfThree.ofSum(shiftSum.getAsInt()) + " dB"
                : ", no single mean shift";
        return baseline.map(day -> "baseline of " + Words.day(day) + shift).orElse("not compared");
    }

    /** Both: {@code shift confirmed, recordable; baseline of 1 Mar 2020, mean shift 11.67 dB}. */
    public String inWords() {
        return answer() + "; " + comparison();
    }

    /** The finding in words; what is not judged has none. */
    public static String inWords(Optional<EarFinding> finding) {
        return finding.map(EarFinding::inWords).orElse("not judged");
    }
}
