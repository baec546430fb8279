package org.thresholdregister.core.validity;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.shift.ThresholdShift;

/** The baseline that each test of a worker was judged on, ear by ear. */
final class Baselines {

    private record TestedEar(LocalDate date, TestPurpose purpose, Ear ear) {
        static TestedEar of(Audiogram test, Ear ear) {
            return new TestedEar(test.date(), test.purpose(), ear);
        }
    }

    private final Map<TestedEar, Audiogram> baselines = new HashMap<>();

    Baselines(WorkerJudgement judgement) {
        for (Determination determination : judgement.determinations()) {
            baselineOf(determination)
                    .ifPresent(baseline ->
                            baselines.put(TestedEar.of(determination.test(), determination.ear()), baseline));
        }
    }

    private static Optional<Audiogram> baselineOf(Determination determination) {
        return determination.outcome() == Outcome.BASELINE
                ? Optional.of(determination.test())
                : determination.shift().map(ThresholdShift::earlier);
    }

    /** The test that the ear is compared with; the test itself where it is the ear's baseline. */
    Optional<Audiogram> of(Audiogram test, Ear ear) {
        return Optional.ofNullable(baselines.get(TestedEar.of(test, ear)));
    }

    boolean isBaseline(Audiogram test) {
        for (Ear ear : Ear.values()) {
            if (of(test, ear).filter(test::equals).isPresent()) {
                return true;
            }
        }
        return false;
    }
}
