package org.thresholdregister.testdays.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.BigDecimalField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.router.QueryParameters;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.scheduling.Slot;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.testdays.NewTestDays;
import org.thresholdregister.testdays.PlannedDays;
import org.thresholdregister.testdays.TestDayService;

/** Today is 9 March 2026; R may be retested until 31 March, and A's annual test was due on 5 March. */
@RegisterTest
class TestDayViewsTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @Autowired
    private TestDayService days;

    @BeforeEach
    void aSite() {
        SignIn.as(Role.NURSE);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,department,enrolled_from
                R,1990-05-01,F,Núñez,Ada,Mill,Saws,2020-01-01
                A,1990-05-01,F,Orrin,Bela,Mill,Press,2020-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("R", "2025-03-02", "baseline", 10, 10)
                        + TestImports.test("R", "2026-03-01", "annual", 10, 30)
                        + TestImports.test("A", "2025-03-05", "baseline", 10, 10),
                "");
    }

    private long today(int hours) {
        PlannedDays planned = days.plan(new NewTestDays(
                "Mill",
                "First aid room",
                Optional.of(MovableClock.FIRST_DAY),
                Optional.empty(),
                Optional.of(LocalTime.of(6, 0)),
                Optional.of(LocalTime.of(6 + hours, 0)),
                Optional.of(1),
                List.of(),
                "",
                false));
        return ((PlannedDays.Stored) planned).firstKey();
    }

    private String shown(String address) {
        String[] parts = address.split("\\?", 2);
        UI.getCurrent()
                .navigate(parts[0], parts.length == 1 ? QueryParameters.empty() : QueryParameters.fromString(parts[1]));
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    private void press(String words) {
        Button button = $(Button.class).all().stream()
                .filter(one -> one.getText().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words));
        test(button).click();
    }

    private void pressInDialog(String words) {
        Button button = $(Button.class, $(Dialog.class).single()).all().stream()
                .filter(one -> one.getText().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words));
        test(button).click();
    }

    private TextField textField(String label) {
        return $(TextField.class).withPropertyValue(TextField::getLabel, label).single();
    }

    @Test
    void aDayIsPlannedFilledConfirmedAndRun() {
        assertThat(shown("test-days"))
                .contains("No test day is ahead; ")
                .contains("2 people due within 30 days have no time yet.")
                .contains("No test day is planned.");
        textField("Nurse, by sign-in name").clear();
        press("Plan it");
        assertThat(textField("Room or stand").isInvalid()).isTrue();
        assertThat(textField("Room or stand").getErrorMessage())
                .isEqualTo("Say where people go, such as First aid room 2.");
        textField("Room or stand").setValue("Room 2");
        $(DatePicker.class)
                .withPropertyValue(DatePicker::getLabel, "Day")
                .single()
                .setValue(MovableClock.FIRST_DAY);
        press("Plan it");
        assertThat(text())
                .contains("Monday 9 Mar 2026")
                .contains("Nobody is on the list for Monday 9 Mar 2026.")
                .contains("Mill, Room 2. 06:00 to 14:00, 4 people in an hour.");
        press("Propose who comes");
        pressInDialog("Propose");
        assertThat(text())
                .contains("2 people on Monday 9 Mar 2026, 1 of them a retest; 2 of them are not confirmed yet.")
                .contains("Shift not known: ask for 14 hours away from workplace noise.")
                .contains("No quiet hours are required.")
                .contains("in time until 31 Mar 2026, 29 CFR 1910.95(g)(7)(ii)");
        press("Confirm");
        assertThat(text()).contains("2 times are confirmed. The case behind the retest knows of it.");
        press("Did not come");
        assertThat(text()).contains("did not come; the test stays due");
        press("Arrived");
        $(BigDecimalField.class).single().setValue(new BigDecimal("-4"));
        pressInDialog("Arrived");
        assertThat($(BigDecimalField.class).single().getErrorMessage())
                .isEqualTo("Give the hours as a number from 0 to 9999, or leave them empty.");
        $(BigDecimalField.class).single().setValue(new BigDecimal("15"));
        pressInDialog("Arrived");
        assertThat(text()).contains("15 h since noise").contains("has arrived.");
    }

    @Test
    @SuppressWarnings("unchecked")
    void aBookingIsMovedByChoosingAndTakenOffWithItsReason() {
        long key = today(3);
        days.propose(key, LocalDate.of(2026, 4, 1));
        days.confirm(key);
        String first = days.bookings(key).getFirst().workerId();
        shown("test-day/" + key);
        press("Change");
        Select<Slot> time =
                $(Select.class).withPropertyValue(Select::getLabel, "Free time").single();
        pressInDialog("Move");
        assertThat(time.getErrorMessage()).isEqualTo("Choose a time.");
        time.setValue(new Slot(MovableClock.FIRST_DAY, LocalTime.of(8, 0)));
        pressInDialog("Move");
        assertThat(text()).contains("comes on Monday 9 Mar 2026 at 08:00 now.");
        assertThat(days.bookings(key).getLast().workerId()).isEqualTo(first);
        press("Change");
        pressInDialog("Take off");
        assertThat($(TextArea.class).single().getErrorMessage()).startsWith("Say why");
        $(TextArea.class).single().setValue("on leave");
        pressInDialog("Take off");
        assertThat(text()).contains("is off the list, and stays due.");
        assertThat(days.bookings(key)).hasSize(1);
    }

    @Test
    void whoDoesNotFitStandsBelowWithTheReason() {
        long key = today(1);
        days.propose(key, LocalDate.of(2026, 4, 1));
        assertThat(shown("test-day/" + key))
                .contains("1 person on Monday 9 Mar 2026, 1 of them a retest")
                .contains("1 due person did not fit.")
                .contains("Who did not fit")
                .contains("more urgent people have every time that would do");
    }

    @Test
    void theListOfWhoIsDueFollowsItsAddress() {
        assertThat(shown("due-tests")).contains("2 tests are due by 8 Apr 2026 among those shown, 1 of them past");
        assertThat(shown("due-tests?for=retest")).contains("1 test is due by");
        assertThat(shown("due-tests?booked=with-a-time"))
                .contains("0 tests are due")
                .contains("No test is due that fits this filter.");
        assertThat(shown("due-tests?for=nonsense")).doesNotContain("tests are due by");
    }

    @Test
    @SuppressWarnings("unchecked")
    void oneWorkerIsBookedFromTheWorkersPage() {
        assertThat(shown("worker/A")).contains("Book a test").doesNotContain("Booked tests");
        assertThat(shown("book-test/A")).contains("No test day is ahead at this site.");
        long key = today(2);
        assertThat(shown("book-test/A"))
                .contains("Bela Orrin")
                .contains("works a shift that is not known here and is due for the annual test");
        Select<Slot> time =
                $(Select.class).withPropertyValue(Select::getLabel, "Free time").single();
        time.setValue(new Slot(MovableClock.FIRST_DAY, LocalTime.of(7, 0)));
        press("Book");
        assertThat(text()).contains("1 person on Monday 9 Mar 2026, none of them a retest");
        assertThat(days.bookings(key)).hasSize(1);
        assertThat(shown("worker/A"))
                .contains("Booked tests")
                .contains("Monday 9 Mar 2026")
                .contains("proposed");
        assertThat(shown("book-test/A")).contains("There is a time on Monday 9 Mar 2026 already.");
        assertThat(shown("book-test/Z-9")).contains("No test is due for a worker of this number");
    }

    @Test
    void aShiftIsEnteredAndADepartmentWorksIt() {
        assertThat(shown("work-shifts")).contains("No shift is known, so that quiet hours must be asked of everybody.");
        press("Enter the shift");
        assertThat($(TimePicker.class).all()).allMatch(TimePicker::isInvalid);
        $(TimePicker.class).all().getFirst().setValue(LocalTime.of(22, 0));
        $(TimePicker.class).all().getLast().setValue(LocalTime.of(6, 0));
        press("Enter the shift");
        assertThat(textField("Name").isInvalid()).isTrue();
        textField("Name").setValue("night");
        press("Enter the shift");
        assertThat(text()).contains("1 shift is known").contains("22:00 to 06:00");
        textField("Worker's number").setValue("Z-9");
        press("Give the worker this shift");
        assertThat(textField("Worker's number").getErrorMessage()).startsWith("No worker of this number");
        textField("Worker's number").setValue("A");
        press("Give the worker this shift");
        assertThat(text()).contains("Stored for the worker A.");
    }

    @Test
    void theAddressOfACalendarIsShownOnce() {
        assertThat(shown("test-calendar")).contains("Your calendar has no address yet.");
        press("Make an address");
        String address = textField("Address, shown this once").getValue();
        assertThat(address).matches(".*/calendar/[A-Za-z0-9_-]{43}\\.ics");
        assertThat(shown("test-calendar"))
                .contains("Your calendar has an address; it is not shown again.")
                .doesNotContain(address);
        press("End the address");
        assertThat(text()).contains("The address is ended");
    }

    @Test
    void theListOfThoseWhoWaitForAMobileUnitSaysWhyItIsEmpty() {
        assertThat(shown("protectors-until-baseline"))
                .contains("29 CFR 1910.95(g)(5)(ii) and (i)(2)(ii)(A)")
                .contains("Nobody waits for a mobile unit that long.");
    }

    @Test
    void aSafetyOfficerReadsAndChangesNothing() {
        long key = today(3);
        days.propose(key, LocalDate.of(2026, 4, 1));
        SignIn.as(Role.SAFETY_OFFICER);
        assertThat(shown("test-days")).contains("Days to come first").doesNotContain("Plan a test day");
        assertThat(shown("test-day/" + key)).contains("Ada Núñez").contains("Run sheet");
        assertThat($(Button.class).all()).extracting(Button::getText).doesNotContain("Confirm", "Change", "Arrived");
        assertThat(shown("worker/A")).doesNotContain("Book a test");
        assertThat(shown("work-shifts")).doesNotContain("Enter a shift");
        assertThat(shown("test-calendar")).doesNotContain("How a site is tested");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"test-days", "test-day/1", "due-tests", "book-test/A", "work-shifts", "protectors-until-baseline"
            })
    void aPlantManagerSeesNoneOfIt(String address) {
        SignIn.as(Role.PLANT_MANAGER);
        assertThat(shown(address)).doesNotContain("Núñez").doesNotContain("Test days");
    }

    @Test
    void anAdministratorChoosesWhetherASiteShowsNames() {
        SignIn.as(Role.ADMINISTRATOR);
        assertThat(shown("test-calendar"))
                .contains("A calendar names nobody unless a site wants it.")
                .doesNotContain("Make an address");
        press("Store");
        assertThat(text()).doesNotContain("Stored for");
    }

    @Test
    void aDayOfAnotherSiteLooksLikeOneThatDoesNotExist() {
        long key = today(3);
        SignIn.as(Role.NURSE, "Yard");
        String page = shown("test-day/" + key);
        assertThat(page).contains("No test day to show");
        assertThat(shown("test-day/99999")).isEqualTo(page);
    }
}
