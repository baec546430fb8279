package org.thresholdregister.batch;

import java.nio.file.Path;
import java.util.Iterator;
import org.thresholdregister.benchmark.JudgingTask;
import org.thresholdregister.benchmark.MeasuredJudging;
import org.thresholdregister.benchmark.StageTimes;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.RuleSet;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.intake.FileSet;
import org.thresholdregister.intake.Intake;
import org.thresholdregister.intake.ProblemSpool;
import org.thresholdregister.intake.SourceFile;

/** Reads the files, has {@link Judge} judge one worker after the other, and writes the determinations. */
public final class ReadableJudging implements MeasuredJudging {

    @Override
    public StageTimes measure(JudgingTask task) throws Exception {
        JudgingOptions options = new JudgingOptions(task.asOf(), RuleSet.OSHA, AgeCorrection.ON, BaselineRevision.OFF);
        FileSet files = FileSet.of(SourceFile.of(task.roster()), SourceFile.of(task.audiograms()));
        long judging = 0;
        long writing = 0;
        long began = System.nanoTime();
        try (ProblemSpool problems = new ProblemSpool(Path.of(System.getProperty("java.io.tmpdir")));
                DeterminationsFile file = new DeterminationsFile(task.determinations(), options)) {
            Iterator<WorkerHistory> histories =
                    Intake.read(files, options.asOf(), problems).histories().iterator();
            while (histories.hasNext()) {
                WorkerHistory history = histories.next();
                long before = System.nanoTime();
                WorkerJudgement judgement = Judge.judge(history, options);
                long judged = System.nanoTime();
                for (Determination determination : judgement.determinations()) {
                    file.write(history.worker().workerId(), determination);
                }
                judging += judged - before;
                writing += System.nanoTime() - judged;
            }
        }
        return StageTimes.ofNanoseconds(System.nanoTime() - began - judging - writing, judging, writing);
    }
}
