package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.access.AccessDeniedException;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;

/**
 * Today is 9 March 2026; M-1 shows a shift on the right on 1 March 2026, whose retest window is open, and Y-1 one on the
 * left on 1 June 2025 that stands.
 */
@RegisterTest
class AlterationServiceTest {

    private static final LocalDate TODAY = MovableClock.FIRST_DAY;

    /** Worse hearing than the baseline on record, so that no shift is left. */
    private static final String OLDER_BASELINE = AUDIOGRAM_COLUMNS + test("Y-1", "2023-06-01", "baseline", 35, 10);

    @Autowired
    private AlterationService alterations;

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

    private List<AlterationRow> open() {
        return alterations.find(Order.ascending(AlterationColumn.ALTERED_ON), 0, 10);
    }

    private List<String> told() {
        return open().stream()
                .map(row -> row.workerId() + " " + row.alteration().testDate() + " "
                        + row.alteration().ear().word() + ": "
                        + row.alteration().before().inWords() + " -> "
                        + EarFinding.inWords(row.alteration().after()) + "; "
                        + row.alteration().inWords())
                .toList();
    }

    @Test
    void anOlderTestThatChangesWhatANoticeWasGivenOnWaitsForAPerson() {
        decide("Y-1", "2025-06-01", DecisionKind.NOTICE_GIVEN);

        files.store("", OLDER_BASELINE, "");

        assertThat(told())
                .containsExactly(
                        "Y-1 2025-06-01 left: shift confirmed, recordable; baseline of 1 Jun 2024, mean shift 29.33"
                                + " dB -> no shift, not recordable; baseline of 1 Jun 2023, mean shift 4.33 dB; Changed on 9 Mar"
                                + " 2026, after notice given on 9 Mar 2026: a person decides");
        assertThat(alterations.count()).isEqualTo(1);
        for (AlterationColumn column : AlterationColumn.values()) {
            assertThat(alterations.find(Order.descending(column), 0, 10)).hasSize(1);
        }
        assertThat(jdbc.queryForList("select kind from decision", String.class))
                .as("what was sent stands as it was")
                .containsExactly("notice-given");
    }

    @Test
    void aShiftThatAppearsInAnEarThatTheNoticeNamedWaitsForAPerson() {
        files.store("", "", """
                worker_id,ear,test_date,kind,date,by,reason
                Y-1,both,2025-06-01,notice-given,2025-06-20,the nurse,
                """);

        files.store("", AUDIOGRAM_COLUMNS + test("Y-1", "2023-06-01", "baseline", 10, -10), "");

        assertThat(told())
                .hasSize(2)
                .last()
                .asString()
                .startsWith("Y-1 2025-06-01 right: no shift, not recordable;")
                .contains("-> shift confirmed, not recordable;");
    }

    @Test
    void whatNothingWasSentOrRecordedOnMakesNoEntry() {
        files.store("", OLDER_BASELINE, "");

        assertThat(jdbc.queryForList("select * from determination_history")).isNotEmpty();
        assertThat(open()).isEmpty();
    }

    @Test
    void aNoticeThatComesWithTheOlderTestIsNotOvertakenByIt() {
        files.store("", OLDER_BASELINE, """
                worker_id,ear,test_date,kind,date,by,reason
                Y-1,left,2025-06-01,notice-given,2025-06-20,the nurse,
                """);

        assertThat(open()).isEmpty();
    }

    @Test
    void aRetestThatConfirmsIsWhatTheNoticeExpected() {
        decide("M-1", "2026-03-01", DecisionKind.NOTICE_GIVEN);
        decide("M-1", "2026-03-01", DecisionKind.RECORDED);

        files.store("", AUDIOGRAM_COLUMNS + test("M-1", "2026-03-08", "retest", 10, 30), "");

        assertThat(jdbc.queryForList("select outcome from determination_history", String.class))
                .contains("awaiting-retest");
        assertThat(open()).isEmpty();
    }

    @Test
    void aRetestThatClearsTheShiftAfterANoticeWaitsForAPerson() {
        decide("M-1", "2026-03-01", DecisionKind.NOTICE_GIVEN);

        files.store("", AUDIOGRAM_COLUMNS + test("M-1", "2026-03-08", "retest", 10, 10), "");

        assertThat(told()).singleElement().asString().contains("-> shift not confirmed, not recordable;");
    }

    @Test
    void theDayThatClosesTheWindowIsExpectedToo() {
        decide("M-1", "2026-03-01", DecisionKind.NOTICE_GIVEN);
        clock.moveTo(LocalDate.of(2026, 4, 1));

        assertThat(open()).isEmpty();
        assertThat(jdbc.queryForList("select cause from determination_history", String.class))
                .containsOnly("CALENDAR");
    }

    @Test
    void whoDecidesOnATestNeedNotBeToldUnlessAnEntryIsLeftBehind() {
        decide("Y-1", "2025-06-01", DecisionKind.NOTICE_GIVEN);
        decide("Y-1", "2025-06-01", DecisionKind.NOT_WORK_RELATED);
        assertThat(open()).isEmpty();
        decide("Y-1", "2025-06-01", DecisionKind.WORK_RELATED);
        decide("Y-1", "2025-06-01", DecisionKind.RECORDED);

        clock.moveTo(TODAY.plusDays(1));
        decisions.enter(
                "Y-1",
                new Decision(
                        Ears.LEFT,
                        LocalDate.of(2025, 6, 1),
                        DecisionKind.NOT_WORK_RELATED,
                        TODAY.plusDays(1),
                        "Dr. Vale",
                        "an infection"));

        assertThat(told())
                .singleElement()
                .asString()
                .contains("shift confirmed, recordable")
                .contains("-> shift confirmed, not recordable")
                .contains("recorded on 9 Mar 2026: a person decides");
    }

    @Test
    void aLinedOutEntryIsNoEntryAnyMore() {
        decide("Y-1", "2025-06-01", DecisionKind.RECORDED);
        decide("Y-1", "2025-06-01", DecisionKind.LINED_OUT);

        files.store("", OLDER_BASELINE, "");

        assertThat(open()).isEmpty();
    }

    @Test
    void acknowledgingTakesAReasonAndGoesOnTheAuditTrail() {
        decide("Y-1", "2025-06-01", DecisionKind.NOTICE_GIVEN);
        files.store("", OLDER_BASELINE, "");
        long key = open().getFirst().alteration().key();
        SignIn.as(Role.NURSE);

        assertThat(alterations.acknowledge("Y-1", key, " ")).isEqualTo(AcknowledgeResult.REASON_MISSING);
        assertThat(alterations.acknowledge("Y-1", key, "x".repeat(2001))).isEqualTo(AcknowledgeResult.REASON_TOO_LONG);
        assertThat(alterations.acknowledge("M-1", key, "seen")).isEqualTo(AcknowledgeResult.NOT_OPEN);
        assertThat(alterations.acknowledge("Y-1", key + 1, "seen")).isEqualTo(AcknowledgeResult.NOT_OPEN);
        assertThat(open()).hasSize(1);

        assertThat(alterations.acknowledge("Y-1", key, "Told anew")).isEqualTo(AcknowledgeResult.ACKNOWLEDGED);

        assertThat(open()).isEmpty();
        assertThat(alterations.acknowledge("Y-1", key, "Told anew")).isEqualTo(AcknowledgeResult.NOT_OPEN);
        assertThat(alterations.ofWorker("Y-1"))
                .singleElement()
                .satisfies(change -> assertThat(change.acknowledgement())
                        .contains(new Alteration.Acknowledgement(TODAY, "test-nurse", "Told anew")));
        assertThat(jdbc.queryForList(
                        "select actor, subject_id, detail from audit_event where action = 'ALTERATION_ACKNOWLEDGED'"))
                .containsExactly(
                        Map.of("actor", "test-nurse", "subject_id", "Y-1", "detail", "left, test of 2025-06-01"));
    }

    @Test
    void whatChangedAboutARecordedCaseIsForASafetyOfficer() {
        decide("Y-1", "2025-06-01", DecisionKind.RECORDED);
        files.store("", OLDER_BASELINE, "");
        SignIn.as(Role.NURSE);
        AlterationRow row = open().getFirst();

        assertThat(row.alteration().mayAcknowledge()).isFalse();
        assertThatThrownBy(() -> alterations.acknowledge("Y-1", row.alteration().key(), "seen"))
                .isInstanceOf(AccessDeniedException.class);

        SignIn.as(Role.SAFETY_OFFICER);
        assertThat(alterations.acknowledge("Y-1", row.alteration().key(), "Lined out"))
                .isEqualTo(AcknowledgeResult.ACKNOWLEDGED);
    }

    @Test
    void aPersonOfAnotherSiteSeesAndAcknowledgesNoneOfIt() {
        decide("Y-1", "2025-06-01", DecisionKind.NOTICE_GIVEN);
        files.store("", OLDER_BASELINE, "");
        long key = open().getFirst().alteration().key();
        SignIn.as(Role.SAFETY_OFFICER, "Mill");

        assertThat(open()).isEmpty();
        assertThat(alterations.count()).isZero();
        assertThat(alterations.ofWorker("Y-1")).isEmpty();
        assertThat(alterations.acknowledge("Y-1", key, "seen")).isEqualTo(AcknowledgeResult.NOT_OPEN);
    }
}
