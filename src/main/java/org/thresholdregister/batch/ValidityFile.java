package org.thresholdregister.batch;

import java.io.Closeable;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.validity.SameDayTests;
import org.thresholdregister.core.validity.TestFlags;
import org.thresholdregister.core.validity.TestValidity;
import org.thresholdregister.core.validity.ValidityFlag;
import org.thresholdregister.core.wording.ValidityWords;
import org.thresholdregister.intake.ConditionsOfTests;
import org.thresholdregister.intake.FileSet;
import org.thresholdregister.intake.Intake;
import org.thresholdregister.intake.UnusableFileException;

/**
 * {@code validity.csv}: one row for each flag of a test. What is written about a worker comes from the worker's tests,
 * and for a test that looks like no test of theirs from those of others of the same day and site.
 */
final class ValidityFile implements Closeable {

    static final String[] COLUMNS = {"worker_id", "test_date", "purpose", "ear", "frequency", "flag", "reason", "source"
    };

    private record SiteDay(String site, LocalDate day) {}

    private final CsvFile file;
    private final Intake intake;
    private final QuietRule quietTime;
    private final ConditionsOfTests conditions;
    private final Map<SiteDay, List<String>> testedOn = new HashMap<>();

    ValidityFile(CsvFile file, Intake intake, FileSet files, LocalDate asOf, QuietRule quietTime)
            throws IOException, UnusableFileException {
        this.file = file;
        this.intake = intake;
        this.quietTime = quietTime;
        this.conditions = ConditionsOfTests.read(files, asOf, intake);
        try (Stream<WorkerHistory> histories = intake.histories()) {
            histories.forEach(this::note);
        }
    }

    private void note(WorkerHistory history) {
        String workerId = history.worker().workerId();
        String site = intake.siteOf(workerId);
        history.audiograms().stream()
                .map(Audiogram::date)
                .distinct()
                .forEach(day -> testedOn.computeIfAbsent(new SiteDay(site, day), unseen -> new ArrayList<>())
                        .add(workerId));
    }

    void write(WorkerHistory history, WorkerJudgement judgement) {
        String workerId = history.worker().workerId();
        TestValidity validity = new TestValidity(
                history,
                judgement,
                test -> conditions.of(workerId, test),
                quietTime,
                SameDayTests.in(day -> othersTestedOn(day, workerId)));
        for (TestFlags flags : validity.ofAllTests()) {
            flags.flags().forEach(flag -> write(workerId, flags.test(), flag));
        }
    }

    private List<WorkerHistory> othersTestedOn(LocalDate day, String workerId) {
        return testedOn.getOrDefault(new SiteDay(intake.siteOf(workerId), day), List.of()).stream()
                .filter(other -> !other.equals(workerId))
                .flatMap(other -> intake.history(other).stream())
                .toList();
    }

    private void write(String workerId, Audiogram test, ValidityFlag flag) {
        file.write(
                workerId,
                test.date().toString(),
                test.purpose().word(),
                flag.ears().word(),
                flag.frequencies().stream()
                        .map(frequency -> Integer.toString(frequency.hertz()))
                        .collect(Collectors.joining(" ")),
                flag.kind().word(),
                ValidityWords.reason(flag),
                ValidityWords.source(flag.source()));
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
