package org.thresholdregister.core.judging;

import java.time.LocalDate;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.baseline.BaselineRevision;

/**
 * How to judge.
 *
 * @param asOf the day on which the record is looked at; what happened later is not seen
 */
public record JudgingOptions(
        LocalDate asOf, RuleSet ruleSet, AgeCorrection ageCorrection, BaselineRevision baselineRevision) {

    /** The default: OSHA, with the age allowance, without baseline revision by rule. */
    public static JudgingOptions asOf(LocalDate day) {
        return new JudgingOptions(day, RuleSet.OSHA, AgeCorrection.ON, BaselineRevision.OFF);
    }

    public JudgingOptions withBaselineRevision(BaselineRevision other) {
        return new JudgingOptions(asOf, ruleSet, ageCorrection, other);
    }
}
