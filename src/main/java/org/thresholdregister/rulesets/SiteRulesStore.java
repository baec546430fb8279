package org.thresholdregister.rulesets;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSets;

/**
 * What each site answers to, for those who judge. It checks no role: the service that calls it does, and screens never
 * call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class SiteRulesStore {

    private static final String EVERY_OTHER_SITE = "";

    private final EntityManager entityManager;

    SiteRulesStore(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    /** What the sites answer to, as chosen so far. Without any choice it is OSHA with the allowance for age. */
    public RulesBySite all() {
        Holidays holidays = new Holidays(entityManager
                .createQuery("select h.holidayOn from StoredHoliday h", LocalDate.class)
                .getResultStream()
                .collect(Collectors.toSet()));
        Map<String, List<SiteRules>> bySite = chosen().stream()
                .collect(Collectors.groupingBy(SiteRules::site, LinkedHashMap::new, Collectors.toList()));
        RulesInForce otherwise = inForce(bySite.getOrDefault(EVERY_OTHER_SITE, List.of()), holidays);
        Map<String, RulesInForce> own = bySite.entrySet().stream()
                .filter(site -> !site.getKey().equals(EVERY_OTHER_SITE))
                .collect(Collectors.toMap(Map.Entry::getKey, site -> inForce(site.getValue(), holidays)));
        return new RulesBySite(own, otherwise);
    }

    /** All choices: by site and first day, of one day the later one last. */
    List<SiteRules> chosen() {
        return entityManager
                .createQuery(
                        "select s from StoredSiteRules s order by s.site, s.effectiveFrom, s.id", StoredSiteRules.class)
                .getResultStream()
                .map(StoredSiteRules::toSiteRules)
                .toList();
    }

    /** Before a site's first choice it answers to the program's default; of two choices of one day the later counts. */
    private static RulesInForce inForce(List<SiteRules> choices, Holidays holidays) {
        Map<LocalDate, RulesInForce.Choice> byDay = new LinkedHashMap<>();
        byDay.put(LocalDate.MIN, new RulesInForce.Choice(LocalDate.MIN, RuleSets.OSHA, AgeCorrection.ON));
        for (SiteRules choice : choices) {
            byDay.put(choice.from(), new RulesInForce.Choice(choice.from(), choice.ruleSet(), choice.ageCorrection()));
        }
        return new RulesInForce(List.copyOf(byDay.values()), holidays);
    }
}
