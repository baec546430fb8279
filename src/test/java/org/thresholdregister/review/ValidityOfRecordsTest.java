package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.validity.ValidityFlag;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;

/** Doubts about tests that are on record, and about tests that would come on record. Today is 9 March 2026. */
@RegisterTest
class ValidityOfRecordsTest {

    private static final String ROSTER = """
            worker_id,birth_date,sex,family_name,site
            M-1,1990-05-01,F,Núñez,Mill
            M-2,1990-01-31,M,Orrin,Mill
            Y-1,1990-01-01,F,Quill,Yard
            """;
    private static final String COLUMNS = TestImports.AUDIOGRAM_COLUMNS.strip()
            + ",hours_since_noise,transducer,left_1000_repeat,right_1000_repeat\n";
    private static final String GOOD = "5,5,10,10,15,10,5";
    private static final String POOR = "20,25,40,50,60,55,45";

    /** On 3 March 2025 the tests of M-1 and M-2 went under each other's numbers; Y-1 of the other site hears like M-1. */
    private static final String AUDIOGRAMS = COLUMNS
            + row("M-1", "2023-03-06", "baseline", GOOD, GOOD, "13.5,insert,5,20")
            + row("M-1", "2024-03-04", "annual", GOOD, GOOD, "")
            + row("M-2", "2023-03-06", "baseline", POOR, POOR, "16,insert,,")
            + row("M-2", "2024-03-04", "annual", POOR, POOR, "")
            + row("Y-1", "2023-03-06", "baseline", GOOD, GOOD, "16,insert,,")
            + row("Y-1", "2024-03-04", "annual", GOOD, GOOD, "");

    private static final String EXCHANGED = COLUMNS
            + row("M-1", "2025-03-03", "annual", POOR, POOR, "")
            + row("M-2", "2025-03-03", "annual", GOOD, GOOD, "")
            + row("Y-1", "2025-03-03", "annual", POOR, POOR, "");

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private ShiftReviewService shifts;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    private static String row(String worker, String date, String purpose, String left, String right, String made) {
        return String.join(",", worker, date, purpose, left, right, made.isEmpty() ? ",,," : made) + "\n";
    }

    @BeforeEach
    void whatIsOnRecord() {
        SignIn.as(Role.NURSE);
        files.store(ROSTER, AUDIOGRAMS, "");
    }

    private List<FlagKind> kinds(String workerId, String day) {
        return flags(workerId, day).stream().map(ValidityFlag::kind).toList();
    }

    private List<ValidityFlag> flags(String workerId, String day) {
        return records.open(workerId).orElseThrow().stories().stream()
                .filter(story -> story.audiogram().date().equals(LocalDate.parse(day)))
                .findFirst()
                .orElseThrow()
                .flags();
    }

    @Test
    void howATestWasMadeIsLookedAt() {
        assertThat(flags("M-1", "2023-03-06"))
                .extracting(ValidityFlag::kind, flag -> flag.ears().word())
                .containsExactly(tuple(FlagKind.QUIET_TIME_SHORT, "both"), tuple(FlagKind.REPEAT_UNRELIABLE, "right"));
        assertThat(kinds("M-1", "2024-03-04")).isEmpty();
    }

    @Test
    void testsOfTheSameDayAtTheSameSiteAreComparedAndNoOthers() {
        files.store("", EXCHANGED, "");

        assertThat(flags("M-1", "2025-03-03"))
                .filteredOn(flag -> flag.kind() == FlagKind.EXCHANGED_WITH_ANOTHER)
                .extracting(flag -> ((ValidityFlag.LooksLikeAnotherWorkers) flag).otherWorkerId())
                .containsExactly("M-2");
        assertThat(kinds("M-2", "2025-03-03")).contains(FlagKind.EXCHANGED_WITH_ANOTHER);
        assertThat(kinds("Y-1", "2025-03-03"))
                .doesNotContain(FlagKind.EXCHANGED_WITH_ANOTHER, FlagKind.LIKE_ANOTHER)
                .contains(FlagKind.WORSE_THAN_PREVIOUS);
    }

    @Test
    void aPersonOfOneSiteSeesNothingOfAnother() {
        files.store("", EXCHANGED, "");
        SignIn.as(Role.NURSE, "Yard");

        assertThat(records.open("M-1")).isEmpty();
        assertThat(kinds("Y-1", "2025-03-03")).doesNotContain(FlagKind.EXCHANGED_WITH_ANOTHER);
    }

    @Test
    void shiftsCountTheDoubtsAboutTheirEar() {
        files.store("", EXCHANGED, "");

        Map<String, FlagCount> counts =
                shifts.find(ShiftFilter.ofYear(2025), Order.ascending(ShiftColumn.EAR), 0, 10).stream()
                        .collect(Collectors.toMap(
                                row -> row.workerId() + " " + row.ear().word(), ShiftRow::flags));

        assertThat(counts)
                .containsEntry("M-1 left", new FlagCount(1, 1))
                .containsEntry("M-1 right", new FlagCount(1, 1))
                .containsEntry("Y-1 left", new FlagCount(0, 1))
                .containsEntry("Y-1 right", new FlagCount(0, 1))
                .hasSize(4);
        for (Ear ear : Ear.values()) {
            assertThat(FlagCount.of(flags("M-1", "2025-03-03").stream()
                            .filter(flag -> flag.ears().include(ear))
                            .toList()))
                    .isEqualTo(new FlagCount(1, 1));
        }
    }

    @Test
    void aPreviewCountsTheDoubtsAboutNewTestsOnly() {
        ImportPreview preview = files.preview("", EXCHANGED, "");

        assertThat(preview.doubts())
                .isEqualTo(Map.of(
                        FlagKind.EXCHANGED_WITH_ANOTHER, 2,
                        FlagKind.WORSE_THAN_PREVIOUS, 2,
                        FlagKind.MEAN_BETTER_THAN_BASELINE, 1));
        assertThat(preview.counts().newTests()).isEqualTo(3);
        assertThat(preview.problems()).isEmpty();
        assertThat(files.preview("", AUDIOGRAMS, "").doubts())
                .as("all on record already")
                .isEmpty();
    }

    @Test
    void aFirstImportIsLookedAtInItself() {
        assertThat(files.preview(
                                "worker_id,birth_date,sex,site\nN-1,,,Mill\n",
                                COLUMNS + row("N-1", "2025-03-03", "annual", POOR, "DNT,5,10,10,15,10,5", "9,,,"),
                                "")
                        .doubts())
                .isEqualTo(Map.of(
                        FlagKind.QUIET_TIME_SHORT, 1,
                        FlagKind.FREQUENCIES_MISSING, 1,
                        FlagKind.MASKING_CALLED_FOR, 1));
    }

    /** What is stored and judged is the same as without the columns that only doubts rest on. */
    @Test
    void noFlagChangesADetermination() {
        String found = "select w.worker_id, d.test_date, d.ear, d.outcome, d.shift_sum, d.level_sum, d.recordable"
                + " from determination d join worker w on w.id = d.worker_id order by 1, 2, 3";
        List<Map<String, Object>> before = jdbc.queryForList(found);
        assertThat(before).hasSize(12);

        for (String table : List.of("follow_up", "determination", "worker_judgement", "audiogram")) {
            jdbc.update("delete from " + table);
        }
        files.store("", AUDIOGRAMS.replaceAll("(?m),(13.5|16),insert,.*$", ",,,,"), "");

        assertThat(jdbc.queryForList(found)).isEqualTo(before);
    }
}
