package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.Set;
import java.util.function.Supplier;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.decision.TestDecisions;

/** Finds what was decided about the tests of some days, for one ear. */
@FunctionalInterface
interface DecisionLookup {
    /** @param days asked for only where anything was decided at all */
    TestDecisions on(Supplier<Set<LocalDate>> days, Ear ear);
}
