package org.thresholdregister.testdays;

import java.util.List;

/** What came of planning test days. */
public sealed interface PlannedDays {

    /** They are stored; the key is that of the first. */
    record Stored(long firstKey, int days) implements PlannedDays {}

    /** Nothing was stored. */
    record Refused(List<DayProblem> problems) implements PlannedDays {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
