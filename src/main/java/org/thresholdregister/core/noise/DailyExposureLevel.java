package org.thresholdregister.core.noise;

import java.util.List;
import org.thresholdregister.core.regulation.Citation;

/**
 * Noise exposure level normalised to eight hours, LEX,8h, in dBA: equal energy (3 dB exchange), with no threshold. It is
 * what ISO 1999 and the rules of Britain, the European Union and Canada speak of.
 */
public record DailyExposureLevel(double decibels) {

    public static final Citation BASIS =
            new Citation("ISO 1999; Control of Noise at Work Regulations 2005, Schedule 1");

    private static final double NORMAL_HOURS = 8;
    private static final double DAYS_OF_A_WEEK = 5;

    /** LEX,8h = 10 log10((1/8 h) sum of T 10^(L/10)). */
    public static DailyExposureLevel of(NoiseDay day) {
        double energy = 0;
        for (var spent : day.hoursByLevel().entrySet()) {
            energy += spent.getValue().doubleValue() * energy(spent.getKey().decibels());
        }
        return new DailyExposureLevel(10 * Math.log10(energy / NORMAL_HOURS));
    }

    /** The weekly level: the energy of the days worked over five days, however many there were. */
    public static DailyExposureLevel ofWeek(List<DailyExposureLevel> days) {
        if (days.isEmpty()) {
            throw new IllegalArgumentException("a week has at least one day of work");
        }
        double energy = days.stream()
                .mapToDouble(day -> energy(day.decibels()))
                .sorted()
                .sum();
        return new DailyExposureLevel(10 * Math.log10(energy / DAYS_OF_A_WEEK));
    }

    private static double energy(double decibels) {
        return Math.pow(10, decibels / 10);
    }
}
