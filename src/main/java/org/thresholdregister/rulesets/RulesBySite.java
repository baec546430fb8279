package org.thresholdregister.rulesets;

import java.util.Map;
import org.thresholdregister.core.judging.RulesInForce;

/** What each site answers to, and what the sites without a choice of their own do. */
public record RulesBySite(Map<String, RulesInForce> own, RulesInForce otherwise) {

    public RulesBySite {
        own = Map.copyOf(own);
    }

    public RulesInForce of(String site) {
        return own.getOrDefault(site, otherwise);
    }
}
