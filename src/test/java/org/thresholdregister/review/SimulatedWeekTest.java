package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.opencsv.CSVReaderHeaderAware;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.summary.CountedTest;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.testing.SignResult;
import org.thresholdregister.testing.TestEntryService;
import org.thresholdregister.testing.TypedTest;
import org.thresholdregister.testing.TypedThresholds;

/**
 * A test week of two hundred people, played through the services that the pages call. What must come of it was written by
 * hand from the rules beforehand: {@code src/test/resources/vectors/week/README.md}.
 */
@RegisterTest
class SimulatedWeekTest {

    private static final LocalDate END_OF_WEEK = LocalDate.of(2026, 3, 6);
    private static final LocalDate LAST_DAY_OF_MONDAYS_WINDOW = LocalDate.of(2026, 4, 1);
    private static final LocalDate ALL_WINDOWS_CLOSED = LocalDate.of(2026, 4, 10);
    private static final Set<TaskKind> WITHOUT_A_DATE = Set.of(TaskKind.REFIT, TaskKind.TRAINING);

    @Autowired
    private TestImports files;

    @Autowired
    private TestEntryService entry;

    @Autowired
    private DecisionService decisions;

    @Autowired
    private DailyJudging judging;

    @Autowired
    private BoardService board;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private MovableClock clock;

    private List<Map<String, String>> tests = List.of();
    private List<Map<String, String>> acts = List.of();

    @BeforeEach
    void whatWasBeforeTheWeek() {
        clock.moveTo(LocalDate.of(2026, 3, 1));
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(text("roster.csv"), text("before.csv"), "");
        tests = rows("tests.csv");
        acts = rows("acts.csv");
    }

    @Test
    void theWeekGivesTheDutiesDatesAndStatesThatWereWrittenByHand() {
        for (LocalDate asOf : List.of(END_OF_WEEK, LAST_DAY_OF_MONDAYS_WINDOW, ALL_WINDOWS_CLOSED)) {
            playUntil(asOf);
            SignIn.as(Role.NURSE);
            List<BoardRow.OfTask> open = openTasks();
            assertThat(open.stream()
                            .filter(task -> !WITHOUT_A_DATE.contains(task.kind()))
                            .map(SimulatedWeekTest::dated))
                    .as("duties on " + asOf)
                    .containsExactlyInAnyOrderElementsOf(expected("expected-duties.csv", asOf));
            assertThat(open.stream()
                            .filter(task -> WITHOUT_A_DATE.contains(task.kind()))
                            .map(SimulatedWeekTest::undated))
                    .as("protectors and training owed on " + asOf)
                    .containsExactlyInAnyOrderElementsOf(expected("expected-tasks.csv", asOf));
            assertOutcomes(asOf);
        }
    }

    private List<BoardRow.OfTask> openTasks() {
        List<BoardRow.OfTask> open = new ArrayList<>();
        Order<BoardColumn> order = Order.ascending(BoardColumn.WORKER_ID);
        int all = board.count(BoardFilter.EVERYTHING);
        for (int from = 0; from < all; from += 100) {
            board.find(BoardFilter.EVERYTHING, order, from, 100).stream()
                    .filter(BoardRow.OfTask.class::isInstance)
                    .map(BoardRow.OfTask.class::cast)
                    .forEach(open::add);
        }
        return open;
    }

    private static String dated(BoardRow.OfTask task) {
        LocalDate due = task.due().orElseThrow();
        return String.join(
                ",",
                task.workerId(),
                task.kind().word(),
                due.toString(),
                task.key().testDate().map(LocalDate::toString).orElse(""),
                task.key().ears().word(),
                due.isBefore(task.today()) ? "overdue" : "open");
    }

    private static String undated(BoardRow.OfTask task) {
        assertThat(task.due()).as("the rule gives no date").isEmpty();
        return String.join(
                ",",
                task.workerId(),
                task.kind().word(),
                task.key().testDate().orElseThrow().toString(),
                task.key().ears().word());
    }

    private static List<String> expected(String file, LocalDate asOf) {
        return text(file)
                .lines()
                .skip(1)
                .filter(line -> line.startsWith(asOf + ","))
                .map(line -> line.substring(11))
                .toList();
    }

    private void assertOutcomes(LocalDate asOf) {
        for (Map<String, String> row : rows("expected-outcomes.csv")) {
            if (row.get("as_of").equals(asOf.toString())) {
                WorkerRecord record = records.open(row.get("worker_id")).orElseThrow();
                assertThat(record.judgement().determinations().stream()
                                .filter(each -> each.test().date().toString().equals(row.get("test_date"))
                                        && each.ear().word().equals(row.get("ear")))
                                .map(each -> each.outcome().word() + " "
                                        + CountedTest.of(each)
                                                .recordable()
                                                .map(Recordability::word)
                                                .orElse("")))
                        .as(row.toString())
                        .containsExactly(row.get("outcome") + " " + row.get("recordable"));
            }
        }
    }

    /** Goes from the clock's day to this one, both included, and does each day what was done on it. */
    private void playUntil(LocalDate last) {
        for (LocalDate day = LocalDate.now(clock).plusDays(1); !day.isAfter(last); day = day.plusDays(1)) {
            clock.moveTo(day);
            judging.bringUpToDate();
            String today = day.toString();
            SignIn.as(Role.NURSE);
            tests.stream().filter(row -> row.get("test_date").equals(today)).forEach(this::enterTest);
            acts.stream().filter(row -> row.get("date").equals(today)).forEach(this::enterAct);
        }
    }

    private void enterTest(Map<String, String> row) {
        long draft = entry.open(row.get("worker_id"), Optional.empty())
                .orElseThrow()
                .draft()
                .key();
        SignResult result = entry.sign(draft, typed(row));
        assertThat(result).as(row.get("worker_id")).isInstanceOf(SignResult.Signed.class);
    }

    private static TypedTest typed(Map<String, String> row) {
        List<String> thresholds = new ArrayList<>();
        for (Ear ear : TypedThresholds.EARS) {
            Arrays.stream(Frequency.values())
                    .map(frequency -> row.get(ear.word() + "_" + frequency.hertz()))
                    .forEach(thresholds::add);
            thresholds.add("");
        }
        return new TypedTest(
                new TypedThresholds(thresholds),
                TypedTest.USUAL_LIMIT,
                Optional.of(LocalDate.parse(row.get("test_date"))),
                Optional.of(TestPurpose.valueOf(row.get("purpose").toUpperCase(Locale.ROOT))),
                row.get("hours_since_noise"),
                Optional.of(false),
                row.get("tester"),
                row.get("instrument"),
                row.get("transducer"),
                row.get("room"),
                "",
                "");
    }

    private void enterAct(Map<String, String> row) {
        DecisionKind kind = Stream.of(DecisionKind.values())
                .filter(each -> each.word().equals(row.get("kind")))
                .findFirst()
                .orElseThrow();
        SignIn.as(Role.NURSE);
        if (!decisions.kindsToEnter().contains(kind)) {
            SignIn.as(Role.SAFETY_OFFICER);
        }
        DecisionResult result = decisions.enter(
                row.get("worker_id"),
                new Decision(
                        Ears.valueOf(row.get("ear").toUpperCase(Locale.ROOT)),
                        LocalDate.parse(row.get("test_date")),
                        kind,
                        LocalDate.parse(row.get("date")),
                        row.get("by"),
                        row.get("reason")));
        assertThat(result).as(row.toString()).isInstanceOf(DecisionResult.Recorded.class);
    }

    private static String text(String file) {
        try (Reader reader = reader(file)) {
            return reader.readAllAsString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Map<String, String>> rows(String file) {
        List<Map<String, String>> rows = new ArrayList<>();
        try (var reader = new CSVReaderHeaderAware(reader(file))) {
            for (Map<String, String> row = reader.readMap(); row != null; row = reader.readMap()) {
                rows.add(row);
            }
        } catch (Exception e) {
            throw new IllegalStateException(file + " could not be read", e);
        }
        return rows;
    }

    private static Reader reader(String file) {
        return new InputStreamReader(
                SimulatedWeekTest.class.getResourceAsStream("/vectors/week/" + file), StandardCharsets.UTF_8);
    }
}
