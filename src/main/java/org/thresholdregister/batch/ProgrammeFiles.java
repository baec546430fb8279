package org.thresholdregister.batch;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.programme.Member;
import org.thresholdregister.core.programme.RatingRange;
import org.thresholdregister.core.programme.RestrictedDatabase;
import org.thresholdregister.core.programme.TestPair;
import org.thresholdregister.core.programme.TestToTest;
import org.thresholdregister.core.statistics.Interval;
import org.thresholdregister.core.statistics.Proportion;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.watch.Channel;
import org.thresholdregister.core.watch.InstrumentWatch;
import org.thresholdregister.core.watch.Suspicion;
import org.thresholdregister.core.watch.WatchSettings;
import org.thresholdregister.core.watch.WatchedTest;
import org.thresholdregister.intake.MakingOfTests;
import org.thresholdregister.intake.MakingOfTests.MadeWith;

/**
 * {@code programme.csv}: the shares of people by which a programme is looked at, each with its interval, by year and by
 * site, department, tester and instrument; and {@code instrument-watch.csv}: which instruments came under suspicion and the
 * tests made on them meanwhile. Both are written at the end, as they are about everybody.
 */
final class ProgrammeFiles implements Closeable {

    static final String PROGRAMME = "programme.csv";
    static final String WATCH = "instrument-watch.csv";
    static final String[] PROGRAMME_COLUMNS = {
        "year", "grouped_by", "group", "measure", "count", "of", "percent", "low_95", "high_95", "rating"
    };
    static final String[] WATCH_COLUMNS = {
        "unit", "from", "signalled_on", "until", "tests_until_signal", "signs", "worker_id", "test_date", "purpose"
    };

    private static final String EVERYBODY = "(all)";
    private static final String NOT_GIVEN = "(none)";

    /** The people that a share is of. */
    private record Cell(int year, String groupedBy, String group) {
        private static final Comparator<Cell> ORDER = Comparator.comparingInt(Cell::year)
                .thenComparing(Cell::groupedBy)
                .thenComparing(Cell::group);
    }

    private static final class People {
        private int tested;
        private int shifted;
        private final List<TestPair> pairs = new ArrayList<>();
    }

    private final CsvFile programme;
    private final CsvFile watch;
    private final MakingOfTests making;
    private final Map<Cell, People> cells = new TreeMap<>(Cell.ORDER);
    private final List<Member> members = new ArrayList<>();
    private final List<WatchedTest> watched = new ArrayList<>();

    ProgrammeFiles(CsvFile programme, CsvFile watch, MakingOfTests making) {
        this.programme = programme;
        this.watch = watch;
        this.making = making;
    }

    /** Takes in one worker; each is taken in once. */
    void add(Group group, WorkerHistory history, WorkerJudgement judgement) {
        String workerId = history.worker().workerId();
        List<Audiogram> measured = history.audiograms().stream()
                .filter(test -> !isSetAside(test, history.decisions()))
                .toList();
        measured.forEach(
                test -> watched.add(new WatchedTest(making.of(workerId, test).unit(), workerId, test)));
        List<Determination> annual = judgement.determinations().stream()
                .filter(each -> each.outcome() != Outcome.BASELINE
                        && each.outcome() != Outcome.BEFORE_BASELINE
                        && each.outcome() != Outcome.RETEST)
                .toList();
        Member member = Member.of(measured, annual.stream().anyMatch(each -> each.outcome() == Outcome.CONFIRMED));
        members.add(member);
        annual.stream()
                .collect(Collectors.groupingBy(each -> each.test().date().getYear()))
                .forEach((year, ofYear) -> ofGroups(year, group).forEach(people -> {
                    people.tested++;
                    people.shifted += ofYear.stream().anyMatch(each -> each.outcome() == Outcome.CONFIRMED) ? 1 : 0;
                }));
        // Of a person's pairs of one year the last counts, so that nobody counts twice.
        Map<Cell, TestPair> last = new HashMap<>();
        for (TestPair pair : member.pairs()) {
            MadeWith made = making.of(workerId, pair.later());
            int year = pair.later().date().getYear();
            cellsOf(year, group).forEach(cell -> last.put(cell, pair));
            last.put(new Cell(year, "tester", given(made.tester())), pair);
            last.put(new Cell(year, "instrument", given(made.unit())), pair);
        }
        last.forEach((cell, pair) -> people(cell).pairs.add(pair));
    }

    private static boolean isSetAside(Audiogram test, List<Decision> decisions) {
        return decisions.stream()
                .anyMatch(decision -> decision.kind() == DecisionKind.INVALID_TEST
                        && decision.testDate().equals(test.date()));
    }

    private static String given(String text) {
        return text.isEmpty() ? NOT_GIVEN : text;
    }

    private static List<Cell> cellsOf(int year, Group group) {
        return List.of(
                new Cell(year, "everybody", EVERYBODY),
                new Cell(year, "site", group.site()),
                new Cell(year, "department", group.site() + " / " + group.department()));
    }

    private List<People> ofGroups(int year, Group group) {
        return cellsOf(year, group).stream().map(this::people).toList();
    }

    private People people(Cell cell) {
        return cells.computeIfAbsent(cell, unseen -> new People());
    }

    /** Writes all of it. */
    void write() {
        cells.forEach((cell, people) -> {
            String year = Integer.toString(cell.year);
            if (people.tested > 0) {
                write(year, cell, "confirmed_shift", new Proportion(people.shifted, people.tested), "");
            }
            writeTestToTest(year, cell, TestToTest.of(people.pairs));
        });
        writeRestricted(RestrictedDatabase.of(members, RestrictedDatabase.FEWEST_TESTS));
        InstrumentWatch.suspicions(watched, WatchSettings.USUAL).forEach(this::write);
    }

    private void writeTestToTest(String year, Cell cell, TestToTest found) {
        found.worseOfPairs()
                .ifPresent(share ->
                        write(year, cell, "worse_than_before", share, rating(found, RatingRange.WORSE, share)));
        found.worseOrBetterOfPairs()
                .ifPresent(share -> write(
                        year,
                        cell,
                        "worse_or_better_than_before",
                        share,
                        rating(found, RatingRange.WORSE_OR_BETTER, share)));
    }

    private static String rating(TestToTest found, RatingRange range, Proportion share) {
        return found.hasEnoughPeople() ? range.of(share.percent()).word() : "too few to rate";
    }

    private void writeRestricted(RestrictedDatabase database) {
        String groupedBy = "first " + database.tests() + " tests";
        for (int k = 0; k < database.successive().size(); k++) {
            writeTestToTest(
                    "",
                    new Cell(0, groupedBy, "test " + (k + 2) + " after test " + (k + 1)),
                    database.successive().get(k));
        }
        database.shiftsOfMembers()
                .ifPresent(share -> write("", new Cell(0, groupedBy, "counted"), "ever_shifted", share, ""));
        database.shiftsOfExcluded()
                .ifPresent(share -> write("", new Cell(0, groupedBy, "left out"), "ever_shifted", share, ""));
    }

    private void write(String year, Cell cell, String measure, Proportion share, String rating) {
        Interval interval = share.wilson();
        programme.write(
                year,
                cell.groupedBy,
                cell.group,
                measure,
                Integer.toString(share.count()),
                Integer.toString(share.of()),
                oneDecimal(share.percent()),
                oneDecimal(100 * interval.low()),
                oneDecimal(100 * interval.high()),
                rating);
    }

    private static String oneDecimal(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private void write(Suspicion suspicion) {
        String signs = signs(suspicion.signs());
        for (WatchedTest test : suspicion.tests()) {
            watch.write(
                    suspicion.unit(),
                    suspicion.from().toString(),
                    suspicion.signalledOn().toString(),
                    suspicion.until().map(Object::toString).orElse(""),
                    Integer.toString(suspicion.testsUntilSignal()),
                    signs,
                    test.worker(),
                    test.test().date().toString(),
                    test.test().purpose().word());
        }
    }

    private static String signs(Collection<Suspicion.Sign> signs) {
        return signs.stream()
                .map(sign -> String.format(Locale.ROOT, "%s %+.0f dB", channel(sign.channel()), sign.biasDb()))
                .collect(Collectors.joining("; "));
    }

    private static String channel(Channel channel) {
        String ears =
                channel.ears().size() == 2 ? "both" : channel.ears().getFirst().word();
        return Optional.of(channel.frequencies())
                .filter(frequencies -> frequencies.size() < Frequency.values().length)
                .map(frequencies -> ears + " "
                        + frequencies.stream()
                                .map(frequency -> Integer.toString(frequency.hertz()))
                                .collect(Collectors.joining(" "))
                        + " Hz")
                .orElse(ears + " all frequencies");
    }

    @Override
    public void close() throws IOException {
        programme.close();
        watch.close();
    }
}
