package org.thresholdregister.rulesets;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/** A choice of a rule set, kept for good. */
@Entity
@Table(name = "site_rule_set")
@Immutable
class StoredSiteRules {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "site_rule_set_seq")
    @SequenceGenerator(name = "site_rule_set_seq", sequenceName = "site_rule_set_seq", allocationSize = 1)
    private @Nullable Long id;

    private String site;
    private LocalDate effectiveFrom;
    private String ruleSet;
    private String ageCorrection;
    private String settings;
    private String reason;
    private String chosenBy;
    private Instant chosenAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredSiteRules() {}

    StoredSiteRules(SiteRules.Choice choice, String chosenBy, Instant chosenAt) {
        this.site = choice.site();
        this.effectiveFrom = choice.from();
        this.ruleSet = choice.ruleSet();
        this.ageCorrection = choice.ageCorrection().name().toLowerCase(Locale.ROOT);
        this.settings = new TreeMap<>(choice.settings())
                .entrySet().stream()
                        .map(setting -> setting.getKey() + "=" + setting.getValue())
                        .collect(Collectors.joining("\n"));
        this.reason = choice.reason();
        this.chosenBy = chosenBy;
        this.chosenAt = chosenAt;
    }

    SiteRules toSiteRules() {
        RuleSet asItComes = RuleSets.find(ruleSet)
                .orElseThrow(() -> new IllegalStateException("the program has no rule set " + ruleSet + " any more"));
        Map<String, Integer> values = settings.lines()
                .map(line -> line.split("=", 2))
                .collect(Collectors.toMap(parts -> parts[0], parts -> Integer.valueOf(parts[1])));
        return new SiteRules(
                site,
                effectiveFrom,
                RuleSets.with(asItComes, values),
                AgeCorrection.valueOf(ageCorrection.toUpperCase(Locale.ROOT)),
                reason,
                chosenBy,
                chosenAt);
    }
}
