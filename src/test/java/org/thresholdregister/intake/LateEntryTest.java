package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.review.DeterminationChange;
import org.thresholdregister.review.EarFinding;

/** Tests that come after later ones of the same worker, seen before anything is stored. Today is 9 March 2026. */
@RegisterTest
class LateEntryTest {

    private static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,site
            L-1,1950-05-01,F,Núñez,Ada,Mill
            L-2,1950-01-31,M,Orrin,Bela,Mill
            """;
    private static final String AUDIOGRAMS = AUDIOGRAM_COLUMNS
            + test("L-1", "2024-02-01", "baseline", 10, 10)
            + test("L-1", "2025-02-01", "annual", 30, 10)
            + test("L-2", "2024-03-01", "baseline", 15, 15);

    @Autowired
    private ImportService imports;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void oneShiftWithItsNotice() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(ROSTER, AUDIOGRAMS, """
                worker_id,ear,test_date,kind,date,by,reason
                L-1,left,2025-02-01,notice-given,2025-02-20,the nurse,
                """);
    }

    private List<String> changes(ImportPreview preview) {
        return preview.lateChanges().stream()
                .map(change -> change.workerId() + " " + change.testDate() + " "
                        + change.ear().word() + ": "
                        + change.before().answer() + " -> "
                        + change.after().map(EarFinding::answer).orElse("not judged") + "; "
                        + change.sent().inWords())
                .toList();
    }

    @Test
    void anOlderBaselineShowsWhatItWouldChangeAboutLaterTests() {
        ImportPreview preview =
                files.preview("", AUDIOGRAM_COLUMNS + test("L-1", "2023-02-01", "baseline", 25, 10), "");

        assertThat(changes(preview))
                .containsExactly(
                        "L-1 2024-02-01 left: baseline -> no shift, not recordable; ",
                        "L-1 2024-02-01 right: baseline -> no shift, not recordable; ",
                        "L-1 2025-02-01 left: shift confirmed, recordable -> no shift, not recordable; notice given on 20"
                                + " Feb 2025",
                        "L-1 2025-02-01 right: no shift, not recordable -> no shift, not recordable; ");
        assertThat(jdbc.queryForList("select * from determination_history")).isEmpty();
        assertThat(jdbc.queryForList("select * from audiogram")).hasSize(3);
    }

    @Test
    void whatIsStoredIsWhatThePreviewShowed() {
        ImportPreview preview =
                files.preview("", AUDIOGRAM_COLUMNS + test("L-1", "2023-02-01", "baseline", 25, 10), "");

        assertThat(imports.confirm(preview.token(), ImportProgress.unwatched()))
                .isInstanceOf(ImportResult.Stored.class);

        assertThat(jdbc.queryForList(
                        "select h.test_date || ' ' || h.ear || ': ' || h.outcome || ' -> ' || d.outcome from"
                                + " determination_history h join determination d on d.audiogram_id = h.audiogram_id and"
                                + " d.ear = h.ear order by 1",
                        String.class))
                .containsExactly(
                        "2024-02-01 left: baseline -> no-shift",
                        "2024-02-01 right: baseline -> no-shift",
                        "2025-02-01 left: confirmed -> no-shift",
                        "2025-02-01 right: no-shift -> no-shift");
        assertThat(jdbc.queryForList("select test_date || ' ' || ear from alteration", String.class))
                .containsExactly("2025-02-01 left");
    }

    @Test
    void aLaterTestIsNotLate() {
        assertThat(changes(files.preview(
                        "",
                        AUDIOGRAM_COLUMNS
                                + test("L-1", "2026-02-20", "annual", 10, 10)
                                + test("L-2", "2025-03-01", "annual", 40, 40),
                        "")))
                .isEmpty();
    }

    @Test
    void aRetestThatClearsAShiftAfterItsNoticeIsShown() {
        assertThat(changes(files.preview("", AUDIOGRAM_COLUMNS + test("L-1", "2025-02-20", "retest", 10, 10), "")))
                .containsExactly(
                        "L-1 2025-02-01 left: shift confirmed, recordable -> shift not confirmed, not recordable;"
                                + " notice given on 20 Feb 2025");
        assertThat(changes(files.preview("", AUDIOGRAM_COLUMNS + test("L-1", "2025-02-20", "retest", 30, 10), "")))
                .as("it confirms what the worker was told")
                .isEmpty();
    }

    @Test
    void aRetestThatComesLateIsShownWithAllThatItChanges() {
        files.store("", AUDIOGRAM_COLUMNS + test("L-1", "2026-02-01", "annual", 30, 10), "");

        assertThat(changes(files.preview("", AUDIOGRAM_COLUMNS + test("L-1", "2025-02-20", "retest", 10, 10), "")))
                .containsExactly(
                        "L-1 2025-02-01 left: shift confirmed, recordable -> shift not confirmed, not recordable; notice"
                                + " given on 20 Feb 2025",
                        "L-1 2026-02-01 left: shift confirmed, already recorded -> shift confirmed, recordable; ");
    }

    @Test
    void anOlderTestThatChangesNothingIsNotListed() {
        assertThat(changes(files.preview("", AUDIOGRAM_COLUMNS + test("L-1", "2024-08-01", "annual", 10, 10), "")))
                .isEmpty();
    }

    @Test
    void whatComesWithTheOlderTestCountsToo() {
        ImportPreview preview = files.preview(
                "worker_id,birth_date,sex\nL-1,1990-05-01,F\n",
                AUDIOGRAM_COLUMNS + test("L-1", "2024-08-01", "annual", 10, 10),
                """
                worker_id,ear,test_date,kind,date,by,reason
                L-1,both,2025-02-01,not-work-related,2025-03-01,Dr. Vale,an infection
                """);

        assertThat(preview.lateChanges())
                .extracting(DeterminationChange::after)
                .extracting(after -> after.orElseThrow().inWords())
                .contains("shift confirmed, not recordable; baseline of 1 Feb 2024, mean shift 20.00 dB");
    }

    @Test
    void theRegisterMayHaveChangedSinceThePreview() {
        String older = AUDIOGRAM_COLUMNS + test("L-1", "2023-02-01", "baseline", 25, 10);
        ImportPreview preview = files.preview("", older, "");
        files.store("", "", """
                worker_id,ear,test_date,kind,date,by,reason
                L-1,left,2025-02-01,recorded,2025-02-25,the officer,
                """);

        assertThat(imports.confirm(preview.token(), ImportProgress.unwatched()))
                .isInstanceOf(ImportResult.RegisterChanged.class);
        assertThat(jdbc.queryForList("select * from audiogram")).hasSize(3);
    }

    @Test
    void takingTheListOutIsOnTheAuditTrail() {
        ImportPreview preview =
                files.preview("", AUDIOGRAM_COLUMNS + test("L-1", "2023-02-01", "baseline", 25, 10), "");

        assertThat(imports.lateChangesToTakeOut(preview)).hasSize(4);

        assertThat(jdbc.queryForList(
                        "select detail from audit_event where action = 'LATE_CHANGES_DOWNLOADED'", String.class))
                .containsExactly("4 determinations that would change");
    }
}
