package org.thresholdregister.intake;

import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested;

/** The seven thresholds of one ear in one long, nine bits each. The codes never leave memory. */
final class PackedThresholds {

    private static final int BITS = 9;
    private static final int MASK = (1 << BITS) - 1;
    private static final Frequency[] FREQUENCIES = Frequency.values();
    private static final NotTested.Reason[] REASONS = NotTested.Reason.values();

    private static final int LEVELS = HearingLevel.HIGHEST_DB - HearingLevel.LOWEST_DB + 1;
    private static final int FIRST_LIMIT = LEVELS;
    private static final int NO_LIMIT = 2 * LEVELS;
    private static final int FIRST_REASON = NO_LIMIT + 1;

    private static final Threshold[] THRESHOLDS = new Threshold[FIRST_REASON + REASONS.length];

    static {
        for (int i = 0; i < LEVELS; i++) {
            THRESHOLDS[i] = Threshold.measured(i + HearingLevel.LOWEST_DB);
            THRESHOLDS[FIRST_LIMIT + i] = Threshold.noResponseAt(i + HearingLevel.LOWEST_DB);
        }
        THRESHOLDS[NO_LIMIT] = Threshold.noResponse();
        for (NotTested.Reason reason : REASONS) {
            THRESHOLDS[FIRST_REASON + reason.ordinal()] = Threshold.notTested(reason);
        }
    }

    private PackedThresholds() {}

    static long pack(Audiogram audiogram, Ear ear) {
        long packed = 0;
        for (Frequency frequency : FREQUENCIES) {
            packed = packed << BITS | code(audiogram.threshold(ear, frequency));
        }
        return packed;
    }

    static void unpack(long packed, Ear ear, Audiogram.Builder audiogram) {
        long rest = packed;
        for (int i = FREQUENCIES.length - 1; i >= 0; i--) {
            audiogram.set(ear, FREQUENCIES[i], THRESHOLDS[(int) (rest & MASK)]);
            rest >>>= BITS;
        }
    }

    private static int code(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured -> measured.level().decibels() - HearingLevel.LOWEST_DB;
            case Threshold.NoResponse noResponse ->
                noResponse
                        .limit()
                        .map(limit -> FIRST_LIMIT + limit.decibels() - HearingLevel.LOWEST_DB)
                        .orElse(NO_LIMIT);
            case NotTested notTested -> FIRST_REASON + notTested.reason().ordinal();
        };
    }
}
