package org.thresholdregister.batch;

import java.io.Closeable;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.columnar.Population;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.validity.SameDayTests;
import org.thresholdregister.core.validity.TestFlags;
import org.thresholdregister.core.validity.TestValidity;
import org.thresholdregister.core.validity.ValidityFlag;
import org.thresholdregister.core.wording.ValidityWords;
import org.thresholdregister.intake.ConditionsOfTests;

/**
 * {@code validity.csv}: one row for each flag of a test. What is written about a worker comes from the worker's tests,
 * and for a test that looks like no test of theirs from those of others of the same day and site.
 */
final class ValidityFile implements Closeable {

    static final String[] COLUMNS = {"worker_id", "test_date", "purpose", "ear", "frequency", "flag", "reason", "source"
    };

    private record SiteDay(String site, LocalDate day) {}

    private final CsvFile file;
    private final Population population;
    private final List<Group> groups;
    private final QuietRule quietTime;
    private final ConditionsOfTests conditions;
    private final Map<SiteDay, List<Integer>> testedOn = new HashMap<>();

    /** @param groups of each worker of the population, by the worker's place in it */
    ValidityFile(
            CsvFile file,
            Population population,
            List<Group> groups,
            ConditionsOfTests conditions,
            QuietRule quietTime) {
        this.file = file;
        this.population = population;
        this.groups = groups;
        this.quietTime = quietTime;
        this.conditions = conditions;
        for (int worker = 0; worker < population.workerCount(); worker++) {
            note(worker);
        }
    }

    private void note(int worker) {
        int noted = worker;
        IntStream.range(population.firstTest(worker), population.endOfTests(worker))
                .map(population::day)
                .distinct()
                .forEach(day -> testedOn.computeIfAbsent(
                                new SiteDay(groups.get(noted).site(), LocalDate.ofEpochDay(day)),
                                unseen -> new ArrayList<>())
                        .add(noted));
    }

    void write(int worker, WorkerHistory history, WorkerJudgement judgement) {
        String workerId = history.worker().workerId();
        TestValidity validity = new TestValidity(
                history,
                judgement,
                test -> conditions.of(workerId, test),
                quietTime,
                SameDayTests.in(day -> othersTestedOn(day, worker)));
        for (TestFlags flags : validity.ofAllTests()) {
            flags.flags().forEach(flag -> write(workerId, flags.test(), flag));
        }
    }

    private List<WorkerHistory> othersTestedOn(LocalDate day, int worker) {
        return testedOn.getOrDefault(new SiteDay(groups.get(worker).site(), day), List.of()).stream()
                .filter(other -> other != worker)
                .map(population::history)
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
