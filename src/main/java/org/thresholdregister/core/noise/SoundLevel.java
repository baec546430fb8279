package org.thresholdregister.core.noise;

/** A-weighted sound level in dBA, slow response. */
public record SoundLevel(double decibels) implements Comparable<SoundLevel> {

    public static final double LOWEST_DBA = 0;
    public static final double HIGHEST_DBA = 160;

    /** @throws IllegalArgumentException outside {@value #LOWEST_DBA} to {@value #HIGHEST_DBA} dBA */
    public SoundLevel {
        if (!(decibels >= LOWEST_DBA && decibels <= HIGHEST_DBA)) {
            throw new IllegalArgumentException("a sound level goes from 0 to 160 dBA");
        }
    }

    public static SoundLevel ofDba(double decibels) {
        return new SoundLevel(decibels);
    }

    /** Whether it is at least this high. */
    public boolean reaches(double dba) {
        return Tolerance.reaches(decibels, dba);
    }

    @Override
    public int compareTo(SoundLevel other) {
        return Double.compare(decibels, other.decibels);
    }
}
