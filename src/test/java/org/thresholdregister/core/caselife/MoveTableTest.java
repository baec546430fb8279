package org.thresholdregister.core.caselife;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.caselife.CaseState.Entry;
import org.thresholdregister.core.caselife.CaseState.ForTheLog;
import org.thresholdregister.core.caselife.CaseState.Shift;
import org.thresholdregister.core.caselife.CaseState.Step;
import org.thresholdregister.core.caselife.CaseState.Work;
import org.thresholdregister.core.rules.RuleSets;

/**
 * Every move from every standing, written out from the published rules: 29 CFR 1910.95(g)(7) and (8), 1904.10(b) and
 * 1904.33(b)(1). A cell is what becomes of the standing, {@code =} where it stays, or {@code !} and the refusal.
 */
class MoveTableTest {

    private static final String BY_SHIFT = """
            move                       NONE             FOUND          RETEST_BOOKED  CONFIRMED            CLEARED              SET_ASIDE
            SHIFT_FOUND                FOUND            !SHIFT_FOUND_ALREADY !SHIFT_FOUND_ALREADY !SHIFT_FOUND_ALREADY !SHIFT_FOUND_ALREADY !SHIFT_FOUND_ALREADY
            RETEST_BOOKED              !NO_SHIFT_FOUND  RETEST_BOOKED  =              !SHIFT_CONFIRMED     !SHIFT_CLEARED       !TEST_SET_ASIDE
            RETEST_SET_ASIDE           !NO_SHIFT_FOUND  =              =              =                    =                    !TEST_SET_ASIDE
            NOTICE_SENT                !NO_SHIFT_FOUND  =              =              =                    =                    !TEST_SET_ASIDE
            PROTECTOR_REFITTED         !NO_SHIFT_FOUND  =              =              =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            TRAINED                    !NO_SHIFT_FOUND  =              =              =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            REFERRED                   !NO_SHIFT_FOUND  =              =              =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            FOUND_NOT_WORK_RELATED     !NO_SHIFT_FOUND  =              =              =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            FOUND_WORK_RELATED         !NO_SHIFT_FOUND  =              =              =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            CONFIRMED                  !NO_SHIFT_FOUND  CONFIRMED      CONFIRMED      !SHIFT_CONFIRMED     !SHIFT_CLEARED       !TEST_SET_ASIDE
            CLEARED                    !NO_SHIFT_FOUND  CLEARED        CLEARED        !SHIFT_CONFIRMED     !SHIFT_CLEARED       !TEST_SET_ASIDE
            FOUND_RECORDABLE           !NO_SHIFT_FOUND  !NOT_SETTLED   !NOT_SETTLED   =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            FOUND_NOT_RECORDABLE       !NO_SHIFT_FOUND  !NOT_SETTLED   !NOT_SETTLED   =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            FOUND_HELD_BY_EARLIER_CASE !NO_SHIFT_FOUND  !NOT_SETTLED   !NOT_SETTLED   =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            LEFT_UNDECIDED             !NO_SHIFT_FOUND  !NOT_SETTLED   !NOT_SETTLED   =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            RECORDED                   !NO_SHIFT_FOUND  =              =              =                    !SHIFT_CLEARED       !TEST_SET_ASIDE
            RE_ENTERED                 !NO_SHIFT_FOUND  !NOT_ON_THE_LOG !NOT_ON_THE_LOG !NOT_ON_THE_LOG   !SHIFT_CLEARED       !TEST_SET_ASIDE
            LINED_OUT                  !NO_SHIFT_FOUND  !NOT_ON_THE_LOG !NOT_ON_THE_LOG !NOT_ON_THE_LOG   !NOT_ON_THE_LOG      !NOT_ON_THE_LOG
            TEST_SET_ASIDE             !NO_SHIFT_FOUND  SET_ASIDE      SET_ASIDE      SET_ASIDE            SET_ASIDE            !TEST_SET_ASIDE
            CLOSED                     !NO_SHIFT_FOUND  !NOT_SETTLED   !NOT_SETTLED   !STILL_OWED          =                    =
            """;

    /** With a shift that stands. */
    private static final String BY_ENTRY = """
            move                       NONE             RECORDED       LINED_OUT
            RECORDED                   RECORDED         !ON_THE_LOG    !LINED_OUT
            RE_ENTERED                 !NOT_ON_THE_LOG  !ON_THE_LOG    RECORDED
            LINED_OUT                  !NOT_ON_THE_LOG  LINED_OUT      !LINED_OUT
            NOTICE_SENT                =                =              =
            PROTECTOR_REFITTED         =                =              =
            TRAINED                    =                =              =
            REFERRED                   =                =              =
            FOUND_NOT_WORK_RELATED     =                =              =
            FOUND_WORK_RELATED         =                =              =
            FOUND_RECORDABLE           =                =              =
            TEST_SET_ASIDE             =                =              =
            """;

    /** With a shift that stands. */
    private static final String BY_ANSWER = """
            move                       NOT_ASKED             RECORDABLE     NOT_RECORDABLE   HELD_BY_EARLIER_CASE   UNDECIDED      NO_LOG
            FOUND_RECORDABLE           RECORDABLE            !LOG_ANSWERED  !LOG_ANSWERED    !LOG_ANSWERED          !LOG_ANSWERED  !NO_LOG
            FOUND_NOT_RECORDABLE       NOT_RECORDABLE        !LOG_ANSWERED  !LOG_ANSWERED    !LOG_ANSWERED          !LOG_ANSWERED  !NO_LOG
            FOUND_HELD_BY_EARLIER_CASE HELD_BY_EARLIER_CASE  !LOG_ANSWERED  !LOG_ANSWERED    !LOG_ANSWERED          !LOG_ANSWERED  !NO_LOG
            LEFT_UNDECIDED             UNDECIDED             !LOG_ANSWERED  !LOG_ANSWERED    !LOG_ANSWERED          !LOG_ANSWERED  !NO_LOG
            RECORDED                   =                     =              !NOT_RECORDABLE  !HELD_BY_EARLIER_CASE  =  !NO_LOG
            FOUND_NOT_WORK_RELATED     =                     NOT_ASKED      NOT_ASKED        NOT_ASKED              NOT_ASKED  =
            FOUND_WORK_RELATED         =                     =              =                =                      =  =
            NOTICE_SENT                =                     =              =                =                      =  =
            TEST_SET_ASIDE             =                     NOT_ASKED      NOT_ASKED        NOT_ASKED              NOT_ASKED  =
            """;

    /** With a shift that stands. */
    private static final String BY_WORK = """
            move                       PRESUMED           FOUND_RELATED      FOUND_NOT_RELATED
            FOUND_NOT_WORK_RELATED     FOUND_NOT_RELATED  FOUND_NOT_RELATED  =
            FOUND_WORK_RELATED         FOUND_RELATED      =                  FOUND_RELATED
            FOUND_RECORDABLE           =                  =                  !NOT_WORK_RELATED
            FOUND_NOT_RECORDABLE       =                  =                  !NOT_WORK_RELATED
            FOUND_HELD_BY_EARLIER_CASE =                  =                  !NOT_WORK_RELATED
            LEFT_UNDECIDED             =                  =                  !NOT_WORK_RELATED
            RECORDED                   =                  =                  !NOT_WORK_RELATED
            NOTICE_SENT                =                  =                  =
            PROTECTOR_REFITTED         =                  =                  =
            REFERRED                   =                  =                  =
            TEST_SET_ASIDE             =                  =                  =
            """;

    private static final CaseState START = CaseState.start(CaseTerms.of(RuleSets.OSHA, CaseScope.SHIFT_AND_LOG));
    private static final CaseState STANDING = START.with(Shift.CONFIRMED);

    static Stream<Arguments> byShift() {
        return cells(BY_SHIFT, Shift.class);
    }

    static Stream<Arguments> byEntry() {
        return cells(BY_ENTRY, Entry.class);
    }

    static Stream<Arguments> byAnswer() {
        return cells(BY_ANSWER, ForTheLog.class);
    }

    static Stream<Arguments> byWork() {
        return cells(BY_WORK, Work.class);
    }

    private static <E extends Enum<E>> Stream<Arguments> cells(String table, Class<E> type) {
        List<String[]> rows =
                table.lines().map(line -> line.strip().split(" +")).toList();
        String[] header = rows.getFirst();
        assertThat(header).hasSize(type.getEnumConstants().length + 1);
        List<Arguments> cells = new ArrayList<>();
        for (String[] row : rows.subList(1, rows.size())) {
            assertThat(row).hasSameSizeAs(header);
            for (int i = 1; i < row.length; i++) {
                cells.add(Arguments.of(CaseMove.valueOf(row[0]), Enum.valueOf(type, header[i]), row[i]));
            }
        }
        return cells.stream();
    }

    @Test
    void theTableByShiftHasEveryMove() {
        assertThat(byShift().map(cell -> cell.get()[0]).distinct().toList()).isEqualTo(List.of(CaseMove.values()));
        assertThat(byShift()).hasSize(CaseMove.values().length * Shift.values().length);
    }

    @ParameterizedTest(name = "{0} from {1}: {2}")
    @MethodSource("byShift")
    void aMoveAsTheShiftStands(CaseMove move, Shift from, String expected) {
        check(START.with(from), move, expected, CaseState::shift);
    }

    @ParameterizedTest(name = "{0} from {1}: {2}")
    @MethodSource("byEntry")
    void aMoveAsTheEntryStands(CaseMove move, Entry from, String expected) {
        check(STANDING.with(from), move, expected, CaseState::entry);
    }

    @ParameterizedTest(name = "{0} from {1}: {2}")
    @MethodSource("byAnswer")
    void aMoveAsTheLogIsAnswered(CaseMove move, ForTheLog from, String expected) {
        check(STANDING.with(from), move, expected, CaseState::forTheLog);
    }

    @ParameterizedTest(name = "{0} from {1}: {2}")
    @MethodSource("byWork")
    void aMoveAsWorkRelatednessStands(CaseMove move, Work from, String expected) {
        check(STANDING.with(from), move, expected, CaseState::work);
    }

    private static <E extends Enum<E>> void check(
            CaseState from, CaseMove move, String expected, Function<CaseState, E> part) {
        if (expected.startsWith("!")) {
            assertThat(from.after(move)).isEqualTo(new Step.Refused(Refusal.valueOf(expected.substring(1))));
            assertThat(from.refusal(move)).hasValue(Refusal.valueOf(expected.substring(1)));
        } else {
            assertThat(from.after(move))
                    .isInstanceOfSatisfying(
                            Step.Taken.class,
                            taken -> assertThat(part.apply(taken.state()).name())
                                    .isEqualTo(
                                            expected.equals("=")
                                                    ? part.apply(from).name()
                                                    : expected));
        }
    }

    @Test
    void anActIsDoneOnceItIsTaken() {
        for (CaseMove act :
                Set.of(CaseMove.NOTICE_SENT, CaseMove.PROTECTOR_REFITTED, CaseMove.TRAINED, CaseMove.REFERRED)) {
            assertThat(taken(STANDING, act).done()).containsExactly(act);
        }
    }

    @Test
    void aCaseClosesOnlyWhenNothingIsOwed() {
        CaseState done =
                taken(taken(taken(STANDING, CaseMove.NOTICE_SENT), CaseMove.PROTECTOR_REFITTED), CaseMove.TRAINED);
        assertThat(done.refusal(CaseMove.CLOSED)).isEmpty();
        CaseState recordable = taken(done, CaseMove.FOUND_RECORDABLE);
        assertThat(recordable.refusal(CaseMove.CLOSED)).hasValue(Refusal.STILL_OWED);
        CaseState recorded = taken(recordable, CaseMove.RECORDED);
        assertThat(recorded.refusal(CaseMove.CLOSED)).isEmpty();
        CaseState notWorkRelated = taken(recorded, CaseMove.FOUND_NOT_WORK_RELATED);
        assertThat(notWorkRelated.owed()).containsExactly(CaseDuty.LINE_OUT);
        assertThat(taken(notWorkRelated, CaseMove.LINED_OUT).refusal(CaseMove.CLOSED))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(CaseScope.class)
    void noWalkOfLegalMovesReachesAnImpossibleState(CaseScope scope) {
        Random random = new Random(20260309);
        Set<Shift> seen = EnumSet.noneOf(Shift.class);
        for (int walk = 0; walk < 3000; walk++) {
            CaseState state = CaseState.start(CaseTerms.of(RuleSets.OSHA, scope));
            boolean wasRecorded = false;
            for (int step = 0; step < 25; step++) {
                CaseMove move = CaseMove.values()[random.nextInt(CaseMove.values().length)];
                if (state.after(move) instanceof Step.Taken(CaseState after)) {
                    wasRecorded |= after.entry() == Entry.RECORDED;
                    assertPossible(after, wasRecorded);
                    state = after;
                    seen.add(after.shift());
                }
            }
        }
        assertThat(seen).contains(Shift.CONFIRMED, Shift.CLEARED, Shift.SET_ASIDE, Shift.RETEST_BOOKED);
    }

    private static void assertPossible(CaseState state, boolean wasRecorded) {
        if (state.forTheLog() != ForTheLog.NOT_ASKED) {
            assertThat(state.shift()).as("an answer needs a shift that stands").isEqualTo(Shift.CONFIRMED);
            assertThat(state.work()).as("none for a loss not work-related").isNotEqualTo(Work.FOUND_NOT_RELATED);
        }
        if (state.entry() == Entry.LINED_OUT) {
            assertThat(wasRecorded).as("lined out only after it was recorded").isTrue();
        }
        if (state.shift() == Shift.NONE) {
            assertThat(state).isEqualTo(CaseState.start(state.terms()));
        }
        if (state.scope() == CaseScope.LOG_ONLY) {
            assertThat(state.owed()).doesNotContain(CaseDuty.NOTICE, CaseDuty.REFIT, CaseDuty.TRAINING);
        }
        if (state.shift() == Shift.CLEARED || state.shift() == Shift.SET_ASIDE) {
            assertThat(state.owed()).isSubsetOf(Set.of(CaseDuty.LINE_OUT));
        }
        assertThat(Collections.disjoint(state.owed(), state.lifted())).isTrue();
    }

    private static CaseState taken(CaseState from, CaseMove move) {
        return ((Step.Taken) from.after(move)).state();
    }
}
