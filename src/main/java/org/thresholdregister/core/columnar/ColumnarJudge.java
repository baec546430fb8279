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
 * {@link org.thresholdregister.core.judging.Judge} gives. Where sums of changes from the baseline answer, it works on the
 * columns; where a baseline may have moved, or the rule set asks another kind of question, it asks that judge.
 */
public final class ColumnarJudge {

    /** So many workers are judged by one thread in one go. */
    private static final int PART = 1 << 11;

    private final Population population;
    private final JudgingOptions options;
    private final AppliedRules rules;
    private final Answers answers;
    private final int[] followUpCounts;
    private final Map<Integer, List<BaselineChange>> proposals = new ConcurrentHashMap<>();

    private ColumnarJudge(Population population, JudgingOptions options) {
        this.population = population;
        this.options = options;
        this.rules = new AppliedRules(options);
        this.answers = new Answers(population.testCount(), options.baselineRevision() == BaselineRevision.APPLY);
        this.followUpCounts = new int[population.workerCount()];
    }

    /** The same population and options always give the same answers. */
    public static JudgedPopulation judge(Population population, JudgingOptions options) {
        return new ColumnarJudge(population, options).judge();
    }

    private JudgedPopulation judge() {
        FollowUpColumns[] parts = IntStream.range(0, (population.workerCount() + PART - 1) / PART)
                .parallel()
                .mapToObj(part -> judge(part * PART, Math.min(population.workerCount(), (part + 1) * PART)))
                .toArray(FollowUpColumns[]::new);
        return new JudgedPopulation(
                population, options, rules, answers, starts(followUpCounts), joined(parts), Map.copyOf(proposals));
    }

    /** Judges the workers from the first on, up to the end, and gives what is owed to them. */
    private FollowUpColumns judge(int first, int end) {
        FollowUpColumns followUps = new FollowUpColumns(2 * (end - first));
        ColumnarWay columnar = new ColumnarWay(population, options, rules, answers, followUps);
        ReadableWay readable = new ReadableWay(population, options, answers, followUps, proposals);
        boolean areColumnar = rules.areColumnar();
        boolean proposes = options.baselineRevision() == BaselineRevision.PROPOSE;
        for (int worker = first; worker < end; worker++) {
            int before = followUps.size();
            if (!areColumnar || !columnar.judge(worker)) {
                readable.judge(worker);
            } else if (proposes && columnar.mayRevise()) {
                readable.propose(worker);
            }
            followUpCounts[worker] = followUps.size() - before;
        }
        return followUps;
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
