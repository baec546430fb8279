package org.thresholdregister.core.columnar;

import org.thresholdregister.core.aging.AgeTables;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Frequency;

/** The age corrections at 2000, 3000 and 4000 Hz, in dB, by sex and age: one by one, and their sum. */
final class AgeCorrections {

    /** The ages that are looked up; the published tables are constant far inside of them. */
    private static final int OLDEST = 150;

    private static final int FREQUENCIES = Frequency.values().length;

    private final int[][] sums = new int[Sex.values().length][OLDEST + 1];
    private final int[][] values = new int[Sex.values().length][(OLDEST + 1) * FREQUENCIES];

    AgeCorrections(AgeTables tables) {
        for (Sex sex : Sex.values()) {
            for (int age = 0; age <= OLDEST; age++) {
                for (Frequency frequency : Frequency.AVERAGED) {
                    int correction = tables.of(sex).decibels(age, frequency);
                    values[sex.ordinal()][place(age, frequency)] = correction;
                    sums[sex.ordinal()][age] += correction;
                }
            }
        }
    }

    private static int place(int ageYears, Frequency frequency) {
        return ageYears * FREQUENCIES + frequency.ordinal();
    }

    /** @param sex its ordinal */
    int sum(int sex, int ageYears) {
        return sums[sex][Math.clamp(ageYears, 0, OLDEST)];
    }

    /** At one of the averaged frequencies. */
    int at(int sex, int ageYears, Frequency frequency) {
        return values[sex][place(Math.clamp(ageYears, 0, OLDEST), frequency)];
    }
}
