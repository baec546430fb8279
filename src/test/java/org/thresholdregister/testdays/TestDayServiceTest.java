package org.thresholdregister.testdays;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.audiograms.TestSigned;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.scheduling.DayHours;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.QuietTime;
import org.thresholdregister.core.scheduling.Slot;
import org.thresholdregister.core.scheduling.TestPlan;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

/** Today is 9 March 2026. */
@RegisterTest
class TestDayServiceTest {

    private static final LocalDate TODAY = MovableClock.FIRST_DAY;
    private static final LocalDate TUESDAY = LocalDate.of(2026, 3, 10);

    @Autowired
    private TestImports files;

    @Autowired
    private TestDayService days;

    @Autowired
    private BookingService bookings;

    @Autowired
    private DueTestService due;

    @Autowired
    private WorkShiftService shifts;

    @Autowired
    private TestSiteService sites;

    @Autowired
    private AwaitsBaselineService waiting;

    @Autowired
    private ProtectorsUntilBaselineDuties duties;

    @Autowired
    private BookingStore store;

    @Autowired
    private RunSheetService sheets;

    @Autowired
    private MovableClock clock;

    @Autowired
    private ApplicationEventPublisher events;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private JdbcTemplate jdbc;

    /**
     * R showed a shift on 1 March 2026 and may be retested until 31 March; A's annual test was due on 5 March; B began
     * on 20 September 2025 and has had no test; L leaves on 20 March; F's annual test is due in a year; Y works elsewhere.
     */
    @BeforeEach
    void aSite() {
        SignIn.as(Role.NURSE);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,end_date,site,department,enrolled_from
                R,1990-05-01,F,Núñez,Ada,,Mill,Saws,2020-01-01
                A,1990-05-01,F,Orrin,Bela,,Mill,Press,2020-01-01
                B,1990-05-01,F,Quill,Cato,,Mill,Press,2025-09-20
                L,1990-05-01,F,Rusk,Dara,2026-03-20,Mill,Saws,2020-01-01
                F,1990-05-01,F,Stell,Eno,,Mill,Saws,2020-01-01
                Y,1990-05-01,F,Tarn,Fia,,Yard,Cranes,2020-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("R", "2025-03-02", "baseline", 10, 10)
                        + TestImports.test("R", "2026-03-01", "annual", 10, 30)
                        + TestImports.test("A", "2025-03-05", "baseline", 10, 10)
                        + TestImports.test("L", "2025-06-05", "baseline", 10, 10)
                        + TestImports.test("F", "2026-03-05", "baseline", 10, 10)
                        + TestImports.test("Y", "2025-03-05", "baseline", 10, 10),
                "");
    }

    private static NewTestDays planned(LocalDate first, LocalDate last, String from, String to, int perHour) {
        return new NewTestDays(
                "Mill",
                "First aid room",
                Optional.of(first),
                Optional.of(last),
                Optional.of(LocalTime.parse(from)),
                Optional.of(LocalTime.parse(to)),
                Optional.of(perHour),
                List.of(),
                "",
                false);
    }

    private long day(LocalDate date, String from, String to, int perHour) {
        PlannedDays result = days.plan(planned(date, date, from, to, perHour));
        assertThat(result).isInstanceOf(PlannedDays.Stored.class);
        return ((PlannedDays.Stored) result).firstKey();
    }

    private List<String> listed(long key) {
        return days.bookings(key).stream()
                .map(booking ->
                        booking.starts() + " " + booking.workerId() + " " + booking.occasion() + " " + booking.state())
                .toList();
    }

    private Booking booking(long day, String workerId) {
        return days.bookings(day).stream()
                .filter(booking -> booking.workerId().equals(workerId))
                .findFirst()
                .orElseThrow();
    }

    private List<String> decisions() {
        return jdbc.queryForList("select kind || ' ' || test_date || ' ' || reason from decision", String.class);
    }

    @Test
    void whoIsDueIsFoundWithWhatForAndUntilWhen() {
        assertThat(due.find(DueTestFilter.all(LocalDate.of(2026, 4, 30))))
                .extracting(person ->
                        person.worker().workerId() + " " + person.due().occasion() + " "
                                + person.due().lastDay() + " " + person.due().basis())
                .containsExactly(
                        "R RETEST 2026-03-31 29 CFR 1910.95(g)(7)(ii)",
                        "A ANNUAL 2026-03-05 29 CFR 1910.95(g)(6)",
                        "Y ANNUAL 2026-03-05 29 CFR 1910.95(g)(6)",
                        "B BASELINE 2026-03-20 29 CFR 1910.95(g)(5)(i)",
                        "L EXIT 2026-03-20 common practice; 29 CFR 1910.95 asks for no test at the end");
    }

    @Test
    void thePlanTakesTheMostUrgentAndSaysWhoDidNotFit() {
        long key = day(TUESDAY, "06:00", "09:00", 1);
        assertThat(days.propose(key, TUESDAY.plusDays(30))).contains(new TestDayService.Proposed(3, 1));
        assertThat(listed(key)).hasSize(3).allMatch(line -> line.endsWith("PROPOSED"));
        assertThat(listed(key).toString())
                .contains("R RETEST")
                .contains("A ANNUAL")
                .contains("B BASELINE");
        assertThat(days.leftOut(key))
                .extracting(left -> left.workerId() + " " + left.why())
                .containsExactly("L " + TestPlan.Why.NO_TIME_LEFT);
        TestDayCounts counts = days.find(key).orElseThrow();
        assertThat(counts.people()).isEqualTo(3);
        assertThat(counts.retests()).isEqualTo(1);
        assertThat(counts.leftOut()).isEqualTo(1);
        assertThat(days.propose(key, TUESDAY.plusDays(30)))
                .as("whoever is on the list stays, once")
                .contains(new TestDayService.Proposed(0, 1));
    }

    @Test
    void aPlantThatNamesNoSitesPlansItsDaysToo() {
        files.store("""
                worker_id,birth_date,sex,family_name,given_name,enrolled_from
                N,1990-05-01,F,Unwin,Gil,2026-01-01
                """, "", "");
        PlannedDays result = days.plan(new NewTestDays(
                "",
                "Room",
                Optional.of(TUESDAY),
                Optional.empty(),
                Optional.of(LocalTime.of(6, 0)),
                Optional.of(LocalTime.of(9, 0)),
                Optional.of(1),
                List.of(),
                "",
                false));
        long key = ((PlannedDays.Stored) result).firstKey();
        assertThat(days.propose(key, LocalDate.of(2026, 8, 1))).contains(new TestDayService.Proposed(1, 0));
        assertThat(listed(key)).singleElement().asString().contains("N BASELINE");
    }

    @Test
    void peopleAreCalledBeforeTheirShift() {
        shifts.save("Mill", "late", LocalTime.of(14, 0), LocalTime.of(22, 0));
        long shift = shifts.shifts().getFirst().key();
        shifts.assignDepartment(shift, "Press");
        long key = day(TUESDAY, "08:00", "14:00", 2);
        days.propose(key, TUESDAY.plusDays(30));
        assertThat(booking(key, "B").starts()).isAfterOrEqualTo(LocalTime.NOON);
        assertThat(booking(key, "B").quiet()).isEqualTo(QuietTime.RESTED);
        assertThat(booking(key, "B").shift()).isEqualTo("late");
        assertThat(booking(key, "R").quiet()).isEqualTo(QuietTime.TO_BE_ASKED);
        assertThat(booking(key, "A").quiet()).isEqualTo(QuietTime.NOT_NEEDED);

        assertThat(shifts.assignWorker(Optional.of(shift), "R")).isEmpty();
        assertThat(shifts.assignWorker(Optional.of(shift), "Y"))
                .contains("The worker belongs to another site than the shift.");
        assertThat(shifts.shifts().getFirst().workers()).isEqualTo(1);
        assertThat(bookings.dueOf("R").getFirst().due().shift()).isPresent();
        shifts.remove(shift);
        assertThat(bookings.dueOf("R").getFirst().due().shift()).isEmpty();
    }

    @Test
    void confirmingTellsTheCaseThatItsRetestIsBooked() {
        long key = day(TUESDAY, "06:00", "10:00", 1);
        days.propose(key, TUESDAY.plusDays(30));
        LocalTime time = booking(key, "R").starts();
        Confirmed confirmed = days.confirm(key).orElseThrow();
        assertThat(confirmed).isEqualTo(new Confirmed(4, 1, List.of()));
        assertThat(decisions()).containsExactly("retest-booked 2026-03-01 booked for 10 Mar 2026, " + time);
        assertThat(days.confirm(key)).as("nothing is confirmed twice").contains(new Confirmed(0, 0, List.of()));
        assertThat(decisions()).hasSize(1);
        assertThat(transaction.<Optional<BookingStore.NextTime>>execute(status -> store.next("R", SiteScope.all())))
                .contains(new BookingStore.NextTime(TUESDAY.atTime(time), "First aid room"));
    }

    @Test
    void aPersonAddsMovesAndTakesOff() {
        long key = day(TUESDAY, "06:00", "08:00", 1);
        long later = day(LocalDate.of(2026, 4, 1), "06:00", "08:00", 1);
        assertThat(bookings.book(key, LocalTime.of(6, 0), "R", Occasion.RETEST)).isEqualTo(BookingResult.DONE);
        assertThat(bookings.book(key, LocalTime.of(7, 0), "R", Occasion.ANNUAL))
                .isEqualTo(BookingResult.BOOKED_ALREADY);
        assertThat(bookings.book(key, LocalTime.of(6, 0), "A", Occasion.ANNUAL)).isEqualTo(BookingResult.TIME_NOT_FREE);
        assertThat(bookings.book(key, LocalTime.of(6, 30), "A", Occasion.ANNUAL))
                .as("no such time on that day")
                .isEqualTo(BookingResult.TIME_NOT_FREE);
        assertThat(bookings.book(key, LocalTime.of(7, 0), "A", Occasion.RETEST)).isEqualTo(BookingResult.NOT_DUE);
        assertThat(bookings.book(key, LocalTime.of(7, 0), "Y", Occasion.ANNUAL)).isEqualTo(BookingResult.ANOTHER_SITE);
        assertThat(bookings.book(key, LocalTime.of(7, 0), "F", Occasion.ANNUAL))
                .as("due in a year, and wanted now")
                .isEqualTo(BookingResult.DONE);
        Booking retest = booking(key, "R");
        assertThat(bookings.move(retest.key(), key, LocalTime.of(7, 0))).isEqualTo(BookingResult.TIME_NOT_FREE);
        assertThat(bookings.move(retest.key(), later, LocalTime.of(6, 0)))
                .as("the window ends on 31 March")
                .isEqualTo(BookingResult.TOO_LATE);
        assertThat(bookings.remove(booking(key, "F").key(), "")).isEqualTo(BookingResult.DONE);
        assertThat(bookings.move(retest.key(), key, LocalTime.of(7, 0))).isEqualTo(BookingResult.DONE);
        assertThat(days.freeTimes(key)).containsExactly(new Slot(TUESDAY, LocalTime.of(6, 0)));
        days.confirm(key);
        assertThat(bookings.remove(retest.key(), " ")).isEqualTo(BookingResult.REASON_MISSING);
        assertThat(bookings.remove(retest.key(), "on leave")).isEqualTo(BookingResult.DONE);
        assertThat(listed(key)).isEmpty();
        assertThat(jdbc.queryForList("select state || ' ' || note from test_booking order by id", String.class))
                .as("nothing is lost")
                .contains("REMOVED on leave");
    }

    @Test
    void whoDoesNotComeIsProposedAgainAndItIsCounted() {
        long key = day(TODAY, "06:00", "10:00", 1);
        long next = day(TUESDAY, "06:00", "08:00", 1);
        bookings.book(key, LocalTime.of(6, 0), "F", Occasion.ANNUAL);
        bookings.book(next, LocalTime.of(6, 0), "A", Occasion.ANNUAL);
        days.confirm(key);
        days.confirm(next);
        assertThat(bookings.noShow(booking(next, "A").key())).isEqualTo(BookingResult.DAY_TO_COME);
        assertThat(bookings.noShow(booking(key, "F").key())).isEqualTo(BookingResult.DONE);
        assertThat(due.find(DueTestFilter.all(TUESDAY)))
                .filteredOn(person -> person.worker().workerId().equals("F"))
                .singleElement()
                .satisfies(person -> {
                    assertThat(person.due().missed()).isEqualTo(1);
                    assertThat(person.booking()).isEmpty();
                });
        long wide = day(TUESDAY, "08:00", "14:00", 2);
        days.propose(wide, TUESDAY);
        assertThat(booking(wide, "F").missed()).isEqualTo(1);
    }

    @Test
    void aSignedTestChecksInAndFreesLaterTimesForTheSame() {
        long key = day(TODAY, "06:00", "10:00", 1);
        long next = day(TUESDAY, "06:00", "08:00", 1);
        bookings.book(key, LocalTime.of(6, 0), "A", Occasion.ANNUAL);
        bookings.book(next, LocalTime.of(6, 0), "R", Occasion.RETEST);
        assertThat(bookings.arrive(
                        booking(key, "A").key(),
                        new BookingService.Arrival(Optional.of(new BigDecimal("-1")), Optional.empty())))
                .isEqualTo(BookingResult.HOURS_OUT_OF_RANGE);
        assertThat(bookings.arrive(
                        booking(key, "A").key(),
                        new BookingService.Arrival(Optional.of(new BigDecimal("14.5")), Optional.of(true))))
                .isEqualTo(BookingResult.DONE);
        assertThat(booking(key, "A").hoursSinceNoise())
                .hasValueSatisfying(hours -> assertThat(hours).isEqualByComparingTo("14.5"));
        sign("A", TODAY, TestPurpose.ANNUAL);
        sign("R", TODAY, TestPurpose.RETEST);
        assertThat(listed(key)).containsExactly("06:00 A ANNUAL TESTED");
        assertThat(listed(next)).isEmpty();
        assertThat(bookings.noShow(booking(key, "A").key())).isEqualTo(BookingResult.SETTLED);
    }

    private void sign(String workerId, LocalDate date, TestPurpose purpose) {
        Long worker = jdbc.queryForObject("select id from worker where worker_id = ?", Long.class, workerId);
        assertThat(worker).isNotNull();
        transaction.executeWithoutResult(status -> events.publishEvent(new TestSigned(1, worker, date, purpose, 1)));
    }

    @Test
    void aRefusalNeedsItsNote() {
        long key = day(TODAY, "06:00", "10:00", 1);
        bookings.book(key, LocalTime.of(6, 0), "A", Occasion.ANNUAL);
        long booked = booking(key, "A").key();
        assertThat(bookings.refuse(booked, "")).isEqualTo(BookingResult.REASON_MISSING);
        assertThat(bookings.refuse(booked, "does not want the test")).isEqualTo(BookingResult.DONE);
        assertThat(listed(key)).containsExactly("06:00 A ANNUAL REFUSED");
        assertThat(days.freeTimes(key)).hasSize(4);
    }

    @Test
    void aVisitLeavesTheWeekendOutAndIsFilledTogether() {
        PlannedDays result =
                days.plan(planned(LocalDate.of(2026, 3, 13), LocalDate.of(2026, 3, 16), "06:00", "08:00", 1));
        assertThat(result)
                .isInstanceOfSatisfying(
                        PlannedDays.Stored.class,
                        stored -> assertThat(stored.days()).isEqualTo(2));
        List<TestDayCounts> planned = days.days();
        assertThat(planned).extracting(row -> row.day().date().toString()).containsExactly("2026-03-13", "2026-03-16");
        days.propose(planned.getFirst().day().key(), LocalDate.of(2026, 4, 1));
        assertThat(planned.stream()
                        .flatMap(row -> days.bookings(row.day().key()).stream())
                        .map(Booking::workerId))
                .containsExactlyInAnyOrder("R", "A", "B", "L");
        days.cancel(planned.getFirst().day().key());
        assertThat(days.bookings(planned.getFirst().day().key())).isEmpty();
        assertThat(days.cancel(planned.getFirst().day().key())).isEqualTo(BookingResult.DAY_OVER);
    }

    @Test
    void whatStandsAgainstADayIsSaidBesideItsField() {
        PlannedDays result = days.plan(new NewTestDays(
                "Mill",
                " ",
                Optional.of(TODAY.minusDays(1)),
                Optional.empty(),
                Optional.of(LocalTime.of(9, 0)),
                Optional.of(LocalTime.of(8, 0)),
                Optional.of(0),
                List.of(),
                "nobody-of-this-name",
                false));
        assertThat(result)
                .isInstanceOfSatisfying(
                        PlannedDays.Refused.class,
                        refused -> assertThat(refused.problems())
                                .extracting(DayProblem::field)
                                .containsExactly(
                                        DayProblem.Field.PLACE,
                                        DayProblem.Field.FIRST_DAY,
                                        DayProblem.Field.PER_HOUR,
                                        DayProblem.Field.TO,
                                        DayProblem.Field.NURSE));
        assertThat(days.days()).isEmpty();
    }

    @Test
    void aNurseOfAnotherSiteSeesNothingOfIt() {
        long key = day(TUESDAY, "06:00", "08:00", 1);
        bookings.book(key, LocalTime.of(6, 0), "A", Occasion.ANNUAL);
        long booked = booking(key, "A").key();
        SignIn.as(Role.NURSE, "Yard");
        assertThat(days.days()).isEmpty();
        assertThat(days.find(key)).isEmpty();
        assertThat(days.bookings(key)).isEmpty();
        assertThat(days.propose(key, TUESDAY)).isEmpty();
        assertThat(days.confirm(key)).isEmpty();
        assertThat(days.clearProposals(key)).isZero();
        assertThat(days.cancel(key)).isEqualTo(BookingResult.UNKNOWN);
        assertThat(sheets.pdf(key)).isEmpty();
        assertThat(bookings.ofWorker("A")).isEmpty();
        assertThat(bookings.dueOf("A")).isEmpty();
        assertThat(bookings.move(booked, key, LocalTime.of(7, 0))).isEqualTo(BookingResult.UNKNOWN);
        assertThat(bookings.remove(booked, "x")).isEqualTo(BookingResult.UNKNOWN);
        assertThat(due.find(DueTestFilter.all(TUESDAY)))
                .extracting(person -> person.worker().workerId())
                .containsExactly("Y");
        assertThat(sites.set(new TestSite("Mill", true, true, ZoneOffset.UTC))).isFalse();
        assertThat(((PlannedDays.Refused) days.plan(planned(TUESDAY, TUESDAY, "06:00", "08:00", 1))).problems())
                .extracting(DayProblem::field)
                .containsExactly(DayProblem.Field.SITE);
    }

    @Test
    void aMobileUnitGivesAYearAndHasProtectorsWornFromTheSixthMonthOn() {
        assertThat(waiting.find()).as("no mobile unit, no exception").isEmpty();
        sites.set(new TestSite("Mill", true, false, ZoneOffset.UTC));
        assertThat(bookings.dueOf("B"))
                .extracting(
                        person -> person.due().lastDay() + " " + person.due().basis())
                .containsExactly("2026-09-20 29 CFR 1910.95(g)(5)(ii)");
        assertThat(waiting.find())
                .extracting(row -> row.workerId() + " " + row.protectorsFrom() + " " + row.baselineBy())
                .containsExactly("B 2026-03-20 2026-09-20");
        assertThat(duties(TODAY.plusDays(30)))
                .extracting(duty -> duty.due() + " " + duty.basis())
                .containsExactly("2026-03-20 29 CFR 1910.95(g)(5)(ii) and (i)(2)(ii)(A)");
        assertThat(duties(TODAY)).isEmpty();
        assertThat(waiting.wornFrom("B", TODAY.plusDays(1))).contains("The day is still to come.");
        assertThat(waiting.wornFrom("B", TODAY)).isEmpty();
        assertThat(duties(TODAY.plusDays(30))).isEmpty();
        assertThat(waiting.find().getFirst().wornFrom()).contains(TODAY);
    }

    private List<OpenDuty> duties(LocalDate until) {
        List<OpenDuty> open = transaction.execute(status -> duties.open(SiteScope.all(), TODAY, until));
        assertThat(open).isNotNull();
        return open;
    }

    @Test
    void theRunSheetSaysWhoComesWhenAndWhatForAndNoThreshold() throws Exception {
        long key = day(TUESDAY, "06:00", "10:00", 1);
        days.propose(key, TUESDAY.plusDays(30));
        byte[] pdf = sheets.pdf(key).orElseThrow();
        try (var document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text)
                    .contains("Run sheet, Tuesday 10 Mar 2026")
                    .contains("4 people on Tuesday 10 Mar 2026, 1 of them a retest.")
                    .contains("Some of these times are not confirmed yet.")
                    .contains("Ada Núñez")
                    .contains("Retest")
                    .contains("Health record. Mill.")
                    .contains("(g)(5)(iv)")
                    .doesNotContain("dB");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
        assertThat(jdbc.queryForList(
                        "select subject_id from audit_event where action = 'RUN_SHEET_OPENED'", String.class))
                .containsExactly(Long.toString(key));
    }

    @Test
    void theAuditTrailNamesNobody() {
        long key = day(TODAY, "06:00", "10:00", 1);
        days.propose(key, TUESDAY.plusDays(30));
        days.confirm(key);
        bookings.noShow(booking(key, "A").key());
        bookings.refuse(booking(key, "B").key(), "a secret reason");
        assertThat(jdbc.queryForList("select action from audit_event", String.class))
                .contains("TEST_DAY_PLANNED", "TESTS_PROPOSED", "TESTS_CONFIRMED", "NO_SHOW_NOTED", "REFUSAL_NOTED");
        assertThat(jdbc.queryForList("select subject_id || ' ' || detail from audit_event", String.class))
                .noneMatch(line -> line.contains("Orrin") || line.contains("Quill") || line.contains("secret"));
    }

    @Test
    void everyChangeOfABookingMakesTheDayChangedSinceForCalendars() {
        long key = day(TODAY, "06:00", "10:00", 1);
        bookings.book(key, LocalTime.of(6, 0), "A", Occasion.ANNUAL);
        long booked = booking(key, "A").key();
        String before = changedAt(key);
        clock.moveTo(TODAY.plusDays(1));
        bookings.noShow(booked);
        assertThat(changedAt(key)).isGreaterThan(before);
    }

    private String changedAt(long key) {
        String changed =
                jdbc.queryForObject("select cast(changed_at as varchar) from test_day where id = ?", String.class, key);
        assertThat(changed).isNotNull();
        return changed;
    }

    @Test
    void timesDuringABreakAreNotGiven() {
        PlannedDays result = days.plan(new NewTestDays(
                "Mill",
                "Room",
                Optional.of(TUESDAY),
                Optional.empty(),
                Optional.of(LocalTime.of(6, 0)),
                Optional.of(LocalTime.of(9, 0)),
                Optional.of(1),
                List.of(new DayHours.Break(LocalTime.of(7, 0), LocalTime.of(8, 0))),
                "",
                true));
        long key = ((PlannedDays.Stored) result).firstKey();
        assertThat(days.find(key).orElseThrow().day().hours().breaks()).hasSize(1);
        assertThat(days.freeTimes(key))
                .extracting(Slot::starts)
                .containsExactly(LocalTime.of(6, 0), LocalTime.of(8, 0));
    }
}
