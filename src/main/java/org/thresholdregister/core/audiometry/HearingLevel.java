package org.thresholdregister.core.audiometry;

/**
 * A pure-tone air-conduction hearing level in whole dB HL, from {@value #LOWEST_DB} to {@value #HIGHEST_DB}; larger is
 * worse. A difference of two levels is no level: it is a {@link DecibelRange}.
 */
public record HearingLevel(int decibels) {

    public static final int LOWEST_DB = -10;
    public static final int HIGHEST_DB = 120;

    /** @throws IllegalArgumentException outside the range that a screening audiometer gives */
    public HearingLevel {
        if (!isInRange(decibels)) {
            throw new IllegalArgumentException("hearing level outside " + LOWEST_DB + " to " + HIGHEST_DB + " dB HL");
        }
    }

    public static boolean isInRange(int decibels) {
        return decibels >= LOWEST_DB && decibels <= HIGHEST_DB;
    }
}
