package org.thresholdregister.core.caselife;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Where one ear's case stands. A state changes by {@link #after} alone, which asks the one table of moves; so none that
 * the table forbids can be reached.
 *
 * @param terms what the rule set lets follow
 * @param done the acts that were done, whatever was owed
 */
public record CaseState(CaseTerms terms, Shift shift, Work work, ForTheLog forTheLog, Entry entry, Set<CaseMove> done) {

    /** Whether the shift stands. */
    public enum Shift {
        NONE,
        FOUND,
        RETEST_BOOKED,
        CONFIRMED,
        CLEARED,
        SET_ASIDE
    }

    /** Whether the loss counts as work-related, 29 CFR 1904.5. */
    public enum Work {
        PRESUMED,
        FOUND_RELATED,
        FOUND_NOT_RELATED
    }

    /** The answer for the injury log. */
    public enum ForTheLog {
        /** The shift is not settled, did not stand, or was found not work-related. */
        NOT_ASKED,
        RECORDABLE,
        NOT_RECORDABLE,
        HELD_BY_EARLIER_CASE,
        UNDECIDED,
        /** The rule set keeps no log. */
        NO_LOG
    }

    /** The entry on the injury log. */
    public enum Entry {
        NONE,
        RECORDED,
        LINED_OUT
    }

    /** What comes of asking for a move. */
    public sealed interface Step {
        record Taken(CaseState state) implements Step {}

        record Refused(Refusal why) implements Step {}
    }

    public CaseState {
        done = Set.copyOf(done);
    }

    /** Before anything was found. */
    static CaseState start(CaseTerms terms) {
        return new CaseState(
                terms,
                Shift.NONE,
                Work.PRESUMED,
                terms.keepsLog() ? ForTheLog.NOT_ASKED : ForTheLog.NO_LOG,
                Entry.NONE,
                Set.of());
    }

    /** The state after the move, or why it is not open. */
    public Step after(CaseMove move) {
        return refusal(move).<Step>map(Step.Refused::new).orElseGet(() -> new Step.Taken(MoveTable.effect(this, move)));
    }

    /** Why the move is not open; empty where it is. */
    public Optional<Refusal> refusal(CaseMove move) {
        return MoveTable.refusal(this, move);
    }

    /**
     * The state with what a decision from elsewhere brings about even though the move was not open: a file's decisions
     * are kept as they come, and the file contract fixes what they do.
     */
    CaseState afterAllTheSame(CaseMove move) {
        return MoveTable.effect(this, move);
    }

    /** What is owed now. */
    public Set<CaseDuty> owed() {
        Set<CaseDuty> owed = EnumSet.noneOf(CaseDuty.class);
        if (terms.tells(shift) && !done.contains(CaseMove.NOTICE_SENT)) {
            owed.add(CaseDuty.NOTICE);
        }
        if (entry == Entry.NONE && forTheLog == ForTheLog.RECORDABLE) {
            owed.add(CaseDuty.RECORD);
        }
        if (entry == Entry.NONE && forTheLog == ForTheLog.UNDECIDED) {
            owed.add(CaseDuty.RECORDABILITY);
        }
        if (entry == Entry.RECORDED && work == Work.FOUND_NOT_RELATED) {
            owed.add(CaseDuty.LINE_OUT);
        }
        if (work != Work.FOUND_NOT_RELATED) {
            owed.addAll(duringFollowUp());
        }
        return owed;
    }

    /**
     * What would be owed had the loss not been found not work-related, see {@link AfterShift#liftedBy()}: 29 CFR
     * 1910.95(g)(8)(ii) lifts it where a physician found so, and the record does not tell professions apart.
     */
    public Set<CaseDuty> lifted() {
        return work == Work.FOUND_NOT_RELATED ? duringFollowUp() : Set.of();
    }

    private Set<CaseDuty> duringFollowUp() {
        Set<CaseDuty> duties = EnumSet.noneOf(CaseDuty.class);
        if (terms.asksForProtectors(shift)) {
            duties.add(CaseDuty.REFIT);
            duties.add(CaseDuty.TRAINING);
        }
        duties.removeIf(duty -> done.stream().anyMatch(duty::isDoneBy));
        return duties;
    }

    public CaseScope scope() {
        return terms.scope();
    }

    /** Without an answer for the log, where there is a log at all. */
    CaseState withoutAnswer() {
        return forTheLog == ForTheLog.NO_LOG ? this : with(ForTheLog.NOT_ASKED);
    }

    CaseState with(Shift other) {
        return new CaseState(terms, other, work, forTheLog, entry, done);
    }

    CaseState with(Work other) {
        return new CaseState(terms, shift, other, forTheLog, entry, done);
    }

    CaseState with(ForTheLog other) {
        return new CaseState(terms, shift, work, other, entry, done);
    }

    CaseState with(Entry other) {
        return new CaseState(terms, shift, work, forTheLog, other, done);
    }

    CaseState withDone(CaseMove act) {
        Set<CaseMove> more = EnumSet.of(act);
        more.addAll(done);
        return new CaseState(terms, shift, work, forTheLog, entry, more);
    }
}
