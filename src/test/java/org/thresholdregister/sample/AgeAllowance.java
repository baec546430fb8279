package org.thresholdregister.sample;

import java.time.LocalDate;
import java.time.Period;
import org.thresholdregister.core.aging.Sex;

/**
 * What the plant's nurse allows for aging: the values at 2000, 3000 and 4000 Hz added up, in dB, from Tables F-1 and
 * F-2 of 29 CFR 1910.95 Appendix F. Kept apart from the rule engine, so that the sample does not move when it does.
 */
final class AgeAllowance {

    private static final int FIRST_AGE = 20;

    /** Ages 20 to 60. */
    private static final int[] SUM_MEN = {
        12, 12, 12, 13, 14, 15, 16, 17, 18, 18, 19, 20, 22, 22, 24, 24, 26, 27, 28, 30, 30, 30, 34, 35, 36, 38, 40, 41,
        42, 45, 47, 48, 51, 53, 54, 57, 59, 61, 65, 66, 69
    };

    private static final int[] SUM_WOMEN = {
        10, 11, 12, 13, 13, 13, 14, 15, 15, 15, 16, 17, 18, 18, 18, 20, 21, 21, 21, 23, 23, 24, 26, 26, 26, 28, 29, 30,
        31, 31, 33, 34, 35, 36, 38, 39, 40, 41, 43, 44, 45
    };

    private AgeAllowance() {}

    static int sumDb(Sex sex, LocalDate birthDate, LocalDate from, LocalDate to) {
        int[] sums = sex == Sex.FEMALE ? SUM_WOMEN : SUM_MEN;
        return sums[row(birthDate, to)] - sums[row(birthDate, from)];
    }

    private static int row(LocalDate birthDate, LocalDate day) {
        int age = Period.between(birthDate, day).getYears();
        return Math.clamp(age - FIRST_AGE, 0, SUM_MEN.length - 1);
    }
}
