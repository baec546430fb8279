package org.thresholdregister.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.attenuation.AppendixBCase;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.Estimate;
import org.thresholdregister.core.attenuation.LabelValues;
import org.thresholdregister.core.attenuation.Missing;
import org.thresholdregister.core.attenuation.MustWear;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.caselife.CaseDuty;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.training.TrainingTopic;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.rulesets.SiteRules;
import org.thresholdregister.rulesets.SiteRulesService;

/** Protectors and training on the register, with roles and sites. Today is 9 March 2026. */
@RegisterTest
class ProtectionServicesTest {

    private static final byte[] PDF = "%PDF-1.4 invented".getBytes(StandardCharsets.US_ASCII);

    @Autowired
    private TestImports files;

    @Autowired
    private ProtectorService protectors;

    @Autowired
    private WorkerProtectionService protection;

    @Autowired
    private WearingService wearing;

    @Autowired
    private TrainingService trainings;

    @Autowired
    private SiteRulesService siteRules;

    @Autowired
    private ProtectionDuties duties;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private JdbcTemplate jdbc;

    private long muff;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store(Plant.ROSTER, Plant.AUDIOGRAMS, "");
        assertThat(protectors.add(Plant.product("Mill", "Hollow muff", ProtectorKind.MUFF, 25)))
                .isEmpty();
        muff = protectors.catalogue().getFirst().key();
    }

    private WorkerProtection of(String workerId) {
        return protection.of(workerId).orElseThrow();
    }

    private void pick(AttenuationMethod method) {
        assertThat(protectors.choose(new MethodChoice("Mill", method, "as measured")))
                .isEmpty();
    }

    private List<String> auditOf(String action) {
        return jdbc.queryForList("select subject_id from audit_event where action = ?", String.class, action);
    }

    @Test
    void theEstimateForAWorkersNoiseReachesTheTargetAfterTheShift() {
        pick(new AttenuationMethod.AppendixB(AppendixBCase.II));
        assertThat(protection.issue("M-1", Plant.issue(muff, "M"))).isEmpty();

        WorkerProtection worker = of("M-1");
        ProtectorInUse used = worker.inUse().getFirst();
        assertThat(ProtectionWords.standing(ProtectorKind.MUFF, used.chosen().orElseThrow(), worker.target()))
                .isEqualTo("By the label and Appendix B (ii), 74.5 dBA under the muff; the target is 85 dBA after the"
                        + " shift of 1 Jun 2025: reached.");
        assertThat(used.estimates()).hasSizeGreaterThan(10);
        assertThat(auditOf("PROTECTOR_ISSUED")).containsExactly("M-1");
    }

    @Test
    void aFitTestOfThatProtectorAndSizeGoesBeforeThePickedMethod() {
        pick(new AttenuationMethod.AppendixB(AppendixBCase.II));
        protection.issue("M-1", Plant.issue(muff, "M"));
        assertThat(protection.addFitTest("M-1", Plant.fitTest(muff, "L", 30), Optional.empty()))
                .isEmpty();
        assertThat(of("M-1").inUse().getFirst().fitTest()).as("of another size").isEmpty();

        assertThat(protection.addFitTest("M-1", Plant.fitTest(muff, "m", 6), Optional.empty()))
                .isEmpty();
        ProtectorInUse used = of("M-1").inUse().getFirst();
        assertThat(((Estimate.Estimated) used.chosen().orElseThrow()).levelUnder())
                .isEqualByComparingTo("86.5");
        assertThat(of("M-1").target().isReachedBy(used.chosen().orElseThrow())).isEqualTo(Answer.NO);
        assertThat(wearing.mustWear().getFirst().state()).isEqualTo(WearingRow.State.NONE_GIVEN);
        assertThat(row("M-1").state()).isEqualTo(WearingRow.State.TARGET_NOT_REACHED);

        long key = of("M-1").fitTests().getFirst().key();
        assertThat(protection.withdrawFitTest("M-1", key, " ")).contains(ProtectionProblem.REASON_MISSING);
        assertThat(protection.withdrawFitTest("M-1", key, "of somebody else")).isEmpty();
        assertThat(row("M-1").state()).isEqualTo(WearingRow.State.REACHED);
        assertThat(of("M-1").fitTests().getFirst().withdrawn()).isEqualTo("of somebody else");
    }

    private WearingRow row(String workerId) {
        return wearing.mustWear().stream()
                .filter(row -> row.workerId().equals(workerId))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aReportIsKeptWithItsFitTestAndFetchingItIsOnTheTrail() {
        var report = NewDocument.of("fit.pdf", PDF);
        assertThat(protection.addFitTest("M-1", Plant.fitTest(muff, "", 20), report))
                .isEmpty();
        FitTest test = of("M-1").fitTests().getFirst();
        assertThat(test.document().orElseThrow().name()).isEqualTo("fit.pdf");
        assertThat(protection.report("M-1", test.key()).orElseThrow()).isEqualTo(PDF);
        assertThat(auditOf("FIT_TEST_DOCUMENT_FETCHED")).containsExactly("M-1");
        assertThat(protection.report("M-2", test.key())).as("of another worker").isEmpty();
    }

    @Test
    void whoHasToWearProtectorsAndWhy() {
        assertThat(wearing.mustWear()).extracting(WearingRow::workerId).containsExactlyInAnyOrder("M-1", "M-3", "Y-1");
        assertThat(row("M-1").mustWear().reasons())
                .extracting(MustWear.Reason::why)
                .containsExactly(MustWear.Why.OVER_LIMIT, MustWear.Why.SHIFT);
        assertThat(row("M-3").mustWear().reasons())
                .extracting(reason -> reason.basis().place())
                .containsExactly("29 CFR 1910.95(i)(2)(ii)(A)");
        assertThat(of("M-2").mustWear().answer()).isEqualTo(Answer.NO);
        assertThat(of("M-4").mustWear().answer()).isEqualTo(Answer.NO);
    }

    @Test
    void refittingAfterAShiftMovesTheCaseOn() {
        assertThat(wearing.owedAfterShift())
                .extracting(row -> row.owed().duty())
                .containsExactlyInAnyOrder(CaseDuty.REFIT, CaseDuty.TRAINING);
        var refit = new NewIssue(muff, "M", Plant.TODAY, Optional.of(LocalDate.of(2025, 6, 1)), "");
        assertThat(protection.issue("M-1", refit)).isEmpty();

        assertThat(wearing.owedAfterShift())
                .extracting(row -> row.owed().duty())
                .containsExactly(CaseDuty.TRAINING);
        assertThat(jdbc.queryForMap("select kind, ears, reason, decided_on from decision"))
                .containsEntry("kind", "protector-refitted")
                .containsEntry("ears", "left")
                .containsEntry("reason", "Hollow muff, size M, issued 9 Mar 2026");
        assertThat(of("M-1").issues().getFirst().details().refitFor()).contains(LocalDate.of(2025, 6, 1));
        assertThat(auditOf("CASE_MOVED")).containsExactly("M-1");
    }

    @Test
    void aRefittingForATestWithoutAShiftIsRefusedAndNothingIsIssued() {
        var refit = new NewIssue(muff, "M", Plant.TODAY, Optional.of(LocalDate.of(2024, 6, 1)), "");
        assertThat(protection.issue("M-1", refit)).contains(ProtectionProblem.CASE_REFUSES);
        assertThat(of("M-1").issues()).isEmpty();
        assertThat(jdbc.queryForList("select kind from decision", String.class)).isEmpty();
    }

    @Test
    void anIssueEndsOnceAndAMistakeIsWithdrawnWithItsReason() {
        protection.issue("M-1", Plant.issue(muff, "M"));
        long key = of("M-1").issues().getFirst().key();
        assertThat(protection.end("M-1", key, new Issue.End(Plant.TODAY.plusDays(1), Issue.How.LOST)))
                .contains(ProtectionProblem.IN_THE_FUTURE);
        assertThat(protection.end("M-1", key, new Issue.End(Plant.TODAY.minusDays(2), Issue.How.LOST)))
                .contains(ProtectionProblem.BEFORE_IT_BEGAN);
        assertThat(protection.end("M-2", key, new Issue.End(Plant.TODAY, Issue.How.LOST)))
                .contains(ProtectionProblem.UNKNOWN_ENTRY);
        assertThat(protection.end("M-1", key, new Issue.End(Plant.TODAY, Issue.How.LOST)))
                .isEmpty();
        assertThat(protection.end("M-1", key, new Issue.End(Plant.TODAY, Issue.How.RETURNED)))
                .contains(ProtectionProblem.UNKNOWN_ENTRY);
        assertThat(of("M-1").inUse()).isEmpty();

        assertThat(protection.withdrawIssue("M-1", key, "the wrong worker")).isEmpty();
        assertThat(protection.withdrawIssue("M-1", key, "again")).contains(ProtectionProblem.UNKNOWN_ENTRY);
        assertThat(of("M-1").issues().getFirst().withdrawn()).isEqualTo("the wrong worker");
    }

    @Test
    void badInputIsRefusedAndChangesNothing() {
        assertThat(protectors.add(Plant.product("Mill", " ", ProtectorKind.MUFF, 20)))
                .contains(ProtectionProblem.NAME_MISSING);
        assertThat(protectors.add(Plant.product("Mill", "hollow MUFF", ProtectorKind.MUFF, 20)))
                .contains(ProtectionProblem.NAME_TAKEN);
        assertThat(protectors.add(Plant.product("Mill", "x".repeat(101), ProtectorKind.MUFF, 20)))
                .contains(ProtectionProblem.TEXT_TOO_LONG);
        assertThat(protectors.add(Plant.product("Mill", "Two", ProtectorKind.DUAL, 20)))
                .contains(ProtectionProblem.NO_PAIR);
        assertThat(protectors.catalogue()).hasSize(1);
        var tomorrow = new NewIssue(muff, "M", Plant.TODAY.plusDays(1), Optional.empty(), "");
        assertThat(protection.issue("M-1", tomorrow)).contains(ProtectionProblem.IN_THE_FUTURE);
        assertThat(protection.issue("Z-9", Plant.issue(muff, "M"))).contains(ProtectionProblem.UNKNOWN_WORKER);
        assertThat(protection.issue("Y-1", Plant.issue(muff, "M")))
                .as("of another site")
                .contains(ProtectionProblem.UNKNOWN_PROTECTOR);
        assertThat(protection.addFitTest("M-1", Plant.fitTest(muff, "", 61), Optional.empty()))
                .contains(ProtectionProblem.FIT_TEST_OUT_OF_RANGE);
        assertThat(protectors.retire(muff, "")).contains(ProtectionProblem.REASON_MISSING);
        assertThat(protectors.retire(muff, "no more made")).isEmpty();
        assertThat(protectors.retire(muff, "no more made")).contains(ProtectionProblem.RETIRED);
        assertThat(protection.issue("M-1", Plant.issue(muff, "M"))).contains(ProtectionProblem.RETIRED);
        assertThat(protectors.choose(new MethodChoice("Mill", new AttenuationMethod.SingleNumber(), "")))
                .contains(ProtectionProblem.REASON_MISSING);
    }

    @Test
    void aPairIsMadeOfAPlugAndAMuffOfTheSite() {
        protectors.add(Plant.product("Mill", "Fern foam plug", ProtectorKind.FORMABLE_PLUG, 29));
        long plug = protectors.catalogue().getFirst().key();
        assertThat(protectors.add(pair(muff, plug))).as("the wrong way round").contains(ProtectionProblem.NO_PAIR);
        assertThat(protectors.add(pair(plug, muff))).isEmpty();
        long both = protectors.catalogue().stream()
                .filter(product -> product.details().pair().isPresent())
                .findFirst()
                .orElseThrow()
                .key();
        pick(AttenuationMethod.find("halved-dba").orElseThrow());
        protection.issue("M-1", Plant.issue(both, ""));
        assertThat(((Estimate.Estimated) of("M-1").inUse().getFirst().chosen().orElseThrow()).levelUnder())
                .as("92.5 less half of 22 and 5")
                .isEqualByComparingTo("76.5");
    }

    private static ProductDetails pair(long plug, long other) {
        return new ProductDetails(
                "Mill",
                "Both",
                ProtectorKind.DUAL,
                "",
                LabelValues.NONE,
                Optional.of(new ProductDetails.Pair(plug, other)));
    }

    @Test
    void aPersonOfOneSiteSeesAndChangesNothingOfTheOther() {
        trainings.add(Plant.session(Plant.TODAY), List.of("M-1"));
        long session = trainings.sessions().getFirst().key();
        protection.issue("M-1", Plant.issue(muff, "M"));

        SignIn.as(Role.NURSE, "Yard");
        assertThat(protectors.catalogue()).isEmpty();
        assertThat(protection.of("M-1")).isEmpty();
        assertThat(protection.open("M-1")).isEmpty();
        assertThat(protection.choices("M-1")).isEmpty();
        assertThat(protection.issue("M-1", Plant.issue(muff, "M"))).contains(ProtectionProblem.UNKNOWN_WORKER);
        assertThat(protectors.retire(muff, "no")).contains(ProtectionProblem.UNKNOWN_PROTECTOR);
        assertThat(protectors.add(Plant.product("Mill", "Other", ProtectorKind.MUFF, 20)))
                .contains(ProtectionProblem.SITE_NOT_OPEN);
        assertThat(wearing.mustWear()).extracting(WearingRow::workerId).containsExactly("Y-1");
        assertThat(wearing.owedAfterShift()).isEmpty();
        assertThat(trainings.sessions()).isEmpty();
        assertThat(trainings.session(session)).isEmpty();
        assertThat(trainings.sheetToSign(session)).isEmpty();
        assertThat(trainings.signedSheet(session)).isEmpty();
        assertThat(trainings.addAttendants(session, List.of("Y-1")))
                .isEqualTo(new TrainingResult.NotEntered(ProtectionProblem.UNKNOWN_ENTRY));
        assertThat(trainings.due()).extracting(TrainingRow::workerId).containsExactly("Y-1");
        assertThat(trainings.people("Mill", Optional.empty())).isEmpty();
        assertThat(trainings.add(Plant.session(Plant.TODAY), List.of()))
                .isEqualTo(new TrainingResult.NotEntered(ProtectionProblem.SITE_NOT_OPEN));
    }

    @Test
    void aTrainingMovesTheYearOnAndTheCaseThatOwedIt() {
        assertThat(due("M-1").due()).isEqualTo("2020-01-01");
        SignIn.as(Role.SAFETY_OFFICER);
        TrainingResult result = trainings.add(Plant.session(Plant.TODAY.minusDays(3)), List.of("M-1", "M-2"));

        assertThat(result)
                .isInstanceOfSatisfying(
                        TrainingResult.Entered.class,
                        entered -> assertThat(entered.casesMovedOn()).isEqualTo(1));
        assertThat(due("M-1").due()).isEqualTo("2027-03-06");
        assertThat(due("M-3").due()).as("took no part").isEqualTo("2025-01-01");
        assertThat(wearing.owedAfterShift())
                .extracting(row -> row.owed().duty())
                .containsExactly(CaseDuty.REFIT);
        assertThat(jdbc.queryForList("select reason from decision", String.class))
                .containsExactly("Training of 6 Mar 2026 in noise, protectors and tests, by A. Vale");

        TrainingSession session = trainings.sessions().getFirst();
        long attendance = session.attendants().stream()
                .filter(attendant -> attendant.workerId().equals("M-1"))
                .findFirst()
                .orElseThrow()
                .key();
        assertThat(trainings.withdrawAttendance(session.key(), attendance, "was ill"))
                .isEmpty();
        assertThat(due("M-1").due()).isEqualTo("2020-01-01");
        assertThat(trainings.addAttendants(session.key(), List.of("M-1", "M-2")))
                .as("M-2 is on the list already, and M-1 comes back")
                .isInstanceOf(TrainingResult.Entered.class);
        assertThat(trainings.session(session.key()).orElseThrow().present()).isEqualTo(2);
    }

    private TrainingRow due(String workerId) {
        return trainings.due().stream()
                .filter(row -> row.workerId().equals(workerId))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTrainingWithoutProtectorsLeavesTheCaseAsItIs() {
        var session = new NewSession(
                "Mill", Plant.TODAY, Set.of(TrainingTopic.EFFECTS_OF_NOISE), "A. Vale", "es", 20, "", false);
        trainings.add(session, List.of("M-1"));
        assertThat(wearing.owedAfterShift()).hasSize(2);
        assertThat(due("M-1").last()).as("not all topics").isEmpty();
    }

    @Test
    void aTrainingWithSomethingMissingIsNotTakenDown() {
        var noTopic = new NewSession("Mill", Plant.TODAY, Set.of(), "A. Vale", "en", 20, "", false);
        assertThat(trainings.add(noTopic, List.of()))
                .isEqualTo(new TrainingResult.NotEntered(ProtectionProblem.TOPICS_MISSING));
        assertThat(trainings.add(Plant.session(Plant.TODAY.plusDays(1)), List.of()))
                .isEqualTo(new TrainingResult.NotEntered(ProtectionProblem.IN_THE_FUTURE));
        assertThat(trainings.add(Plant.session(Plant.TODAY), List.of("M-1", "Y-1")))
                .as("of another site")
                .isEqualTo(new TrainingResult.NotEntered(ProtectionProblem.UNKNOWN_WORKER));
        assertThat(trainings.sessions()).isEmpty();
    }

    @Test
    void theSheetNamesWhoSignsAndTheSignedOneIsKept() throws Exception {
        trainings.add(Plant.session(Plant.TODAY), List.of("M-1", "M-3"));
        long session = trainings.sessions().getFirst().key();
        try (var pdf = Loader.loadPDF(trainings.sheetToSign(session).orElseThrow())) {
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("Attendance sheet")
                    .contains("9 Mar 2026")
                    .contains("Núñez, Ada")
                    .contains("Pell, Cora")
                    .contains("1910.95(k)(3)(ii)")
                    .doesNotContain("Orrin");
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
        assertThat(trainings.keepSheet(
                        session, NewDocument.of("signed.pdf", PDF).orElseThrow()))
                .isEmpty();
        assertThat(trainings.signedSheet(session).orElseThrow()).isEqualTo(PDF);
        assertThat(trainings.session(session).orElseThrow().sheet()).isPresent();
        try (var pdf = Loader.loadPDF(trainings.sheetOfDue("Mill", Optional.of("Press"), Plant.TODAY))) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("Orrin").doesNotContain("Pell");
        }
    }

    private List<OpenDuty> open(SiteScope scope) {
        return transaction.execute(status -> duties.open(scope, Plant.TODAY, Plant.TODAY.plusDays(30)));
    }

    @Test
    void trainingDueToFewIsNamedAndToManyIsOneDutyOfTheDepartment() {
        assertThat(open(SiteScope.all()))
                .extracting(OpenDuty::subject)
                .contains(new OpenDuty.Subject.OfWorker("M-1", "Núñez, Ada"));
        StringBuilder more = new StringBuilder(
                "worker_id,birth_date,sex,family_name,given_name,site,department,twa_dba,enrolled_from\n");
        for (int i = 0; i < 5; i++) {
            more.append("F-%d,,,Fane,Nr%d,Mill,Forming,88,2026-01-0%d%n".formatted(i, i, i + 1));
        }
        files.store(more.toString(), "", "");

        OpenDuty forming = open(SiteScope.all()).stream()
                .filter(duty -> duty.address().contains("Forming"))
                .findFirst()
                .orElseThrow();
        assertThat(forming.subject()).isEqualTo(new OpenDuty.Subject.OfThing("5 people in Forming"));
        assertThat(forming.due()).isEqualTo("2026-01-01");
        assertThat(forming.basis().place()).isEqualTo("29 CFR 1910.95(k)(2)");
        assertThat(forming.overdue(Plant.TODAY)).isTrue();
        assertThat(open(SiteScope.only(Set.of("Yard"))))
                .extracting(OpenDuty::site)
                .containsOnly("Yard");
    }

    /** 30 CFR 62.174 gives 30 days, 62.180 asks for training within 30 days of enrolment. */
    @Test
    void aMineHasDaysForRefittingAndMoreTimeForTheFirstTraining() {
        SignIn.as(Role.ADMINISTRATOR);
        siteRules.choose(
                new SiteRules.Choice("Mill", LocalDate.of(2020, 1, 1), "msha", AgeCorrection.ON, Map.of(), "a mine"));
        SignIn.as(Role.NURSE);

        assertThat(due("M-2").due()).isEqualTo("2026-03-31");
        assertThat(wearing.owedAfterShift())
                .allSatisfy(row -> assertThat(row.owed().by()).isPresent());
        assertThat(open(SiteScope.all()))
                .extracting(duty -> duty.basis().place())
                .contains("30 CFR 62.180")
                .doesNotContain("30 CFR 62.174");
        assertThat(of("M-1")
                        .target()
                        .isReachedBy(
                                new Estimate.Unavailable(new AttenuationMethod.SingleNumber(), Set.of(Missing.SNR))))
                .isEqualTo(Answer.UNDECIDED);
    }

    @Test
    void whoHasLeftIsDueForNothing() {
        files.store(
                "worker_id,birth_date,sex,end_date,site,department,twa_dba,enrolled_from\nL-1,,,2026-03-08,Mill,Saws,99,2020-01-01\n",
                "",
                "");
        assertThat(trainings.due()).extracting(TrainingRow::workerId).doesNotContain("L-1");
        assertThat(wearing.mustWear()).extracting(WearingRow::workerId).doesNotContain("L-1");
        assertThat(of("L-1").trainingDue()).isEmpty();
    }
}
