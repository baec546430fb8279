package org.thresholdregister.core.summary;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * What counting needs of one determination.
 *
 * @param shift whether the test itself shows a standard threshold shift; empty where it is compared with nothing
 * @param recordable empty where the question is not asked
 */
public record CountedTest(
        LocalDate date,
        TestPurpose purpose,
        Outcome outcome,
        Optional<Answer> shift,
        Optional<Recordability> recordable) {

    public static CountedTest of(Determination determination) {
        return new CountedTest(
                determination.test().date(),
                determination.test().purpose(),
                determination.outcome(),
                determination.shift().map(ThresholdShift::isShift),
                determination instanceof Determination.Judged judged
                        ? Optional.of(judged.recording().answer())
                        : Optional.empty());
    }
}
