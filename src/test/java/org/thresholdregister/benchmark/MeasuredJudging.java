package org.thresholdregister.benchmark;

import java.util.ArrayList;
import java.util.List;

/** Judges a task inside this process and says what each stage took. */
@FunctionalInterface
public interface MeasuredJudging {

    StageTimes measure(JudgingTask task) throws Exception;

    /** The median of five rounds, after as many as it takes for the program to be warm. */
    default StageTimes measureWarm(JudgingTask task) throws Exception {
        long warm = System.nanoTime() + 5_000_000_000L;
        do {
            measure(task);
        } while (System.nanoTime() < warm);
        List<StageTimes> rounds = new ArrayList<>();
        for (int round = 0; round < 5; round++) {
            rounds.add(measure(task));
        }
        return StageTimes.medianOf(rounds);
    }
}
