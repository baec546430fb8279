package org.thresholdregister.batch;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;
import org.thresholdregister.benchmark.JudgingTask;
import org.thresholdregister.benchmark.MeasuredJudging;
import org.thresholdregister.benchmark.StageTimes;
import org.thresholdregister.core.columnar.ColumnarJudge;
import org.thresholdregister.core.columnar.JudgedPopulation;
import org.thresholdregister.core.columnar.Population;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.YearSummary;
import org.thresholdregister.intake.FileSet;
import org.thresholdregister.intake.Intake;
import org.thresholdregister.intake.ProblemSpool;
import org.thresholdregister.intake.SourceFile;

/**
 * The stages of {@code evaluate}: a population read from the files, judged in memory, and written. Writing takes in the
 * follow-ups and the counting for the summary, which go along with it.
 */
public final class ColumnarJudging implements MeasuredJudging {

    @Override
    public StageTimes measure(JudgingTask task) throws Exception {
        JudgingOptions options = JudgingOptions.asOf(task.asOf());
        FileSet files = FileSet.of(SourceFile.of(task.roster()), SourceFile.of(task.audiograms()));
        try (ProblemSpool problems = new ProblemSpool(Path.of(System.getProperty("java.io.tmpdir")))) {
            long began = System.nanoTime();
            Intake intake = Intake.read(files, options.asOf(), problems);
            Population population = intake.population();
            long haveRead = System.nanoTime();
            JudgedPopulation judged = ColumnarJudge.judge(population, options);
            long haveJudged = System.nanoTime();
            write(intake, judged, task.determinations());
            return StageTimes.ofNanoseconds(haveRead - began, haveJudged - haveRead, System.nanoTime() - haveJudged);
        }
    }

    private static void write(Intake intake, JudgedPopulation judged, Path determinations) throws Exception {
        Population population = judged.population();
        try (OutputStream determinationRows = Files.newOutputStream(determinations);
                OutputStream followUpRows = Files.newOutputStream(determinations.resolveSibling("followups.csv"))) {
            RowBytes.of(DeterminationsFile.columns(judged.options())).writeTo(determinationRows);
            new ColumnarResults(
                            judged,
                            IntStream.range(0, population.workerCount())
                                    .mapToObj(worker -> group(intake, population.numberInBuilder(worker)))
                                    .toList(),
                            determinationRows,
                            followUpRows)
                    .writeTo(new YearSummary());
        }
    }

    private static Group group(Intake intake, int worker) {
        return Group.of(Optional.of(intake.siteOf(worker)), Optional.of(intake.departmentOf(worker)));
    }
}
