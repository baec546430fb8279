package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.review.BulkResult.Left;
import org.thresholdregister.review.BulkResult.Why;
import org.thresholdregister.review.BulkService.Settlement;

/** Today is 9 March 2026. */
@RegisterTest
class BulkServiceTest {

    private static final LocalDate TODAY = MovableClock.FIRST_DAY;
    private static final LocalDate TEST_OF_Y = LocalDate.of(2025, 6, 1);
    private static final TaskKey NOTICE_Y = new TaskKey("Y-1", TaskKind.NOTICE, TEST_OF_Y, Ears.LEFT);
    private static final TaskKey RECORD_Y = new TaskKey("Y-1", TaskKind.RECORD, TEST_OF_Y, Ears.LEFT);
    private static final TaskKey REFIT_Y = new TaskKey("Y-1", TaskKind.REFIT, TEST_OF_Y, Ears.LEFT);
    private static final TaskKey NOTICE_M = new TaskKey("M-1", TaskKind.NOTICE, LocalDate.of(2026, 3, 1), Ears.RIGHT);
    private static final TaskKey RETEST_M = new TaskKey("M-1", TaskKind.RETEST, LocalDate.of(2026, 3, 1), Ears.RIGHT);
    private static final byte[] LETTER = "%PDF-1.7 signed".getBytes(StandardCharsets.US_ASCII);

    @Autowired
    private BulkService bulk;

    @Autowired
    private BoardService board;

    @Autowired
    private EvidenceService evidence;

    @Autowired
    private DecisionService decisions;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private MovableClock clock;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store(ServiceFixture.ROSTER, ServiceFixture.AUDIOGRAMS, "");
    }

    private static Settlement handedOver(Optional<byte[]> file) {
        return new Settlement(
                TODAY,
                "Ida Lock",
                "",
                new Evidence(
                        Evidence.Means.SIGNED_FOR,
                        "copy in the cabinet",
                        file.flatMap(content -> NewDocument.of("signed.pdf", content))
                                .map(Evidence.Attached.New::new)));
    }

    private List<TaskKey> open() {
        return board.find(BoardFilter.EVERYTHING, Order.ascending(BoardColumn.DUE_DATE), 0, 100).stream()
                .filter(BoardRow.OfTask.class::isInstance)
                .map(row -> ((BoardRow.OfTask) row).key())
                .toList();
    }

    private int rows(String table) {
        return jdbc.queryForList("select * from " + table).size();
    }

    @Test
    void whatCanBeDoneIsDoneAndTheRestIsTold() {
        assertThat(open()).contains(NOTICE_Y, RECORD_Y, REFIT_Y, NOTICE_M);

        BulkResult result =
                bulk.settle(List.of(NOTICE_Y, NOTICE_M, REFIT_Y, RECORD_Y, RETEST_M), handedOver(Optional.of(LETTER)));

        assertThat(result.done()).containsExactly(NOTICE_Y, NOTICE_M, REFIT_Y);
        assertThat(result.left())
                .containsExactly(
                        new Left(RECORD_Y, new Why.NotThisRole()), new Left(RETEST_M, new Why.SettledElsewhere()));
        assertThat(open()).doesNotContain(NOTICE_Y, NOTICE_M, REFIT_Y).contains(RECORD_Y, RETEST_M);
        assertThat(records.open("Y-1").orElseThrow().decisions())
                .extracting(recorded -> recorded.decision().kind())
                .containsExactly(DecisionKind.NOTICE_GIVEN, DecisionKind.PROTECTOR_REFITTED);
    }

    @Test
    void theFileIsStoredOnceAndShownWithEachDecision() {
        bulk.settle(List.of(NOTICE_Y, NOTICE_M), handedOver(Optional.of(LETTER)));
        assertThat(rows("document")).isEqualTo(1);
        assertThat(rows("decision_evidence")).isEqualTo(2);

        SignIn.as(Role.SAFETY_OFFICER);
        DecisionEvidence shown = evidence.ofWorker("Y-1").getFirst();
        assertThat(shown.decision().kind()).isEqualTo(DecisionKind.NOTICE_GIVEN);
        assertThat(shown.means()).isEqualTo(Evidence.Means.SIGNED_FOR);
        assertThat(shown.note()).isEqualTo("copy in the cabinet");
        assertThat(shown.document())
                .hasValueSatisfying(document -> assertThat(document.name()).isEqualTo("signed.pdf"));
        assertThat(evidence.file("Y-1", shown.decisionKey())).hasValue(LETTER);
        assertThat(evidence.file("M-1", shown.decisionKey()))
                .as("of another worker")
                .isEmpty();
        assertThat(jdbc.queryForList(
                        "select subject_id from audit_event where action = 'EVIDENCE_FETCHED'", String.class))
                .containsExactly("Y-1");
    }

    @Test
    void aSafetyOfficerOpensNoClinicalFile() {
        decisions.enter(
                "Y-1",
                new Decision(Ears.LEFT, TEST_OF_Y, DecisionKind.REFERRED, TODAY, "Ida Lock", ""),
                handedOver(Optional.of(LETTER)).evidence());
        DecisionEvidence referral = evidence.ofWorker("Y-1").getFirst();
        assertThat(evidence.file("Y-1", referral.decisionKey())).hasValue(LETTER);

        SignIn.as(Role.SAFETY_OFFICER);
        assertThat(evidence.ofWorker("Y-1").getFirst().mayOpen()).isFalse();
        assertThatThrownBy(() -> evidence.file("Y-1", referral.decisionKey()))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void withoutAnythingThatShowsItNothingIsTakenDown() {
        var nothing = new Settlement(TODAY, "Ida Lock", "", new Evidence(Evidence.Means.NOTED, " ", Optional.empty()));
        assertThat(bulk.settle(List.of(NOTICE_Y), nothing).left())
                .containsExactly(new Left(NOTICE_Y, new Why.Refused(DecisionResult.Reason.EVIDENCE_MISSING)));
        assertThat(rows("decision")).isZero();
    }

    @Test
    void aFileIsNotStoredWhereNothingIsTakenDown() {
        BulkResult result = bulk.settle(List.of(RETEST_M), handedOver(Optional.of(LETTER)));
        assertThat(result.done()).isEmpty();
        assertThat(rows("document")).isZero();
    }

    @Test
    void whatIsOpenNoMoreOrAtAnotherSiteIsLeft() {
        bulk.settle(List.of(NOTICE_Y), handedOver(Optional.empty()));
        assertThat(bulk.settle(List.of(NOTICE_Y), handedOver(Optional.empty())).left())
                .containsExactly(new Left(NOTICE_Y, new Why.NotOpen()));
        SignIn.as(Role.NURSE, "Yard");
        assertThat(bulk.settle(List.of(NOTICE_M), handedOver(Optional.empty())).left())
                .containsExactly(new Left(NOTICE_M, new Why.NotOpen()));
        assertThat(bulk.postpone(List.of(NOTICE_M), TODAY.plusDays(3), "on leave")
                        .done())
                .isEmpty();
    }

    @Test
    void aRetestIsBookedWithItsDayInsideTheWindow() {
        assertThat(bulk.book(List.of(RETEST_M, NOTICE_M), LocalDate.of(2026, 3, 20), "Ida Lock", "9 am, booth 2")
                        .done())
                .containsExactly(RETEST_M);
        Decision booked =
                records.open("M-1").orElseThrow().decisions().getFirst().decision();
        assertThat(booked.kind()).isEqualTo(DecisionKind.RETEST_BOOKED);
        assertThat(booked.reason()).isEqualTo("Booked for 20 Mar 2026. 9 am, booth 2");
        assertThat(board.ofTasks(List.of(RETEST_M)).values())
                .extracting(BoardRow.OfTask::booked)
                .containsExactly("Booked for 20 Mar 2026. 9 am, booth 2");
        // The window of the test of 1 March closes with the 31st.
        assertThat(bulk.book(List.of(RETEST_M), LocalDate.of(2026, 4, 1), "Ida Lock", "")
                        .left())
                .containsExactly(new Left(RETEST_M, new Why.AfterTheWindow()));
    }

    @Test
    void whatIsPutOffStaysOnItsDayAndIsOverdueByTheRule() {
        LocalDate until = LocalDate.of(2026, 4, 10);
        assertThat(bulk.postpone(List.of(NOTICE_M, NOTICE_Y), until, "on leave").done())
                .containsExactly(NOTICE_M, NOTICE_Y);

        clock.moveTo(LocalDate.of(2026, 4, 2));
        BoardRow.OfTask row = board.ofTasks(List.of(NOTICE_M)).get(NOTICE_M);
        assertThat(row).isNotNull();
        assertThat(row.due()).as("judged anew, and still due on").hasValue(LocalDate.of(2026, 3, 22));
        assertThat(row.state()).isEqualTo(DueState.OVERDUE);
        assertThat(row.postponed())
                .hasValue(new Postponement(
                        until,
                        "on leave",
                        "test-nurse",
                        row.postponed().orElseThrow().on()));
        assertThat(board.count(postponed(BoardFilter.Postponed.POSTPONED))).isEqualTo(2);
        assertThat(board.count(postponed(BoardFilter.Postponed.NOT_POSTPONED)))
                .isEqualTo(board.count(BoardFilter.EVERYTHING) - 2);

        clock.moveTo(until);
        assertThat(board.count(postponed(BoardFilter.Postponed.POSTPONED)))
                .as("the day has come")
                .isZero();
        assertThat(jdbc.queryForList(
                        "select subject_id || ': ' || detail from audit_event where action = 'POSTPONED' order by id",
                        String.class))
                .containsExactly(
                        "M-1: notice, test of 2026-03-01, until 2026-04-10",
                        "Y-1: notice, test of 2025-06-01, until 2026-04-10");
    }

    private static BoardFilter postponed(BoardFilter.Postponed which) {
        return new BoardFilter(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(which),
                "");
    }

    @Test
    void nothingIsPutOffWithoutAReasonOrALaterDay() {
        assertThatThrownBy(() -> bulk.postpone(List.of(NOTICE_M), TODAY.plusDays(1), " "))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> bulk.postpone(List.of(NOTICE_M), TODAY, "on leave"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(rows("postponement")).isZero();
    }

    @Test
    void aFailureInTheMiddleLeavesNothing() {
        jdbc.execute("alter table decision add constraint none_of_march check (test_date < date '2026-03-01')");
        try {
            assertThatThrownBy(() -> bulk.settle(List.of(NOTICE_Y, NOTICE_M), handedOver(Optional.of(LETTER))))
                    .isInstanceOf(RuntimeException.class);
        } finally {
            jdbc.execute("alter table decision drop constraint none_of_march");
        }
        assertThat(rows("decision")).isZero();
        assertThat(rows("document")).isZero();
        assertThat(open()).contains(NOTICE_Y, NOTICE_M);
    }
}
