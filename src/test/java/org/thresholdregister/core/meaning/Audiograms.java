package org.thresholdregister.core.meaning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.regulation.Answer;

/** Audiograms in the notation of the files, with cells from 500 Hz up; cells that are left out were not tested. */
public final class Audiograms {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);

    private Audiograms() {}

    public static Audiogram of(String left, String right) {
        var builder = new Audiogram.Builder(DAY, TestPurpose.ANNUAL);
        set(builder, Ear.LEFT, left);
        set(builder, Ear.RIGHT, right);
        return builder.build();
    }

    private static void set(Audiogram.Builder builder, Ear ear, String cells) {
        String[] split = cells.split(" ");
        for (int i = 0; i < split.length; i++) {
            builder.set(ear, Frequency.values()[i], Vectors.threshold(split[i]));
        }
    }

    /** The same level at every frequency of both ears. */
    public static Audiogram flat(int level) {
        String cells = (level + " ").repeat(Frequency.values().length).trim();
        return of(cells, cells);
    }

    /** Levels on the 5 dB step, every one of them a number. */
    public static Audiogram random(Random random, int highest) {
        var builder = new Audiogram.Builder(DAY, TestPurpose.ANNUAL);
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(ear, frequency, Threshold.measured(5 * (random.nextInt(highest / 5 + 3) - 2)));
            }
        }
        return builder.build();
    }

    /**
     * What every filling of two thresholds answers, and what the question answers with both blank. Levels run over the
     * whole range of an audiometer.
     */
    public static Open withTwoBlank(Random random, Function<Audiogram, Answer> question) {
        Audiogram full = random(random, 80);
        Ear ear = Ear.values()[random.nextInt(2)];
        Ear otherEar = Ear.values()[random.nextInt(2)];
        Frequency one = Frequency.values()[random.nextInt(7)];
        Frequency other = Frequency.values()[random.nextInt(7)];
        List<Answer> filled = new ArrayList<>();
        for (int first = -10; first <= 120; first += 5) {
            for (int second = -10; second <= 120; second += 5) {
                filled.add(question.apply(full.with(ear, one, Threshold.measured(first))
                        .with(otherEar, other, Threshold.measured(second))));
            }
        }
        Answer blank =
                question.apply(full.with(ear, one, Threshold.notGiven()).with(otherEar, other, Threshold.notGiven()));
        return new Open(blank, filled);
    }

    /** The answer with blanks, and the answers that filling them in gives. */
    public record Open(Answer blank, List<Answer> filled) {

        /** No filling contradicts the answer with blanks. */
        public boolean agree() {
            return blank == Answer.UNDECIDED || filled.stream().allMatch(answer -> answer == blank);
        }
    }
}
