package org.thresholdregister.core.scheduling;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.RuleSet;

/**
 * The longer time that some rule sets give for the baseline where a mobile unit makes the tests.
 *
 * @param months from the first exposure to the last day of the baseline
 * @param protectorsAfterMonths the months after which protectors are worn until the baseline; empty where the rule set
 *     was not read to ask for it
 */
public record MobileUnitRule(
        int months, Citation source, Provenance provenance, Optional<Integer> protectorsAfterMonths) {

    /** The paragraph that has protectors worn by those who wait for a mobile unit. */
    public static final Citation PROTECTORS = new Citation("29 CFR 1910.95(g)(5)(ii) and (i)(2)(ii)(A)");

    private static final Map<String, MobileUnitRule> BY_RULE_SET = Map.of(
            "osha",
            new MobileUnitRule(12, new Citation("29 CFR 1910.95(g)(5)(ii)"), Provenance.LOOKED_UP, Optional.of(6)),
            "msha",
            new MobileUnitRule(
                    12, new Citation("30 CFR 62.170(a)(1) (from memory)"), Provenance.FROM_MEMORY, Optional.empty()),
            "fra",
            new MobileUnitRule(12, new Citation("49 CFR 227.109(e)(1)"), Provenance.LOOKED_UP, Optional.empty()));

    /** The exception of a rule set, where it has one. */
    public static Optional<MobileUnitRule> of(RuleSet ruleSet) {
        return Optional.ofNullable(BY_RULE_SET.get(ruleSet.word()));
    }

    public LocalDate baselineBy(LocalDate firstExposure) {
        return firstExposure.plusMonths(months);
    }

    /** The day from which protectors are worn until the baseline. */
    public Optional<LocalDate> protectorsFrom(LocalDate firstExposure) {
        return protectorsAfterMonths.map(firstExposure::plusMonths);
    }
}
