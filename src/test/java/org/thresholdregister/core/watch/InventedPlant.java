package org.thresholdregister.core.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

/**
 * An invented plant of 300 people on two units, tested yearly, most of whom lose a little hearing in the high frequencies,
 * some much. A test errs by the day's attention (2.5 dB for all of it), by the fit of each earphone (1.5 dB) and at each
 * threshold (4 dB, before the 5 dB step); two of a hundred tests are bad altogether; the first test is 2 dB worse than it
 * need be. Nothing of it is shared with the watch.
 */
final class InventedPlant {

    static final String WATCHED = "unit 1";
    private static final int PEOPLE = 300;
    private static final LocalDate FIRST_DAY = LocalDate.of(2018, 1, 1);

    /** What is added to the thresholds of the watched unit from a test on. */
    interface Fault {
        double db(Ear ear, Frequency frequency);
    }

    private final Random random;
    private final List<WatchedTest> tests = new ArrayList<>();
    private int onWatchedUnit;

    InventedPlant(long seed) {
        random = new Random(seed);
    }

    /** Tests of so many years, without a fault until so many tests were made on the watched unit. */
    List<WatchedTest> tests(int years, int faultFromTest, Fault fault) {
        double[][][] hearing = new double[PEOPLE][2][7];
        double[][] yearly = new double[PEOPLE][7];
        for (int person = 0; person < PEOPLE; person++) {
            double notch = Math.max(0, random.nextGaussian() * 12 + 12);
            boolean losing = random.nextInt(8) == 0;
            for (int f = 0; f < 7; f++) {
                boolean high = f >= 3 && f <= 5;
                yearly[person][f] = (high ? 0.7 : 0.3) * (losing ? 4 : 1) * random.nextDouble();
                for (int ear = 0; ear < 2; ear++) {
                    hearing[person][ear][f] = 8 + random.nextGaussian() * 5 + (high ? notch : notch / 4);
                }
            }
        }
        for (int year = 0; year < years; year++) {
            for (int place = 0; place < PEOPLE; place++) {
                int person = (place * 7 + year) % PEOPLE;
                LocalDate day = FIRST_DAY.plusYears(year).plusDays(place);
                boolean watched = random.nextBoolean();
                boolean faulty = watched && onWatchedUnit++ >= faultFromTest;
                tests.add(new WatchedTest(
                        watched ? WATCHED : "unit 2", "P" + person, test(day, hearing[person], year, faulty, fault)));
                for (int f = 0; f < 7; f++) {
                    hearing[person][0][f] += yearly[person][f];
                    hearing[person][1][f] += yearly[person][f];
                }
            }
        }
        return tests;
    }

    private Audiogram test(LocalDate day, double[][] hearing, int year, boolean faulty, Fault fault) {
        var audiogram = new Audiogram.Builder(day, year == 0 ? TestPurpose.BASELINE : TestPurpose.ANNUAL);
        double attention = random.nextGaussian() * 2.5 + (random.nextInt(50) == 0 ? 12 : 0) + (year == 0 ? 2 : 0);
        for (Ear ear : Ear.values()) {
            double fit = random.nextGaussian() * 1.5;
            for (Frequency frequency : Frequency.values()) {
                double level = hearing[ear.ordinal()][frequency.ordinal()]
                        + attention
                        + fit
                        + random.nextGaussian() * 4
                        + (faulty ? fault.db(ear, frequency) : 0);
                int step = (int) (5 * Math.round(level / 5));
                audiogram.set(
                        ear,
                        frequency,
                        Threshold.measured(Math.clamp(step, HearingLevel.LOWEST_DB, HearingLevel.HIGHEST_DB)));
            }
        }
        return audiogram.build();
    }
}
