package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.thresholdregister.intake.TestImports.test;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.comparing.Difference;
import org.thresholdregister.core.comparing.Difference.Reason;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** A year judged in two ways, over the database. Today is 9 March 2026. */
@RegisterTest
class CompareServiceTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 9);
    private static final Optional<String> ALL_SITES = Optional.empty();

    @Autowired
    private CompareService comparing;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    /**
     * Y-2 changes by 15 dB at every frequency for a year and back: a shift for OSHA that nobody retested, and none that
     * NIOSH establishes. M-3's right ear shows 15 dB at 6000 Hz alone, which only NIOSH reads.
     */
    @BeforeEach
    void threeSites() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                ServiceFixture.ROSTER + """
                        Y-2,1950-01-01,F,Tarn,Edda,,Yard,Cranes,2020-01-01
                        M-3,1950-01-01,M,Ulm,Fenn,,Mill,Saws,2020-01-01
                        """,
                ServiceFixture.AUDIOGRAMS
                        + test("Y-2", "2023-06-01", "baseline", 10, 10)
                        + test("Y-2", "2024-06-03", "annual", 25, 10)
                        + test("Y-2", "2025-06-02", "annual", 10, 10)
                        + test("M-3", "2023-06-01", "baseline", 10, 10)
                        + "M-3,2025-06-02,annual,10,10,10,10,10,10,10,10,10,10,10,10,25,10\n",
                "");
    }

    private static Way way(String word) {
        return Way.of(word).orElseThrow();
    }

    private RuleComparison compare(int year, String one, String other) {
        return comparing.compare(year, ALL_SITES, way(one), way(other));
    }

    private static List<String> workersOf(RuleComparison comparison) {
        return comparison.rows().stream()
                .map(RuleComparison.Row::workerId)
                .distinct()
                .toList();
    }

    @Test
    void whoDiffersIsNamedWithBothAnswersAndTheReason() {
        RuleComparison comparison = compare(2025, "osha", "niosh");
        assertThat(comparison.rows())
                .extracting(
                        RuleComparison.Row::workerId,
                        RuleComparison.Row::familyName,
                        RuleComparison.Row::site,
                        row -> row.difference().ear(),
                        row -> row.difference().one().outcome(),
                        row -> row.difference().other().outcome(),
                        row -> row.difference().reason())
                .containsExactly(
                        tuple(
                                "M-3",
                                "Ulm",
                                "Mill",
                                Ear.RIGHT,
                                Outcome.NO_SHIFT,
                                Outcome.AWAITING_RETEST,
                                Reason.CRITERION),
                        tuple(
                                "Y-1",
                                "Quill",
                                "Yard",
                                Ear.LEFT,
                                Outcome.CONFIRMED,
                                Outcome.AWAITING_RETEST,
                                Reason.CONFIRMATION));
        assertThat(comparison.workers()).isEqualTo(2);
        assertThat(comparison.differing()).isEqualTo(2);
        assertThat(comparison.judged()).as("M-1, M-2, M-3, Y-1, Y-2").isEqualTo(5);
        assertThat(comparison.reasons()).isEqualTo(Map.of(Reason.CRITERION, 1, Reason.CONFIRMATION, 1));
    }

    @Test
    void onlyTestsOfTheYearAreComparedThoughAllAreJudged() {
        RuleComparison comparison = compare(2024, "osha", "niosh");
        assertThat(comparison.rows())
                .extracting(
                        RuleComparison.Row::workerId,
                        row -> row.difference().other().outcome())
                .as("the test of 2025 did not confirm that of 2024")
                .containsExactly(tuple("Y-2", Outcome.NOT_CONFIRMED));
        assertThat(comparison.judged()).as("Y-1, Y-2").isEqualTo(2);
        RuleComparison before = compare(1999, "osha", "niosh");
        assertThat(before.judged()).isZero();
        assertThat(before.rows()).isEmpty();
        assertThat(Arrays.stream(Measure.values()).map(before::countsOf)).containsOnly(new RuleComparison.Counts(0, 0));
    }

    @Test
    void theSameWayTwiceDiffersNowhere() {
        for (RuleSet ruleSet : RuleSets.ALL) {
            RuleComparison comparison = compare(2025, ruleSet.word(), ruleSet.word());
            assertThat(comparison.differing()).isZero();
            assertThat(comparison.workers()).isZero();
            assertThat(comparison.reasons()).isEmpty();
            assertThat(Arrays.stream(Measure.values()).map(comparison::countsOf))
                    .allSatisfy(counts -> assertThat(counts.one()).isEqualTo(counts.other()));
        }
    }

    static Stream<Way> ways() {
        return Stream.concat(
                RuleSets.ALL.stream().map(ruleSet -> new Way(ruleSet, AgeCorrection.ON, false)),
                Stream.of(way("osha.age-off"), way("osha.revised"), way("fra.age-off.revised")));
    }

    /** Counted again here from the engine's own determinations, person by person and day by day. */
    @ParameterizedTest
    @MethodSource("ways")
    void countsAreTheEngines(Way way) {
        List<WorkerHistory> histories = Stream.of("M-1", "M-2", "M-3", "Y-1", "Y-2", "N-1")
                .map(workerId -> records.open(workerId).orElseThrow().history())
                .toList();
        for (int year = 2023; year <= 2026; year++) {
            RuleComparison comparison = comparing.compare(year, ALL_SITES, Way.USUAL, way);
            Map<Measure, Integer> counted = recount(histories, year, way);
            for (Measure measure : Measure.values()) {
                assertThat(comparison.countsOf(measure).other())
                        .as("%s of %s", measure, year)
                        .isEqualTo(counted.get(measure));
                assertThat(comparison.countsOf(measure).one())
                        .as("%s of %s, as usual", measure, year)
                        .isEqualTo(recount(histories, year, Way.USUAL).get(measure));
            }
        }
    }

    private static Map<Measure, Integer> recount(List<WorkerHistory> histories, int year, Way way) {
        int[] counts = new int[Measure.values().length];
        for (WorkerHistory history : histories) {
            List<Determination> ofYear = Judge.judge(history, way.options(TODAY)).determinations().stream()
                    .filter(row -> row.test().date().getYear() == year)
                    .toList();
            counts[Measure.WORKERS_TESTED.ordinal()] += ofYear.isEmpty() ? 0 : 1;
            ofYear.stream()
                    .collect(Collectors.groupingBy(row -> row.test().date()))
                    .values()
                    .forEach(day -> countDay(day, counts));
        }
        return Arrays.stream(Measure.values())
                .collect(Collectors.toMap(measure -> measure, measure -> counts[measure.ordinal()]));
    }

    /** The records here hold one test a day. */
    private static void countDay(List<Determination> ears, int[] counts) {
        if (ears.stream().anyMatch(ear -> ear.test().purpose() == TestPurpose.ANNUAL)) {
            counts[Measure.ANNUAL_TESTS.ordinal()]++;
        }
        boolean confirmed = any(ears, Outcome.CONFIRMED);
        boolean awaiting = any(ears, Outcome.AWAITING_RETEST);
        boolean notConfirmed = any(ears, Outcome.NOT_CONFIRMED);
        counts[Measure.SHIFTS_FOUND.ordinal()] += confirmed || awaiting || notConfirmed ? 1 : 0;
        counts[Measure.SHIFTS_CONFIRMED.ordinal()] += confirmed ? 1 : 0;
        counts[Measure.SHIFTS_AWAITING_RETEST.ordinal()] += awaiting && !confirmed ? 1 : 0;
        counts[Measure.SHIFTS_NOT_CONFIRMED.ordinal()] += notConfirmed && !awaiting && !confirmed ? 1 : 0;
        counts[Measure.UNDECIDED_TESTS.ordinal()] += any(ears, Outcome.UNDECIDED) ? 1 : 0;
        counts[Measure.RECORDABLE_CASES.ordinal()] += ears.stream()
                        .anyMatch(ear -> ear instanceof Determination.Judged judged
                                && judged.recording().answer() == Recordability.YES)
                ? 1
                : 0;
    }

    private static boolean any(List<Determination> ears, Outcome outcome) {
        return ears.stream().anyMatch(ear -> ear.outcome() == outcome);
    }

    @Test
    void aPersonOfOneSiteComparesOnlyItsWorkers() {
        SignIn.as(Role.NURSE, "Mill");
        assertThat(workersOf(compare(2025, "osha", "niosh"))).containsExactly("M-3");
        assertThat(compare(2025, "osha", "niosh").judged()).isEqualTo(3);
        assertThat(comparing
                        .compare(2025, Optional.of("Yard"), way("osha"), way("niosh"))
                        .judged())
                .as("the site of others")
                .isZero();
        SignIn.as(Role.NURSE, new String[0]);
        assertThat(compare(2025, "osha", "niosh").judged()).isZero();
    }

    @Test
    void aSiteNarrowsTheComparison() {
        RuleComparison yard = comparing.compare(2025, Optional.of("Yard"), way("osha"), way("niosh"));
        assertThat(workersOf(yard)).containsExactly("Y-1");
        assertThat(yard.judged()).isEqualTo(2);
        assertThat(yard.site()).contains("Yard");
        assertThat(yard.countsOf(Measure.WORKERS_TESTED)).isEqualTo(new RuleComparison.Counts(2, 2));
        assertThat(comparing
                        .compare(2025, Optional.of(""), way("osha"), way("niosh"))
                        .judged())
                .as("nobody without a site was tested")
                .isZero();
    }

    @Test
    void thatItWasComparedIsOnTheAuditTrail() {
        jdbc.update("delete from audit_event");
        comparing.compare(2025, Optional.of("Mill"), way("osha.age-off"), way("niosh"));
        compare(2026, "osha", "fra.revised");
        assertThat(jdbc.queryForList(
                        "select actor || '|' || action || '|' || subject_type || '|' || subject_id || '|' || detail"
                                + " from audit_event order by id",
                        String.class))
                .containsExactly(
                        "test-safety_officer|RULES_COMPARED|year|2025|osha.age-off beside niosh, Mill",
                        "test-safety_officer|RULES_COMPARED|year|2026|osha beside fra.revised");
    }

    @Test
    void theRecordStaysAsItIs() {
        List<Map<String, Object>> determinations = everyRow("determination");
        List<Map<String, Object>> followUps = everyRow("follow_up");
        compare(2025, "msha", "niosh.revised");
        assertThat(everyRow("determination")).isEqualTo(determinations);
        assertThat(everyRow("follow_up")).isEqualTo(followUps);
    }

    private List<Map<String, Object>> everyRow(String table) {
        return jdbc.queryForList("select * from " + table + " order by id");
    }

    /** More workers than are judged at a time, and more differences than are listed; all are counted. */
    @Test
    void aLongListIsCutAndCountedWhole() {
        int many = 510;
        List<String> roster = new ArrayList<>(List.of("worker_id,birth_date,sex,site"));
        List<String> tests = new ArrayList<>(List.of(TestImports.AUDIOGRAM_COLUMNS.strip()));
        IntStream.range(0, many).forEach(i -> {
            roster.add("Z-%03d,1950-01-01,M,Quarry".formatted(i));
            tests.add(test("Z-%03d".formatted(i), "2023-06-01", "baseline", 10, 10)
                    .strip());
            tests.add(
                    test("Z-%03d".formatted(i), "2025-06-02", "annual", 30, 30).strip());
        });
        files.store(String.join("\n", roster) + "\n", String.join("\n", tests) + "\n", "");
        RuleComparison comparison = comparing.compare(2025, Optional.of("Quarry"), way("osha"), way("niosh"));
        assertThat(comparison.judged()).isEqualTo(many);
        assertThat(comparison.workers()).isEqualTo(many);
        assertThat(comparison.differing()).isEqualTo(2 * many);
        assertThat(comparison.reasons()).isEqualTo(Map.of(Reason.CONFIRMATION, 2 * many));
        assertThat(comparison.rows()).hasSize(RuleComparison.ROWS_AT_MOST);
        assertThat(comparison.countsOf(Measure.SHIFTS_CONFIRMED)).isEqualTo(new RuleComparison.Counts(many, 0));
        assertThat(comparison.rows()).extracting(RuleComparison.Row::workerId).isSorted();
        assertThat(comparison.rows().stream()
                        .map(RuleComparison.Row::difference)
                        .map(Difference::reason))
                .containsOnly(Reason.CONFIRMATION);
    }

    @Test
    void aWayIsFoundByItsWordAndWithoutAnAllowanceThereIsNoneToSwitchOff() {
        ways().forEach(way -> assertThat(Way.of(way.word())).contains(way));
        assertThat(way("niosh.age-off")).isEqualTo(way("niosh"));
        assertThat(way("osha.age-off")).isNotEqualTo(way("osha"));
        assertThat(Way.of("gosha")).isEmpty();
        assertThat(Way.of("osha.revised.age-off")).isEmpty();
        assertThat(way("osha.age-off.revised").label()).isEqualTo("OSHA without allowance for age, baselines revised");
        assertThat(way("niosh").label()).isEqualTo("NIOSH");
    }
}
