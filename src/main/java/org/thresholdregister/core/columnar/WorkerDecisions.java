package org.thresholdregister.core.columnar;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.TestDecisions;
import org.thresholdregister.core.judging.JudgingOptions;

/** What was decided about one worker's tests by the day that is judged for; loaded anew for each worker. */
final class WorkerDecisions {

    private static final Ear[] EARS = Ear.values();

    private final Population population;
    private final JudgingOptions options;
    private final List<Decision> seen = new ArrayList<>();

    WorkerDecisions(Population population, JudgingOptions options) {
        this.population = population;
        this.options = options;
    }

    void load(int worker) {
        seen.clear();
        if (population.hasDecisions(worker)) {
            for (Decision decision : population.decisions(worker)) {
                if (!decision.decidedOn().isAfter(options.asOf())) {
                    seen.add(decision);
                }
            }
        }
    }

    boolean isEmpty() {
        return seen.isEmpty();
    }

    /** Whether one of them changes which tests are compared, and with what. */
    boolean changeComparisons() {
        for (Decision decision : seen) {
            if (decision.kind().changesComparisons()) {
                return true;
            }
        }
        return false;
    }

    /** @param days by which a decision may name what is asked about */
    TestDecisions about(IntPredicate days, int ear) {
        List<Decision> found = List.of();
        for (Decision decision : seen) {
            if (decision.ears().include(EARS[ear])
                    && days.test((int) decision.testDate().toEpochDay())) {
                if (found.isEmpty()) {
                    found = new ArrayList<>();
                }
                found.add(decision);
            }
        }
        return found.isEmpty() ? TestDecisions.NONE : new TestDecisions(found);
    }
}
