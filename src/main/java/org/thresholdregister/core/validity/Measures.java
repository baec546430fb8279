package org.thresholdregister.core.validity;

import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.WorkerHistory;

/** A worker's tests as far as others may be measured by them: without the ears that were set aside as invalid. */
final class Measures {

    private Measures() {}

    /** In order of time. */
    static List<Audiogram> of(WorkerHistory history) {
        return history.audiograms().stream()
                .sorted(Audiogram.CHRONOLOGICAL)
                .map(test -> withoutEarsSetAside(test, history.decisions()))
                .toList();
    }

    private static Audiogram withoutEarsSetAside(Audiogram test, List<Decision> decisions) {
        Audiogram rest = test;
        for (Decision decision : decisions) {
            if (decision.kind() == DecisionKind.INVALID_TEST
                    && decision.testDate().equals(test.date())) {
                for (Ear ear : Ear.values()) {
                    rest = decision.ears().include(ear) ? without(ear, rest) : rest;
                }
            }
        }
        return rest;
    }

    private static Audiogram without(Ear ear, Audiogram test) {
        Audiogram rest = test;
        for (Frequency frequency : Frequency.values()) {
            rest = rest.with(ear, frequency, Threshold.notGiven());
        }
        return rest;
    }
}
