package org.thresholdregister.core.scheduling;

import java.util.List;

/**
 * Who comes when, and who did not fit.
 *
 * @param planned in order of time
 * @param leftOut the most urgent first
 */
public record TestPlan(List<Planned> planned, List<LeftOut> leftOut) {

    public TestPlan {
        planned = List.copyOf(planned);
        leftOut = List.copyOf(leftOut);
    }

    /** One person at one time. */
    public record Planned(DueTest due, Slot slot) {
        public QuietTime quiet() {
            return QuietTime.of(due, slot);
        }
    }

    /** Somebody who is due and has no time in the plan. */
    public record LeftOut(DueTest due, Why why) {}

    /** Why somebody did not fit. */
    public enum Why {
        /** More urgent people have every time that would do. */
        NO_TIME_LEFT,
        /** The first day comes after the last on which the test would count. */
        TOO_LATE,
        /** No time of these days leaves the quiet hours, and protectors may not stand in for them. */
        NO_QUIET_TIME
    }
}
