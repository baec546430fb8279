package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.thresholdregister.platform.security.Role.ADMINISTRATOR;
import static org.thresholdregister.platform.security.Role.NURSE;
import static org.thresholdregister.platform.security.Role.PLANT_MANAGER;
import static org.thresholdregister.platform.security.Role.SAFETY_OFFICER;

import java.io.ByteArrayInputStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.aop.support.AopUtils;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.stereotype.Service;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.clinical.ClinicalService;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.Profession;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.employment.PlantSale;
import org.thresholdregister.employment.SalePreview;
import org.thresholdregister.employment.SoldPlantService;
import org.thresholdregister.employment.WorkingLifeService;
import org.thresholdregister.exposure.HowTold;
import org.thresholdregister.exposure.Measurements;
import org.thresholdregister.exposure.NewMeasurement;
import org.thresholdregister.exposure.NoiseService;
import org.thresholdregister.exposure.Told;
import org.thresholdregister.instruments.Change;
import org.thresholdregister.instruments.Facts;
import org.thresholdregister.instruments.InstrumentService;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.ImportProgress;
import org.thresholdregister.intake.ImportRuns;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.intake.Table;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.letters.LetterFilter;
import org.thresholdregister.letters.LetterMethod;
import org.thresholdregister.letters.LetterService;
import org.thresholdregister.letters.LetterTextService;
import org.thresholdregister.letters.TextPart;
import org.thresholdregister.platform.documents.MediaType;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.protection.Issue;
import org.thresholdregister.protection.MethodChoice;
import org.thresholdregister.protection.Plant;
import org.thresholdregister.protection.ProtectorService;
import org.thresholdregister.protection.TrainingService;
import org.thresholdregister.protection.WearingService;
import org.thresholdregister.protection.WorkerProtectionService;
import org.thresholdregister.reports.SummaryService;
import org.thresholdregister.roster.WorkerColumn;
import org.thresholdregister.roster.WorkerFilter;
import org.thresholdregister.roster.WorkerRow;
import org.thresholdregister.roster.WorkerService;
import org.thresholdregister.rulesets.Holiday;
import org.thresholdregister.rulesets.SiteRules;
import org.thresholdregister.rulesets.SiteRulesService;
import org.thresholdregister.testdays.AwaitsBaselineService;
import org.thresholdregister.testdays.BookingService;
import org.thresholdregister.testdays.CalendarLinkService;
import org.thresholdregister.testdays.DueTestFilter;
import org.thresholdregister.testdays.DueTestService;
import org.thresholdregister.testdays.NewTestDays;
import org.thresholdregister.testdays.RunSheetService;
import org.thresholdregister.testdays.TestDayService;
import org.thresholdregister.testdays.TestSite;
import org.thresholdregister.testdays.TestSiteService;
import org.thresholdregister.testdays.WorkShiftService;
import org.thresholdregister.testing.TestEntryService;
import org.thresholdregister.testing.TypedTests;

/** Who may call which service, and what a person of one site sees of another. */
@RegisterTest
class ServiceAccessTest {

    private static final Set<Role> NURSE_AND_OFFICER = EnumSet.of(NURSE, SAFETY_OFFICER);
    private static final Set<Role> WHO_TESTS = EnumSet.of(NURSE);
    private static final Set<Role> ONLY_NURSE = EnumSet.of(NURSE);
    private static final Set<Role> OFFICER = EnumSet.of(SAFETY_OFFICER);
    private static final Set<Role> WHO_SEES_COUNTS = EnumSet.of(NURSE, SAFETY_OFFICER, PLANT_MANAGER);
    private static final Set<Role> WHO_SEES_RULES = EnumSet.of(NURSE, SAFETY_OFFICER, ADMINISTRATOR);
    private static final Set<Role> WHO_WRITES_TEXTS = EnumSet.of(NURSE, ADMINISTRATOR);
    private static final Set<Role> WHO_CHOOSES_RULES = EnumSet.of(ADMINISTRATOR);
    private static final Set<String> FEATURES = Set.of(
            "roster",
            "audiograms",
            "review",
            "rulesets",
            "intake",
            "reports",
            "instruments",
            "exposure",
            "clinical",
            "employment",
            "protection",
            "testdays",
            "testing",
            "letters");

    private record Access(Set<Role> roles, ThrowingCallable call) {}

    @Autowired
    private ApplicationContext context;

    @Autowired
    private WorkerService workers;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private BoardService board;

    @Autowired
    private BulkService bulk;

    @Autowired
    private EvidenceService evidence;

    @Autowired
    private ShiftReviewService shifts;

    @Autowired
    private BaselineProposalService proposals;

    @Autowired
    private DeterminationHistoryService formerly;

    @Autowired
    private AlterationService alterations;

    @Autowired
    private CompareService comparison;

    @Autowired
    private DecisionService decisions;

    @Autowired
    private ImportService imports;

    @Autowired
    private ImportRuns importRuns;

    @Autowired
    private SummaryService summaries;

    @Autowired
    private CompareService comparing;

    @Autowired
    private SiteRulesService siteRules;

    @Autowired
    private LetterService letters;

    @Autowired
    private LetterTextService letterTexts;

    @Autowired
    private TestEntryService testEntry;

    @Autowired
    private WorkingLifeService lives;

    @Autowired
    private SoldPlantService soldPlants;

    @Autowired
    private ClinicalService clinical;

    @Autowired
    private InstrumentService instruments;

    @Autowired
    private ProtectorService protectors;

    @Autowired
    private WorkerProtectionService protection;

    @Autowired
    private NoiseService noise;

    @Autowired
    private WearingService wearing;

    @Autowired
    private TrainingService trainings;

    @Autowired
    private TestDayService testDays;

    @Autowired
    private BookingService bookings;

    @Autowired
    private DueTestService dueTests;

    @Autowired
    private WorkShiftService workShifts;

    @Autowired
    private TestSiteService testSites;

    @Autowired
    private AwaitsBaselineService awaitsBaseline;

    @Autowired
    private RunSheetService runSheets;

    @Autowired
    private CalendarLinkService calendarLinks;

    @Autowired
    private TestImports files;

    private ImportPreview nothingNew;

    @BeforeEach
    void twoSites() {
        SignIn.as(NURSE);
        files.store(ServiceFixture.ROSTER, ServiceFixture.AUDIOGRAMS, "");
        nothingNew = files.preview(ServiceFixture.ROSTER, "", "");
        SignIn.out();
    }

    /** Every public method of the features' services, with the roles that may call it. */
    private Map<String, Access> table() {
        Map<String, Access> table = new LinkedHashMap<>();
        table.put(
                "WorkerService.find",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> workers.find(WorkerFilter.EVERYONE, Order.ascending(WorkerColumn.NAME), 0, 10)));
        table.put("WorkerService.count", new Access(NURSE_AND_OFFICER, () -> workers.count(WorkerFilter.EVERYONE)));
        table.put("WorkerService.get", new Access(NURSE_AND_OFFICER, () -> workers.get("M-1")));
        table.put("WorkerService.sites", new Access(NURSE_AND_OFFICER, workers::sites));
        table.put("WorkerService.departments", new Access(NURSE_AND_OFFICER, workers::departments));
        table.put("WorkerRecordService.open", new Access(NURSE_AND_OFFICER, () -> records.open("M-1")));
        table.put("BoardService.counts", new Access(NURSE_AND_OFFICER, board::counts));
        table.put("BoardService.news", new Access(NURSE_AND_OFFICER, board::news));
        table.put(
                "BoardService.find",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> board.find(BoardFilter.EVERYTHING, Order.ascending(BoardColumn.DUE_DATE), 0, 10)));
        table.put("BoardService.count", new Access(NURSE_AND_OFFICER, () -> board.count(BoardFilter.EVERYTHING)));
        table.put("BoardService.ofTasks", new Access(NURSE_AND_OFFICER, () -> board.ofTasks(List.of(notice()))));
        table.put("BoardService.ofWorker", new Access(NURSE_AND_OFFICER, () -> board.ofWorker("M-1")));
        table.put(
                "BoardService.download",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> board.download(
                                BoardFilter.EVERYTHING, Order.ascending(BoardColumn.DUE_DATE), List.of(notice()))));
        table.put(
                "BulkService.settle",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> bulk.settle(
                                List.of(notice()),
                                new BulkService.Settlement(
                                        MovableClock.FIRST_DAY,
                                        "Ida Lock",
                                        "",
                                        new Evidence(Evidence.Means.POSTED, "", Optional.empty())))));
        table.put(
                "BulkService.book",
                new Access(
                        NURSE_AND_OFFICER, () -> bulk.book(List.of(notice()), MovableClock.FIRST_DAY, "Ida Lock", "")));
        table.put(
                "BulkService.postpone",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> bulk.postpone(List.of(notice()), MovableClock.FIRST_DAY.plusDays(1), "on leave")));
        table.put("EvidenceService.ofWorker", new Access(NURSE_AND_OFFICER, () -> evidence.ofWorker("M-1")));
        table.put("EvidenceService.file", new Access(NURSE_AND_OFFICER, () -> evidence.file("M-1", 0)));
        table.put(
                "ShiftReviewService.find",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> shifts.find(ShiftFilter.ofYear(2026), Order.ascending(ShiftColumn.NAME), 0, 10)));
        table.put(
                "ShiftReviewService.count",
                new Access(NURSE_AND_OFFICER, () -> shifts.count(ShiftFilter.ofYear(2026))));
        table.put(
                "ShiftReviewService.counts",
                new Access(NURSE_AND_OFFICER, () -> shifts.counts(ShiftFilter.ofYear(2026))));
        table.put("ShiftReviewService.years", new Access(NURSE_AND_OFFICER, shifts::years));
        table.put(
                "BaselineProposalService.find",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> proposals.find(
                                ProposalFilter.EVERYTHING, Order.ascending(ProposalColumn.OPEN_SINCE), 0, 10)));
        table.put(
                "BaselineProposalService.count",
                new Access(NURSE_AND_OFFICER, () -> proposals.count(ProposalFilter.EVERYTHING)));
        table.put("BaselineProposalService.open", new Access(NURSE_AND_OFFICER, () -> proposals.open("M-1", Ear.LEFT)));
        table.put("BaselineProposalService.outlook", new Access(OFFICER, () -> proposals.outlook("M-1", acceptance())));
        table.put("BaselineProposalService.answer", new Access(OFFICER, () -> proposals.answer("M-1", acceptance())));
        table.put("DeterminationHistoryService.of", new Access(NURSE_AND_OFFICER, () -> formerly.of("M-1")));
        table.put(
                "AlterationService.find",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> alterations.find(Order.ascending(AlterationColumn.ALTERED_ON), 0, 10)));
        table.put("AlterationService.count", new Access(NURSE_AND_OFFICER, alterations::count));
        table.put("AlterationService.ofWorker", new Access(NURSE_AND_OFFICER, () -> alterations.ofWorker("M-1")));
        table.put(
                "AlterationService.acknowledge",
                new Access(NURSE_AND_OFFICER, () -> alterations.acknowledge("M-1", 0, "seen")));
        table.put(
                "CompareService.compare",
                new Access(NURSE_AND_OFFICER, () -> comparison.compare(2026, Optional.empty(), Way.USUAL, Way.USUAL)));
        table.put("DecisionService.kindsToEnter", new Access(NURSE_AND_OFFICER, decisions::kindsToEnter));
        table.put(
                "DecisionService.enter",
                new Access(NURSE_AND_OFFICER, () -> decisions.enter("M-1", decision(DecisionKind.NOTICE_GIVEN))));
        table.put(
                "CompareService.compare",
                new Access(NURSE_AND_OFFICER, () -> comparing.compare(2026, Optional.empty(), Way.USUAL, Way.USUAL)));
        table.put("TestEntryService.open", new Access(WHO_TESTS, () -> testEntry.open("M-1", Optional.empty())));
        table.put("TestEntryService.type", new Access(WHO_TESTS, () -> testEntry.type(-1, TypedTests.EMPTY)));
        table.put("TestEntryService.look", new Access(WHO_TESTS, () -> testEntry.look(-1)));
        table.put("TestEntryService.sign", new Access(WHO_TESTS, () -> testEntry.sign(-1, TypedTests.EMPTY)));
        table.put("TestEntryService.discard", new Access(WHO_TESTS, () -> testEntry.discard(-1)));
        table.put("TestEntryService.waiting", new Access(WHO_TESTS, testEntry::waiting));
        table.put("WorkerRecordService.superseded", new Access(NURSE_AND_OFFICER, () -> records.superseded("M-1")));
        table.put("TestEntryService.withdraw", new Access(WHO_TESTS, () -> testEntry.withdraw("M-1", -1, "wrong")));
        table.put("WorkerRecordService.withOneMoreTest", new Access(WHO_TESTS, this::withOneMoreTest));
        table.put("SiteRulesService.chosen", new Access(WHO_SEES_RULES, siteRules::chosen));
        table.put("SiteRulesService.holidays", new Access(WHO_SEES_RULES, siteRules::holidays));
        table.put(
                "SiteRulesService.choose",
                new Access(
                        WHO_CHOOSES_RULES,
                        () -> siteRules.choose(new SiteRules.Choice(
                                "Mill", MovableClock.FIRST_DAY, "msha", AgeCorrection.ON, Map.of(), "a mine"))));
        table.put(
                "SiteRulesService.addHoliday",
                new Access(
                        WHO_CHOOSES_RULES,
                        () -> siteRules.addHoliday(new Holiday(MovableClock.FIRST_DAY, "Founders' Day"))));
        table.put(
                "SiteRulesService.removeHoliday",
                new Access(WHO_CHOOSES_RULES, () -> siteRules.removeHoliday(MovableClock.FIRST_DAY)));
        table.put(
                "ImportService.keep",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> imports.keep(Table.ROSTER, "r.csv", new ByteArrayInputStream(new byte[0]))));
        table.put(
                "ImportService.preview",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> imports.preview(List.of(files.keep(Table.ROSTER, ServiceFixture.ROSTER)))));
        table.put(
                "ImportService.confirm",
                new Access(NURSE_AND_OFFICER, () -> imports.confirm("", ImportProgress.unwatched())));
        table.put("ImportService.giveUp", new Access(NURSE_AND_OFFICER, () -> imports.giveUp(List.of())));
        table.put(
                "ImportService.problemsToTakeOut",
                new Access(NURSE_AND_OFFICER, () -> imports.problemsToTakeOut(nothingNew)));
        table.put(
                "ImportService.lateChangesToTakeOut",
                new Access(NURSE_AND_OFFICER, () -> imports.lateChangesToTakeOut(nothingNew)));
        table.put("ImportRuns.start", new Access(NURSE_AND_OFFICER, () -> importRuns.start(nothingNew)));
        table.put("ImportRuns.current", new Access(NURSE_AND_OFFICER, importRuns::current));
        table.put("ImportRuns.dismiss", new Access(NURSE_AND_OFFICER, importRuns::dismiss));
        table.put("LetterService.waiting", new Access(NURSE_AND_OFFICER, letters::waiting));
        table.put("LetterService.print", new Access(EnumSet.of(NURSE), () -> letters.print(List.of())));
        table.put(
                "LetterService.printed", new Access(NURSE_AND_OFFICER, () -> letters.printed(LetterFilter.EVERYTHING)));
        table.put("LetterService.ofWorker", new Access(NURSE_AND_OFFICER, () -> letters.ofWorker("M-1")));
        table.put("LetterService.reprint", new Access(NURSE_AND_OFFICER, () -> letters.reprint(List.of())));
        table.put(
                "LetterService.markGiven",
                new Access(
                        EnumSet.of(NURSE),
                        () -> letters.markGiven(List.of(), MovableClock.FIRST_DAY, LetterMethod.POST)));
        table.put("LetterTextService.sites", new Access(WHO_WRITES_TEXTS, letterTexts::sites));
        table.put(
                "LetterTextService.text",
                new Access(WHO_WRITES_TEXTS, () -> letterTexts.text("Mill", Language.ENGLISH, TextPart.LETTERHEAD)));
        table.put(
                "LetterTextService.save",
                new Access(
                        WHO_WRITES_TEXTS,
                        () -> letterTexts.save("Mill", Language.ENGLISH, TextPart.LETTERHEAD, "The mill")));
        table.put(
                "LetterTextService.problems",
                new Access(WHO_WRITES_TEXTS, () -> letterTexts.problems(TextPart.LETTERHEAD, "The mill")));
        table.put(
                "LetterTextService.backToStandard",
                new Access(
                        WHO_WRITES_TEXTS,
                        () -> letterTexts.backToStandard("Mill", Language.ENGLISH, TextPart.LETTERHEAD)));
        table.put(
                "LetterTextService.preview",
                new Access(
                        WHO_WRITES_TEXTS,
                        () -> letterTexts.preview("Mill", Language.ENGLISH, TextPart.LETTERHEAD, "The mill")));
        table.put("SummaryService.years", new Access(WHO_SEES_COUNTS, summaries::years));
        table.put("SummaryService.report", new Access(WHO_SEES_COUNTS, () -> summaries.report(2026)));
        table.put("SummaryService.workbook", new Access(WHO_SEES_COUNTS, () -> summaries.workbook(2026)));
        addWorkingLives(table);
        addClinicalPart(table);
        addProtection(table);
        addTestDays(table);
        addNoise(table);
        return table;
    }

    private void addWorkingLives(Map<String, Access> table) {
        var returned = new DatedEvent(MovableClock.FIRST_DAY, new WorkEvent.Returned());
        table.put("WorkingLifeService.of", new Access(NURSE_AND_OFFICER, () -> lives.of("M-1")));
        table.put(
                "WorkingLifeService.enter",
                new Access(NURSE_AND_OFFICER, () -> lives.enter("M-1", returned, "", false)));
        table.put(
                "WorkingLifeService.correct",
                new Access(NURSE_AND_OFFICER, () -> lives.correct("M-1", returned, Optional.empty(), "slip", false)));
        table.put("SoldPlantService.sales", new Access(NURSE_AND_OFFICER, soldPlants::sales));
        table.put("SoldPlantService.sites", new Access(OFFICER, soldPlants::sites));
        table.put(
                "SoldPlantService.preview",
                new Access(OFFICER, () -> soldPlants.preview("Mill", MovableClock.FIRST_DAY, "Larkmoor Glass")));
        table.put(
                "SoldPlantService.transfer",
                new Access(
                        OFFICER,
                        () -> soldPlants.transfer(new SalePreview(
                                "Mill", MovableClock.FIRST_DAY, "Larkmoor Glass", List.of(), List.of()))));
        table.put(
                "SoldPlantService.handOver",
                new Access(
                        OFFICER,
                        () -> soldPlants.handOver(0, new PlantSale.HandOver(MovableClock.FIRST_DAY, "Ines Falk", ""))));
    }

    private void addClinicalPart(Map<String, Access> table) {
        LocalDate day = MovableClock.FIRST_DAY;
        table.put("ClinicalService.of", new Access(ONLY_NURSE, () -> clinical.of("M-1")));
        table.put("ClinicalService.worker", new Access(ONLY_NURSE, () -> clinical.worker("M-1")));
        table.put(
                "ClinicalService.enter",
                new Access(ONLY_NURSE, () -> clinical.enter("M-1", day, ClinicalFacts.NOTHING, "")));
        table.put("ClinicalService.draft", new Access(ONLY_NURSE, () -> clinical.draft("M-1", 1)));
        table.put(
                "ClinicalService.keepDraft",
                new Access(ONLY_NURSE, () -> clinical.keepDraft("M-1", 1, ClinicalFacts.NOTHING)));
        table.put(
                "ClinicalService.refuse",
                new Access(ONLY_NURSE, () -> clinical.refuse("M-1", day, "No time", Optional.empty())));
        table.put(
                "ClinicalService.takeBackRefusal",
                new Access(ONLY_NURSE, () -> clinical.takeBackRefusal("M-1", 0, "slip")));
        table.put("ClinicalService.refusalForm", new Access(ONLY_NURSE, () -> clinical.refusalForm("M-1")));
        table.put("ClinicalService.signedSheet", new Access(ONLY_NURSE, () -> clinical.signedSheet("M-1", 0)));
    }

    private void withOneMoreTest() {
        var test = new Audiogram.Builder(MovableClock.FIRST_DAY, TestPurpose.OTHER).build();
        var facts = new TestFacts(Optional.empty(), Optional.empty(), "", "", "", "", "", TestConditions.NO_REPEAT);
        records.withOneMoreTest("M-1", test, facts, Optional.empty());
    }

    private void addNoise(Map<String, Access> table) {
        var told = new Told(MovableClock.FIRST_DAY, HowTold.LETTER);
        NewMeasurement measurement = Measurements.group("Mill", "Saws", MovableClock.FIRST_DAY, 92);
        table.put("NoiseService.overview", new Access(NURSE_AND_OFFICER, noise::overview));
        table.put("NoiseService.names", new Access(NURSE_AND_OFFICER, noise::names));
        table.put("NoiseService.place", new Access(NURSE_AND_OFFICER, () -> noise.place(measurement.subject())));
        table.put("NoiseService.ofWorker", new Access(NURSE_AND_OFFICER, () -> noise.ofWorker("M-1")));
        table.put("NoiseService.enter", new Access(NURSE_AND_OFFICER, () -> noise.enter(measurement)));
        table.put("NoiseService.withdraw", new Access(NURSE_AND_OFFICER, () -> noise.withdraw(0, "a mistake")));
        table.put("NoiseService.tell", new Access(NURSE_AND_OFFICER, () -> noise.tell(0, told)));
    }

    private void addProtection(Map<String, Access> table) {
        var issue = Plant.issue(0, "");
        var end = new Issue.End(MovableClock.FIRST_DAY, Issue.How.LOST);
        var product = Plant.product("Mill", "", ProtectorKind.MUFF, 20);
        var session = Plant.session(MovableClock.FIRST_DAY);
        var sheet = new NewDocument("sheet.pdf", MediaType.PDF, new byte[0]);
        table.put("InstrumentService.holdings", new Access(NURSE_AND_OFFICER, instruments::holdings));
        var room = new Facts.Room("Mill", "", MovableClock.FIRST_DAY, Optional.empty());
        table.put("InstrumentService.enter", new Access(ONLY_NURSE, () -> instruments.enter(room, Change.NEW)));
        table.put("ProtectorService.catalogue", new Access(NURSE_AND_OFFICER, protectors::catalogue));
        table.put("ProtectorService.methods", new Access(NURSE_AND_OFFICER, protectors::methods));
        table.put("ProtectorService.add", new Access(ONLY_NURSE, () -> protectors.add(product)));
        table.put("ProtectorService.retire", new Access(ONLY_NURSE, () -> protectors.retire(0, "")));
        table.put(
                "ProtectorService.choose",
                new Access(
                        ONLY_NURSE,
                        () -> protectors.choose(
                                new MethodChoice("Mill", AttenuationMethod.ALL.getFirst(), "as measured"))));
        table.put("WorkerProtectionService.of", new Access(NURSE_AND_OFFICER, () -> protection.of("M-1")));
        table.put("WorkerProtectionService.open", new Access(NURSE_AND_OFFICER, () -> protection.open("M-1")));
        table.put("WorkerProtectionService.choices", new Access(NURSE_AND_OFFICER, () -> protection.choices("M-1")));
        table.put("WorkerProtectionService.issue", new Access(ONLY_NURSE, () -> protection.issue("M-1", issue)));
        table.put("WorkerProtectionService.end", new Access(ONLY_NURSE, () -> protection.end("M-1", 0, end)));
        table.put(
                "WorkerProtectionService.withdrawIssue",
                new Access(ONLY_NURSE, () -> protection.withdrawIssue("M-1", 0, "a mistake")));
        table.put(
                "WorkerProtectionService.addFitTest",
                new Access(ONLY_NURSE, () -> protection.addFitTest("M-1", Plant.fitTest(0, "", 20), Optional.empty())));
        table.put(
                "WorkerProtectionService.withdrawFitTest",
                new Access(ONLY_NURSE, () -> protection.withdrawFitTest("M-1", 0, "a mistake")));
        table.put("WorkerProtectionService.report", new Access(NURSE_AND_OFFICER, () -> protection.report("M-1", 0)));
        table.put("WearingService.mustWear", new Access(NURSE_AND_OFFICER, wearing::mustWear));
        table.put("WearingService.owedAfterShift", new Access(NURSE_AND_OFFICER, wearing::owedAfterShift));
        table.put("TrainingService.due", new Access(NURSE_AND_OFFICER, trainings::due));
        table.put(
                "TrainingService.people",
                new Access(NURSE_AND_OFFICER, () -> trainings.people("Mill", Optional.empty())));
        table.put("TrainingService.sessions", new Access(NURSE_AND_OFFICER, trainings::sessions));
        table.put("TrainingService.session", new Access(NURSE_AND_OFFICER, () -> trainings.session(0)));
        table.put("TrainingService.add", new Access(NURSE_AND_OFFICER, () -> trainings.add(session, List.of("M-1"))));
        table.put(
                "TrainingService.addAttendants",
                new Access(NURSE_AND_OFFICER, () -> trainings.addAttendants(0, List.of("M-1"))));
        table.put(
                "TrainingService.withdrawAttendance",
                new Access(NURSE_AND_OFFICER, () -> trainings.withdrawAttendance(0, 0, "a mistake")));
        table.put("TrainingService.keepSheet", new Access(NURSE_AND_OFFICER, () -> trainings.keepSheet(0, sheet)));
        table.put("TrainingService.signedSheet", new Access(NURSE_AND_OFFICER, () -> trainings.signedSheet(0)));
        table.put("TrainingService.sheetToSign", new Access(NURSE_AND_OFFICER, () -> trainings.sheetToSign(0)));
        table.put(
                "TrainingService.sheetOfDue",
                new Access(
                        NURSE_AND_OFFICER,
                        () -> trainings.sheetOfDue("Mill", Optional.empty(), MovableClock.FIRST_DAY)));
    }

    private void addTestDays(Map<String, Access> table) {
        Set<Role> nurse = EnumSet.of(NURSE);
        Set<Role> settings = EnumSet.of(NURSE, ADMINISTRATOR);
        LocalTime six = LocalTime.of(6, 0);
        table.put("TestDayService.days", new Access(NURSE_AND_OFFICER, testDays::days));
        table.put("TestDayService.find", new Access(NURSE_AND_OFFICER, () -> testDays.find(1)));
        table.put("TestDayService.bookings", new Access(NURSE_AND_OFFICER, () -> testDays.bookings(1)));
        table.put("TestDayService.leftOut", new Access(NURSE_AND_OFFICER, () -> testDays.leftOut(1)));
        table.put("TestDayService.freeTimes", new Access(nurse, () -> testDays.freeTimes(1)));
        table.put("TestDayService.openDays", new Access(nurse, () -> testDays.openDays("Mill")));
        table.put(
                "TestDayService.plan",
                new Access(
                        nurse,
                        () -> testDays.plan(new NewTestDays(
                                "Mill",
                                "Room",
                                Optional.of(MovableClock.FIRST_DAY),
                                Optional.empty(),
                                Optional.of(six),
                                Optional.of(six.plusHours(2)),
                                Optional.of(2),
                                List.of(),
                                "",
                                false))));
        table.put("TestDayService.cancel", new Access(nurse, () -> testDays.cancel(1)));
        table.put("TestDayService.propose", new Access(nurse, () -> testDays.propose(1, MovableClock.FIRST_DAY)));
        table.put("TestDayService.clearProposals", new Access(nurse, () -> testDays.clearProposals(1)));
        table.put("TestDayService.confirm", new Access(nurse, () -> testDays.confirm(1)));
        table.put("BookingService.dueOf", new Access(NURSE_AND_OFFICER, () -> bookings.dueOf("M-1")));
        table.put("BookingService.ofWorker", new Access(NURSE_AND_OFFICER, () -> bookings.ofWorker("M-1")));
        table.put("BookingService.book", new Access(nurse, () -> bookings.book(1, six, "M-1", Occasion.RETEST)));
        table.put("BookingService.move", new Access(nurse, () -> bookings.move(1, 1, six)));
        table.put("BookingService.remove", new Access(nurse, () -> bookings.remove(1, "on leave")));
        table.put(
                "BookingService.arrive",
                new Access(
                        nurse,
                        () -> bookings.arrive(1, new BookingService.Arrival(Optional.empty(), Optional.empty()))));
        table.put("BookingService.noShow", new Access(nurse, () -> bookings.noShow(1)));
        table.put("BookingService.refuse", new Access(nurse, () -> bookings.refuse(1, "does not want it")));
        table.put(
                "DueTestService.find",
                new Access(NURSE_AND_OFFICER, () -> dueTests.find(DueTestFilter.all(MovableClock.FIRST_DAY))));
        table.put("WorkShiftService.shifts", new Access(NURSE_AND_OFFICER, workShifts::shifts));
        table.put(
                "WorkShiftService.save",
                new Access(nurse, () -> workShifts.save("Mill", "early", six, six.plusHours(8))));
        table.put("WorkShiftService.remove", new Access(nurse, () -> workShifts.remove(1)));
        table.put("WorkShiftService.assignDepartment", new Access(nurse, () -> workShifts.assignDepartment(1, "Saws")));
        table.put(
                "WorkShiftService.assignWorker",
                new Access(nurse, () -> workShifts.assignWorker(Optional.empty(), "M-1")));
        table.put("TestSiteService.of", new Access(settings, () -> testSites.of("Mill")));
        table.put(
                "TestSiteService.set",
                new Access(settings, () -> testSites.set(new TestSite("Mill", false, false, ZoneOffset.UTC))));
        table.put("AwaitsBaselineService.find", new Access(NURSE_AND_OFFICER, awaitsBaseline::find));
        table.put(
                "AwaitsBaselineService.wornFrom",
                new Access(nurse, () -> awaitsBaseline.wornFrom("M-1", MovableClock.FIRST_DAY)));
        table.put("RunSheetService.pdf", new Access(NURSE_AND_OFFICER, () -> runSheets.pdf(1)));
        table.put("CalendarLinkService.exists", new Access(NURSE_AND_OFFICER, calendarLinks::exists));
        table.put("CalendarLinkService.make", new Access(NURSE_AND_OFFICER, calendarLinks::make));
        table.put("CalendarLinkService.revoke", new Access(NURSE_AND_OFFICER, calendarLinks::revoke));
    }

    private static ProposalAnswer acceptance() {
        return new ProposalAnswer(
                Ear.RIGHT,
                LocalDate.of(2026, 3, 1),
                true,
                LocalDate.of(2026, 3, 9),
                "Dr. Vale",
                Optional.of(Profession.PHYSICIAN),
                "as found");
    }

    private static TaskKey notice() {
        return new TaskKey("M-1", TaskKind.NOTICE, LocalDate.of(2026, 3, 1), Ears.RIGHT);
    }

    private static Decision decision(DecisionKind kind) {
        return new Decision(Ears.RIGHT, LocalDate.of(2026, 3, 1), kind, LocalDate.of(2026, 3, 9), "", "as found");
    }

    @Test
    void theTableNamesEveryPublicMethodOfEveryService() {
        Set<String> methods = context.getBeansWithAnnotation(Service.class).values().stream()
                .map(AopUtils::getTargetClass)
                .filter(type -> FEATURES.contains(
                        type.getPackageName().replaceFirst("org\\.thresholdregister\\.([a-z]+).*", "$1")))
                .flatMap(type -> Arrays.stream(type.getDeclaredMethods())
                        .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic())
                        .map(Method::getName)
                        .map(name -> type.getSimpleName() + "." + name))
                .collect(Collectors.toSet());

        assertThat(methods).isEqualTo(table().keySet());
    }

    @Test
    void eachRoleCallsExactlyWhatTheTableGivesIt() {
        table().forEach((method, access) -> {
            for (Role role : Role.values()) {
                SignIn.as(role);
                if (access.roles().contains(role)) {
                    assertThatCode(access.call()).as(method + " as " + role).doesNotThrowAnyException();
                } else {
                    assertThatThrownBy(access.call())
                            .as(method + " as " + role)
                            .isInstanceOf(AccessDeniedException.class);
                }
            }
            SignIn.out();
            assertThatThrownBy(access.call())
                    .as(method + " with nobody signed in")
                    .isInstanceOf(AuthenticationCredentialsNotFoundException.class);
        });
    }

    @Test
    void aRemarkMayBeAClinicalNoteAndIsTheNursesAlone() {
        SignIn.as(NURSE);
        files.store(
                "",
                TestImports.AUDIOGRAM_COLUMNS.strip() + ",remark\n"
                        + TestImports.test("M-2", "2026-03-02", "annual", 10, 10)
                                .strip() + ",Had a cold\n",
                "");
        assertThat(remarks("M-2")).contains("Had a cold");

        SignIn.as(SAFETY_OFFICER);
        assertThat(remarks("M-2")).containsOnly("");
    }

    private List<String> remarks(String workerId) {
        return records.open(workerId).orElseThrow().tests().stream()
                .map(test -> test.facts().remark())
                .toList();
    }

    @Test
    void aNurseEntersNoticesInvalidTestsAndWhatIsDoneAfterAShift() {
        Set<DecisionKind> ofANurse = EnumSet.of(
                DecisionKind.NOTICE_GIVEN,
                DecisionKind.INVALID_TEST,
                DecisionKind.RETEST_BOOKED,
                DecisionKind.PROTECTOR_REFITTED,
                DecisionKind.TRAINED,
                DecisionKind.REFERRED);
        for (DecisionKind kind : DecisionKind.values()) {
            SignIn.as(NURSE);
            if (ofANurse.contains(kind)) {
                assertThat(decisions.kindsToEnter()).contains(kind);
                assertThat(decisions.enter("M-1", decision(kind))).isEqualTo(new DecisionResult.Recorded());
            } else {
                assertThat(decisions.kindsToEnter()).doesNotContain(kind);
                assertThatThrownBy(() -> decisions.enter("M-1", decision(kind)))
                        .isInstanceOf(AccessDeniedException.class);
                SignIn.as(SAFETY_OFFICER);
                assertThat(decisions.enter("M-1", decision(kind))).isEqualTo(new DecisionResult.Recorded());
            }
        }
    }

    private List<String> allWorkers() {
        return workers.find(WorkerFilter.EVERYONE, Order.ascending(WorkerColumn.WORKER_ID), 0, 10).stream()
                .map(WorkerRow::workerId)
                .toList();
    }

    private List<BoardRow> wholeBoard() {
        return board.find(BoardFilter.EVERYTHING, Order.ascending(BoardColumn.WORKER_ID), 0, 100);
    }

    private List<String> allFollowUps() {
        return wholeBoard().stream()
                .filter(BoardRow.OfTask.class::isInstance)
                .map(row -> ((BoardRow.OfTask) row).workerId())
                .toList();
    }

    private List<String> allShifts() {
        return List.of(2025, 2026).stream()
                .flatMap(year ->
                        shifts.find(ShiftFilter.ofYear(year), Order.ascending(ShiftColumn.NAME), 0, 10).stream())
                .map(ShiftRow::workerId)
                .toList();
    }

    @Test
    void aPersonOfOneSiteSeesNothingOfTheOther() {
        for (Role role : NURSE_AND_OFFICER) {
            SignIn.as(role, "Mill");

            assertThat(allWorkers()).containsExactly("M-1", "M-2");
            assertThat(workers.count(WorkerFilter.EVERYONE)).isEqualTo(2);
            assertThat(workers.get("M-1")).isPresent();
            assertThat(workers.get("Y-1")).isEmpty();
            assertThat(workers.get("N-1")).isEmpty();
            assertThat(workers.sites()).containsExactly("Mill");
            assertThat(workers.departments()).containsExactly("Press", "Saws");
            assertThat(records.open("M-1")).isPresent();
            assertThat(records.open("Y-1")).isEmpty();
            assertThat(records.open("N-1")).isEmpty();
            assertThat(allFollowUps()).hasSize(3).containsOnly("M-1");
            assertThat(wholeBoard()).extracting(BoardRow::site).containsOnly("Mill");
            assertThat(board.count(BoardFilter.EVERYTHING))
                    .isEqualTo(wholeBoard().size());
            assertThat(List.of(DueState.values()).stream()
                            .mapToInt(board.counts()::of)
                            .sum())
                    .isEqualTo(wholeBoard().size());
            assertThat(allShifts()).containsExactly("M-1");
            assertThat(shifts.count(ShiftFilter.ofYear(2025))).isZero();
            assertThat(decisions.enter(
                            "Y-1",
                            new Decision(
                                    Ears.LEFT,
                                    LocalDate.of(2025, 6, 1),
                                    DecisionKind.NOTICE_GIVEN,
                                    LocalDate.of(2025, 6, 9),
                                    "",
                                    "")))
                    .isEqualTo(new DecisionResult.Refused(DecisionResult.Reason.UNKNOWN_WORKER));
        }
        SignIn.as(NURSE, "Yard");
        assertThat(shifts.years()).containsExactly(2025, 2024);
        assertThat(files.preview("", ServiceFixture.AUDIOGRAMS, "").counts().unchangedTests())
                .as("tests of the other site's workers are those of unknown workers")
                .isEqualTo(2);
    }

    @Test
    void aPersonWithoutASiteSeesNothingAndOneOfAllSitesSeesThoseWithoutOneToo() {
        SignIn.as(NURSE, new String[0]);
        assertThat(allWorkers()).isEmpty();
        assertThat(allFollowUps()).isEmpty();
        assertThat(allShifts()).isEmpty();
        assertThat(workers.sites()).isEmpty();
        assertThat(records.open("N-1")).isEmpty();

        SignIn.as(NURSE);
        assertThat(allWorkers()).containsExactly("M-1", "M-2", "N-1", "Y-1");
        assertThat(workers.sites()).containsExactly("", "Mill", "Yard");
        assertThat(records.open("N-1")).isPresent();
    }
}
