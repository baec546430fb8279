package org.thresholdregister.core.caselife;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.decision.DecisionKind;

/**
 * What can happen to one ear's case. The order is the one in which things of one day are taken: what was done before
 * the day's test was read comes before what the test showed, and of two entries on one day the later kind stands, as
 * {@link org.thresholdregister.core.decision.TestDecisions} has it.
 */
public enum CaseMove {
    /** A shift was found: derived. */
    SHIFT_FOUND,
    RETEST_BOOKED(DecisionKind.RETEST_BOOKED),
    /** A retest was set aside as invalid, so that it settles nothing. */
    RETEST_SET_ASIDE(DecisionKind.INVALID_TEST),
    NOTICE_SENT(DecisionKind.NOTICE_GIVEN),
    PROTECTOR_REFITTED(DecisionKind.PROTECTOR_REFITTED),
    TRAINED(DecisionKind.TRAINED),
    REFERRED(DecisionKind.REFERRED),
    FOUND_NOT_WORK_RELATED(DecisionKind.NOT_WORK_RELATED),
    FOUND_WORK_RELATED(DecisionKind.WORK_RELATED),
    /** The shift stands, by a retest or because the time for one ran out: derived. */
    CONFIRMED,
    /** The shift does not stand: derived. */
    CLEARED,
    /** A case for the injury log: derived. */
    FOUND_RECORDABLE,
    /** No case for the injury log: derived. */
    FOUND_NOT_RECORDABLE,
    /** The loss is one that an earlier case of the ear holds: derived. */
    FOUND_HELD_BY_EARLIER_CASE,
    /** The record cannot tell whether it is a case for the injury log: derived. */
    LEFT_UNDECIDED,
    RECORDED(DecisionKind.RECORDED),
    /** Put on the log again after its entry had been lined out. */
    RE_ENTERED(DecisionKind.RECORDED),
    LINED_OUT(DecisionKind.LINED_OUT),
    /** The test that showed the shift was set aside as invalid. */
    TEST_SET_ASIDE(DecisionKind.INVALID_TEST),
    /** Nothing is owed any more: derived. What comes later may open the case again. */
    CLOSED;

    private final Optional<DecisionKind> decision;

    CaseMove() {
        decision = Optional.empty();
    }

    CaseMove(DecisionKind decision) {
        this.decision = Optional.of(decision);
    }

    /** The decision that makes it happen; empty where it is derived from determinations. */
    public Optional<DecisionKind> decision() {
        return decision;
    }

    /** The move that such a decision makes in the case of the test that it names; empty where it is about no case. */
    static Optional<CaseMove> madeBy(DecisionKind kind) {
        return switch (kind) {
            case NOT_WORK_RELATED -> Optional.of(FOUND_NOT_WORK_RELATED);
            case WORK_RELATED -> Optional.of(FOUND_WORK_RELATED);
            case RECORDED -> Optional.of(RECORDED);
            case LINED_OUT -> Optional.of(LINED_OUT);
            case NOTICE_GIVEN -> Optional.of(NOTICE_SENT);
            case INVALID_TEST -> Optional.of(TEST_SET_ASIDE);
            case RETEST_BOOKED -> Optional.of(RETEST_BOOKED);
            case PROTECTOR_REFITTED -> Optional.of(PROTECTOR_REFITTED);
            case TRAINED -> Optional.of(TRAINED);
            case REFERRED -> Optional.of(REFERRED);
            case BASELINE, BASELINE_KEPT -> Optional.empty();
        };
    }

    /** The moves that people make. */
    public static List<CaseMove> byPeople() {
        return Arrays.stream(values()).filter(move -> move.decision.isPresent()).toList();
    }
}
