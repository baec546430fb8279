package org.thresholdregister.core.wording;

import org.thresholdregister.core.audiometry.Threshold;

/** One threshold in words: what a table cell, a drawing and a sentence call it. */
public final class ThresholdText {

    private ThresholdText() {}

    /**
     * As short as a table cell and as the audiogram file writes it: {@code 25}, {@code >95}, {@code NR}; in place of the
     * file's blank, {@code DNT} and {@code CNT} it says "not tested" or "could not test". The unit, dB HL, is the
     * heading's to give.
     */
    public static String brief(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured ->
                Integer.toString(measured.level().decibels());
            case Threshold.NoResponse none ->
                none.limit().map(limit -> ">" + limit.decibels()).orElse("NR");
            case Threshold.NotTested untested -> untested(untested.reason());
        };
    }

    /** Whole, with its unit, for a sentence: "25 dB HL", "no response at 95 dB HL", "no response, level not given". */
    public static String full(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured -> measured.level().toString();
            case Threshold.NoResponse none ->
                none.limit().map(limit -> "no response at " + limit).orElse("no response, level not given");
            case Threshold.NotTested untested -> untested(untested.reason());
        };
    }

    private static String untested(Threshold.NotTested.Reason reason) {
        return switch (reason) {
            case NOT_GIVEN, DID_NOT_TEST -> "not tested";
            case COULD_NOT_TEST -> "could not test";
        };
    }
}
