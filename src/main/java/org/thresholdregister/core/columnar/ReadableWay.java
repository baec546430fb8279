package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;
import static org.thresholdregister.core.columnar.Population.NO_TEST;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.recording.Recording;

/** Has one worker after the other judged by {@link Judge} and puts the answers into the columns. */
final class ReadableWay {

    private final Population population;
    private final JudgingOptions options;
    private final Answers answers;
    private final FollowUpColumns followUps;
    private final Map<Integer, List<BaselineChange>> proposals;

    ReadableWay(
            Population population,
            JudgingOptions options,
            Answers answers,
            FollowUpColumns followUps,
            Map<Integer, List<BaselineChange>> proposals) {
        this.population = population;
        this.options = options;
        this.answers = answers;
        this.followUps = followUps;
        this.proposals = proposals;
    }

    void judge(int worker) {
        WorkerJudgement judgement = Judge.judge(population.history(worker), options);
        for (Determination determination : judgement.determinations()) {
            store(worker, determination);
        }
        for (FollowUp owed : judgement.followUps()) {
            followUps.add(
                    owed.kind(),
                    day(owed.dueDate()),
                    owed.testDate().map(ReadableWay::day).orElse(NO_DAY),
                    owed.ears());
        }
        keepProposals(worker, judgement);
    }

    /** Only finds the baseline revisions to propose. */
    void propose(int worker) {
        keepProposals(
                worker, Judge.judge(population.history(worker), options.withBaselineRevision(BaselineRevision.APPLY)));
    }

    private void keepProposals(int worker, WorkerJudgement judgement) {
        if (!judgement.proposals().isEmpty()) {
            proposals.put(worker, judgement.proposals());
        }
    }

    private void store(int worker, Determination determination) {
        int row = Answers.row(
                number(worker, determination.test()), determination.ear().ordinal());
        switch (determination) {
            case Determination.BaselineTest baseline -> answers.set(row, baseline.outcome());
            case Determination.BeforeBaseline before -> answers.set(row, before.outcome());
            case Determination.Retest retest ->
                answers.setCompared(
                        row,
                        retest.outcome(),
                        number(worker, retest.comparison().earlier()),
                        retest.comparison().isShift());
            case Determination.Judged judged -> {
                Optional<Recording.Comparison> forLog = judged.recording().comparison();
                answers.setJudged(
                        row,
                        judged.outcome(),
                        number(worker, judged.comparison().earlier()),
                        judged.comparison().isShift(),
                        number(worker, judged.settledBy()),
                        judged.recording().answer(),
                        forLog.map(comparison -> number(worker, comparison.decidingTest()))
                                .orElse(NO_TEST),
                        forLog.map(comparison ->
                                        number(worker, comparison.reference().audiogram()))
                                .orElse(NO_TEST));
            }
        }
    }

    private int number(int worker, Audiogram audiogram) {
        int occasion = Occasion.of(day(audiogram.date()), audiogram.purpose());
        int test = population.firstTest(worker);
        while (population.occasion(test) != occasion) {
            test++;
        }
        return test;
    }

    private static int day(LocalDate date) {
        return Math.toIntExact(date.toEpochDay());
    }
}
