package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.validity.FlagCount;

/**
 * One ear's shift on one test, found or confirmed. Texts that are not given are empty.
 *
 * @param shiftSum sum of the shifts at 2000, 3000 and 4000 Hz in dB after the age allowance, on the test itself;
 *     absent where it is no plain number
 * @param sts whether the test itself shows a standard threshold shift
 * @param levelSum sum of the levels there in dB HL, on the test itself; absent likewise
 * @param settledOn day of the test that settled the outcome; absent while a retest is awaited
 * @param flags how many doubts there are about this ear on the test
 * @param acts what was done about it
 */
public record ShiftRow(
        String workerId,
        String familyName,
        String givenName,
        String site,
        String department,
        LocalDate testDate,
        TestPurpose purpose,
        Ear ear,
        LocalDate baselineDate,
        OptionalInt shiftSum,
        Answer sts,
        OptionalInt levelSum,
        Outcome outcome,
        Recordability recordable,
        Optional<LocalDate> retestBy,
        Optional<LocalDate> notifyBy,
        Optional<LocalDate> recordBy,
        Optional<LocalDate> settledOn,
        FlagCount flags,
        ShiftActs acts) {

    /** The same with the doubts about the test. */
    ShiftRow withFlags(FlagCount count) {
        return new ShiftRow(
                workerId,
                familyName,
                givenName,
                site,
                department,
                testDate,
                purpose,
                ear,
                baselineDate,
                shiftSum,
                sts,
                levelSum,
                outcome,
                recordable,
                retestBy,
                notifyBy,
                recordBy,
                settledOn,
                count,
                acts);
    }

    /** The same with what was done about the shift. */
    ShiftRow withActs(ShiftActs done) {
        return new ShiftRow(
                workerId,
                familyName,
                givenName,
                site,
                department,
                testDate,
                purpose,
                ear,
                baselineDate,
                shiftSum,
                sts,
                levelSum,
                outcome,
                recordable,
                retestBy,
                notifyBy,
                recordBy,
                settledOn,
                flags,
                done);
    }

    /** The retest of a later day than the test that settled the outcome, where there is one. */
    public Optional<LocalDate> laterRetest() {
        return settledOn.filter(day -> !day.equals(testDate));
    }
}
