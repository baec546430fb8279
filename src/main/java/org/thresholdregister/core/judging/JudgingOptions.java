package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.AgeTables;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/**
 * How to judge.
 *
 * @param asOf the day on which the record is looked at; what happened later is not seen
 * @param ageCorrection whether the allowance for aging is made, where the rule set has one
 * @param holidays the days that deadlines in working days skip
 */
public record JudgingOptions(
        LocalDate asOf,
        RuleSet ruleSet,
        AgeCorrection ageCorrection,
        BaselineRevision baselineRevision,
        Holidays holidays) {

    /** Without holidays. */
    public JudgingOptions(
            LocalDate asOf, RuleSet ruleSet, AgeCorrection ageCorrection, BaselineRevision baselineRevision) {
        this(asOf, ruleSet, ageCorrection, baselineRevision, Holidays.NONE);
    }

    /** The default: OSHA, with the age allowance, without baseline revision by rule. */
    public static JudgingOptions asOf(LocalDate day) {
        return new JudgingOptions(day, RuleSets.OSHA, AgeCorrection.ON, BaselineRevision.OFF);
    }

    /** The same, with the record looked at on another day. */
    public JudgingOptions withAsOf(LocalDate other) {
        return new JudgingOptions(other, ruleSet, ageCorrection, baselineRevision, holidays);
    }

    public JudgingOptions withBaselineRevision(BaselineRevision other) {
        return new JudgingOptions(asOf, ruleSet, ageCorrection, other, holidays);
    }

    /** The tables that the allowance for aging is read from; empty where none is made. */
    public Optional<AgeTables> ageTables() {
        return ageCorrection == AgeCorrection.ON ? ruleSet.shift().ageTables() : Optional.empty();
    }
}
