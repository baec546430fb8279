package org.thresholdregister.core.caselife;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.thresholdregister.core.caselife.CaseState.Entry;
import org.thresholdregister.core.caselife.CaseState.ForTheLog;
import org.thresholdregister.core.caselife.CaseState.Shift;
import org.thresholdregister.core.caselife.CaseState.Work;

/**
 * The one table of what may happen to a case: for each move, where it is refused and why, and what it does. The same
 * for all rule sets, which differ in what they find and by when, not in how a case runs.
 */
final class MoveTable {

    /** One row: the refusals, asked in the order shift, work, entry, answer, and the effect. */
    private record Row(
            Map<Shift, Refusal> shift,
            Map<Work, Refusal> work,
            Map<Entry, Refusal> entry,
            Map<ForTheLog, Refusal> forTheLog,
            UnaryOperator<CaseState> effect) {

        static Row does(UnaryOperator<CaseState> effect) {
            return new Row(
                    new EnumMap<>(Shift.class),
                    new EnumMap<>(Work.class),
                    new EnumMap<>(Entry.class),
                    new EnumMap<>(ForTheLog.class),
                    effect);
        }

        Row not(Shift from, Refusal why) {
            shift.put(from, why);
            return this;
        }

        Row not(Work from, Refusal why) {
            work.put(from, why);
            return this;
        }

        Row not(Entry from, Refusal why) {
            entry.put(from, why);
            return this;
        }

        Row not(ForTheLog from, Refusal why) {
            forTheLog.put(from, why);
            return this;
        }

        /** Only while there is a shift that was neither cleared nor set aside. */
        Row whileTheShiftCounts() {
            return not(Shift.NONE, Refusal.NO_SHIFT_FOUND)
                    .not(Shift.CLEARED, Refusal.SHIFT_CLEARED)
                    .not(Shift.SET_ASIDE, Refusal.TEST_SET_ASIDE);
        }

        /** Only while a retest may still settle the shift. */
        Row beforeTheShiftIsSettled() {
            return whileTheShiftCounts().not(Shift.CONFIRMED, Refusal.SHIFT_CONFIRMED);
        }

        /** Only for a shift that stands, and once. */
        Row asAnswerForTheLog() {
            whileTheShiftCounts()
                    .not(Shift.FOUND, Refusal.NOT_SETTLED)
                    .not(Shift.RETEST_BOOKED, Refusal.NOT_SETTLED)
                    .not(Work.FOUND_NOT_RELATED, Refusal.NOT_WORK_RELATED);
            for (ForTheLog answered : ForTheLog.values()) {
                if (answered != ForTheLog.NOT_ASKED) {
                    not(answered, Refusal.LOG_ANSWERED);
                }
            }
            return not(ForTheLog.NO_LOG, Refusal.NO_LOG);
        }

        /** Only for what is, or may still become, a case for the log: an early entry need not wait for a retest. */
        Row asEntryOnTheLog() {
            return whileTheShiftCounts()
                    .not(Work.FOUND_NOT_RELATED, Refusal.NOT_WORK_RELATED)
                    .not(ForTheLog.NOT_RECORDABLE, Refusal.NOT_RECORDABLE)
                    .not(ForTheLog.HELD_BY_EARLIER_CASE, Refusal.HELD_BY_EARLIER_CASE)
                    .not(ForTheLog.NO_LOG, Refusal.NO_LOG);
        }
    }

    private static final Map<CaseMove, Row> ROWS = rows();

    private MoveTable() {}

    private static Map<CaseMove, Row> rows() {
        Map<CaseMove, Row> rows = new EnumMap<>(CaseMove.class);
        rows.put(CaseMove.SHIFT_FOUND, found());
        rows.put(
                CaseMove.RETEST_BOOKED,
                Row.does(state -> state.shift() == Shift.FOUND ? state.with(Shift.RETEST_BOOKED) : state)
                        .beforeTheShiftIsSettled());
        rows.put(
                CaseMove.RETEST_SET_ASIDE,
                Row.does(state -> state)
                        .not(Shift.NONE, Refusal.NO_SHIFT_FOUND)
                        .not(Shift.SET_ASIDE, Refusal.TEST_SET_ASIDE));
        rows.put(
                CaseMove.NOTICE_SENT,
                Row.does(state -> state.withDone(CaseMove.NOTICE_SENT))
                        .not(Shift.NONE, Refusal.NO_SHIFT_FOUND)
                        .not(Shift.SET_ASIDE, Refusal.TEST_SET_ASIDE));
        for (CaseMove act : List.of(CaseMove.PROTECTOR_REFITTED, CaseMove.TRAINED, CaseMove.REFERRED)) {
            rows.put(act, Row.does(state -> state.withDone(act)).whileTheShiftCounts());
        }
        rows.put(
                CaseMove.FOUND_NOT_WORK_RELATED,
                Row.does(state -> state.with(Work.FOUND_NOT_RELATED).withoutAnswer())
                        .whileTheShiftCounts());
        rows.put(
                CaseMove.FOUND_WORK_RELATED,
                Row.does(state -> state.with(Work.FOUND_RELATED)).whileTheShiftCounts());
        rows.put(
                CaseMove.CONFIRMED,
                Row.does(state -> state.with(Shift.CONFIRMED)).beforeTheShiftIsSettled());
        rows.put(CaseMove.CLEARED, Row.does(state -> state.with(Shift.CLEARED)).beforeTheShiftIsSettled());
        rows.put(CaseMove.FOUND_RECORDABLE, answer(ForTheLog.RECORDABLE));
        rows.put(CaseMove.FOUND_NOT_RECORDABLE, answer(ForTheLog.NOT_RECORDABLE));
        rows.put(CaseMove.FOUND_HELD_BY_EARLIER_CASE, answer(ForTheLog.HELD_BY_EARLIER_CASE));
        rows.put(CaseMove.LEFT_UNDECIDED, answer(ForTheLog.UNDECIDED));
        rows.put(
                CaseMove.RECORDED,
                Row.does(state -> state.with(Entry.RECORDED))
                        .asEntryOnTheLog()
                        .not(Entry.RECORDED, Refusal.ON_THE_LOG)
                        .not(Entry.LINED_OUT, Refusal.LINED_OUT));
        rows.put(
                CaseMove.RE_ENTERED,
                Row.does(state -> state.with(Entry.RECORDED))
                        .asEntryOnTheLog()
                        .not(Entry.NONE, Refusal.NOT_ON_THE_LOG)
                        .not(Entry.RECORDED, Refusal.ON_THE_LOG));
        rows.put(
                CaseMove.LINED_OUT,
                Row.does(state -> state.with(Entry.LINED_OUT))
                        .not(Shift.NONE, Refusal.NO_SHIFT_FOUND)
                        .not(Entry.NONE, Refusal.NOT_ON_THE_LOG)
                        .not(Entry.LINED_OUT, Refusal.LINED_OUT));
        rows.put(
                CaseMove.TEST_SET_ASIDE,
                Row.does(state -> state.with(Shift.SET_ASIDE).withoutAnswer())
                        .not(Shift.NONE, Refusal.NO_SHIFT_FOUND)
                        .not(Shift.SET_ASIDE, Refusal.TEST_SET_ASIDE));
        rows.put(
                CaseMove.CLOSED,
                Row.does(state -> state)
                        .not(Shift.NONE, Refusal.NO_SHIFT_FOUND)
                        .not(Shift.FOUND, Refusal.NOT_SETTLED)
                        .not(Shift.RETEST_BOOKED, Refusal.NOT_SETTLED));
        return rows;
    }

    private static Row found() {
        Row row = Row.does(state -> state.with(Shift.FOUND));
        for (Shift after : Shift.values()) {
            if (after != Shift.NONE) {
                row.not(after, Refusal.SHIFT_FOUND_ALREADY);
            }
        }
        return row;
    }

    private static Row answer(ForTheLog answer) {
        return Row.does(state -> state.with(answer)).asAnswerForTheLog();
    }

    static Optional<Refusal> refusal(CaseState state, CaseMove move) {
        Row row = row(move);
        return Optional.ofNullable(row.shift().get(state.shift()))
                .or(() -> Optional.ofNullable(row.work().get(state.work())))
                .or(() -> Optional.ofNullable(row.entry().get(state.entry())))
                .or(() -> Optional.ofNullable(row.forTheLog().get(state.forTheLog())))
                .or(() -> move == CaseMove.CLOSED && !state.owed().isEmpty()
                        ? Optional.of(Refusal.STILL_OWED)
                        : Optional.empty());
    }

    static CaseState effect(CaseState state, CaseMove move) {
        return row(move).effect().apply(state);
    }

    private static Row row(CaseMove move) {
        Row row = ROWS.get(move);
        if (row == null) {
            throw new IllegalStateException("the table has no row for " + move);
        }
        return row;
    }
}
