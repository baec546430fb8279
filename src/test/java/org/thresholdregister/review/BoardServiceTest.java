package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static org.thresholdregister.review.DueState.LATER;
import static org.thresholdregister.review.DueState.OVERDUE;
import static org.thresholdregister.review.DueState.WITHIN_30_DAYS;
import static org.thresholdregister.review.DueState.WITHIN_7_DAYS;
import static org.thresholdregister.review.DueState.WITHOUT_DATE;
import static org.thresholdregister.review.TaskKind.ANNUAL_TEST;
import static org.thresholdregister.review.TaskKind.BASELINE_TEST;
import static org.thresholdregister.review.TaskKind.NOTICE;
import static org.thresholdregister.review.TaskKind.RECORD;
import static org.thresholdregister.review.TaskKind.REFIT;
import static org.thresholdregister.review.TaskKind.RETEST;
import static org.thresholdregister.review.TaskKind.TRAINING;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;

@RegisterTest
class BoardServiceTest {

    private static final Order<BoardColumn> BY_DUE_DATE = Order.ascending(BoardColumn.DUE_DATE);

    private static final String G5 = "29 CFR 1910.95(g)(5)(i)";
    private static final String G6 = "29 CFR 1910.95(g)(6)";
    private static final String G7 = "29 CFR 1910.95(g)(7)(ii)";
    private static final String G8 = "29 CFR 1910.95(g)(8)(i)";
    private static final String G8II = "29 CFR 1910.95(g)(8)(ii)(A) and (B)";
    private static final String LOG = "29 CFR 1904.10(b)(4)";

    @Autowired
    private BoardService board;

    @Autowired
    private ShiftReviewService shifts;

    @Autowired
    private TestImports files;

    @Autowired
    private MovableClock clock;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store(ServiceFixture.ROSTER, ServiceFixture.AUDIOGRAMS, "");
    }

    private List<BoardRow.OfTask> all() {
        return find(BoardFilter.EVERYTHING);
    }

    private List<BoardRow.OfTask> find(BoardFilter filter) {
        return board.find(filter, BY_DUE_DATE, 0, 100).stream()
                .filter(BoardRow.OfTask.class::isInstance)
                .map(BoardRow.OfTask.class::cast)
                .toList();
    }

    @Test
    void everythingOwedIsListedWithItsStateAndItsParagraph() {
        assertThat(all())
                .extracting(
                        BoardRow.OfTask::workerId,
                        BoardRow.OfTask::kind,
                        row -> row.due().orElse(null),
                        row -> row.daysLeft().orElse(0),
                        BoardRow.OfTask::state,
                        row -> row.key().ears(),
                        BoardRow.OfTask::basis)
                .containsExactly(
                        // 21 and 30 days after the test of 1 June 2025, which nobody retested
                        tuple("Y-1", NOTICE, LocalDate.of(2025, 6, 22), -260L, OVERDUE, Ears.LEFT, G8),
                        tuple("Y-1", RECORD, LocalDate.of(2025, 7, 1), -251L, OVERDUE, Ears.LEFT, LOG),
                        // six months after 20 September 2025
                        tuple("N-1", BASELINE_TEST, LocalDate.of(2026, 3, 20), 11L, WITHIN_30_DAYS, Ears.BOTH, G5),
                        // 21 and 30 days after the test of 1 March 2026
                        tuple("M-1", NOTICE, LocalDate.of(2026, 3, 22), 13L, WITHIN_30_DAYS, Ears.RIGHT, G8),
                        tuple("M-1", RETEST, LocalDate.of(2026, 3, 31), 22L, WITHIN_30_DAYS, Ears.RIGHT, G7),
                        tuple("Y-1", ANNUAL_TEST, LocalDate.of(2026, 6, 1), 84L, LATER, Ears.BOTH, G6),
                        tuple("M-1", ANNUAL_TEST, LocalDate.of(2027, 3, 1), 357L, LATER, Ears.BOTH, G6),
                        // Protectors and training after a confirmed shift: the paragraph names no time.
                        tuple("Y-1", REFIT, null, 0L, WITHOUT_DATE, Ears.LEFT, G8II),
                        tuple("Y-1", TRAINING, null, 0L, WITHOUT_DATE, Ears.LEFT, G8II));
        // The window of the test of 1 June closed with 1 July: it stands from the day after.
        assertThat(find(BoardFilter.EVERYTHING.withKind(REFIT)))
                .extracting(BoardRow.OfTask::openSince)
                .containsExactly(LocalDate.of(2025, 7, 2));
    }

    @Test
    void countsAgreeWithTheLists() {
        for (LocalDate day : List.of(
                LocalDate.of(2026, 3, 9),
                LocalDate.of(2026, 3, 13),
                LocalDate.of(2026, 3, 21),
                LocalDate.of(2026, 4, 1))) {
            clock.moveTo(day);
            BoardCounts counts = board.counts();

            assertThat(counts.today()).isEqualTo(day);
            for (DueState state : DueState.values()) {
                for (TaskKind kind : TaskKind.values()) {
                    BoardFilter filter = BoardFilter.EVERYTHING.withKind(kind).withState(state);
                    List<BoardRow.OfTask> rows = find(filter);
                    assertThat(counts.of(kind, state))
                            .isEqualTo(board.count(filter))
                            .isEqualTo(rows.size());
                    assertThat(rows).allSatisfy(row -> {
                        assertThat(row.kind()).isEqualTo(kind);
                        assertThat(row.state()).isEqualTo(state);
                    });
                }
            }
            assertThat(Arrays.stream(DueState.values()).mapToInt(counts::of).sum())
                    .isEqualTo(counts.total())
                    .isEqualTo(board.count(BoardFilter.EVERYTHING));
        }
    }

    @Test
    void theStateChangesOnTheDayAfterTheDueDate() {
        assertThat(DueState.withDaysLeft(-1)).isEqualTo(OVERDUE);
        assertThat(DueState.withDaysLeft(0)).isEqualTo(WITHIN_7_DAYS);
        assertThat(DueState.withDaysLeft(7)).isEqualTo(WITHIN_7_DAYS);
        assertThat(DueState.withDaysLeft(8)).isEqualTo(WITHIN_30_DAYS);
        assertThat(DueState.withDaysLeft(30)).isEqualTo(WITHIN_30_DAYS);
        assertThat(DueState.withDaysLeft(31)).isEqualTo(LATER);
    }

    @Test
    void listsAreFilteredByPlaceNameDateAndWhoseItIs() {
        assertThat(find(BoardFilter.EVERYTHING.withSite("Yard"))).hasSize(5);
        assertThat(find(BoardFilter.EVERYTHING.withSite(""))).hasSize(1);
        assertThat(board.count(filter("Saws", null, null, null, "ada nunez"))).isEqualTo(3);
        assertThat(board.count(filter("Saws", null, null, null, "quill"))).isZero();
        assertThat(find(filter(null, LocalDate.of(2026, 3, 20), LocalDate.of(2026, 3, 22), null, "")))
                .extracting(BoardRow.OfTask::kind)
                .containsExactly(BASELINE_TEST, NOTICE);
        assertThat(find(filter(null, null, null, TaskKind.Doer.SAFETY_OFFICER, "")))
                .extracting(BoardRow.OfTask::kind)
                .containsExactly(RECORD);
    }

    private static BoardFilter filter(
            @Nullable String department,
            @Nullable LocalDate from,
            @Nullable LocalDate to,
            TaskKind.@Nullable Doer who,
            String text) {
        return new BoardFilter(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(department),
                Optional.ofNullable(from),
                Optional.ofNullable(to),
                Optional.ofNullable(who),
                Optional.empty(),
                text);
    }

    @Test
    void nobodySeesWhatIsOpenAtAnotherSite() {
        SignIn.as(Role.SAFETY_OFFICER, "Mill");
        assertThat(all()).extracting(BoardRow.OfTask::workerId).containsOnly("M-1");
        assertThat(board.counts().total()).isEqualTo(board.count(BoardFilter.EVERYTHING.withSite("Mill")));
        var ofAnotherSite = new TaskKey("Y-1", NOTICE, LocalDate.of(2025, 6, 1), Ears.LEFT);
        assertThat(board.ofTasks(List.of(ofAnotherSite))).isEmpty();
    }

    @Test
    void whatIsNewSinceYesterdayIsTold() {
        clock.moveTo(LocalDate.of(2026, 3, 23));
        BoardNews news = board.news();
        assertThat(news.yesterday()).isEqualTo(LocalDate.of(2026, 3, 22));
        assertThat(news.overdue()).as("the notice that was due on the 22nd").isEqualTo(1);
        assertThat(news.shifts()).as("judged on 9 March, and nothing since").isZero();
        clock.moveTo(LocalDate.of(2026, 3, 10));
        assertThat(board.news().shifts()).as("the two tests stored on the 9th").isEqualTo(2);
    }

    @Test
    void aDownloadIsOnTheAuditTrailAndHoldsWhatWasChosen() {
        TaskKey chosen = all().get(1).key();
        assertThat(board.download(BoardFilter.EVERYTHING, BY_DUE_DATE, List.of(chosen)))
                .extracting(row -> ((BoardRow.OfTask) row).key())
                .containsExactly(chosen);
        assertThat(board.download(BoardFilter.EVERYTHING, BY_DUE_DATE, List.of()))
                .hasSize(board.count(BoardFilter.EVERYTHING));
        assertThat(jdbc.queryForList(
                        "select detail from audit_event where action = 'BOARD_DOWNLOADED' order by id", String.class))
                .containsExactly("1 rows", board.count(BoardFilter.EVERYTHING) + " rows");
    }

    @Test
    void whoeverHasLeftIsFittedAndTrainedNoMore() {
        files.store("""
                worker_id,birth_date,sex,end_date
                Y-1,1990-01-01,F,2026-03-01
                """, "", "");
        assertThat(all())
                .filteredOn(row -> row.workerId().equals("Y-1"))
                .extracting(BoardRow.OfTask::kind)
                .containsExactly(NOTICE, RECORD);
    }

    @Test
    void aShiftNobodyRetestsIsConfirmedOnceItsWindowHasPassed() {
        ShiftFilter year = ShiftFilter.ofYear(2026);
        Order<ShiftColumn> order = Order.ascending(ShiftColumn.TEST_DATE);
        assertThat(shifts.find(year, order, 0, 10))
                .extracting(ShiftRow::workerId, ShiftRow::outcome, ShiftRow::recordable)
                .containsExactly(tuple("M-1", Outcome.AWAITING_RETEST, Recordability.AWAITING_RETEST));

        clock.moveTo(LocalDate.of(2026, 3, 31));
        assertThat(shifts.find(year, order, 0, 10))
                .extracting(ShiftRow::outcome)
                .containsExactly(Outcome.AWAITING_RETEST);

        clock.moveTo(LocalDate.of(2026, 4, 1));
        assertThat(shifts.find(year, order, 0, 10))
                .extracting(ShiftRow::outcome, ShiftRow::recordable, ShiftRow::recordBy)
                .containsExactly(tuple(Outcome.CONFIRMED, Recordability.YES, Optional.of(LocalDate.of(2026, 3, 31))));
        assertThat(all())
                .extracting(BoardRow.OfTask::workerId, BoardRow.OfTask::kind, BoardRow.OfTask::state)
                .contains(tuple("M-1", RECORD, OVERDUE))
                .doesNotContain(tuple("M-1", RETEST, OVERDUE));
        assertThat(jdbc.queryForList("select actor, detail from audit_event where action = 'JUDGED_ANEW'"))
                .singleElement()
                .satisfies(row -> assertThat(row.toString()).contains("(change of day)", "1 workers judged anew"));
    }

    @Test
    void whoeverLeavesIsOwedNoFurtherTestFromTheDayAfter() {
        // The annual test of M-2 fell due on 5 March 2026, after the last day of employment: never owed.
        assertThat(all()).extracting(BoardRow.OfTask::workerId).doesNotContain("M-2");

        files.store("""
                worker_id,birth_date,sex,end_date
                Y-1,1990-01-01,F,2026-06-05
                """, "", "");
        clock.moveTo(LocalDate.of(2026, 6, 5));
        assertThat(all())
                .extracting(BoardRow.OfTask::workerId, BoardRow.OfTask::kind)
                .contains(tuple("Y-1", ANNUAL_TEST));
        clock.moveTo(LocalDate.of(2026, 6, 6));
        assertThat(all())
                .extracting(BoardRow.OfTask::workerId, BoardRow.OfTask::kind)
                .doesNotContain(tuple("Y-1", ANNUAL_TEST))
                .contains(tuple("Y-1", NOTICE));
    }
}
