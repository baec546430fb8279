package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/**
 * A way of judging a record.
 *
 * @param revised whether every baseline is moved as the guide's rules propose
 */
public record Way(RuleSet ruleSet, AgeCorrection ageCorrection, boolean revised) {

    private static final String WITHOUT_AGE = ".age-off";
    private static final String REVISED = ".revised";

    /** The way without any choice of a site. */
    public static final Way USUAL = new Way(RuleSets.OSHA, AgeCorrection.ON, false);

    /** Where the rule set makes no allowance for age, switching it off is no other way. */
    public Way {
        ageCorrection = ruleSet.allowsForAge() ? ageCorrection : AgeCorrection.ON;
    }

    /** The way in an address: {@code osha.age-off.revised}. */
    public String word() {
        return ruleSet.word() + (ageCorrection == AgeCorrection.OFF ? WITHOUT_AGE : "") + (revised ? REVISED : "");
    }

    /** The way of this word, where there is one. */
    public static Optional<Way> of(String word) {
        boolean revised = word.endsWith(REVISED);
        String rest = revised ? word.substring(0, word.length() - REVISED.length()) : word;
        boolean withoutAge = rest.endsWith(WITHOUT_AGE);
        String name = withoutAge ? rest.substring(0, rest.length() - WITHOUT_AGE.length()) : rest;
        return RuleSets.find(name)
                .map(ruleSet -> new Way(ruleSet, withoutAge ? AgeCorrection.OFF : AgeCorrection.ON, revised));
    }

    /** {@code OSHA without allowance for age, baselines revised}. */
    public String label() {
        String age = ruleSet.allowsForAge()
                ? ageCorrection == AgeCorrection.ON ? " with allowance for age" : " without allowance for age"
                : "";
        return ruleSet.shortName() + age + (revised ? ", baselines revised" : "");
    }

    /** Whether it says of a shift that it is recorded or reported. */
    public boolean keepsLog() {
        return !(ruleSet.recording() instanceof RecordingRule.None);
    }

    JudgingOptions options(LocalDate asOf) {
        return new JudgingOptions(
                asOf, ruleSet, ageCorrection, revised ? BaselineRevision.APPLY : BaselineRevision.OFF);
    }
}
