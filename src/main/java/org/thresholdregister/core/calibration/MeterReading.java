package org.thresholdregister.core.calibration;

import java.math.BigDecimal;

/**
 * The sound pressure level that a meter shows, in tenths of a dB, from -30 to 150 dB.
 *
 * @param tenths of a dB
 */
public record MeterReading(int tenths) implements Comparable<MeterReading> {

    private static final int LOWEST = -300;
    private static final int HIGHEST = 1500;

    /** @throws IllegalArgumentException below -30 or above 150 dB */
    public MeterReading {
        if (tenths < LOWEST || tenths > HIGHEST) {
            throw new IllegalArgumentException("a meter shows -30 to 150 dB, not " + tenths + " tenths of a dB");
        }
    }

    public static MeterReading ofDecibels(int decibels) {
        return new MeterReading(10 * decibels);
    }

    /**
     * Reads {@code 81.5} or {@code 40}.
     *
     * @throws IllegalArgumentException where it is no number, has more than one decimal or is out of range
     */
    public static MeterReading parse(String text) {
        try {
            return new MeterReading(new BigDecimal(text).movePointRight(1).intValueExact());
        } catch (ArithmeticException | NumberFormatException e) {
            throw new IllegalArgumentException("no level in dB with at most one decimal: " + text, e);
        }
    }

    /** By how many tenths of a dB this one is higher; negative where it is lower. */
    public int tenthsAbove(MeterReading other) {
        return tenths - other.tenths;
    }

    @Override
    public int compareTo(MeterReading other) {
        return Integer.compare(tenths, other.tenths);
    }

    /** {@code 81.5}, or {@code 77} where there is no fraction. */
    @Override
    public String toString() {
        return inDecibels(tenths);
    }

    /** A number of tenths as people write it: {@code -4.5}. */
    public static String inDecibels(int tenths) {
        return BigDecimal.valueOf(tenths, 1).stripTrailingZeros().toPlainString();
    }
}
