package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026; M-1 shows a shift on the right on 1 March 2026, Y-1 one on the left on 1 June 2025. */
@RegisterTest
class DeterminationHistoryServiceTest {

    private static final LocalDate TODAY = MovableClock.FIRST_DAY;
    private static final String RULES = "OSHA: 29 CFR 1910.95 and 1904.10, edition 2026-11, with the age allowance,"
            + " baseline revisions proposed; edition 1 of this program's rules";

    @Autowired
    private DeterminationHistoryService formerly;

    @Autowired
    private DecisionService decisions;

    @Autowired
    private BoardService board;

    @Autowired
    private TestImports files;

    @Autowired
    private MovableClock clock;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoShifts() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(ServiceFixture.ROSTER, ServiceFixture.AUDIOGRAMS, "");
        board.counts();
    }

    private List<String> told(String workerId) {
        return formerly.of(workerId).stream()
                .map(version -> version.testDate() + " " + version.ear().word() + ": " + VersionWords.time(version)
                        + "; "
                        + version.finding().answer() + "; " + version.finding().comparison() + "; "
                        + VersionWords.why(version))
                .toList();
    }

    private void decide(String workerId, String testDate, DecisionKind kind) {
        assertThat(decisions.enter(
                        workerId,
                        new Decision(
                                workerId.equals("Y-1") ? Ears.LEFT : Ears.RIGHT,
                                LocalDate.parse(testDate),
                                kind,
                                TODAY,
                                "Dr. Vale",
                                "as found")))
                .isEqualTo(new DecisionResult.Recorded());
    }

    @Test
    void whatIsJudgedForTheFirstTimeHasNoHistory() {
        assertThat(jdbc.queryForList("select * from determination_history")).isEmpty();
        assertThat(formerly.of("M-1")).isEmpty();
    }

    @Test
    void whatIsWrittenAgainUnchangedMakesNoHistoryAndStandsAsItWasMade() {
        clock.moveTo(TODAY.plusDays(2));
        decide("Y-1", "2025-06-01", DecisionKind.NOTICE_GIVEN);

        assertThat(jdbc.queryForList("select * from determination_history")).isEmpty();
        assertThat(jdbc.queryForList("select distinct judged_as_of from determination", LocalDate.class))
                .containsExactly(TODAY);
        assertThat(jdbc.queryForObject(
                        "select judged_on from worker_judgement j join worker w on w.id = j.worker_id where w.worker_id ="
                                + " 'Y-1'",
                        LocalDate.class))
                .isEqualTo(TODAY.plusDays(2));
    }

    @Test
    void aDecisionThatChangesADeterminationIsNamedAsTheCause() {
        clock.moveTo(TODAY.plusDays(2));
        decide("Y-1", "2025-06-01", DecisionKind.NOT_WORK_RELATED);

        assertThat(told("Y-1"))
                .containsExactly(
                        "2025-06-01 left: 9 Mar 2026 to 11 Mar 2026; shift confirmed, recordable; baseline of 1 Jun 2024,"
                                + " mean shift 29.33 dB; by the decision of 9 Mar 2026: found not work-related, left ear,"
                                + " test of 1 Jun 2025, by Dr. Vale",
                        "2025-06-01 left: since 11 Mar 2026; shift confirmed, not recordable; baseline of 1 Jun 2024, mean"
                                + " shift 29.33 dB; stands now");
        assertThat(formerly.of("Y-1"))
                .allSatisfy(version ->
                        assertThat(VersionWords.rules(version.basis())).isEqualTo(RULES));
    }

    @Test
    void aTestThatIsSetAsideLeavesItsDeterminationBehind() {
        decide("Y-1", "2025-06-01", DecisionKind.INVALID_TEST);

        assertThat(told("Y-1"))
                .singleElement()
                .satisfies(line -> assertThat(line).contains("by the decision of 9 Mar 2026: set aside as invalid"));
        assertThat(jdbc.queryForList("select ear from determination where test_date = date '2025-06-01'", String.class))
                .containsExactly("right");
    }

    @Test
    void anImportAndTheDayAreNamedAsTheCause() {
        clock.moveTo(LocalDate.of(2026, 4, 1));
        board.counts();
        assertThat(told("M-1"))
                .containsExactly(
                        "2026-03-01 right: 9 Mar 2026 to 1 Apr 2026; awaiting retest, for the injury log too; baseline of 2"
                                + " Mar 2025, mean shift 19.33 dB; as the day came: time alone changed what the record says",
                        "2026-03-01 right: since 1 Apr 2026; shift confirmed, recordable; baseline of 2 Mar 2025, mean"
                                + " shift 19.33 dB; stands now");

        files.store("", AUDIOGRAM_COLUMNS + test("M-1", "2026-03-20", "retest", 10, 10), "");
        assertThat(told("M-1"))
                .hasSize(5)
                .anySatisfy(line -> assertThat(line)
                        .startsWith("2026-03-01 right: 1 Apr 2026 to 1 Apr 2026; shift confirmed, recordable;")
                        .contains("; by an import on 1 Apr 2026, number "));
        assertThat(formerly.of("M-1"))
                .filteredOn(version -> version.replacement().isEmpty())
                .extracting(VersionWords::settled)
                .as("the retest answers for both ears")
                .containsExactly("settled by the test of 20 Mar 2026", "settled by the test of 20 Mar 2026");
    }

    @Test
    void whatWasDeterminedIsNeverDeletedByJudgingAgain() {
        decide("Y-1", "2025-06-01", DecisionKind.NOT_WORK_RELATED);
        List<String> first =
                jdbc.queryForList("select id || outcome || recordable from determination_history", String.class);

        decide("Y-1", "2025-06-01", DecisionKind.WORK_RELATED);
        files.store("", AUDIOGRAM_COLUMNS + test("Y-1", "2024-01-01", "baseline", 0, 0), "");

        assertThat(jdbc.queryForList(
                        "select id || outcome || coalesce(recordable, '') from determination_history", String.class))
                .hasSizeGreaterThan(4)
                .containsAll(first);
        assertThat(told("Y-1"))
                .anySatisfy(line -> assertThat(line).contains("2024-06-01 left").contains("not compared"));
    }

    @Test
    void aDeterminationOfAnotherEditionKeepsItsEdition() {
        jdbc.update("update worker_judgement set rule_edition = 0");
        jdbc.update("update determination set rule_edition = 0, shift_sum = 99 where ear = 'left' and test_date ="
                + " date '2025-06-01'");
        jdbc.update("update determination set rule_edition = 0 where ear = 'right'");
        clock.moveTo(TODAY.plusDays(1));
        board.counts();

        assertThat(formerly.of("Y-1"))
                .extracting(version -> version.basis().ruleEdition() + " "
                        + version.finding().shiftSum().getAsInt() + " " + VersionWords.why(version))
                .containsExactly("0 99 by another edition of this program's rules", "1 88 stands now");
        assertThat(jdbc.queryForList(
                        "select distinct rule_edition from determination where ear = 'right'", Integer.class))
                .as("what says the same stands as it was made")
                .containsExactly(0);
    }

    @Test
    void aPersonOfAnotherSiteSeesNoneOfIt() {
        decide("Y-1", "2025-06-01", DecisionKind.NOT_WORK_RELATED);
        SignIn.as(Role.NURSE, "Mill");

        assertThat(formerly.of("Y-1")).isEmpty();
    }
}
