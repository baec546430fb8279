package org.thresholdregister.sample;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;

/**
 * How one invented person really hears, in dB HL as a decimal, on any day. Aging follows ISO 7029:2000 (median and
 * spread by age and sex), noise follows ISO 1999:2013 (growth by level and years, worst at 4000 Hz), both as published
 * formulas with the person's own place in the spread. They make the sample plausible; nothing is checked against them.
 */
final class Hearing {

    /** How much of a change at 4000 Hz shows at each frequency, 500 to 8000 Hz. */
    private static final double[] NOTCH = {0, 0.1, 0.65, 1, 1.15, 1, 0.45};

    /** ISO 7029:2000: dB per squared year above 18, and the spread upwards and downwards at 18. */
    private static final double[] AGING_MEN = {0.0035, 0.0040, 0.0070, 0.0115, 0.0160, 0.0180, 0.0220};

    private static final double[] AGING_WOMEN = {0.0035, 0.0040, 0.0060, 0.0075, 0.0090, 0.0120, 0.0150};
    private static final double[] SPREAD_UP_MEN = {6.12, 6.12, 7.23, 7.78, 8.34, 9.45, 10.56};
    private static final double[] SPREAD_UP_WOMEN = {6.12, 6.12, 6.67, 7.23, 7.78, 8.90, 10.56};
    private static final double SPREAD_DOWN_SHARE = 0.8;

    /** What young adults read above audiometric zero in a workplace booth. */
    private static final double[] USUAL_OFFSET = {5, 4, 3, 3, 4, 8, 4};

    /** ISO 1999:2013: u, v and the level in dB below which there is no noise effect. */
    private static final double[] NOISE_U = {-0.033, -0.020, -0.045, 0.012, 0.025, 0.019};

    private static final double[] NOISE_V = {0.110, 0.070, 0.066, 0.037, 0.025, 0.024};
    private static final int[] NOISE_FLOOR_DB = {93, 89, 80, 77, 75, 77};

    private final Sex sex;
    private final LocalDate birthDate;
    private final LocalDate exposedSince;
    private final double levelAtEarDb;
    private final double susceptibility;
    private final double[][] place = new double[2][Frequency.values().length];
    private final List<Change> changes = new ArrayList<>();

    /** A lasting worsening on top of aging and noise, in dB at 3000 Hz. */
    private record Change(Ears ears, LocalDate from, double decibels) {}

    Hearing(Dice dice, Sex sex, LocalDate birthDate, LocalDate exposedSince, double twaDba) {
        this.sex = sex;
        this.birthDate = birthDate;
        this.exposedSince = exposedSince;
        // What protectors let through differs more between people than the noise does.
        this.levelAtEarDb = Math.min(twaDba, twaDba - dice.normal(5, 3.5));
        this.susceptibility = dice.normal(0, 1);
        double person = dice.normal(0, 1);
        for (double[] ear : place) {
            double thisEar = dice.normal(0, 1);
            for (int i = 0; i < ear.length; i++) {
                ear[i] = 0.75 * person + 0.40 * thisEar + 0.53 * dice.normal(0, 1);
            }
        }
    }

    void worsens(Ears ears, LocalDate from, double decibels) {
        changes.add(new Change(ears, from, decibels));
    }

    double levelDb(Ear ear, Frequency frequency, LocalDate day) {
        int i = frequency.ordinal();
        double aging = aging(ear, i, day);
        double noise = noise(i, day);
        // ISO 1999 formula 1: the two add up to a little less than their sum.
        double level = USUAL_OFFSET[i] + aging + noise - Math.max(0, aging) * noise / 120;
        for (Change change : changes) {
            if (change.ears().include(ear) && !day.isBefore(change.from())) {
                level += NOTCH[i] * change.decibels();
            }
        }
        return level;
    }

    private double aging(Ear ear, int i, LocalDate day) {
        double years = Math.max(0, yearsBetween(birthDate, day) - 18);
        double median = (sex == Sex.FEMALE ? AGING_WOMEN : AGING_MEN)[i] * years * years;
        double up = (sex == Sex.FEMALE ? SPREAD_UP_WOMEN : SPREAD_UP_MEN)[i];
        double place = this.place[ear.ordinal()][i];
        double spread = place > 0 ? up + 0.445 * median : SPREAD_DOWN_SHARE * up + 0.356 * median;
        return median + place * spread;
    }

    private double noise(int i, LocalDate day) {
        if (i == Frequency.HZ_8000.ordinal()) {
            return 0.3 * noise(Frequency.HZ_6000.ordinal(), day);
        }
        double years = Math.max(0, yearsBetween(exposedSince, day));
        double over = Math.max(0, levelAtEarDb - NOISE_FLOOR_DB[i]);
        double yearsInFormula = Math.clamp(years, 10, 40);
        double median = (NOISE_U[i] + NOISE_V[i] * StrictMath.log10(yearsInFormula)) * over * over;
        double grown = years < 10 ? StrictMath.log10(years + 1) / StrictMath.log10(11) : 1;
        return Math.max(0, median * grown * (1 + 0.35 * susceptibility));
    }

    private static double yearsBetween(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / 365.25;
    }
}
