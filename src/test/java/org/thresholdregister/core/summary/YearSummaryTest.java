package org.thresholdregister.core.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Case;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

class YearSummaryTest {

    private static final Group FURNACE = new Group("Hollow", "Furnace");

    private final YearSummary summary = new YearSummary();

    @Test
    void bothEarsOnOneDateAreOneShiftAndOneCase() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.YES),
                judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.YES));
        assertThat(counts(2026, Group.EVERYBODY))
                .isEqualTo(expected()
                        .tested(1)
                        .annual(1)
                        .found(1)
                        .confirmed(1)
                        .recordable(1)
                        .build());
    }

    @Test
    void ofTwoEarsTheWeightierOutcomeCounts() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.NOT_CONFIRMED, Answer.YES, Recordability.NO),
                judged("2026-03-09", Outcome.AWAITING_RETEST, Answer.YES, Recordability.AWAITING_RETEST));
        add(
                FURNACE,
                judged("2026-03-10", Outcome.CONFIRMED, Answer.YES, Recordability.NO),
                judged("2026-03-10", Outcome.NOT_CONFIRMED, Answer.YES, Recordability.NO));
        add(
                FURNACE,
                judged("2026-03-11", Outcome.AWAITING_RETEST, Answer.YES, Recordability.AWAITING_RETEST),
                judged("2026-03-11", Outcome.CONFIRMED, Answer.YES, Recordability.YES));
        add(
                FURNACE,
                judged("2026-03-12", Outcome.NOT_CONFIRMED, Answer.YES, Recordability.NO),
                judged("2026-03-12", Outcome.NO_SHIFT, Answer.NO, Recordability.NO));
        assertThat(counts(2026, FURNACE))
                .isEqualTo(expected()
                        .tested(4)
                        .annual(4)
                        .found(4)
                        .confirmed(2)
                        .awaiting(1)
                        .notConfirmed(1)
                        .recordable(1)
                        .build());
    }

    /** One pair at a time, since pairs together could make up for each other. */
    @Test
    void oneEarAwaitingARetestAndTheOtherConfirmedIsConfirmed() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.AWAITING_RETEST, Answer.YES, Recordability.AWAITING_RETEST),
                judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.NO));
        assertThat(counts(2026, FURNACE))
                .isEqualTo(expected().tested(1).annual(1).found(1).confirmed(1).build());
    }

    @Test
    void oneEarNotConfirmedAndTheOtherAwaitingARetestIsAwaiting() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.NOT_CONFIRMED, Answer.YES, Recordability.NO),
                judged("2026-03-09", Outcome.AWAITING_RETEST, Answer.YES, Recordability.AWAITING_RETEST));
        assertThat(counts(2026, FURNACE))
                .isEqualTo(expected().tested(1).annual(1).found(1).awaiting(1).build());
    }

    @Test
    void oneEarNotConfirmedAndTheOtherConfirmedIsConfirmed() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.NOT_CONFIRMED, Answer.YES, Recordability.NO),
                judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.NO));
        assertThat(counts(2026, FURNACE))
                .isEqualTo(expected().tested(1).annual(1).found(1).confirmed(1).build());
    }

    @Test
    void aRetestIsNeitherAnAnnualTestNorAShiftOfItsOwn() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.NO),
                judged("2026-03-09", Outcome.NO_SHIFT, Answer.NO, Recordability.NO),
                retest("2026-03-20", Answer.YES),
                retest("2026-03-20", Answer.NO));
        assertThat(counts(2026, FURNACE))
                .isEqualTo(expected().tested(1).annual(1).found(1).confirmed(1).build());
    }

    @Test
    void aShiftThatOnlyTheRetestShowsIsFoundAndConfirmed() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.NO_SHIFT, Answer.NO, Recordability.NO),
                judged("2026-03-09", Outcome.CONFIRMED, Answer.NO, Recordability.NO));
        assertThat(counts(2026, FURNACE))
                .isEqualTo(expected().tested(1).annual(1).found(1).confirmed(1).build());
    }

    @Test
    void aTestWithAnUndecidedEarIsUndecidedOnce() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.UNDECIDED, Answer.UNDECIDED, Recordability.UNDECIDED),
                judged("2026-03-09", Outcome.UNDECIDED, Answer.UNDECIDED, Recordability.UNDECIDED));
        add(
                FURNACE,
                judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.UNDECIDED),
                judged("2026-03-09", Outcome.UNDECIDED, Answer.UNDECIDED, Recordability.UNDECIDED));
        assertThat(counts(2026, FURNACE))
                .isEqualTo(expected()
                        .tested(2)
                        .annual(2)
                        .found(1)
                        .confirmed(1)
                        .undecided(2)
                        .build());
    }

    @Test
    void onlyRecordableYesIsACase() {
        for (Recordability answer : Recordability.values()) {
            add(FURNACE, judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, answer));
        }
        assertThat(counts(2026, FURNACE).get(Measure.RECORDABLE_CASES)).isEqualTo(1);
    }

    @Test
    void aBaselineMakesATestedWorkerAndNoAnnualTest() {
        add(FURNACE, baseline("2026-03-09"), baseline("2026-03-09"));
        assertThat(counts(2026, FURNACE)).isEqualTo(expected().tested(1).build());
    }

    @Test
    void twoTestsInAYearAreOneWorkerAndTwoShifts() {
        add(
                FURNACE,
                judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.NO),
                new CountedTest(
                        LocalDate.parse("2026-11-09"),
                        TestPurpose.EXIT,
                        Outcome.CONFIRMED,
                        Optional.of(Answer.YES),
                        Optional.of(Recordability.YES)));
        assertThat(counts(2026, FURNACE))
                .isEqualTo(expected()
                        .tested(1)
                        .annual(2)
                        .found(2)
                        .confirmed(2)
                        .recordable(1)
                        .build());
    }

    @Test
    void theYearIsThatOfTheTest() {
        add(
                FURNACE,
                judged("2025-12-31", Outcome.CONFIRMED, Answer.YES, Recordability.YES),
                retest("2026-01-15", Answer.YES));
        assertThat(counts(2025, FURNACE))
                .isEqualTo(expected()
                        .tested(1)
                        .annual(1)
                        .found(1)
                        .confirmed(1)
                        .recordable(1)
                        .build());
        assertThat(counts(2026, FURNACE)).isEqualTo(expected().tested(1).build());
    }

    @Test
    void totalsStandForSitesAndForEverybody() {
        CountedTest shift = judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.YES);
        add(FURNACE, shift);
        add(new Group("Hollow", "Grinding"), shift);
        add(new Group("Fern", "Furnace"), shift);
        add(Group.of(Optional.empty(), Optional.empty()), shift);

        assertThat(summary.rows().stream().map(SummaryRow::group).distinct())
                .containsExactly(
                        new Group("(all)", "(all)"),
                        new Group("(none)", "(all)"),
                        new Group("(none)", "(none)"),
                        new Group("Fern", "(all)"),
                        new Group("Fern", "Furnace"),
                        new Group("Hollow", "(all)"),
                        new Group("Hollow", "Furnace"),
                        new Group("Hollow", "Grinding"));
        assertThat(confirmed("(all)", "(all)")).isEqualTo(4);
        assertThat(confirmed("Hollow", "(all)")).isEqualTo(2);
        assertThat(confirmed("Hollow", "Furnace")).isEqualTo(1);
        assertThat(confirmed("Fern", "(all)")).isEqualTo(1);
        assertThat(confirmed("(none)", "(none)")).isEqualTo(1);
    }

    @Test
    void everyMeasureStandsInOrderZerosIncluded() {
        add(FURNACE, baseline("2026-03-09"));
        assertThat(summary.rows().stream().filter(row -> row.group().equals(FURNACE)))
                .extracting(row -> row.measure().word())
                .containsExactly(
                        "workers_tested",
                        "annual_tests",
                        "shifts_found",
                        "shifts_confirmed",
                        "shifts_not_confirmed",
                        "shifts_awaiting_retest",
                        "undecided_tests",
                        "recordable_cases");
    }

    @Test
    void aSiteNamedLikeATotalCountsNobodyTwice() {
        add(new Group("(all)", "Furnace"), baseline("2026-03-09"));
        add(new Group("Hollow", "(all)"), baseline("2026-03-09"));
        assertThat(counts(2026, Group.EVERYBODY).get(Measure.WORKERS_TESTED)).isEqualTo(2);
        assertThat(counts(2026, new Group("Hollow", "(all)")).get(Measure.WORKERS_TESTED))
                .isEqualTo(1);
    }

    @Test
    void aWorkerWithoutATestCountsNowhere() {
        add(FURNACE);
        assertThat(summary.rows()).isEmpty();
    }

    @Test
    void aDeterminationIsCountedByWhatItSays() {
        List<CountedTest> counted = new Case()
                        .test("2024-04-01", TestPurpose.BASELINE, 10, 10)
                        .test("2026-03-09", TestPurpose.ANNUAL, 30, 10)
                        .test("2026-03-20", TestPurpose.RETEST, 30, 10)
                        .asOf("2026-06-30")
                        .determinations()
                        .stream()
                        .map(CountedTest::of)
                        .toList();
        assertThat(counted)
                .containsExactly(
                        baseline("2024-04-01"),
                        baseline("2024-04-01"),
                        judged("2026-03-09", Outcome.CONFIRMED, Answer.YES, Recordability.YES),
                        judged("2026-03-09", Outcome.NO_SHIFT, Answer.NO, Recordability.NO),
                        retest("2026-03-20", Answer.YES),
                        retest("2026-03-20", Answer.NO));
    }

    private void add(Group group, CountedTest... tests) {
        summary.add(group, List.of(tests));
    }

    private int confirmed(String site, String department) {
        return counts(2026, new Group(site, department)).get(Measure.SHIFTS_CONFIRMED);
    }

    private Map<Measure, Integer> counts(int year, Group group) {
        Map<Measure, Integer> counts = new TreeMap<>();
        for (SummaryRow row : summary.rows()) {
            if (row.year() == year && row.group().equals(group)) {
                assertThat(counts.put(row.measure(), ((Count.Number) row.count()).value()))
                        .isNull();
            }
        }
        return counts;
    }

    private static CountedTest judged(String date, Outcome outcome, Answer shift, Recordability recordable) {
        return new CountedTest(
                LocalDate.parse(date), TestPurpose.ANNUAL, outcome, Optional.of(shift), Optional.of(recordable));
    }

    private static CountedTest retest(String date, Answer shift) {
        return new CountedTest(
                LocalDate.parse(date), TestPurpose.RETEST, Outcome.RETEST, Optional.of(shift), Optional.empty());
    }

    private static CountedTest baseline(String date) {
        return new CountedTest(
                LocalDate.parse(date), TestPurpose.BASELINE, Outcome.BASELINE, Optional.empty(), Optional.empty());
    }

    private static Expected expected() {
        return new Expected();
    }

    /** All measures, those not named being zero. */
    private static final class Expected {
        private final Map<Measure, Integer> counts = new TreeMap<>();

        Expected() {
            for (Measure measure : Measure.values()) {
                counts.put(measure, 0);
            }
        }

        Expected tested(int count) {
            return set(Measure.WORKERS_TESTED, count);
        }

        Expected annual(int count) {
            return set(Measure.ANNUAL_TESTS, count);
        }

        Expected found(int count) {
            return set(Measure.SHIFTS_FOUND, count);
        }

        Expected confirmed(int count) {
            return set(Measure.SHIFTS_CONFIRMED, count);
        }

        Expected notConfirmed(int count) {
            return set(Measure.SHIFTS_NOT_CONFIRMED, count);
        }

        Expected awaiting(int count) {
            return set(Measure.SHIFTS_AWAITING_RETEST, count);
        }

        Expected undecided(int count) {
            return set(Measure.UNDECIDED_TESTS, count);
        }

        Expected recordable(int count) {
            return set(Measure.RECORDABLE_CASES, count);
        }

        private Expected set(Measure measure, int count) {
            counts.put(measure, count);
            return this;
        }

        Map<Measure, Integer> build() {
            return counts;
        }
    }
}
