package org.thresholdregister.benchmark;

import java.time.LocalDate;
import java.util.Random;

/**
 * An invented worker whose tests follow one another: hearing that falls with age and noise, a test each year, a retest
 * after some shifts, in time or late, and now and then a cell without a number. All of it falls the same way for the
 * same seed and number.
 */
final class InventedWorker {

    private static final int CELLS = 14;
    private static final int FIRST_AVERAGED = 2;
    private static final int LAST_AVERAGED = 4;
    private static final int CELLS_PER_EAR = CELLS / 2;
    private static final int LOUDEST_OF_THE_INSTRUMENT = 95;
    private static final String[] WITHOUT_A_NUMBER = {"", "DNT", "CNT", "NR"};

    /** Loss in dB a year, at 500 to 8000 Hz, without noise. */
    private static final double[] YEARLY_LOSS = {0.2, 0.2, 0.3, 0.5, 0.7, 0.8, 0.8};

    private final Random chance;
    private final int number;
    private final String site;
    private final LocalDate birthDate;
    private final boolean birthDateGiven;
    private final String sex;
    private final boolean hasBaseline;
    private final double noiseLoss;
    private final int stepDecibels;
    private final LocalDate firstTest;

    private final double[] hearing = new double[CELLS];
    private final String[] cells = new String[CELLS];
    private final int[] levels = new int[CELLS];
    private int[] firstLevels = new int[0];
    private LocalDate annualDate;
    private LocalDate date;
    private String purpose = "";
    private int annualTests;
    private boolean retestOwed;

    InventedWorker(int number, long seed) {
        this.number = number;
        chance = new Random(seed + number * 0x9E3779B97F4A7C15L);
        site = "Works " + (char) ('A' + chance.nextInt(6));
        firstTest = BenchmarkFiles.AS_OF.minusDays(3300 + chance.nextInt(353));
        LocalDate bornAroundTheTest = firstTest.minusYears(18 + chance.nextInt(45));
        birthDate = happens(0.1) ? bornAroundTheTest : bornAroundTheTest.minusDays(chance.nextInt(365));
        birthDateGiven = !happens(0.02);
        sex = happens(0.01) ? "" : happens(0.3) ? "F" : "M";
        hasBaseline = !happens(0.03);
        noiseLoss = happens(0.15) ? 2.0 * chance.nextDouble() : 0.2;
        stepDecibels = happens(0.2) ? 1 : 5;
        double severeLoss = happens(0.01) ? 60 : 0;
        double years = firstTest.getYear() - birthDate.getYear();
        for (int cell = 0; cell < CELLS; cell++) {
            double ageLoss = YEARLY_LOSS[cell % CELLS_PER_EAR] * (years - 18);
            hearing[cell] = 3 + ageLoss + severeLoss + 4 * chance.nextGaussian();
        }
        annualDate = firstTest;
        date = firstTest;
    }

    /** The letter of the site comes first, so that files are not in the order of the ids. */
    String workerId() {
        return site.charAt(site.length() - 1)
                + Integer.toString(1_000_000 + number).substring(1);
    }

    String birthDate() {
        return birthDateGiven ? birthDate.toString() : "";
    }

    String sex() {
        return sex;
    }

    String site() {
        return site;
    }

    String department() {
        return "Line " + (number % 4 + 1);
    }

    LocalDate enrolledFrom() {
        return firstTest;
    }

    /** Makes the next test; what the accessors below give is of that test. */
    void takeTest() {
        if (retestOwed) {
            date = date.plusDays(3 + chance.nextInt(33));
            purpose = "retest";
            measure(0);
            retestOwed = happens(0.1);
        } else {
            growOlder();
            annualDate =
                    firstTest.plusDays(Math.round(365.25 * annualTests) + (annualTests == 0 ? 0 : -chance.nextInt(25)));
            date = annualDate;
            purpose = annualPurpose();
            annualTests++;
            measure(happens(0.05) ? 10 + chance.nextInt(10) : 0);
            retestOwed = showsAShift() && happens(0.65);
        }
        if (firstLevels.length == 0) {
            firstLevels = levels.clone();
        }
        writeCells();
    }

    private String annualPurpose() {
        if (hasBaseline && annualTests == (number % 40 == 0 ? 1 : 0)) {
            return "baseline";
        }
        if (annualTests > 2 && happens(0.02)) {
            return happens(0.5) ? "exit" : happens(0.5) ? "other" : "baseline";
        }
        return "annual";
    }

    private void growOlder() {
        for (int cell = 0; cell < CELLS; cell++) {
            int frequency = cell % CELLS_PER_EAR;
            boolean harmedByNoise = frequency >= FIRST_AVERAGED;
            hearing[cell] += YEARLY_LOSS[frequency] + (harmedByNoise ? noiseLoss : 0);
        }
    }

    private void measure(int temporaryLoss) {
        for (int cell = 0; cell < CELLS; cell++) {
            double level = hearing[cell] + 3 * chance.nextGaussian();
            if (cell % CELLS_PER_EAR >= FIRST_AVERAGED) {
                level += temporaryLoss;
            }
            levels[cell] = (int) Math.max(-10, stepDecibels * Math.round(level / stepDecibels));
        }
    }

    private boolean showsAShift() {
        if (firstLevels.length == 0) {
            return false;
        }
        for (int ear = 0; ear < CELLS; ear += CELLS_PER_EAR) {
            int shift = 0;
            for (int cell = ear + FIRST_AVERAGED; cell <= ear + LAST_AVERAGED; cell++) {
                shift += levels[cell] - firstLevels[cell];
            }
            if (shift >= 30) {
                return true;
            }
        }
        return false;
    }

    private void writeCells() {
        for (int cell = 0; cell < CELLS; cell++) {
            cells[cell] = levels[cell] > LOUDEST_OF_THE_INSTRUMENT
                    ? ">" + LOUDEST_OF_THE_INSTRUMENT
                    : Integer.toString(levels[cell]);
        }
        if (happens(0.03)) {
            for (int times = 1 + chance.nextInt(3); times > 0; times--) {
                cells[chance.nextInt(CELLS)] =
                        happens(0.4) ? ">" + levelOr(60) : WITHOUT_A_NUMBER[chance.nextInt(WITHOUT_A_NUMBER.length)];
            }
        }
    }

    private int levelOr(int least) {
        return least + 5 * chance.nextInt(8);
    }

    private boolean happens(double probability) {
        return chance.nextDouble() < probability;
    }

    LocalDate date() {
        return date;
    }

    String purpose() {
        return purpose;
    }

    /** The thresholds as the files write them, 500 to 8000 Hz, the left ear before the right. */
    String[] cells() {
        return cells;
    }
}
