package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.intake.FileSet;
import org.thresholdregister.intake.ImportCounts;
import org.thresholdregister.intake.Intake;
import org.thresholdregister.intake.ProblemList;
import org.thresholdregister.intake.SourceFile;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.intake.UnusableFileException;
import org.thresholdregister.platform.security.Role;

/** The sample plant, through the register and past it. */
@RegisterTest
class StoredJudgementTest {

    private static final Path SAMPLE = Path.of("sample-roster");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 24);

    @Autowired
    private TestImports files;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private MovableClock clock;

    @Autowired
    private JdbcTemplate jdbc;

    private static String read(String name) throws IOException {
        return Files.readString(SAMPLE.resolve(name));
    }

    private static Map<WorkerHistory, WorkerJudgement> judgedFromFiles() throws IOException, UnusableFileException {
        FileSet set = FileSet.of(
                        SourceFile.of(SAMPLE.resolve("roster.csv")), SourceFile.of(SAMPLE.resolve("audiograms.csv")))
                .withDecisions(SourceFile.of(SAMPLE.resolve("decisions.csv")));
        ProblemList problems = new ProblemList();
        List<WorkerHistory> histories =
                Intake.read(set, DAY, problems).histories().toList();
        assertThat(problems.inFileOrder()).isEmpty();
        return histories.stream()
                .collect(Collectors.toMap(
                        Function.identity(), history -> Judge.judge(history, JudgingOptions.asOf(DAY))));
    }

    private ImportCounts importSample() throws IOException {
        clock.moveTo(DAY);
        SignIn.as(Role.SAFETY_OFFICER);
        return files.store(read("roster.csv"), read("audiograms.csv"), read("decisions.csv"));
    }

    @Test
    void whatIsKeptIsWhatTheEngineFindsInTheSameFiles() throws Exception {
        ImportCounts counts = importSample();
        List<String> expected = new ArrayList<>();
        List<String> expectedFollowUps = new ArrayList<>();
        judgedFromFiles().forEach((history, judgement) -> {
            String worker = history.worker().workerId();
            judgement.determinations().forEach(determination -> expected.add(line(worker, determination)));
            judgement
                    .followUps()
                    .forEach(followUp -> expectedFollowUps.add("%s %s %s %s %s"
                            .formatted(
                                    worker,
                                    followUp.kind().word(),
                                    followUp.dueDate(),
                                    followUp.testDate().map(LocalDate::toString).orElse("null"),
                                    followUp.ears().word())));
        });

        List<String> kept = jdbc.query("""
                select w.worker_id, d.test_date, d.purpose, d.ear, d.rule_set, d.baseline_date, d.age_baseline,
                    d.age_test, d.shift_2000, d.shift_3000, d.shift_4000, d.allowance_2000, d.allowance_3000,
                    d.allowance_4000, d.shift_sum, d.sts, d.level_sum, d.outcome, d.recordable, d.retest_by,
                    d.notify_by, d.record_by
                from determination d join worker w on w.id = d.worker_id
                    join audiogram a on a.id = d.audiogram_id and a.worker_id = d.worker_id
                        and a.test_date = d.test_date and a.purpose = d.purpose
                """, (row, number) -> {
            List<String> cells = new ArrayList<>();
            for (int i = 1; i <= 22; i++) {
                String cell = row.getString(i);
                cells.add((i == 15 || i == 17) && cell != null ? MeanOfThree.ofSum(row.getInt(i)) : cell);
            }
            return cells.stream().map(String::valueOf).collect(Collectors.joining(" "));
        });
        List<String> keptFollowUps = jdbc.query(
                "select w.worker_id, f.kind, f.due_date, f.test_date, f.ears from follow_up f"
                        + " join worker w on w.id = f.worker_id where f.kind in"
                        + " ('retest', 'notice', 'record', 'annual-test', 'baseline-test')",
                (row, number) -> "%s %s %s %s %s"
                        .formatted(
                                row.getString(1),
                                row.getString(2),
                                row.getString(3),
                                row.getString(4),
                                row.getString(5)));

        assertThat(counts.newWorkers()).isEqualTo(400);
        assertThat(kept).hasSizeGreaterThan(5000).containsExactlyInAnyOrderElementsOf(expected);
        assertThat(keptFollowUps).hasSizeGreaterThan(200).containsExactlyInAnyOrderElementsOf(expectedFollowUps);
    }

    /** The columns of the contract's determinations file, {@code null} where blank. */
    private static String line(String worker, Determination determination) {
        List<Object> cells = new ArrayList<>();
        cells.add(worker);
        cells.add(determination.test().date());
        cells.add(determination.test().purpose().word());
        cells.add(determination.ear().word());
        cells.add("osha");
        var shift = determination.shift();
        cells.add(shift.map(s -> s.earlier().date()).orElse(null));
        cells.add(shift.map(s -> number(s.allowance().ageAtBaseline())).orElse("null"));
        cells.add(shift.map(s -> number(s.allowance().ageAtTest())).orElse("null"));
        for (int i = 0; i < 3; i++) {
            int at = i;
            cells.add(
                    shift.map(s -> number(s.frequencies().get(at).uncorrected().exact()))
                            .orElse("null"));
        }
        for (int i = 0; i < 3; i++) {
            int at = i;
            cells.add(shift.map(s -> number(s.frequencies().get(at).allowance().exact()))
                    .orElse("null"));
        }
        cells.add(shift.map(s -> mean(s.sum().exact())).orElse("null"));
        cells.add(shift.map(s -> s.isShift().name().toLowerCase()).orElse(null));
        cells.add(mean(determination.levelSum().exact()));
        cells.add(determination.outcome().word());
        if (determination instanceof Determination.Judged judged) {
            cells.add(judged.recording().answer().word());
            cells.add(judged.dueDates().retestBy().orElse(null));
            cells.add(judged.dueDates().notifyBy().orElse(null));
            cells.add(judged.dueDates().recordBy().orElse(null));
        } else {
            cells.addAll(List.of("null", "null", "null", "null"));
        }
        return cells.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "null";
    }

    private static String mean(OptionalInt sum) {
        return sum.isPresent() ? MeanOfThree.ofSum(sum.getAsInt()) : "null";
    }

    @Test
    void aRecordThatIsOpenedIsTheHistoryInTheFilesAndItsJudgement() throws Exception {
        importSample();

        judgedFromFiles().forEach((history, judgement) -> {
            WorkerRecord record = records.open(history.worker().workerId()).orElseThrow();

            assertThat(record.asOf()).isEqualTo(DAY);
            assertThat(record.history().worker()).isEqualTo(history.worker());
            assertThat(record.history().audiograms()).containsExactlyInAnyOrderElementsOf(history.audiograms());
            assertThat(record.history().decisions()).containsExactlyInAnyOrderElementsOf(history.decisions());
            assertThat(record.judgement().determinations()).isEqualTo(judgement.determinations());
            assertThat(record.judgement().followUps()).isEqualTo(judgement.followUps());
            assertThat(record.tests())
                    .extracting(test -> test.audiogram().date())
                    .isSorted();
        });
        assertThat(jdbc.queryForList("select distinct subject_id from audit_event where action ="
                        + " 'WORKER_RECORD_OPENED' and actor = 'test-safety_officer' and detail = ''"))
                .hasSize(400);
    }
}
