package org.thresholdregister.core.columnar;

import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Frequency;

/** The age correction of the averaged frequencies together, in dB, by sex and age: one number where a sum is judged. */
final class AgeSums {

    /** The ages that are looked up; the published tables are constant far inside of them. */
    private static final int OLDEST = 150;

    private final int[][] sums = new int[Sex.values().length][OLDEST + 1];

    AgeSums(Limits limits) {
        for (Sex sex : Sex.values()) {
            for (int age = 0; age <= OLDEST; age++) {
                for (Frequency frequency : limits.frequencies()) {
                    sums[sex.ordinal()][age] += limits.ageCorrection(sex, age, frequency);
                }
            }
        }
    }

    /** @param sex its ordinal */
    int at(int sex, int ageYears) {
        return sums[sex][Math.clamp(ageYears, 0, OLDEST)];
    }
}
