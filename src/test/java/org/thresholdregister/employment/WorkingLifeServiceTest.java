package org.thresholdregister.employment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Engagement;
import org.thresholdregister.core.employment.Inconsistency;
import org.thresholdregister.core.employment.Placement;
import org.thresholdregister.core.employment.Standing;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.core.employment.WorkState;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerService;

/** Today is 9 March 2026. */
@RegisterTest
class WorkingLifeServiceTest {

    private static final String COLUMNS =
            "worker_id,birth_date,sex,family_name,given_name,hire_date,end_date,site,department,job_title,enrolled_from\n";
    private static final String ADA = "M-1,1990-05-01,F,Núñez,Ada,2020-01-06,,Mill,Saws,Sawyer,2020-02-01\n";
    private static final String BELA = "M-2,1990-01-31,M,Orrin,Bela,,,Mill,Press,Presser,\n";
    private static final String CATO = "Y-1,1990-01-01,F,Quill,Cato,2018-03-01,,Yard,Cranes,Driver,2018-03-01\n";
    private static final Placement CRANES = new Placement("Yard", "Cranes", "Driver");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 9);

    @Autowired
    private WorkingLifeService lives;

    @Autowired
    private SoldPlantService plants;

    @Autowired
    private WorkerService workers;

    @Autowired
    private WorkingLifeDuties duties;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @BeforeEach
    void threeWorkers() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                COLUMNS + ADA + BELA + CATO,
                TestImports.AUDIOGRAM_COLUMNS + TestImports.test("M-1", "2025-02-10", "baseline", 10, 10),
                "");
    }

    private static DatedEvent on(String iso, WorkEvent event) {
        return new DatedEvent(LocalDate.parse(iso), event);
    }

    private EntryResult enter(String workerId, String iso, WorkEvent event) {
        return lives.enter(workerId, on(iso, event), "", false);
    }

    private void entered(String workerId, String iso, WorkEvent event) {
        assertThat(enter(workerId, iso, event)).isEqualTo(new EntryResult.Entered(true));
    }

    private WorkState state(String workerId) {
        return lives.of(workerId).orElseThrow().state();
    }

    private WorkerDetails roster(String workerId) {
        return workers.get(workerId).orElseThrow();
    }

    private List<DatedEvent> events(String workerId) {
        return lives.of(workerId).orElseThrow().life().events();
    }

    private List<OpenDuty> open() {
        return transaction.execute(status -> duties.open(SiteScope.all(), TODAY, TODAY.plusDays(30)));
    }

    private List<LocalDate> owed(String workerId) {
        return jdbc.queryForList(
                "select f.due_date from follow_up f join worker w on w.id = f.worker_id where w.worker_id = ?",
                LocalDate.class,
                workerId);
    }

    @Test
    void theRosterTellsTheLifeUntilSomethingHappensAndNothingIsStoredForIt() {
        assertThat(events("M-1"))
                .containsExactly(
                        on("2020-01-06", new WorkEvent.Hired(new Placement("Mill", "Saws", "Sawyer"))),
                        on("2020-02-01", new WorkEvent.Enrolled()));
        assertThat(events("M-2"))
                .containsExactly(on("2026-03-09", new WorkEvent.Listed(new Placement("Mill", "Press", "Presser"))));
        assertThat(jdbc.queryForObject("select count(*) from employment_event", Integer.class))
                .isZero();
    }

    @Test
    void whoLeavesIsOwedNoAnnualTestAnyMoreAndTheRosterRowFollows() {
        assertThat(owed("M-1")).containsExactly(LocalDate.of(2026, 2, 10));
        entered("M-1", "2026-03-06", new WorkEvent.Left());
        assertThat(roster("M-1").endDate()).contains(LocalDate.of(2026, 3, 6));
        assertThat(owed("M-1")).isEmpty();
        assertThat(jdbc.queryForList(
                        "select detail from audit_event where action = 'WORK_EVENT_ENTERED'", String.class))
                .containsExactly("left on 2026-03-06");
    }

    @Test
    void anExitTestIsWantedOfWhoLeavesUntilItIsThere() {
        entered("M-1", "2026-03-27", new WorkEvent.Left());
        assertThat(open())
                .extracting(OpenDuty::kind, OpenDuty::due, duty -> duty.basis().place())
                .containsExactly(tuple(
                        "exit test",
                        LocalDate.of(2026, 3, 27),
                        "common practice; NIOSH 98-126 (from memory) recommends an exit audiogram"));
        files.store("", TestImports.AUDIOGRAM_COLUMNS + TestImports.test("M-1", "2026-03-09", "exit", 10, 10), "");
        assertThat(open()).isEmpty();
    }

    @Test
    void anAnnualTestThatFellDueDuringALeaveIsWantedOnTheReturn() {
        entered("M-1", "2026-01-12", new WorkEvent.LeaveBegan(Optional.empty()));
        assertThat(state("M-1").standing())
                .isEqualTo(new Standing.OnLeave(LocalDate.of(2026, 1, 12), Optional.empty()));
        assertThat(owed("M-1")).as("its due date stands").containsExactly(LocalDate.of(2026, 2, 10));
        assertThat(open()).isEmpty();
        entered("M-1", "2026-03-02", new WorkEvent.Returned());
        assertThat(open())
                .extracting(OpenDuty::kind, OpenDuty::due)
                .containsExactly(tuple("annual test on return from leave", LocalDate.of(2026, 3, 2)));
    }

    @Test
    void enrolmentSetsTheDateOfTheBaselineTest() {
        entered("M-2", "2026-03-09", new WorkEvent.Enrolled());
        assertThat(roster("M-2").enrolledFrom()).contains(TODAY);
        assertThat(owed("M-2")).containsExactly(LocalDate.of(2026, 9, 9));
    }

    @Test
    void aWorkerWhoMovesToAnotherSiteIsSeenThereAndNoMoreAtTheOldOne() {
        SignIn.as(Role.NURSE, "Mill");
        assertThat(enter("M-1", "2026-03-02", new WorkEvent.Moved(CRANES))).isEqualTo(new EntryResult.Entered(false));
        assertThat(workers.get("M-1")).isEmpty();
        assertThat(lives.of("M-1")).isEmpty();
        SignIn.as(Role.NURSE, "Yard");
        assertThat(roster("M-1").site()).isEqualTo("Yard");
        assertThat(roster("M-1").jobTitle()).isEqualTo("Driver");
        assertThat(lives.of("M-1")
                        .orElseThrow()
                        .life()
                        .on(LocalDate.of(2026, 3, 1))
                        .place()
                        .site())
                .isEqualTo("Mill");
    }

    @Test
    void aRecordOfAnotherSiteIsNeitherReadNorChanged() {
        SignIn.as(Role.NURSE, "Mill");
        assertThat(lives.of("Y-1")).isEmpty();
        var unknown = new EntryResult.Refused(EntryResult.Reason.UNKNOWN_WORKER);
        assertThat(enter("Y-1", "2026-03-02", new WorkEvent.Left())).isEqualTo(unknown);
        assertThat(lives.correct("Y-1", on("2018-03-01", new WorkEvent.Enrolled()), Optional.empty(), "slip", false))
                .isEqualTo(unknown);
    }

    @Test
    void aSiteWhereNobodyWorksIsTakenOnlyFromSomeoneWhoIsCertain() {
        DatedEvent move = on("2026-03-02", new WorkEvent.Moved(new Placement("Yrad", "", "")));
        assertThat(lives.enter("M-1", move, "", false)).isEqualTo(new EntryResult.SiteNotKnown("Yrad"));
        assertThat(roster("M-1").site()).isEqualTo("Mill");
        assertThat(lives.enter("M-1", move, "", true)).isEqualTo(new EntryResult.Entered(true));
        assertThat(roster("M-1").site()).isEqualTo("Yrad");
    }

    @Test
    void whatDoesNotFitIsRefusedAndChangesNothing() {
        assertThat(enter("M-1", "2019-12-31", new WorkEvent.Left()))
                .isEqualTo(new EntryResult.Misfit(
                        new Inconsistency(Inconsistency.Kind.LEFT_BEFORE_HIRED, on("2019-12-31", new WorkEvent.Left())),
                        true));
        assertThat(enter("M-1", "2026-03-10", new WorkEvent.Moved(CRANES)))
                .isEqualTo(new EntryResult.Refused(EntryResult.Reason.IN_THE_FUTURE));
        assertThat(enter("M-1", "1026-03-10", new WorkEvent.Moved(CRANES)))
                .isEqualTo(new EntryResult.Refused(EntryResult.Reason.BEFORE_ANYONE_LIVED));
        assertThat(enter("M-1", "2026-03-01", new WorkEvent.Moved(new Placement("x".repeat(201), "", ""))))
                .isEqualTo(new EntryResult.Refused(EntryResult.Reason.TEXT_TOO_LONG));
        assertThat(jdbc.queryForObject("select count(*) from employment_event", Integer.class))
                .isZero();
    }

    @Test
    void aCorrectionTakesThePlaceOfAnEntryWhichStaysReadable() {
        entered("M-1", "2026-03-06", new WorkEvent.Left());
        DatedEvent wrong = on("2026-03-06", new WorkEvent.Left());
        DatedEvent right = on("2026-03-31", new WorkEvent.Left());
        assertThat(lives.correct("M-1", wrong, Optional.of(right), " ", false))
                .isEqualTo(new EntryResult.Refused(EntryResult.Reason.REASON_MISSING));
        assertThat(lives.correct("M-1", wrong, Optional.of(right), "Stays to the end of the month", false))
                .isEqualTo(new EntryResult.Entered(true));
        assertThat(roster("M-1").endDate()).contains(LocalDate.of(2026, 3, 31));
        assertThat(lives.correct("M-1", wrong, Optional.empty(), "again", false))
                .isEqualTo(new EntryResult.Refused(EntryResult.Reason.NO_SUCH_ENTRY));
        assertThat(lives.correct("M-1", right, Optional.empty(), "Does not leave", false))
                .isEqualTo(new EntryResult.Entered(true));
        assertThat(roster("M-1").endDate()).isEmpty();
        assertThat(lives.of("M-1").orElseThrow().entries())
                .extracting(LifeEntry::day, LifeEntry::inForce, LifeEntry::reason)
                .contains(
                        tuple(LocalDate.of(2026, 3, 6), false, ""),
                        tuple(LocalDate.of(2026, 3, 31), false, "Stays to the end of the month"),
                        tuple(LocalDate.of(2026, 3, 31), false, "Does not leave"));
    }

    @Test
    void whoIsHiredAgainBeginsAnew() {
        entered("M-1", "2026-01-30", new WorkEvent.Left());
        entered("M-1", "2026-03-02", new WorkEvent.Hired(CRANES));
        assertThat(roster("M-1").hireDate()).contains(LocalDate.of(2026, 3, 2));
        assertThat(roster("M-1").endDate()).isEmpty();
        assertThat(roster("M-1").enrolledFrom()).isEmpty();
        assertThat(owed("M-1")).as("counted from the last test on record").containsExactly(LocalDate.of(2026, 2, 10));
    }

    @Test
    void whoSupervisesIsOnRecord() {
        entered(
                "M-1",
                "2026-03-02",
                new WorkEvent.Engaged(new Engagement(Engagement.Kind.AGENCY, "Brightwater Staffing", false)));
        assertThat(state("M-1").engagement().recordedHere()).isFalse();
    }

    @Test
    void aRosterThatChangesAWorkerWritesTheEventBehindIt() {
        files.store(
                COLUMNS + "M-1,1990-05-01,F,Núñez,Ada,2020-01-06,2026-03-27,Yard,Cranes,Driver,2020-03-01\n", "", "");
        assertThat(events("M-1"))
                .containsExactly(
                        on("2020-01-06", new WorkEvent.Hired(new Placement("Mill", "Saws", "Sawyer"))),
                        on("2020-03-01", new WorkEvent.Enrolled()),
                        on("2026-03-09", new WorkEvent.Moved(CRANES)),
                        on("2026-03-27", new WorkEvent.Left()));
        assertThat(lives.of("M-1").orElseThrow().entries())
                .filteredOn(entry -> entry.enteredBy().equals("(import)"))
                .hasSize(3)
                .allSatisfy(entry -> assertThat(entry.reason()).startsWith("By import "));

        files.store(COLUMNS + "M-1,1990-05-01,F,Núñez,Ada,2020-01-06,,Yard,Cranes,Driver,2020-03-01\n", "", "");
        assertThat(state("M-1").lastDay()).isEmpty();
        assertThat(roster("M-1").endDate()).isEmpty();
    }

    @Test
    void aRosterThatHiresAgainIsARehireAndOneThatCorrectsTheDayACorrection() {
        files.store(COLUMNS + "M-1,1990-05-01,F,Núñez,Ada,2020-01-06,2025-12-31,Mill,Saws,Sawyer,2020-02-01\n", "", "");
        files.store(COLUMNS + "M-1,1990-05-01,F,Núñez,Ada,2026-03-02,,Yard,Cranes,Driver,2026-03-02\n", "", "");
        assertThat(events("M-1"))
                .containsExactly(
                        on("2020-01-06", new WorkEvent.Hired(new Placement("Mill", "Saws", "Sawyer"))),
                        on("2020-02-01", new WorkEvent.Enrolled()),
                        on("2025-12-31", new WorkEvent.Left()),
                        on("2026-03-02", new WorkEvent.Hired(CRANES)),
                        on("2026-03-02", new WorkEvent.Enrolled()));
        files.store(COLUMNS + "M-1,1990-05-01,F,Núñez,Ada,2026-03-03,,Yard,Cranes,Driver,2026-03-03\n", "", "");
        assertThat(state("M-1").hired()).contains(LocalDate.of(2026, 3, 3));
        assertThat(lives.of("M-1").orElseThrow().life().inconsistencies()).isEmpty();
    }

    @Test
    void aRosterThatChangesOnlyANameWritesNoEvent() {
        files.store(COLUMNS + ADA.replace("Ada", "Adele"), "", "");
        assertThat(jdbc.queryForObject("select count(*) from employment_event", Integer.class))
                .isZero();
    }

    @Test
    void everybodyOfASoldPlantGoesToTheSuccessorAndTheRecordsAreToBeHandedOver() {
        entered("M-2", "2026-03-09", new WorkEvent.Moved(new Placement("Mill", "Saws", "Presser")));
        SalePreview preview = plants.preview("Mill", TODAY, "Larkmoor Glass").orElseThrow();
        assertThat(preview.going()).extracting(SalePreview.Going::workerId).containsExactly("M-1", "M-2");
        assertThat(preview.held()).isEmpty();
        assertThat(plants.transfer(preview)).isEqualTo(new SaleResult.Done(2));
        assertThat(roster("M-1").endDate()).contains(TODAY);
        assertThat(roster("Y-1").endDate()).isEmpty();
        assertThat(events("M-2")).contains(on("2026-03-09", new WorkEvent.TransferredToSuccessor("Larkmoor Glass")));
        assertThat(plants.transfer(preview)).isEqualTo(new SaleResult.PreviewOutdated());
        assertThat(open())
                .extracting(OpenDuty::kind, OpenDuty::subject, OpenDuty::site)
                .containsExactly(tuple(
                        "records to the successor",
                        new OpenDuty.Subject.OfThing("records of 2 workers to Larkmoor Glass"),
                        "Mill"));

        PlantSale sale = plants.sales().getFirst();
        assertThat(plants.handOver(sale.key(), new PlantSale.HandOver(TODAY, " ", "")))
                .isEqualTo(new SaleResult.Refused(SaleResult.Reason.RECEIVER_MISSING));
        assertThat(plants.handOver(sale.key(), new PlantSale.HandOver(TODAY, "Ines Falk", "Two boxes")))
                .isEqualTo(new SaleResult.Done(2));
        assertThat(plants.handOver(sale.key(), new PlantSale.HandOver(TODAY, "Ines Falk", "")))
                .isEqualTo(new SaleResult.Refused(SaleResult.Reason.DONE_ALREADY));
        assertThat(open()).isEmpty();
    }

    @Test
    void whoWasToLeaveLaterGoesWithTheSoldPlantBefore() {
        entered("M-1", "2026-03-27", new WorkEvent.Left());
        SalePreview preview = plants.preview("Mill", TODAY, "Larkmoor Glass").orElseThrow();
        assertThat(preview.held()).isEmpty();
        assertThat(plants.transfer(preview)).isEqualTo(new SaleResult.Done(2));
        assertThat(roster("M-1").endDate()).contains(TODAY);
        assertThat(events("M-1"))
                .contains(on("2026-03-09", new WorkEvent.TransferredToSuccessor("Larkmoor Glass")))
                .doesNotContain(on("2026-03-27", new WorkEvent.Left()));
    }

    @Test
    void anOfficerSellsOnlyASiteOfTheirOwn() {
        SignIn.as(Role.SAFETY_OFFICER, "Yard");
        assertThat(plants.sites()).containsExactly("Yard");
        assertThat(plants.preview("Mill", TODAY, "Larkmoor Glass")).isEmpty();
        assertThat(plants.transfer(new SalePreview("Mill", TODAY, "Larkmoor Glass", List.of(), List.of())))
                .isEqualTo(new SaleResult.Refused(SaleResult.Reason.SITE_NOT_OPEN));
        assertThat(plants.transfer(new SalePreview("Yard", TODAY, " ", List.of(), List.of())))
                .isEqualTo(new SaleResult.Refused(SaleResult.Reason.SUCCESSOR_MISSING));
    }
}
