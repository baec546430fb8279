package org.thresholdregister.drawing;

import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;

/**
 * Where a frequency and a hearing level lie on the drawing, in px: levels downward, frequencies by octaves, one octave
 * as wide as 20 dB is tall (ASHA Guidelines for Audiometric Symbols, 1990, and ISO 8253-1; from memory).
 *
 * @param deepestDb the level of the lowest line, dB HL
 */
record Plot(int deepestDb) {

    static final double OCTAVE_PX = 80;
    static final double DECIBEL_PX = OCTAVE_PX / 20;

    /** The usual lowest line; the plot grows where a value needs room beyond it. */
    static final int USUAL_DEEPEST_DB = 110;

    static final int DEEPEST_DB = HearingLevel.HIGHEST_DB;

    /** Room around the outermost lines, so that no symbol and no arrow is cut. */
    static final double MARGIN_PX = 28;

    static final double FRAME_LEFT = 62;
    static final double FRAME_TOP = 48;
    static final double FRAME_RIGHT_ROOM = 22;

    private static final double OCTAVES = octavesAbove500(Frequency.values()[Frequency.values().length - 1]);

    double x(Frequency frequency) {
        return FRAME_LEFT + MARGIN_PX + octavesAbove500(frequency) * OCTAVE_PX;
    }

    double y(double decibels) {
        return FRAME_TOP + MARGIN_PX + (decibels - HearingLevel.LOWEST_DB) * DECIBEL_PX;
    }

    double frameWidth() {
        return OCTAVES * OCTAVE_PX + 2 * MARGIN_PX;
    }

    double frameHeight() {
        return (deepestDb - HearingLevel.LOWEST_DB) * DECIBEL_PX + 2 * MARGIN_PX;
    }

    double frameRight() {
        return FRAME_LEFT + frameWidth();
    }

    double frameBottom() {
        return FRAME_TOP + frameHeight();
    }

    /** StrictMath, so that every machine draws the same bytes. */
    private static double octavesAbove500(Frequency frequency) {
        return StrictMath.log(frequency.hertz() / 500.0) / StrictMath.log(2);
    }
}
