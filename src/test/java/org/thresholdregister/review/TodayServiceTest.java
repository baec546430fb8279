package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static org.thresholdregister.core.followup.FollowUpKind.ANNUAL_TEST;
import static org.thresholdregister.core.followup.FollowUpKind.BASELINE_TEST;
import static org.thresholdregister.core.followup.FollowUpKind.NOTICE;
import static org.thresholdregister.core.followup.FollowUpKind.RECORD;
import static org.thresholdregister.core.followup.FollowUpKind.RETEST;
import static org.thresholdregister.review.FollowUpState.LATER;
import static org.thresholdregister.review.FollowUpState.OVERDUE;
import static org.thresholdregister.review.FollowUpState.WITHIN_30_DAYS;
import static org.thresholdregister.review.FollowUpState.WITHIN_7_DAYS;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;

@RegisterTest
class TodayServiceTest {

    private static final Order<FollowUpColumn> BY_DUE_DATE = Order.ascending(FollowUpColumn.DUE_DATE);

    @Autowired
    private TodayService today;

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

    private List<FollowUpRow> all() {
        return today.find(FollowUpFilter.EVERYTHING, BY_DUE_DATE, 0, 100);
    }

    @Test
    void everythingOwedIsListedWithItsState() {
        assertThat(all())
                .extracting(
                        FollowUpRow::workerId,
                        FollowUpRow::kind,
                        FollowUpRow::dueDate,
                        FollowUpRow::daysLeft,
                        FollowUpRow::state,
                        FollowUpRow::ears)
                .containsExactly(
                        // 21 and 30 days after the test of 1 June 2025, which nobody retested
                        tuple("Y-1", NOTICE, LocalDate.of(2025, 6, 22), -260L, OVERDUE, Ears.LEFT),
                        tuple("Y-1", RECORD, LocalDate.of(2025, 7, 1), -251L, OVERDUE, Ears.LEFT),
                        // six months after 20 September 2025
                        tuple("N-1", BASELINE_TEST, LocalDate.of(2026, 3, 20), 11L, WITHIN_30_DAYS, Ears.BOTH),
                        // 21 and 30 days after the test of 1 March 2026
                        tuple("M-1", NOTICE, LocalDate.of(2026, 3, 22), 13L, WITHIN_30_DAYS, Ears.RIGHT),
                        tuple("M-1", RETEST, LocalDate.of(2026, 3, 31), 22L, WITHIN_30_DAYS, Ears.RIGHT),
                        tuple("Y-1", ANNUAL_TEST, LocalDate.of(2026, 6, 1), 84L, LATER, Ears.BOTH),
                        tuple("M-1", ANNUAL_TEST, LocalDate.of(2027, 3, 1), 357L, LATER, Ears.BOTH));
    }

    @Test
    void countsAgreeWithTheLists() {
        for (LocalDate day : List.of(
                LocalDate.of(2026, 3, 9),
                LocalDate.of(2026, 3, 13),
                LocalDate.of(2026, 3, 21),
                LocalDate.of(2026, 4, 1))) {
            clock.moveTo(day);
            DueCounts counts = today.counts();

            assertThat(counts.today()).isEqualTo(day);
            for (FollowUpState state : FollowUpState.values()) {
                for (FollowUpKind kind : FollowUpKind.values()) {
                    var filter = new FollowUpFilter(
                            Optional.of(kind), Optional.of(state), Optional.empty(), Optional.empty(), "");
                    List<FollowUpRow> rows = today.find(filter, BY_DUE_DATE, 0, 100);
                    assertThat(counts.of(kind, state))
                            .isEqualTo(today.count(filter))
                            .isEqualTo(rows.size());
                    assertThat(rows).allSatisfy(row -> {
                        assertThat(row.kind()).isEqualTo(kind);
                        assertThat(row.state()).isEqualTo(state);
                    });
                }
            }
            assertThat(List.of(FollowUpState.values()).stream()
                            .mapToInt(counts::of)
                            .sum())
                    .isEqualTo(all().size());
        }
    }

    @Test
    void theStateChangesOnTheDayAfterTheDueDate() {
        assertThat(FollowUpState.withDaysLeft(-1)).isEqualTo(OVERDUE);
        assertThat(FollowUpState.withDaysLeft(0)).isEqualTo(WITHIN_7_DAYS);
        assertThat(FollowUpState.withDaysLeft(7)).isEqualTo(WITHIN_7_DAYS);
        assertThat(FollowUpState.withDaysLeft(8)).isEqualTo(WITHIN_30_DAYS);
        assertThat(FollowUpState.withDaysLeft(30)).isEqualTo(WITHIN_30_DAYS);
        assertThat(FollowUpState.withDaysLeft(31)).isEqualTo(LATER);
    }

    @Test
    void listsAreFilteredByPlaceAndName() {
        assertThat(today.count(new FollowUpFilter(
                        Optional.empty(), Optional.empty(), Optional.of("Yard"), Optional.empty(), "")))
                .isEqualTo(3);
        assertThat(today.count(
                        new FollowUpFilter(Optional.empty(), Optional.empty(), Optional.of(""), Optional.empty(), "")))
                .isEqualTo(1);
        assertThat(today.count(new FollowUpFilter(
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("Saws"), "ada nunez")))
                .isEqualTo(3);
        assertThat(today.count(new FollowUpFilter(
                        Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("Saws"), "quill")))
                .isZero();
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
                .extracting(FollowUpRow::workerId, FollowUpRow::kind, FollowUpRow::state)
                .contains(tuple("M-1", RECORD, OVERDUE))
                .doesNotContain(tuple("M-1", RETEST, OVERDUE));
        assertThat(jdbc.queryForList("select actor, detail from audit_event where action = 'JUDGED_ANEW'"))
                .singleElement()
                .satisfies(row -> assertThat(row.toString()).contains("(change of day)", "1 workers judged anew"));
    }

    @Test
    void whoeverLeavesIsOwedNoFurtherTestFromTheDayAfter() {
        // The annual test of M-2 fell due on 5 March 2026, after the last day of employment: never owed.
        assertThat(all()).extracting(FollowUpRow::workerId).doesNotContain("M-2");

        files.store("""
                worker_id,birth_date,sex,end_date
                Y-1,1990-01-01,F,2026-06-05
                """, "", "");
        clock.moveTo(LocalDate.of(2026, 6, 5));
        assertThat(all()).extracting(FollowUpRow::workerId, FollowUpRow::kind).contains(tuple("Y-1", ANNUAL_TEST));
        clock.moveTo(LocalDate.of(2026, 6, 6));
        assertThat(all())
                .extracting(FollowUpRow::workerId, FollowUpRow::kind)
                .doesNotContain(tuple("Y-1", ANNUAL_TEST))
                .contains(tuple("Y-1", NOTICE));
    }
}
