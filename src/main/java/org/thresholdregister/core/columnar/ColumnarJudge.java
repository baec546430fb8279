package org.thresholdregister.core.columnar;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.JudgingOptions;

/**
 * Judges a whole population at once, on all processors, and gives for every worker what
 * {@link org.thresholdregister.core.judging.Judge} gives.
 */
public final class ColumnarJudge {

    /** So many workers are judged by one thread in one go. */
    private static final int PART = 1 << 11;

    private ColumnarJudge() {}

    /** The same population and options always give the same answers. */
    public static JudgedPopulation judge(Population population, JudgingOptions options) {
        Limits limits = Limits.osha();
        boolean baselinesStay = options.baselineRevision() == BaselineRevision.OFF;
        int workers = population.workerCount();
        Answers answers = new Answers(population.testCount(), options.baselineRevision() == BaselineRevision.APPLY);
        int[] followUpCounts = new int[workers];
        Map<Integer, List<BaselineChange>> proposals = new ConcurrentHashMap<>();
        FollowUpColumns[] parts = IntStream.range(0, (workers + PART - 1) / PART)
                .parallel()
                .mapToObj(part -> {
                    int first = part * PART;
                    int end = Math.min(workers, first + PART);
                    FollowUpColumns followUps = new FollowUpColumns(2 * (end - first));
                    ColumnarWay columnar = new ColumnarWay(population, options, limits, answers, followUps);
                    ReadableWay readable = new ReadableWay(population, options, answers, followUps, proposals);
                    for (int worker = first; worker < end; worker++) {
                        int before = followUps.size();
                        if (!baselinesStay || !columnar.judge(worker)) {
                            readable.judge(worker);
                        }
                        followUpCounts[worker] = followUps.size() - before;
                    }
                    return followUps;
                })
                .toArray(FollowUpColumns[]::new);
        return new JudgedPopulation(
                population, options, limits, answers, starts(followUpCounts), joined(parts), Map.copyOf(proposals));
    }

    private static int[] starts(int[] counts) {
        int[] starts = new int[counts.length + 1];
        for (int i = 0; i < counts.length; i++) {
            starts[i + 1] = starts[i] + counts[i];
        }
        return starts;
    }

    private static FollowUpColumns joined(FollowUpColumns[] parts) {
        int size = 0;
        for (FollowUpColumns part : parts) {
            size += part.size();
        }
        FollowUpColumns all = new FollowUpColumns(size);
        for (FollowUpColumns part : parts) {
            all.addAll(part);
        }
        return all;
    }
}
