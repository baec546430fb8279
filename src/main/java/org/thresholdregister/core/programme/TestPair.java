package org.thresholdregister.core.programme;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

/**
 * Two successive tests of one worker, each against the one before it and not against the baseline. No allowance is made
 * for age, which is next to nothing in a year.
 */
public record TestPair(Audiogram earlier, Audiogram later) {

    /** The frequencies that the analysis of ANSI/ASA S12.13 TR-2002 compares (from memory). */
    public static final List<Frequency> COMPARED = List.of(
            Frequency.HZ_500,
            Frequency.HZ_1000,
            Frequency.HZ_2000,
            Frequency.HZ_3000,
            Frequency.HZ_4000,
            Frequency.HZ_6000);

    /** A change of as many dB at any of the frequencies in either ear counts (ANSI/ASA S12.13, from memory). */
    public static final int CHANGE_DB = 15;

    /** Whether every compared threshold of both tests is a plain number; otherwise the pair is counted nowhere. */
    public boolean isComplete() {
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : COMPARED) {
                if (change(ear, frequency).isEmpty()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether the later test is {@value #CHANGE_DB} dB or more worse somewhere, as far as plain numbers show. */
    public boolean isWorse() {
        return anyChange(change -> change >= CHANGE_DB);
    }

    /** Whether the later test is {@value #CHANGE_DB} dB or more worse or better somewhere. */
    public boolean isWorseOrBetter() {
        return anyChange(change -> Math.abs(change) >= CHANGE_DB);
    }

    /**
     * The mean change of an ear over these frequencies in dB, worse is positive.
     *
     * @throws IllegalStateException where a threshold is no plain number
     */
    double meanChange(Ear ear, List<Frequency> frequencies) {
        return frequencies.stream()
                .mapToInt(frequency -> change(ear, frequency)
                        .orElseThrow(() -> new IllegalStateException("an incomplete pair has no mean change")))
                .average()
                .orElseThrow();
    }

    private boolean anyChange(IntPredicate asked) {
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : COMPARED) {
                OptionalInt change = change(ear, frequency);
                if (change.isPresent() && asked.test(change.getAsInt())) {
                    return true;
                }
            }
        }
        return false;
    }

    private OptionalInt change(Ear ear, Frequency frequency) {
        return later.threshold(ear, frequency)
                .range()
                .minus(earlier.threshold(ear, frequency).range())
                .exact();
    }
}
