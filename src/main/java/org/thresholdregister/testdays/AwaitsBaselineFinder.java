package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.scheduling.MobileUnitRule;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.review.FollowUpStore;
import org.thresholdregister.review.OwedTest;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;
import org.thresholdregister.rulesets.RulesBySite;
import org.thresholdregister.rulesets.SiteRulesStore;

/** Finds who is to wear protectors until a mobile unit makes the baseline, 29 CFR 1910.95(g)(5)(ii), (i)(2)(ii)(A). */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class AwaitsBaselineFinder {

    private final EntityManager entityManager;
    private final FollowUpStore followUps;
    private final WorkerStore workers;
    private final SiteRulesStore rules;
    private final TestSiteFinder sites;
    private final Clock clock;

    AwaitsBaselineFinder(
            EntityManager entityManager,
            FollowUpStore followUps,
            WorkerStore workers,
            SiteRulesStore rules,
            TestSiteFinder sites,
            Clock clock) {
        this.entityManager = entityManager;
        this.followUps = followUps;
        this.workers = workers;
        this.rules = rules;
        this.sites = sites;
        this.clock = clock;
    }

    /** Everybody whose six months end by a day and who has no baseline, the earliest first. */
    List<AwaitsBaseline> find(SiteScope scope, LocalDate until) {
        LocalDate today = LocalDate.now(clock);
        Map<Long, OwedTest> owed = followUps.tests(scope, until).stream()
                .filter(test -> test.kind() == FollowUpKind.BASELINE_TEST)
                .collect(Collectors.toMap(OwedTest::workerKey, test -> test));
        Map<Long, LocalDate> worn = new HashMap<>();
        entityManager
                .createQuery("select p from ProtectorsUntilBaseline p", ProtectorsUntilBaseline.class)
                .getResultList()
                .forEach(noted -> worn.put(noted.workerKey(), noted.wornFrom()));
        RulesBySite rulesBySite = rules.all();
        return workers.withKeys(owed.keySet()).stream()
                .flatMap(worker -> {
                    String site = worker.details().site();
                    Optional<MobileUnitRule> rule = sites.of(site).mobileUnit()
                            ? MobileUnitRule.of(rulesBySite.of(site).on(today).ruleSet())
                            : Optional.empty();
                    return rule.stream().flatMap(exception -> waiting(worker, exception, worn));
                })
                .filter(waiting -> !waiting.protectorsFrom().isAfter(until))
                .sorted(Comparator.comparing(AwaitsBaseline::protectorsFrom).thenComparing(AwaitsBaseline::workerId))
                .toList();
    }

    private static Stream<AwaitsBaseline> waiting(StoredWorker worker, MobileUnitRule rule, Map<Long, LocalDate> worn) {
        WorkerDetails details = worker.details();
        String name = (details.givenName() + " " + details.familyName()).strip();
        return details
                .enrolledFrom()
                .flatMap(from -> rule.protectorsFrom(from)
                        .map(day -> new AwaitsBaseline(
                                details.workerId(),
                                name.isEmpty() ? details.workerId() : name,
                                details.site(),
                                details.department(),
                                day,
                                rule.baselineBy(from),
                                Optional.ofNullable(worn.get(worker.key())))))
                .stream();
    }
}
