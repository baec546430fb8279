package org.thresholdregister.rulesets;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.rules.RuleSet;

/**
 * The rule set that a site answers to from a day on.
 *
 * @param site empty for every site without a choice of its own
 * @param from the first day; tests before it are judged by the choice before
 * @param ruleSet with the settings chosen for it
 * @param reason why it was chosen
 */
public record SiteRules(
        String site,
        LocalDate from,
        RuleSet ruleSet,
        AgeCorrection ageCorrection,
        String reason,
        String chosenBy,
        Instant chosenAt) {

    /**
     * What somebody chooses, before it is stored.
     *
     * @param settings other values for the rule set's settings, by name
     */
    public record Choice(
            String site,
            LocalDate from,
            String ruleSet,
            AgeCorrection ageCorrection,
            Map<String, Integer> settings,
            String reason) {

        /** The longest name of a site that is kept, in characters. */
        public static final int LONGEST_SITE = 200;

        /** The longest reason that is kept, in characters. */
        public static final int LONGEST_REASON = 2000;

        public Choice {
            settings = Map.copyOf(settings);
        }
    }
}
