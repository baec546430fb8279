package org.thresholdregister.core.columnar;

import java.util.List;
import org.thresholdregister.core.aging.AgeCorrectionTable;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.followup.Deadlines;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * The numbers that the rules compare with, taken once for a run from where the readable rules have them.
 *
 * @param frequencies whose levels are summed
 * @param shiftSumDb the sum of shifts, in dB, from which on there is a standard threshold shift
 * @param levelSumDb the sum of levels, in dB HL, from which on a shift is recordable
 */
record Limits(
        List<Frequency> frequencies,
        int shiftSumDb,
        int levelSumDb,
        int retestDays,
        int noticeDays,
        int recordAfterRetestDays,
        int recordWithoutRetestDays) {

    /** 29 CFR 1910.95 and 1904.10. */
    static Limits osha() {
        return new Limits(
                Frequency.AVERAGED,
                ThresholdShift.STANDARD_SHIFT_SUM_DB,
                Recording.LEVEL_SUM_DB,
                Deadlines.RETEST_DAYS,
                Deadlines.NOTICE_DAYS,
                Deadlines.RECORD_AFTER_RETEST_DAYS,
                Deadlines.RECORD_WITHOUT_RETEST_DAYS);
    }

    /** What may be taken off for aging, in dB. */
    int ageCorrection(Sex sex, int ageYears, Frequency frequency) {
        return AgeCorrectionTable.of(sex).decibels(ageYears, frequency);
    }
}
