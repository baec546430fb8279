package org.thresholdregister;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith;
import static com.tngtech.archunit.core.domain.properties.CanBeAnnotated.Predicates.annotatedWith;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.vaadin.flow.component.applayout.AppLayout;
import com.vaadin.flow.component.dependency.CssImport;
import com.vaadin.flow.component.dependency.JsModule;
import com.vaadin.flow.component.dependency.NpmPackage;
import jakarta.persistence.Entity;
import org.springframework.data.repository.Repository;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;

/** The arrows between packages, and what each may touch. */
@AnalyzeClasses(packages = "org.thresholdregister", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String ROOT = "org.thresholdregister";
    private static final String[] SPRING = {"org.springframework..", "jakarta..", "com.vaadin..", "org.hibernate.."};

    /** The root is spelled out: {@code ..core..} would let in {@code org.springframework.core}. */
    @ArchTest
    static final ArchRule coreIsPlainJava = classes()
            .that()
            .resideInAPackage(ROOT + ".core..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(ROOT + ".core..", "java..", "org.jspecify..");

    @ArchTest
    static final ArchRule coreReadsNoClockLocaleOrSetting = noClasses()
            .that()
            .resideInAPackage(ROOT + ".core..")
            .should()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(java.util.Locale.class, "getDefault")
            .orShould()
            .callMethod(System.class, "getProperty", String.class)
            .orShould()
            .callMethod(System.class, "getenv", String.class);

    @ArchTest
    static final ArchRule corePackagesFormNoCycle =
            slices().matching(ROOT + ".core.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule platformPackagesFormNoCycle =
            slices().matching(ROOT + ".platform.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule featuresFormNoCycle =
            slices().matching(ROOT + ".(*)..").should().beFreeOfCycles();

    /** Each may also use itself; the root package starts the program and may use what it starts. */
    @ArchTest
    static final ArchRule arrowsPointInward = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("core")
            .definedBy(ROOT + ".core..")
            .layer("platform")
            .definedBy(ROOT + ".platform..")
            .layer("drawing")
            .definedBy(ROOT + ".drawing..")
            .layer("roster")
            .definedBy(ROOT + ".roster..")
            .layer("audiograms")
            .definedBy(ROOT + ".audiograms..")
            .layer("rulesets")
            .definedBy(ROOT + ".rulesets..")
            .layer("review")
            .definedBy(ROOT + ".review..")
            .layer("instruments")
            .definedBy(ROOT + ".instruments..")
            .layer("exposure")
            .definedBy(ROOT + ".exposure..")
            .layer("clinical")
            .definedBy(ROOT + ".clinical..")
            .layer("employment")
            .definedBy(ROOT + ".employment..")
            .layer("protection")
            .definedBy(ROOT + ".protection..")
            .layer("testdays")
            .definedBy(ROOT + ".testdays..")
            .layer("testing")
            .definedBy(ROOT + ".testing..")
            .layer("letters")
            .definedBy(ROOT + ".letters..")
            .layer("intake")
            .definedBy(ROOT + ".intake..")
            .layer("reports")
            .definedBy(ROOT + ".reports..")
            .layer("batch")
            .definedBy(ROOT + ".batch..")
            .layer("shell")
            .definedBy(ROOT + ".shell..")
            .layer("start")
            .definedBy(ROOT)
            .whereLayer("core")
            .mayNotAccessAnyLayer()
            .whereLayer("drawing")
            .mayOnlyAccessLayers("core")
            .whereLayer("platform")
            .mayOnlyAccessLayers("core")
            .whereLayer("roster")
            .mayOnlyAccessLayers("core", "platform")
            .whereLayer("audiograms")
            .mayOnlyAccessLayers("core", "platform", "roster")
            .whereLayer("rulesets")
            .mayOnlyAccessLayers("core", "platform")
            .whereLayer("review")
            .mayOnlyAccessLayers("core", "platform", "drawing", "roster", "audiograms", "rulesets", "instruments")
            .whereLayer("instruments")
            .mayOnlyAccessLayers("core", "platform")
            .whereLayer("exposure")
            .mayOnlyAccessLayers("core", "platform", "roster", "review")
            .whereLayer("clinical")
            .mayOnlyAccessLayers("core", "platform", "roster", "audiograms", "review")
            .whereLayer("employment")
            .mayOnlyAccessLayers("core", "platform", "roster", "review")
            .whereLayer("protection")
            .mayOnlyAccessLayers("core", "platform", "roster", "audiograms", "rulesets", "exposure", "review")
            .whereLayer("testdays")
            .mayOnlyAccessLayers("core", "platform", "roster", "audiograms", "rulesets", "review")
            .whereLayer("testing")
            .mayOnlyAccessLayers(
                    "core",
                    "platform",
                    "drawing",
                    "roster",
                    "audiograms",
                    "rulesets",
                    "instruments",
                    "clinical",
                    "review")
            .whereLayer("letters")
            .mayOnlyAccessLayers(
                    "core",
                    "platform",
                    "drawing",
                    "roster",
                    "audiograms",
                    "rulesets",
                    "instruments",
                    "clinical",
                    "exposure",
                    "testdays",
                    "review")
            // A file may hold decisions, which review keeps and judges.
            .whereLayer("intake")
            .mayOnlyAccessLayers("core", "platform", "roster", "audiograms", "review")
            .whereLayer("reports")
            .mayOnlyAccessLayers("core", "platform", "roster", "audiograms", "review")
            .whereLayer("batch")
            .mayOnlyAccessLayers("core", "intake", "reports")
            .whereLayer("shell")
            .mayOnlyAccessLayers("core", "platform")
            .whereLayer("start")
            .mayOnlyAccessLayers("platform", "batch", "shell")
            .withOptionalLayers(true);

    @ArchTest
    static final ArchRule batchRunsWithoutSpring = noClasses()
            .that()
            .resideInAPackage(ROOT + ".batch..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(SPRING)
            .orShould()
            .transitivelyDependOnClassesThat(isSpring());

    @ArchTest
    static final ArchRule drawingRunsWithoutSpring = noClasses()
            .that()
            .resideInAPackage(ROOT + ".drawing..")
            .should()
            .transitivelyDependOnClassesThat(isSpring());

    /** The reader starts at {@code Intake}; what stores lies in classes that it does not know. */
    @ArchTest
    static final ArchRule theReaderRunsWithoutSpring = noClasses()
            .that(resideInAnyPackage(ROOT + ".intake")
                    .and(simpleName("Intake")
                            .or(simpleName("RosterReader"))
                            .or(simpleName("AudiogramReader"))
                            .or(simpleName("DecisionReader"))
                            .or(simpleName("TableReader"))
                            .or(simpleName("ProblemSpool"))
                            .or(simpleName("FileSet"))))
            .should()
            .transitivelyDependOnClassesThat(isSpring());

    private static DescribedPredicate<JavaClass> isSpring() {
        return resideInAnyPackage(SPRING).as("belong to Spring, persistence or the web app");
    }

    @ArchTest
    static final ArchRule entitiesStayInTheirPackage =
            classes().that().areAnnotatedWith(Entity.class).should().bePackagePrivate();

    @ArchTest
    static final ArchRule repositoriesStayInTheirPackage =
            classes().that().areAssignableTo(Repository.class).should().bePackagePrivate();

    @ArchTest
    static final ArchRule viewsSeeNoEntityAndNoRepository = noClasses()
            .that()
            .resideInAPackage(ROOT + "..ui..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("jakarta.persistence..", "org.springframework.data..")
                    .or(assignableTo(Repository.class))
                    .or(annotatedWith(Entity.class)));

    /** The router finds it, so that no view names it and the shell depends on features by no arrow. */
    @ArchTest
    static final ArchRule theMainLayoutStaysInTheShell = classes()
            .that()
            .areAssignableTo(AppLayout.class)
            .should()
            .bePackagePrivate()
            .andShould()
            .resideInAPackage(ROOT + ".shell");

    @ArchTest
    static final ArchRule aPublicServiceSaysWhoMayCallIt = methods()
            .that()
            .arePublic()
            .and()
            .areDeclaredInClassesThat(resideInAnyPackage(
                            ROOT + ".roster..",
                            ROOT + ".audiograms..",
                            ROOT + ".review..",
                            ROOT + ".intake..",
                            ROOT + ".rulesets..",
                            ROOT + ".instruments..",
                            ROOT + ".exposure..",
                            ROOT + ".clinical..",
                            ROOT + ".employment..",
                            ROOT + ".protection..",
                            ROOT + ".testdays..",
                            ROOT + ".testing..",
                            ROOT + ".letters..",
                            ROOT + ".reports..")
                    .and(annotatedWith(Service.class))
                    .and(isPublic()))
            .should(sayWhoMayCallThem());

    /** Accounts are an administrator's; the first set-up and the audit trail are called before or below any role. */
    @ArchTest
    static final ArchRule accountsSayWhoMayCallThem = methods()
            .that()
            .arePublic()
            .and()
            .areDeclaredInClassesThat(resideInAnyPackage(ROOT + ".platform..")
                    .and(annotatedWith(Service.class))
                    .and(isPublic())
                    .and(not(simpleName("FirstSetUp")
                            .or(simpleName("AuditTrail"))
                            .or(simpleName("RefusedAccess")))))
            .should(sayWhoMayCallThem());

    private static DescribedPredicate<JavaClass> isPublic() {
        return DescribedPredicate.describe("public", type -> type.getModifiers().contains(JavaModifier.PUBLIC));
    }

    private static ArchCondition<JavaMethod> sayWhoMayCallThem() {
        return new ArchCondition<>("carry @PreAuthorize, or their class does") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                boolean says = method.isAnnotatedWith(PreAuthorize.class)
                        || method.getOwner().isAnnotatedWith(PreAuthorize.class);
                events.add(new SimpleConditionEvent(
                        method, says, method.getFullName() + (says ? " says" : " does not say") + " who may call it"));
            }
        };
    }

    /** Services reach the screens; the stores below them carry no role and are for services of other features. */
    @ArchTest
    static final ArchRule viewsCallNoStore = noClasses()
            .that()
            .resideInAPackage(ROOT + "..ui..")
            .should()
            .dependOnClassesThat()
            .haveSimpleNameEndingWith("Store");

    @ArchTest
    static final ArchRule nobodyPrints = noClasses()
            .that(not(resideInAnyPackage(ROOT + ".batch..", ROOT))
                    .and(not(simpleNameEndingWith("Notice")))
                    .and(not(simpleName("PlainStartupReport"))))
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .as("only commands, notices and a refused start print, for whoever stands at the terminal");

    @ArchTest
    static final ArchRule loggingGoesThroughSlf4j =
            noClasses().should().dependOnClassesThat().resideInAPackage("java.util.logging..");

    /** The front end is built by hand and served as it is, so that the program builds without a package registry. */
    @ArchTest
    static final ArchRule nothingAsksForAFrontEndBuild = noClasses()
            .should()
            .beAnnotatedWith(JsModule.class)
            .orShould()
            .beAnnotatedWith(NpmPackage.class)
            .orShould()
            .beAnnotatedWith(CssImport.class)
            .orShould()
            .beAnnotatedWith(JsModule.Container.class)
            .orShould()
            .beAnnotatedWith(NpmPackage.Container.class)
            .orShould()
            .beAnnotatedWith(CssImport.Container.class);
}
