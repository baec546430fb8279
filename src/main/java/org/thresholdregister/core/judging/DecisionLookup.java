package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.Set;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.decision.TestDecisions;

/** Finds what was decided about the tests of some days, for one ear. */
@FunctionalInterface
interface DecisionLookup {
    TestDecisions on(Set<LocalDate> days, Ear ear);
}
