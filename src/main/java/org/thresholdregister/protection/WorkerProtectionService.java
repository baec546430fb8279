package org.thresholdregister.protection;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.MustWear;
import org.thresholdregister.core.attenuation.Noise;
import org.thresholdregister.core.attenuation.ProtectionTarget;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.training.TrainingRule;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.exposure.ExposureStore;
import org.thresholdregister.exposure.WorkerExposure;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.documents.DocumentStore;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.CaseStore;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;
import org.thresholdregister.rulesets.SiteRulesStore;

/** One worker's protectors: what was given out, what it leaves of the noise, and fit tests. */
@Service
@Transactional
public class WorkerProtectionService {

    /** The longest reason for a withdrawal, in characters. */
    public static final int LONGEST_REASON = 500;

    private static final String WHO_MAY_SEE = Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER;

    private final EntityManager entityManager;
    private final WorkerStore workers;
    private final Catalogue catalogue;
    private final CaseStore cases;
    private final CaseActs caseActs;
    private final SiteRulesStore siteRules;
    private final ExposureStore exposure;
    private final TrainingBook trainings;
    private final DocumentStore documents;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    WorkerProtectionService(
            EntityManager entityManager,
            WorkerStore workers,
            Catalogue catalogue,
            CaseStore cases,
            CaseActs caseActs,
            SiteRulesStore siteRules,
            ExposureStore exposure,
            TrainingBook trainings,
            DocumentStore documents,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.workers = workers;
        this.catalogue = catalogue;
        this.cases = cases;
        this.caseActs = caseActs;
        this.siteRules = siteRules;
        this.exposure = exposure;
        this.trainings = trainings;
        this.documents = documents;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** What the worker's own page shows; opening that page is on the audit trail already. */
    @PreAuthorize(WHO_MAY_SEE)
    @Transactional(readOnly = true)
    public Optional<WorkerProtection> of(String workerId) {
        return workers.find(workerId, currentUser.scope()).map(this::gathered);
    }

    /** The same for the page of the worker's protectors; that it was opened goes on the audit trail. */
    @PreAuthorize(WHO_MAY_SEE)
    public Optional<WorkerProtection> open(String workerId) {
        return workers.find(workerId, currentUser.scope()).map(worker -> {
            auditTrail.record(ProtectionAction.PROTECTION_RECORD_OPENED, "worker", workerId, "");
            return gathered(worker);
        });
    }

    private WorkerProtection gathered(StoredWorker worker) {
        WorkerDetails details = worker.details();
        LocalDate today = LocalDate.now(clock);
        RulesInForce rules = siteRules.all().of(details.site());
        RuleSet ruleSet = rules.on(today).ruleSet();
        var workerCases = cases.of(worker);
        Optional<WorkerExposure> known = exposure.of(worker, today);
        Noise noise = ExposureOfWorker.of(known);
        Optional<LocalDate> shiftOn = cases.latestShift(worker.key());
        var facts =
                new MustWear.Facts(noise.aWeighted(), details.enrolledFrom(), cases.hasBaseline(worker.key()), shiftOn);
        Optional<AttenuationMethod> method = catalogue.methodOf(details.site());
        Map<Long, Product> products = catalogue.byKey();
        List<FitTest> fitTests = fitTests(worker.key(), products);
        List<Issue> issues = issues(worker.key(), products);
        List<ProtectorInUse> inUse = issues.stream()
                .filter(Issue::isInUse)
                .map(issue -> ProtectorInUse.of(issue, noise, fitTests, method))
                .toList();
        List<AttendedTraining> attended = trainings.of(worker.key());
        Optional<TrainingRule> trainingRule = TrainingRule.of(ruleSet);
        return new WorkerProtection(
                details,
                today,
                noise,
                known.map(WorkerExposure::source),
                ProtectionTarget.of(ruleSet, shiftOn),
                MustWear.of(ruleSet, facts, today),
                facts,
                method,
                inUse,
                issues,
                fitTests,
                attended,
                trainingRule,
                trainingRule.flatMap(rule -> details.enrolledFrom()
                        .filter(first -> !first.isAfter(today))
                        .filter(first -> details.endDate()
                                .filter(last -> last.isBefore(today))
                                .isEmpty())
                        .map(first -> rule.due(
                                first,
                                attended.stream()
                                        .filter(AttendedTraining::counts)
                                        .map(AttendedTraining::training)
                                        .toList(),
                                rules.holidays()))),
                workerCases);
    }

    private List<Issue> issues(long workerKey, Map<Long, Product> products) {
        return entityManager
                .createQuery(
                        "select i from StoredIssue i where i.workerId = :worker order by i.issuedOn desc, i.id desc",
                        StoredIssue.class)
                .setParameter("worker", workerKey)
                .getResultStream()
                .map(stored -> stored.toIssue(Objects.requireNonNull(products.get(stored.productKey()))))
                .toList();
    }

    private List<FitTest> fitTests(long workerKey, Map<Long, Product> products) {
        return entityManager
                .createQuery(
                        "select f from StoredFitTest f where f.workerId = :worker order by f.testedOn desc, f.id desc",
                        StoredFitTest.class)
                .setParameter("worker", workerKey)
                .getResultStream()
                .map(stored -> stored.toFitTest(
                        Objects.requireNonNull(products.get(stored.productKey())),
                        stored.documentKey().flatMap(documents::find)))
                .toList();
    }

    /** The protectors that may be given to this worker: those of the worker's site, by name. */
    @PreAuthorize(WHO_MAY_SEE)
    @Transactional(readOnly = true)
    public List<Product> choices(String workerId) {
        return workers.find(workerId, currentUser.scope())
                .map(worker -> catalogue.all(currentUser.scope()).stream()
                        .filter(Product::isGivenOut)
                        .filter(product ->
                                product.details().site().equals(worker.details().site()))
                        .sorted(Comparator.comparing(
                                product -> product.details().name()))
                        .toList())
                .orElse(List.of());
    }

    /** Takes down that a protector was given; where it answers a shift, the case moves on. Returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<ProtectionProblem> issue(String workerId, NewIssue issue) {
        Optional<StoredWorker> found = workers.find(workerId, currentUser.scope());
        if (found.isEmpty()) {
            return Optional.of(ProtectionProblem.UNKNOWN_WORKER);
        }
        StoredWorker worker = found.get();
        Optional<Product> product = productFor(worker, issue.productKey());
        if (product.isEmpty()) {
            return Optional.of(ProtectionProblem.UNKNOWN_PROTECTOR);
        }
        if (!product.get().isGivenOut()) {
            return Optional.of(ProtectionProblem.RETIRED);
        }
        if (issue.issuedOn().isAfter(LocalDate.now(clock))) {
            return Optional.of(ProtectionProblem.IN_THE_FUTURE);
        }
        if (issue.size().length() > NewIssue.LONGEST_SIZE || issue.remark().length() > NewIssue.LONGEST_REMARK) {
            return Optional.of(ProtectionProblem.TEXT_TOO_LONG);
        }
        String reason = ProtectionWords.refitReason(product.get().details().name(), issue.size(), issue.issuedOn());
        boolean refused = issue.refitFor()
                .filter(test -> !caseActs.refitted(worker, test, issue.issuedOn(), reason))
                .isPresent();
        if (refused) {
            return Optional.of(ProtectionProblem.CASE_REFUSES);
        }
        var stored = new StoredIssue(worker.key(), issue, currentUser.username(), clock.instant());
        entityManager.persist(stored);
        auditTrail.record(
                ProtectionAction.PROTECTOR_ISSUED,
                "worker",
                workerId,
                "protector " + issue.productKey() + ", issue " + stored.key());
        return Optional.empty();
    }

    private Optional<Product> productFor(StoredWorker worker, long key) {
        return catalogue
                .find(key, currentUser.scope())
                .filter(product ->
                        product.details().site().equals(worker.details().site()));
    }

    /** Takes down how and when an issue ended; returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<ProtectionProblem> end(String workerId, long issueKey, Issue.End end) {
        Optional<StoredIssue> stored = openIssue(workerId, issueKey).filter(issue -> isInUse(issue));
        if (stored.isEmpty()) {
            return Optional.of(ProtectionProblem.UNKNOWN_ENTRY);
        }
        if (end.on().isAfter(LocalDate.now(clock))) {
            return Optional.of(ProtectionProblem.IN_THE_FUTURE);
        }
        if (end.on().isBefore(issued(stored.get()))) {
            return Optional.of(ProtectionProblem.BEFORE_IT_BEGAN);
        }
        stored.get().end(end, currentUser.username());
        auditTrail.record(ProtectionAction.PROTECTOR_ISSUE_ENDED, "worker", workerId, "issue " + issueKey);
        return Optional.empty();
    }

    /** Says that an issue was entered by mistake; it stays readable. A case's own entries stay. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<ProtectionProblem> withdrawIssue(String workerId, long issueKey, String reason) {
        Optional<StoredIssue> stored =
                openIssue(workerId, issueKey).filter(issue -> details(issue).counts());
        Optional<ProtectionProblem> problem = objectionTo(stored.isPresent(), reason);
        if (problem.isEmpty()) {
            stored.orElseThrow().withdraw(reason, currentUser.username());
            auditTrail.record(ProtectionAction.PROTECTOR_ISSUE_WITHDRAWN, "worker", workerId, "issue " + issueKey);
        }
        return problem;
    }

    static Optional<ProtectionProblem> objectionTo(boolean known, String reason) {
        if (!known) {
            return Optional.of(ProtectionProblem.UNKNOWN_ENTRY);
        }
        if (reason.isBlank()) {
            return Optional.of(ProtectionProblem.REASON_MISSING);
        }
        return reason.length() > LONGEST_REASON ? Optional.of(ProtectionProblem.TEXT_TOO_LONG) : Optional.empty();
    }

    private Optional<StoredIssue> openIssue(String workerId, long issueKey) {
        return workers.find(workerId, currentUser.scope())
                .flatMap(worker -> Optional.ofNullable(entityManager.find(StoredIssue.class, issueKey))
                        .filter(issue -> issue.workerKey() == worker.key()));
    }

    private Issue details(StoredIssue stored) {
        return stored.toIssue(Objects.requireNonNull(catalogue.byKey().get(stored.productKey())));
    }

    private boolean isInUse(StoredIssue stored) {
        return details(stored).isInUse();
    }

    private LocalDate issued(StoredIssue stored) {
        return details(stored).details().issuedOn();
    }

    /** Takes down a fit test, with the report where there is one; returns what stands against it. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<ProtectionProblem> addFitTest(String workerId, NewFitTest test, Optional<NewDocument> report) {
        Optional<StoredWorker> found = workers.find(workerId, currentUser.scope());
        if (found.isEmpty()) {
            return Optional.of(ProtectionProblem.UNKNOWN_WORKER);
        }
        StoredWorker worker = found.get();
        if (productFor(worker, test.productKey()).isEmpty()) {
            return Optional.of(ProtectionProblem.UNKNOWN_PROTECTOR);
        }
        if (test.testedOn().isAfter(LocalDate.now(clock))) {
            return Optional.of(ProtectionProblem.IN_THE_FUTURE);
        }
        if (!test.isInRange()) {
            return Optional.of(ProtectionProblem.FIT_TEST_OUT_OF_RANGE);
        }
        if (test.size().length() > NewIssue.LONGEST_SIZE
                || test.method().length() > NewFitTest.LONGEST_METHOD
                || test.tester().length() > NewFitTest.LONGEST_TESTER) {
            return Optional.of(ProtectionProblem.TEXT_TOO_LONG);
        }
        var stored = new StoredFitTest(
                worker.key(), test, report.map(documents::add), currentUser.username(), clock.instant());
        entityManager.persist(stored);
        auditTrail.record(ProtectionAction.FIT_TEST_ENTERED, "worker", workerId, "fit test " + stored.key());
        return Optional.empty();
    }

    /** Says that a fit test was entered by mistake; it stays readable. */
    @PreAuthorize(Roles.HAS_NURSE)
    public Optional<ProtectionProblem> withdrawFitTest(String workerId, long key, String reason) {
        Optional<StoredFitTest> stored = fitTest(workerId, key)
                .filter(test -> test.toFitTest(
                                Objects.requireNonNull(catalogue.byKey().get(test.productKey())), Optional.empty())
                        .counts());
        Optional<ProtectionProblem> problem = objectionTo(stored.isPresent(), reason);
        if (problem.isEmpty()) {
            stored.orElseThrow().withdraw(reason, currentUser.username());
            auditTrail.record(ProtectionAction.FIT_TEST_WITHDRAWN, "worker", workerId, "fit test " + key);
        }
        return problem;
    }

    private Optional<StoredFitTest> fitTest(String workerId, long key) {
        return workers.find(workerId, currentUser.scope())
                .flatMap(worker -> Optional.ofNullable(entityManager.find(StoredFitTest.class, key))
                        .filter(test -> test.workerKey() == worker.key()));
    }

    /** The report of a fit test; empty where there is none. Fetching it goes on the audit trail. */
    @PreAuthorize(WHO_MAY_SEE)
    public Optional<byte[]> report(String workerId, long fitTestKey) {
        return fitTest(workerId, fitTestKey).flatMap(StoredFitTest::documentKey).map(document -> {
            auditTrail.record(ProtectionAction.FIT_TEST_DOCUMENT_FETCHED, "worker", workerId, "fit test " + fitTestKey);
            return documents.content(document);
        });
    }
}
