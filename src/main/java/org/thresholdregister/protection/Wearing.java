package org.thresholdregister.protection;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.Estimate;
import org.thresholdregister.core.attenuation.MustWear;
import org.thresholdregister.core.attenuation.Noise;
import org.thresholdregister.core.attenuation.ProtectionTarget;
import org.thresholdregister.core.attenuation.Worn;
import org.thresholdregister.core.caselife.CaseDuty;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.exposure.ExposureStore;
import org.thresholdregister.exposure.WorkerExposure;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.review.CaseStore;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.rulesets.RulesBySite;
import org.thresholdregister.rulesets.SiteRulesStore;

/** Who has to wear protectors, and what cases leave to be done with them. It checks no role. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class Wearing {

    private static final Set<CaseDuty> OF_PROTECTION = Set.of(CaseDuty.REFIT, CaseDuty.TRAINING);

    private final EntityManager entityManager;
    private final CaseStore cases;
    private final Catalogue catalogue;
    private final SiteRulesStore siteRules;
    private final ExposureStore exposure;

    Wearing(
            EntityManager entityManager,
            CaseStore cases,
            Catalogue catalogue,
            SiteRulesStore siteRules,
            ExposureStore exposure) {
        this.entityManager = entityManager;
        this.cases = cases;
        this.catalogue = catalogue;
        this.siteRules = siteRules;
        this.exposure = exposure;
    }

    /** Those who have to wear protectors, the most pressing first. */
    List<WearingRow> mustWear(SiteScope scope, LocalDate today) {
        RulesBySite rules = siteRules.all();
        Map<Long, WorkerExposure> exposures = exposure.ofWorking(scope, today);
        Map<Long, LocalDate> shifts = cases.latestShifts(scope);
        Set<Long> withBaseline = cases.withBaseline(scope);
        Map<Long, List<Issue>> inUse = inUse(scope);
        Map<String, MethodChoice> methods = catalogue.chosen(SiteScope.all());
        Map<Long, List<FitTest>> fitTests = fitTests(scope);
        return PersonRow.employed(entityManager, scope, today).stream()
                .flatMap(person -> {
                    RuleSet ruleSet = rules.of(person.site()).on(today).ruleSet();
                    Optional<LocalDate> shiftOn = Optional.ofNullable(shifts.get(person.key()));
                    Noise noise = ExposureOfWorker.of(Optional.ofNullable(exposures.get(person.key())));
                    var facts = new MustWear.Facts(
                            noise.aWeighted(), person.enrolledFrom(), withBaseline.contains(person.key()), shiftOn);
                    MustWear mustWear = MustWear.of(ruleSet, facts, today);
                    if (mustWear.answer() != Answer.YES) {
                        return Stream.empty();
                    }
                    List<Issue> issues = inUse.getOrDefault(person.key(), List.of());
                    Optional<AttenuationMethod> method =
                            Optional.ofNullable(methods.get(person.site())).map(MethodChoice::method);
                    List<FitTest> tests = fitTests.getOrDefault(person.key(), List.of());
                    return Stream.of(new WearingRow(
                            person.workerId(),
                            person.name(),
                            person.site(),
                            person.department(),
                            noise.aWeighted(),
                            mustWear,
                            facts,
                            ProtectionTarget.of(ruleSet, shiftOn),
                            issues.stream()
                                    .map(issue -> issue.product().details().name())
                                    .toList(),
                            issues.stream().anyMatch(issue -> issue.product().worn() instanceof Worn.Both),
                            best(issues, noise, method, tests)));
                })
                .sorted(Comparator.comparing(WearingRow::state))
                .toList();
    }

    private static Optional<Estimate> best(
            List<Issue> issues, Noise noise, Optional<AttenuationMethod> method, List<FitTest> tests) {
        List<Estimate> estimates = issues.stream()
                .flatMap(issue -> ProtectorInUse.of(issue, noise, tests, method).chosen().stream())
                .toList();
        return estimates.stream()
                .filter(Estimate.Estimated.class::isInstance)
                .map(Estimate.Estimated.class::cast)
                .min(Comparator.comparing(Estimate.Estimated::levelUnder))
                .<Estimate>map(found -> found)
                .or(() -> estimates.stream().findFirst());
    }

    private Map<Long, List<Issue>> inUse(SiteScope scope) {
        Map<Long, Product> products = catalogue.byKey();
        return ListQuery.ofOwned(entityManager, "StoredIssue i", "Worker w on w.id = i.workerId", "w.site", scope)
                .where("i.endedOn is null")
                .where("i.withdrawnReason = ''")
                .all("i, w.id", "order by i.issuedOn desc, i.id desc", tuple -> tuple.get(0, StoredIssue.class))
                .stream()
                .collect(Collectors.groupingBy(
                        StoredIssue::workerKey,
                        Collectors.mapping(
                                stored -> stored.toIssue(Objects.requireNonNull(products.get(stored.productKey()))),
                                Collectors.toList())));
    }

    private Map<Long, List<FitTest>> fitTests(SiteScope scope) {
        Map<Long, Product> products = catalogue.byKey();
        return ListQuery.ofOwned(entityManager, "StoredFitTest f", "Worker w on w.id = f.workerId", "w.site", scope)
                .where("f.withdrawnReason = ''")
                .all("f, w.id", "order by f.testedOn desc, f.id desc", tuple -> tuple.get(0, StoredFitTest.class))
                .stream()
                .collect(Collectors.groupingBy(
                        StoredFitTest::workerKey,
                        Collectors.mapping(
                                stored -> stored.toFitTest(
                                        Objects.requireNonNull(products.get(stored.productKey())), Optional.empty()),
                                Collectors.toList())));
    }

    /** Refitting and training that cases leave owed, those with a date first, then the latest shifts. */
    List<OwedRow> owed(SiteScope scope, LocalDate today) {
        return cases.withShift(scope, today).stream()
                .flatMap(worker -> worker.cases().cases().stream()
                        .flatMap(life -> life.owed().stream()
                                .filter(owed -> OF_PROTECTION.contains(owed.duty()))
                                .map(owed -> {
                                    WorkerDetails details = worker.worker().details();
                                    return new OwedRow(
                                            details.workerId(),
                                            PersonRow.name(
                                                    details.familyName(), details.givenName(), details.workerId()),
                                            details.site(),
                                            details.department(),
                                            life.testDate(),
                                            owed);
                                })))
                .sorted(Comparator.comparing((OwedRow row) -> row.owed().by().orElse(LocalDate.MAX))
                        .thenComparing(OwedRow::testDate, Comparator.reverseOrder())
                        .thenComparing(OwedRow::workerId))
                .toList();
    }
}
