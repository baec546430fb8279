package org.thresholdregister.review;

import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.Finding;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/**
 * What one rule set says of a worker's latest judged test. It is worked out when somebody looks and is stored nowhere;
 * answers of different rule sets are never added up.
 *
 * @param inForce whether the worker's site answers to it
 * @param determinations of the latest test, the left ear before the right
 * @param findings of the rules beside its shift, of the latest test
 */
public record UnderRules(RuleSet ruleSet, boolean inForce, List<Determination> determinations, List<Finding> findings) {

    /** What every rule set says, the one in force first; empty where no test is judged. */
    public static List<UnderRules> ofLatestTest(WorkerRecord record) {
        Optional<Audiogram> latest = record.judgement().determinations().stream()
                .map(Determination::test)
                .max(Audiogram.CHRONOLOGICAL);
        return latest.map(test -> RuleSets.ALL.stream()
                        .map(ruleSet -> of(record, ruleSet, test))
                        .sorted((one, other) -> Boolean.compare(other.inForce, one.inForce))
                        .toList())
                .orElse(List.of());
    }

    private static UnderRules of(WorkerRecord record, RuleSet known, Audiogram latest) {
        boolean inForce = known.word().equals(record.ruleSet().word());
        RuleSet ruleSet = inForce ? record.ruleSet() : known;
        WorkerJudgement judgement = Judge.judge(
                record.history(), new JudgingOptions(record.asOf(), ruleSet, AgeCorrection.ON, BaselineRevision.OFF));
        return new UnderRules(
                ruleSet,
                inForce,
                judgement.determinations().stream()
                        .filter(determination -> determination.test().equals(latest))
                        .toList(),
                judgement.findings().stream()
                        .filter(finding -> finding.test().equals(latest))
                        .toList());
    }
}
