package org.thresholdregister.core.columnar;

import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.followup.Deadlines;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * The numbers that the rules compare with, taken once for a run from where the readable rules have them.
 *
 * @param frequencies whose levels are averaged
 * @param shiftSumDb the sum of shifts, in dB, from which on there is a standard threshold shift
 * @param levelSumDb the sum of levels, in dB HL, from which on a shift is recordable
 */
record Limits(
        List<Frequency> frequencies,
        AgeCorrections ageCorrections,
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
                new AgeCorrections(Frequency.AVERAGED),
                ThresholdShift.STANDARD_SHIFT_SUM_DB,
                Recording.LEVEL_SUM_DB,
                Deadlines.RETEST_DAYS,
                Deadlines.NOTICE_DAYS,
                Deadlines.RECORD_AFTER_RETEST_DAYS,
                Deadlines.RECORD_WITHOUT_RETEST_DAYS);
    }

    /** Where the averaged frequencies of each ear stand among a test's thresholds. */
    int[][] placesByEar() {
        return Arrays.stream(Ear.values())
                .map(ear -> frequencies.stream()
                        .mapToInt(frequency -> ThresholdCode.place(ear, frequency))
                        .toArray())
                .toArray(int[][]::new);
    }
}
