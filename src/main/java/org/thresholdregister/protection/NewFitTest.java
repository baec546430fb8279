package org.thresholdregister.protection;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A wearer's own attenuation, as a fit test found it.
 *
 * @param par personal attenuation rating in dB
 * @param percentile of fits that the value is stated for, 1 to 99
 * @param method as free text
 * @param tester who tested; may be empty
 */
public record NewFitTest(
        long productKey,
        String size,
        LocalDate testedOn,
        BigDecimal par,
        int percentile,
        String method,
        String tester) {

    public static final int LONGEST_METHOD = 200;
    public static final int LONGEST_TESTER = 200;
    public static final int HIGHEST_PAR = 60;

    boolean isInRange() {
        return par.signum() >= 0
                && par.compareTo(BigDecimal.valueOf(HIGHEST_PAR)) <= 0
                && percentile >= 1
                && percentile <= 99;
    }
}
