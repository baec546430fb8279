package org.thresholdregister.core.rules;

import java.time.LocalDate;

/**
 * What a retest does to the test that showed a shift.
 *
 * @param days the last day after the test that still counts
 */
public record RetestRule(int days, Choice choice, Effect effect) {

    /** Which of several retests counts. */
    public enum Choice {
        /** The rule set does not limit their number: the last one stands. */
        LAST,
        /** The rule set allows one. */
        FIRST
    }

    /** What the retest is for. */
    public enum Effect {
        /** It may take the test's place, for both ears; without one the test stands. */
        MAY_REPLACE,
        /**
         * A shift is established only by two tests running, at the same frequency of the same ear; one test alone
         * never establishes it, however long ago.
         */
        MUST_CONFIRM
    }

    /** The last day on which a retest of a test of this day counts. */
    public LocalDate lastDay(LocalDate testDate) {
        return testDate.plusDays(days);
    }
}
