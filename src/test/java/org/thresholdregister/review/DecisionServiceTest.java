package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.caselife.Refusal;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.review.DecisionResult.Reason;

@RegisterTest
class DecisionServiceTest {

    private static final LocalDate TEST = LocalDate.of(2025, 6, 1);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 9);

    @Autowired
    private DecisionService decisions;

    @Autowired
    private BoardService board;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void aShiftThatNobodyRetested() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(ServiceFixture.ROSTER, ServiceFixture.AUDIOGRAMS, "");
    }

    private static Decision decision(DecisionKind kind, LocalDate testDate, LocalDate decidedOn) {
        return new Decision(Ears.LEFT, testDate, kind, decidedOn, "Dr. Vale", "as found");
    }

    /** What is owed with a date. */
    private List<FollowUpKind> owed() {
        return board.find(BoardFilter.EVERYTHING, Order.ascending(BoardColumn.DUE_DATE), 0, 100).stream()
                .filter(BoardRow.OfTask.class::isInstance)
                .map(BoardRow.OfTask.class::cast)
                .filter(row -> row.workerId().equals("Y-1") && row.due().isPresent())
                .map(row -> FollowUpKind.valueOf(row.kind().name()))
                .toList();
    }

    @Test
    void aDecisionIsKeptAuditedAndJudgedAtOnce() {
        assertThat(owed()).containsExactly(FollowUpKind.NOTICE, FollowUpKind.RECORD, FollowUpKind.ANNUAL_TEST);
        Decision notice = decision(DecisionKind.NOTICE_GIVEN, TEST, TODAY);

        assertThat(decisions.enter("Y-1", notice)).isEqualTo(new DecisionResult.Recorded());

        assertThat(owed()).containsExactly(FollowUpKind.RECORD, FollowUpKind.ANNUAL_TEST);
        assertThat(records.open("Y-1").orElseThrow().decisions())
                .singleElement()
                .satisfies(recorded -> {
                    assertThat(recorded.decision()).isEqualTo(notice);
                    assertThat(recorded.enteredBy()).isEqualTo("test-safety_officer");
                });
        assertThat(jdbc.queryForList(
                        "select actor, subject_id, detail from audit_event where action = 'DECISION_ENTERED'"))
                .containsExactly(Map.of(
                        "actor",
                        "test-safety_officer",
                        "subject_id",
                        "Y-1",
                        "detail",
                        "notice-given, left, test of 2025-06-01"));
    }

    @Test
    void theSameDecisionAgainChangesNothing() {
        Decision recorded = decision(DecisionKind.RECORDED, TEST, TODAY);
        decisions.enter("Y-1", recorded);

        assertThat(decisions.enter("Y-1", recorded)).isEqualTo(new DecisionResult.AlreadyOnRecord());
        assertThat(jdbc.queryForList("select * from decision")).hasSize(1);
    }

    @Test
    void whatCannotBeIsRefusedAndChangesNothing() {
        Map<Decision, Reason> refused = Map.of(
                decision(DecisionKind.RECORDED, TEST.plusDays(1), TODAY),
                Reason.NO_SUCH_TEST,
                decision(DecisionKind.RECORDED, TEST, TEST.minusDays(1)),
                Reason.BEFORE_THE_TEST,
                decision(DecisionKind.RECORDED, TEST, TODAY.plusDays(1)),
                Reason.IN_THE_FUTURE,
                new Decision(Ears.LEFT, TEST, DecisionKind.RECORDED, TODAY, "", "x".repeat(2001)),
                Reason.TEXT_TOO_LONG);

        refused.forEach((decision, reason) ->
                assertThat(decisions.enter("Y-1", decision)).isEqualTo(new DecisionResult.Refused(reason)));

        assertThat(decisions.enter("X-9", decision(DecisionKind.RECORDED, TEST, TODAY)))
                .isEqualTo(new DecisionResult.Refused(Reason.UNKNOWN_WORKER));
        assertThat(jdbc.queryForList("select * from decision")).isEmpty();
        assertThat(owed()).contains(FollowUpKind.RECORD);
    }

    @Test
    void whatChangesTheRecordNeedsItsReason() {
        for (DecisionKind kind : DecisionKind.values()) {
            var withoutReason = new Decision(Ears.LEFT, TEST, kind, TODAY, "Dr. Vale", " ");
            assertThat(decisions.enter("Y-1", withoutReason))
                    .as(kind.word())
                    .isEqualTo(
                            switch (kind) {
                                case NOT_WORK_RELATED, LINED_OUT, INVALID_TEST, BASELINE, BASELINE_KEPT ->
                                    new DecisionResult.Refused(Reason.REASON_MISSING);
                                case WORK_RELATED, RECORDED, NOTICE_GIVEN, PROTECTOR_REFITTED, TRAINED, REFERRED ->
                                    new DecisionResult.Recorded();
                                case RETEST_BOOKED -> outOfOrder(Ear.LEFT, Refusal.SHIFT_CONFIRMED);
                            });
        }
        assertThat(jdbc.queryForList("select * from decision")).hasSize(6);
    }

    private static DecisionResult outOfOrder(Ear ear, Refusal why) {
        return new DecisionResult.OutOfOrder(new WorkerCases.Objection(ear, why));
    }

    @Test
    void anIllegalMoveIsRefusedWithItsReasonAndChangesNothing() {
        assertThat(decisions.enter("Y-1", decision(DecisionKind.LINED_OUT, TEST, TODAY)))
                .isEqualTo(outOfOrder(Ear.LEFT, Refusal.NOT_ON_THE_LOG));
        assertThat(decisions.enter(
                        "Y-1", new Decision(Ears.BOTH, TEST, DecisionKind.NOTICE_GIVEN, TODAY, "Dr. Vale", "as found")))
                .isEqualTo(outOfOrder(Ear.RIGHT, Refusal.NO_SHIFT_FOUND));
        assertThat(jdbc.queryForList("select * from decision")).isEmpty();
        assertThat(jdbc.queryForList("select * from audit_event where action = 'DECISION_ENTERED'"))
                .isEmpty();

        decisions.enter("Y-1", decision(DecisionKind.RECORDED, TEST, TODAY.minusDays(1)));
        assertThat(decisions.enter("Y-1", decision(DecisionKind.LINED_OUT, TEST, TODAY)))
                .isEqualTo(new DecisionResult.Recorded());
    }

    @Test
    void whatAFileHoldsOutOfOrderIsKeptWithANote() {
        files.store("", "", """
                worker_id,ear,test_date,kind,date,by,reason
                Y-1,left,2025-06-01,lined-out,2025-08-01,Dr Vale,as found
                """);
        WorkerCases cases = records.open("Y-1").orElseThrow().cases();
        assertThat(cases.cases())
                .singleElement()
                .satisfies(life -> assertThat(life.history().getLast().note()).hasValue(Refusal.NOT_ON_THE_LOG));
        assertThat(owed()).doesNotContain(FollowUpKind.RECORD);
    }
}
