package org.thresholdregister.core.comparing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.RuleSets;

/** Judges a record in two ways, each named as {@code osha}, {@code osha off} without age or {@code osha revised}. */
public final class TwoWays {

    private TwoWays() {}

    public static List<Difference> differences(WorkerHistory history, String asOf, String one, String other) {
        return Difference.between(judge(history, asOf, one), judge(history, asOf, other));
    }

    static WorkerJudgement judge(WorkerHistory history, String asOf, String way) {
        return Judge.judge(
                history,
                new JudgingOptions(
                        LocalDate.parse(asOf),
                        RuleSets.find(way.split(" ")[0]).orElseThrow(),
                        way.endsWith(" off") ? AgeCorrection.OFF : AgeCorrection.ON,
                        way.endsWith(" revised") ? BaselineRevision.APPLY : BaselineRevision.OFF));
    }

    /** The tests of a man born on the first day of 1980. */
    public static WorkerHistory ofAManBornIn1980(Audiogram... tests) {
        return new WorkerHistory(
                new WorkerFacts(
                        "W-1",
                        Optional.of(LocalDate.parse("1980-01-01")),
                        Optional.of(Sex.MALE),
                        Optional.empty(),
                        Optional.empty()),
                List.of(tests),
                List.of());
    }
}
