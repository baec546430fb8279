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
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
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
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.calibration.Audiometer;
import org.thresholdregister.core.calibration.DailyCheck;
import org.thresholdregister.core.calibration.Headset;
import org.thresholdregister.core.calibration.MeterReading;
import org.thresholdregister.core.calibration.OctaveBand;
import org.thresholdregister.core.calibration.Tester;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.summary.CountedTest;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.validity.TestFlags;
import org.thresholdregister.core.validity.ValidityFlag;
import org.thresholdregister.instruments.Change;
import org.thresholdregister.instruments.EntryResult;
import org.thresholdregister.instruments.Facts;
import org.thresholdregister.instruments.InstrumentService;
import org.thresholdregister.instruments.OutputLimits;
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

    private static final String SITE = "Fernhollow Glassworks";
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

    @Autowired
    private InstrumentService instruments;

    private long birch;
    private final Map<String, Long> units = new HashMap<>();
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

    @Test
    void theTestsMadeWhileSomethingWasOutOfOrderAreThoseWrittenByHand() {
        registerEquipment();
        playUntil(END_OF_WEEK);
        SignIn.as(Role.NURSE);
        List<String> found = new ArrayList<>();
        for (Map<String, String> row : rows("roster.csv")) {
            String worker = row.get("worker_id");
            for (TestFlags flags : records.open(worker).orElseThrow().validity()) {
                String why = flags.flags().stream()
                        .map(ValidityFlag::kind)
                        .filter(kind -> kind.weight() == FlagKind.Weight.DOUBT)
                        .filter(kind -> kind.isOfEquipment() || kind == FlagKind.QUIET_TIME_SHORT)
                        .map(FlagKind::word)
                        .distinct()
                        .collect(Collectors.joining("; "));
                if (!why.isEmpty()) {
                    found.add(worker + "," + flags.test().date() + "," + why);
                }
            }
        }
        assertThat(found)
                .containsExactlyInAnyOrderElementsOf(
                        text("expected-repeats.csv").lines().skip(1).toList());
    }

    /** As the README beside the files says, "The equipment". */
    private void registerEquipment() {
        SignIn.as(Role.NURSE);
        LocalDate bought = LocalDate.of(2025, 4, 10);
        for (String identity : List.of("AUD-01", "AUD-02")) {
            long unit = enter(new Facts.Unit(
                    SITE, identity, "", Audiometer.Type.MANUAL, OutputLimits.NOT_KNOWN, bought, Optional.empty()));
            units.put(identity, unit);
            calibrate(identity, Audiometer.CalibrationKind.EXHAUSTIVE, LocalDate.of(2024, 9, 2));
        }
        calibrate("AUD-01", Audiometer.CalibrationKind.ACOUSTIC, bought);
        calibrate("AUD-02", Audiometer.CalibrationKind.ACOUSTIC, LocalDate.of(2025, 9, 1));
        headset("H-01", "AUD-01");
        headset("H-02", "AUD-02");
        headset("H-03", "AUD-01");
        for (String room : List.of("Room A", "Room B")) {
            long key = enter(new Facts.Room(SITE, room, bought, Optional.empty()));
            enter(new Facts.Measurement(key, LocalDate.of(2026, 1, 12), "B. Measure", "", quiet()));
        }
        certificate(tester("A. Alder"), LocalDate.of(2021, 4, 21), LocalDate.of(2026, 4, 20));
        birch = tester("B. Birch");
        certificate(birch, LocalDate.of(2021, 3, 2), LocalDate.of(2026, 3, 1));
    }

    private long enter(Facts facts) {
        EntryResult result = instruments.enter(facts, Change.NEW);
        assertThat(result).as(facts.toString()).isInstanceOf(EntryResult.Entered.class);
        return ((EntryResult.Entered) result).key();
    }

    private void calibrate(String unit, Audiometer.CalibrationKind kind, LocalDate day) {
        enter(new Facts.Calibration(
                units.get(unit),
                kind,
                day,
                "C. Calibrator",
                Audiometer.Tolerance.NOT_STATED,
                Audiometer.Tolerance.WITHIN,
                "",
                new PerEar<>(Map.of(), Map.of())));
    }

    private void headset(String identity, String unit) {
        long key = enter(new Facts.Earphones(SITE, identity, Headset.Type.SUPRA_AURAL, ""));
        enter(new Facts.CalibratedTo(key, units.get(unit), LocalDate.of(2025, 4, 10), Optional.empty()));
    }

    private static Map<OctaveBand, MeterReading> quiet() {
        Map<OctaveBand, MeterReading> levels = new EnumMap<>(OctaveBand.class);
        for (OctaveBand band : OctaveBand.values()) {
            levels.put(band, MeterReading.parse("30"));
        }
        return levels;
    }

    private long tester(String name) {
        return enter(new Facts.Person(SITE, name, Tester.Qualification.CERTIFIED_TECHNICIAN, "Dr. Rowan"));
    }

    private void certificate(long tester, LocalDate issued, LocalDate expires) {
        enter(new Facts.Certificate(tester, "", issued, Optional.of(expires)));
    }

    /** What was done with the equipment on a day; the clock stands on it. */
    private void lookAfterEquipment(LocalDate day) {
        if (units.isEmpty() || day.isBefore(LocalDate.of(2026, 3, 2)) || day.isAfter(END_OF_WEEK)) {
            return;
        }
        boolean tuesday = day.equals(LocalDate.of(2026, 3, 3));
        boolean thursday = day.equals(LocalDate.of(2026, 3, 5));
        check("AUD-01", day, tuesday ? 20 : 10, DailyCheck.Listening.GOOD);
        check("AUD-02", day, 10, thursday ? DailyCheck.Listening.FAULT : DailyCheck.Listening.GOOD);
        if (tuesday) {
            calibrate("AUD-01", Audiometer.CalibrationKind.ACOUSTIC, day);
            certificate(birch, day, LocalDate.of(2031, 3, 2));
        }
        if (thursday) {
            calibrate("AUD-02", Audiometer.CalibrationKind.ACOUSTIC, day);
        }
    }

    private void check(String unit, LocalDate day, int rightAt4000, DailyCheck.Listening listening) {
        PerEar<Map<Frequency, Threshold>> reference = PerEar.from(ear -> levels(10));
        Map<Frequency, Threshold> right = levels(10);
        right.put(Frequency.HZ_4000, Threshold.measured(rightAt4000));
        enter(new Facts.Check(
                units.get(unit),
                Optional.empty(),
                day,
                "A. Alder",
                "S. Stable",
                reference,
                new PerEar<>(levels(10), right),
                listening,
                ""));
    }

    private static Map<Frequency, Threshold> levels(int decibels) {
        Map<Frequency, Threshold> levels = new EnumMap<>(Frequency.class);
        for (Frequency frequency : Frequency.values()) {
            levels.put(frequency, Threshold.measured(decibels));
        }
        return levels;
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
            lookAfterEquipment(day);
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
