package org.thresholdregister.testdays;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.Temporal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.Observance;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.annotation.DirtiesContext;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.RegisterTest;
import org.thresholdregister.platform.accounts.Accounts;
import org.thresholdregister.platform.accounts.NewAccount;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

/** Calendars as a calendar program reads them over the network, and by the library's own rules. */
@RegisterTest
@DirtiesContext
@Import(TestImports.class)
@ExtendWith(OutputCaptureExtension.class)
class CalendarFeedTest {

    private static final String PASSWORD = "a kettle on every stove";
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    @LocalServerPort
    private int port;

    @Autowired
    private Accounts accounts;

    @Autowired
    private CalendarLinkService links;

    @Autowired
    private TestSiteService sites;

    @Autowired
    private TestDayService days;

    @Autowired
    private BookingService bookings;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private Clock clock;

    private LocalDate tuesday;

    @BeforeEach
    void twoNursesAndADay() {
        tuesday = LocalDate.now(clock).plusDays(7);
        SignIn.as(Role.ADMINISTRATOR);
        Stream.of("ida", "ola").forEach(name -> account(name, Role.NURSE, SiteScope.only(Set.of("Mill"))));
        account("otto", Role.SAFETY_OFFICER, SiteScope.only(Set.of("Mill")));
        SignIn.as(Role.NURSE);
        LocalDate lastTest = LocalDate.now(clock).minusMonths(12).plusDays(3);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,department,enrolled_from
                A,1990-05-01,F,Orrin,Bela,Mill,Press,2015-01-01
                Y,1990-05-01,F,Tarn,Fia,Yard,Cranes,2015-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("A", lastTest.toString(), "baseline", 10, 10)
                        + TestImports.test("Y", lastTest.toString(), "baseline", 10, 10),
                "");
        sites.set(new TestSite("Mill", false, false, NEW_YORK));
        sites.set(new TestSite("Yard", false, false, NEW_YORK));
        long day = day("Mill", "ida");
        assertThat(bookings.book(day, LocalTime.of(6, 0), "A", Occasion.ANNUAL)).isEqualTo(BookingResult.DONE);
        day("Yard", "");
        as("ida", Role.NURSE);
    }

    private void account(String name, Role role, SiteScope scope) {
        if (accounts.list().stream().noneMatch(known -> known.username().equals(name))) {
            assertThat(accounts.add(new NewAccount(name, name, PASSWORD, role, scope)))
                    .isEmpty();
        } else {
            accounts.reactivate(name);
        }
    }

    private static void as(String username, Role role) {
        SignIn.as(username, role, SiteScope.only(Set.of("Mill")));
    }

    private long day(String site, String nurse) {
        PlannedDays planned = days.plan(new NewTestDays(
                site,
                "Room 2, ground floor; by the gate",
                Optional.of(tuesday),
                Optional.empty(),
                Optional.of(LocalTime.of(6, 0)),
                Optional.of(LocalTime.of(14, 0)),
                Optional.of(4),
                List.of(),
                nurse,
                false));
        assertThat(planned).isInstanceOf(PlannedDays.Stored.class);
        return ((PlannedDays.Stored) planned).firstKey();
    }

    @AfterEach
    void clear() {
        List.of("test_left_out", "test_booking", "test_day", "test_site", "calendar_link")
                .forEach(table -> jdbc.update("delete from " + table));
        SignIn.out();
    }

    private HttpResponse<String> get(String path) {
        try (HttpClient client = HttpClient.newHttpClient()) {
            return client.send(
                    HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/" + path))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
        } catch (Exception failure) {
            throw new AssertionError(failure);
        }
    }

    private Calendar read(String path) {
        HttpResponse<String> response = get(path);
        assertThat(response.statusCode()).isEqualTo(200);
        return parsed(response.body());
    }

    private static Calendar parsed(String text) {
        try {
            Calendar calendar = new CalendarBuilder().build(new StringReader(text));
            assertThat(calendar.validate().getEntries()).isEmpty();
            return calendar;
        } catch (Exception failure) {
            throw new AssertionError(text, failure);
        }
    }

    private static List<VEvent> events(Calendar calendar) {
        return calendar.getComponents(Component.VEVENT);
    }

    private static String value(VEvent event, String property) {
        return event.getProperty(property).map(Property::getValue).orElse("");
    }

    private static VEvent session(Calendar calendar) {
        return events(calendar).stream()
                .filter(event -> value(event, Property.SUMMARY).startsWith("Hearing tests"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aNursesCalendarTellsOfOwnDaysAndOfDeadlinesAndNamesNobody() {
        String path = links.make();
        HttpResponse<String> response = get(path);
        assertThat(response.headers().firstValue("Content-Type")).contains("text/calendar;charset=UTF-8");
        assertThat(response.headers().firstValue("Set-Cookie")).as("no session").isEmpty();
        assertThat(response.body())
                .doesNotContain("Orrin")
                .doesNotContain("Bela")
                .contains("\r\n");
        assertThat(response.body().lines().mapToInt(line -> line.getBytes(StandardCharsets.UTF_8).length))
                .allMatch(length -> length <= 75);
        Calendar calendar = parsed(response.body());
        VEvent day = session(calendar);
        assertThat(value(day, Property.SUMMARY)).isEqualTo("Hearing tests: 1 person");
        assertThat(value(day, Property.LOCATION)).isEqualTo("Mill, Room 2, ground floor; by the gate");
        assertThat(value(day, Property.DESCRIPTION)).isEmpty();
        Temporal starts = day.getDateTimeStart().getDate();
        assertThat(ZonedDateTime.from(starts).toInstant())
                .isEqualTo(tuesday.atTime(6, 0).atZone(NEW_YORK).toInstant());
        assertThat(value(day, Property.DTSTART)).isEqualTo(tuesday.toString().replace("-", "") + "T060000");
        assertThat(day.getProperty(Property.DTSTAMP)).isPresent();
        assertThat(day.getProperty(Property.LAST_MODIFIED)).isPresent();
        VEvent due = events(calendar).stream()
                .filter(event -> value(event, Property.SUMMARY).equals("1 annual test due"))
                .findFirst()
                .orElseThrow();
        assertThat(value(due, Property.DTSTART))
                .isEqualTo(LocalDate.now(clock).plusDays(3).toString().replace("-", ""));
        assertThat(events(calendar)).as("nothing of the other site").hasSize(2);
    }

    @Test
    void theTimeZoneChangesWhenThePlatformSaysSo() {
        VTimeZone zone =
                read(links.make()).<VTimeZone>getComponent(Component.VTIMEZONE).orElseThrow();
        for (Observance observance : zone.getObservances()) {
            ZoneOffset before = observance
                    .<TzOffsetFrom>getProperty(Property.TZOFFSETFROM)
                    .orElseThrow()
                    .getOffset();
            ZoneOffset after = observance
                    .<TzOffsetTo>getProperty(Property.TZOFFSETTO)
                    .orElseThrow()
                    .getOffset();
            String onset = observance
                    .getProperty(Property.DTSTART)
                    .map(Property::getValue)
                    .orElseThrow();
            var local = LocalDateTime.parse(onset, DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss"));
            var instant = local.toInstant(before);
            assertThat(NEW_YORK.getRules().getOffset(instant)).isEqualTo(after);
            assertThat(NEW_YORK.getRules().isDaylightSavings(instant))
                    .isEqualTo(observance.getName().equals("DAYLIGHT"));
        }
        assertThat(zone.getObservances()).hasSizeGreaterThanOrEqualTo(5);
    }

    @Test
    void identifiersStayAndTheSequenceGrowsWhenADayIsCalledOff() {
        String path = links.make();
        Calendar first = read(path);
        Calendar again = read(path);
        assertThat(events(again).stream()
                        .map(event -> value(event, Property.UID))
                        .sorted())
                .containsExactlyElementsOf(events(first).stream()
                        .map(event -> value(event, Property.UID))
                        .sorted()
                        .toList());
        assertThat(events(first).stream()
                        .map(event -> value(event, Property.UID))
                        .distinct())
                .hasSize(2);
        assertThat(value(session(first), Property.SEQUENCE)).isEqualTo("0");
        days.cancel(days.days().getFirst().day().key());
        VEvent after = session(read(path));
        assertThat(value(after, Property.UID)).isEqualTo(value(session(first), Property.UID));
        assertThat(value(after, Property.SEQUENCE)).isEqualTo("1");
        assertThat(value(after, Property.STATUS)).isEqualTo("CANCELLED");
    }

    @Test
    void namesComeWithTheSitesWishAlone() {
        String path = links.make();
        sites.set(new TestSite("Mill", false, true, NEW_YORK));
        assertThat(value(session(read(path)), Property.DESCRIPTION)).isEqualTo("06:00 Bela Orrin");
        assertThat(get(path).body()).doesNotContain("annual test\\n");
        assertThat(jdbc.queryForList(
                        "select detail from audit_event where action = 'TEST_SITE_CHANGED' order by id desc",
                        String.class))
                .first()
                .asString()
                .contains("names in calendars");
    }

    @Test
    void anotherNurseSeesNoDayOfThisOneAndAnOfficerSeesAll() {
        as("ola", Role.NURSE);
        assertThat(events(read(links.make())))
                .extracting(event -> value(event, Property.SUMMARY))
                .containsExactly("1 annual test due");
        as("otto", Role.SAFETY_OFFICER);
        assertThat(value(session(read(links.make())), Property.SUMMARY)).isEqualTo("Hearing tests: 1 person");
    }

    @Test
    void anAddressThatIsWrongRenewedEndedOrOfAClosedAccountIsNotFound(CapturedOutput output) {
        String old = links.make();
        String path = links.make();
        assertThat(path).matches("calendar/[A-Za-z0-9_-]{43}\\.ics");
        assertThat(get(old).statusCode()).isEqualTo(404);
        assertThat(get("calendar/guess.ics").statusCode()).isEqualTo(404);
        assertThat(get(path).statusCode()).isEqualTo(200);
        SignIn.as(Role.ADMINISTRATOR);
        accounts.deactivate("ida");
        HttpResponse<String> closed = get(path);
        assertThat(closed.statusCode()).isEqualTo(404);
        assertThat(closed.body()).isEqualTo(get("calendar/guess.ics").body());
        accounts.reactivate("ida");
        assertThat(get(path).statusCode()).isEqualTo(200);
        as("ida", Role.NURSE);
        links.revoke();
        assertThat(links.exists()).isFalse();
        assertThat(get(path).statusCode()).isEqualTo(404);

        String token = path.substring("calendar/".length(), path.length() - ".ics".length());
        LoggerFactory.getLogger(getClass()).info("the output is captured");
        assertThat(output).contains("the output is captured").doesNotContain(token);
        assertThat(jdbc.queryForList("select detail || subject_id from audit_event", String.class))
                .noneMatch(line -> line.contains(token));
        assertThat(jdbc.queryForList("select token_hash from calendar_link", String.class))
                .doesNotContain(token);
    }

    @Test
    void theFeedFollowsTheSitesOfTheAccountAsTheyAreNow() {
        String path = links.make();
        assertThat(events(read(path))).hasSize(2);
        jdbc.update("delete from user_account_site where user_account_id ="
                + " (select id from user_account where username = 'ida')");
        try {
            assertThat(events(read(path))).isEmpty();
        } finally {
            jdbc.update("insert into user_account_site (user_account_id, site)"
                    + " select id, 'Mill' from user_account where username = 'ida'");
        }
    }
}
