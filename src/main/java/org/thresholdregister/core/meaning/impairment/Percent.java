package org.thresholdregister.core.meaning.impairment;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** An exact percentage as a fraction in lowest terms: 8.75 % is 35 over 4. */
public record Percent(int numerator, int denominator) implements Comparable<Percent> {

    public Percent {
        if (numerator < 0 || denominator < 1) {
            throw new IllegalArgumentException("no percentage: " + numerator + "/" + denominator);
        }
        int divisor = greatestCommonDivisor(numerator, denominator);
        numerator /= divisor;
        denominator /= divisor;
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }

    /** For display: {@code 3.06}, half up, without zeros at the end. */
    public String rounded(int decimals) {
        return BigDecimal.valueOf(numerator)
                .divide(BigDecimal.valueOf(denominator), decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    @Override
    public int compareTo(Percent other) {
        return Long.compare((long) numerator * other.denominator, (long) other.numerator * denominator);
    }
}
