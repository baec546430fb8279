package org.thresholdregister.core.audiometry;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Objects;

/**
 * One hearing test: a threshold for each ear and {@link Frequency}, with the day and the purpose. Immutable. A worker
 * has at most one test of a purpose on a day, so that {@link #CHRONOLOGICAL} orders a worker's tests without ties.
 */
public final class Audiogram {

    /** By day, then by purpose as {@link TestPurpose} lists them. */
    public static final Comparator<Audiogram> CHRONOLOGICAL =
            Comparator.comparing(Audiogram::date).thenComparing(Audiogram::purpose);

    private static final int FREQUENCIES = Frequency.values().length;

    private final LocalDate date;
    private final TestPurpose purpose;
    private final Threshold[] thresholds;

    private Audiogram(LocalDate date, TestPurpose purpose, Threshold[] thresholds) {
        this.date = date;
        this.purpose = purpose;
        this.thresholds = thresholds;
    }

    /** Collects thresholds and makes the audiogram once. */
    public static final class Builder {
        private final LocalDate date;
        private final TestPurpose purpose;
        private final Threshold[] thresholds = new Threshold[2 * FREQUENCIES];

        public Builder(LocalDate date, TestPurpose purpose) {
            this.date = date;
            this.purpose = purpose;
            Arrays.fill(thresholds, Threshold.notGiven());
        }

        public Builder set(Ear ear, Frequency frequency, Threshold threshold) {
            thresholds[index(ear, frequency)] = threshold;
            return this;
        }

        public Audiogram build() {
            return new Audiogram(date, purpose, thresholds.clone());
        }
    }

    /** This audiogram with one threshold set. */
    public Audiogram with(Ear ear, Frequency frequency, Threshold threshold) {
        Threshold[] changed = thresholds.clone();
        changed[index(ear, frequency)] = threshold;
        return new Audiogram(date, purpose, changed);
    }

    public LocalDate date() {
        return date;
    }

    public TestPurpose purpose() {
        return purpose;
    }

    public Threshold threshold(Ear ear, Frequency frequency) {
        return thresholds[index(ear, frequency)];
    }

    /** The sum of the levels at 2000, 3000 and 4000 Hz in dB; a third of it is the mean level. Never age-corrected. */
    public DecibelRange levelSum(Ear ear) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : Frequency.AVERAGED) {
            sum = sum.plus(threshold(ear, frequency).range());
        }
        return sum;
    }

    private static int index(Ear ear, Frequency frequency) {
        return ear.ordinal() * FREQUENCIES + frequency.ordinal();
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof Audiogram that
                        && date.equals(that.date)
                        && purpose == that.purpose
                        && Arrays.equals(thresholds, that.thresholds);
    }

    @Override
    public int hashCode() {
        return Objects.hash(date, purpose, Arrays.hashCode(thresholds));
    }

    /** The day and the purpose only: thresholds are health data and stay out of logs. */
    @Override
    public String toString() {
        return purpose.word() + " " + date;
    }
}
