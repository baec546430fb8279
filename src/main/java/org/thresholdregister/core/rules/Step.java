package org.thresholdregister.core.rules;

/** The steps of judging a test, each of which rests on a paragraph of the rule set. */
public enum Step {
    /** The first test, with which later ones are compared. */
    BASELINE,
    /** The test that comes round again. */
    PERIODIC_TEST,
    /** The comparison of a test with the baseline. */
    COMPARISON,
    /** What makes a change a shift. */
    SHIFT,
    /** The allowance for aging, or its absence. */
    AGE_ALLOWANCE,
    /** The retest and what it does. */
    RETEST,
    /** Telling the worker in writing. */
    NOTICE,
    /** The revision of the baseline. */
    REVISED_BASELINE,
    /** What makes a shift a case to record or report. */
    RECORDABLE,
    /** The audiogram that a case is measured from. */
    RECORDING_REFERENCE,
    /** The level that a case has to reach. */
    RECORDING_LEVEL,
    /** By when a case is recorded or reported. */
    RECORDING_DEADLINE,
    /** The finding that a loss is not work-related. */
    NOT_WORK_RELATED
}
