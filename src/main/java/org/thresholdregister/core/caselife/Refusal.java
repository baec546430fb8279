package org.thresholdregister.core.caselife;

/** Why a move is not open to one ear's case. */
public enum Refusal {
    /** No shift was found on this test in this ear. */
    NO_SHIFT_FOUND,
    SHIFT_FOUND_ALREADY,
    /** The shift stands already: a retest cannot take the test's place any more. */
    SHIFT_CONFIRMED,
    /** The retest showed no shift. */
    SHIFT_CLEARED,
    /** The test was set aside as invalid. */
    TEST_SET_ASIDE,
    /** Whether the shift stands is not settled yet. */
    NOT_SETTLED,
    /** The question of the injury log has its answer already. */
    LOG_ANSWERED,
    /** The tests of the rule say that it is no case for the injury log. */
    NOT_RECORDABLE,
    /** An earlier case of this ear holds the loss already. */
    HELD_BY_EARLIER_CASE,
    /** The loss was found not work-related. */
    NOT_WORK_RELATED,
    /** The case was never entered on the injury log. */
    NOT_ON_THE_LOG,
    /** The case stands on the injury log. */
    ON_THE_LOG,
    /** The entry was lined out. */
    LINED_OUT,
    /** The rule set keeps no log. */
    NO_LOG,
    /** Something is still owed. */
    STILL_OWED
}
