package org.thresholdregister.rulesets;

import jakarta.persistence.EntityManager;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/** Chooses which rule set a site answers to; everybody who sees a worker's record may see the choice. */
@Service
@Transactional
public class SiteRulesService {

    private static final String WHO_MAY_SEE =
            Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER + " or " + Roles.HAS_ADMINISTRATOR;

    private final SiteRulesStore store;
    private final EntityManager entityManager;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final ApplicationEventPublisher events;
    private final InstantSource systemTime = InstantSource.system();

    SiteRulesService(
            SiteRulesStore store,
            EntityManager entityManager,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            ApplicationEventPublisher events) {
        this.store = store;
        this.entityManager = entityManager;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.events = events;
    }

    /** All choices so far, by site and first day. */
    @PreAuthorize(WHO_MAY_SEE)
    @Transactional(readOnly = true)
    public List<SiteRules> chosen() {
        return store.chosen();
    }

    /** The days besides weekends that deadlines in working days skip, in order. */
    @PreAuthorize(WHO_MAY_SEE)
    @Transactional(readOnly = true)
    public List<Holiday> holidays() {
        return entityManager
                .createQuery("select h from StoredHoliday h order by h.holidayOn", StoredHoliday.class)
                .getResultStream()
                .map(StoredHoliday::toHoliday)
                .toList();
    }

    /**
     * Chooses a rule set for a site from a day on. Returns what stands against it; where that is nothing it is stored,
     * and every record is judged again before it is next shown.
     */
    @PreAuthorize(Roles.HAS_ADMINISTRATOR)
    public Optional<String> choose(SiteRules.Choice choice) {
        Optional<String> objection = objectionTo(choice);
        if (objection.isEmpty()) {
            entityManager.persist(new StoredSiteRules(choice, currentUser.username(), systemTime.instant()));
            auditTrail.record(
                    RuleSetAction.RULE_SET_CHOSEN,
                    "rule-set",
                    choice.ruleSet(),
                    (choice.site().isEmpty() ? "every other site" : choice.site()) + " from " + choice.from()
                            + ", age correction "
                            + choice.ageCorrection().name().toLowerCase(Locale.ROOT)
                            + (choice.settings().isEmpty()
                                    ? ""
                                    : ", with settings " + new TreeMap<>(choice.settings())));
            events.publishEvent(new RulesChanged());
        }
        return objection;
    }

    private static Optional<String> objectionTo(SiteRules.Choice choice) {
        if (choice.reason().isBlank()) {
            return Optional.of("Say why: the reason stays with the choice.");
        }
        if (choice.reason().length() > SiteRules.Choice.LONGEST_REASON
                || choice.site().length() > SiteRules.Choice.LONGEST_SITE) {
            return Optional.of("A reason has at most " + SiteRules.Choice.LONGEST_REASON
                    + " characters, the name of a site at most " + SiteRules.Choice.LONGEST_SITE + ".");
        }
        Optional<RuleSet> ruleSet = RuleSets.find(choice.ruleSet());
        if (ruleSet.isEmpty()) {
            return Optional.of("There is no rule set " + choice.ruleSet() + ".");
        }
        try {
            RuleSets.with(ruleSet.get(), choice.settings());
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of("That does not fit: " + e.getMessage() + ".");
        }
    }

    /** Adds a holiday, or gives it another name. */
    @PreAuthorize(Roles.HAS_ADMINISTRATOR)
    public void addHoliday(Holiday holiday) {
        entityManager.merge(new StoredHoliday(holiday));
        auditTrail.record(RuleSetAction.HOLIDAY_ADDED, "holiday", holiday.day().toString(), holiday.name());
        events.publishEvent(new RulesChanged());
    }

    /** Removes a holiday; nothing happens where there is none. */
    @PreAuthorize(Roles.HAS_ADMINISTRATOR)
    public void removeHoliday(LocalDate day) {
        StoredHoliday stored = entityManager.find(StoredHoliday.class, day);
        if (stored != null) {
            entityManager.remove(stored);
            auditTrail.record(RuleSetAction.HOLIDAY_REMOVED, "holiday", day.toString(), "");
            events.publishEvent(new RulesChanged());
        }
    }
}
