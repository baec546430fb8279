package org.thresholdregister.core.audiometry;

/**
 * How the mean of the three averaged frequencies is shown: two decimals, half up. For display only; rules compare the
 * sum, because no rounding rule is published.
 */
public final class MeanOfThree {

    private MeanOfThree() {}

    /** The mean of three values with this sum, in dB: {@code 35} gives {@code 11.67}. */
    public static String ofSum(int sumDecibels) {
        int magnitude = Math.abs(sumDecibels);
        int hundredths = (magnitude * 200 + 3) / 6;
        String digits = hundredths / 100 + "." + hundredths / 10 % 10 + hundredths % 10;
        return sumDecibels < 0 ? "-" + digits : digits;
    }
}
