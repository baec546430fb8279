package org.thresholdregister.core.judging;

import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.decision.Decision;

/**
 * All that is on record of one worker's hearing, in any order. At most one test of a purpose on a day.
 */
public record WorkerHistory(WorkerFacts worker, List<Audiogram> audiograms, List<Decision> decisions) {
    public WorkerHistory {
        audiograms = List.copyOf(audiograms);
        decisions = List.copyOf(decisions);
    }
}
