package org.thresholdregister.employment.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026. */
@RegisterTest
class WorkingLifePagesTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store("""
                worker_id,birth_date,sex,family_name,given_name,hire_date,site,department,job_title,enrolled_from
                M-1,1990-05-01,F,Núñez,Ada,2020-01-06,Mill,Saws,Sawyer,2020-02-01
                Y-1,1990-01-01,F,Quill,Cato,2018-03-01,Yard,Cranes,Driver,2018-03-01
                """, "", "");
    }

    private String shown(String path) {
        UI.getCurrent().navigate(path);
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    @SuppressWarnings("unchecked")
    private Select<EventChoice> kind() {
        return $(Select.class)
                .withPropertyValue(Select::getLabel, "What happened")
                .single();
    }

    private DatePicker day(String label) {
        return $(DatePicker.class)
                .withPropertyValue(DatePicker::getLabel, label)
                .single();
    }

    private TextField field(String label) {
        return $(TextField.class).withPropertyValue(TextField::getLabel, label).single();
    }

    private void press(String words) {
        test($(Button.class).withText(words).single()).click();
    }

    @Test
    void theWorkingLifeOpensWithWhatHoldsAndSaysWhatFollows() {
        assertThat(shown("worker/M-1"))
                .contains("Working life")
                .contains("Employed since 6 Jan 2020; enrolled since 1 Feb 2020; cases go on this employer's log.")
                .contains("Enrolled from 1 Feb 2020 and not tested yet")
                .contains("29 CFR 1910.95(g)(5)(i)")
                .contains("As the roster tells it");
    }

    @Test
    void aLeaveIsEnteredAndTheDueDateIsSaidToStand() {
        shown("worker/M-1");
        press("Add to the working life");
        kind().setValue(EventChoice.LEAVE_BEGAN);
        day("First day of the leave").setValue(LocalDate.of(2026, 3, 2));
        day("Last day of the leave").setValue(LocalDate.of(2026, 5, 1));
        press("Enter");
        assertThat(text())
                .contains("On leave since 2 Mar 2026, until 1 May 2026")
                .contains("No paragraph that was looked up says that a due date waits for the end of a leave")
                .contains("On leave until 1 May 2026");
    }

    @Test
    void aMoveToAnotherSiteSaysBeforehandWhoSeesTheRecordAndAfterwardsThatItIsGone() {
        SignIn.as(Role.NURSE, "Mill");
        shown("worker/M-1");
        press("Add to the working life");
        field("Site").setValue("Yard");
        assertThat($(Paragraph.class).all().stream().map(Paragraph::getText))
                .contains(
                        "Since 9 Mar 2026 the whole record is open to those of Yard, earlier tests included; those of Mill"
                                + " see it no more.");
        press("Enter");
        assertThat(text()).contains("No record to show").doesNotContain("Núñez");
        assertThat($(Notification.class).all()).isNotEmpty();
    }

    @Test
    void whatDoesNotFitIsSaidBesideTheDayAndNothingIsStored() {
        shown("worker/M-1");
        press("Add to the working life");
        kind().setValue(EventChoice.LEFT);
        day("Last day of employment").setValue(LocalDate.of(2019, 12, 31));
        press("Enter");
        assertThat(day("Last day of employment").getErrorMessage())
                .isEqualTo("This is the end of an employment, before the first day of any.");
        kind().setValue(EventChoice.ENGAGED);
        press("Enter");
        assertThat(field("Name of the agency or contractor").getErrorMessage())
                .isEqualTo("Give the name of the agency or contractor.");
        kind().setValue(EventChoice.MOVED);
        day("First day there").setValue(LocalDate.of(2026, 3, 2));
        field("Site").setValue("Yrad");
        press("Enter");
        assertThat(field("Site").getErrorMessage()).startsWith("Nobody works at “Yrad” yet.");
        assertThat(jdbc.queryForObject("select count(*) from employment_event", Integer.class))
                .isZero();
        press("Enter");
        assertThat(text()).contains("Moved to Sawyer, Saws, Yrad");
    }

    @Test
    void anEntryIsCorrectedWithAReasonAndStaysReadable() {
        shown("worker/M-1");
        test($(NativeButton.class)
                        .withPropertyValue(
                                button -> button.getAriaLabel().orElse(""), "Correct the entry of 1 Feb 2020")
                        .single())
                .click();
        day("First day at or above the action level").setValue(LocalDate.of(2020, 3, 1));
        press("Enter");
        var reason = $(TextArea.class)
                .withPropertyValue(TextArea::getLabel, "Why the entry was wrong")
                .single();
        assertThat(reason.getErrorMessage()).isEqualTo("A correction is taken down only with its reason.");
        reason.setValue("Moved to the saws in March");
        press("Enter");
        assertThat(text())
                .contains("enrolled since 1 Mar 2020")
                .contains("corrected")
                .contains("in place of an earlier entry")
                .contains("Moved to the saws in March");
    }

    @Test
    @SuppressWarnings("unchecked")
    void theOfficerLooksWhoGoesBeforeAPlantIsSoldAndMarksTheRecordsHandedOver() {
        SignIn.as(Role.SAFETY_OFFICER);
        assertThat(shown("sold-plant")).contains("No plant was sold with its workers.");
        press("Look who goes");
        assertThat(field("Successor").getErrorMessage()).isEqualTo("Name the new owner.");
        ((Select<String>) $(Select.class)
                        .withPropertyValue(Select::getLabel, "Site")
                        .single())
                .setValue("Mill");
        field("Successor").setValue("Larkmoor Glass");
        press("Look who goes");
        assertThat(text())
                .contains("1 worker of Mill would go to Larkmoor Glass")
                .contains("Ada Núñez");
        press("Transfer 1 worker");
        assertThat(text())
                .contains("1 plant was sold with the workers; the records of 1 are still to be handed over.")
                .contains("29 CFR 1910.95(m)(5)");
        test($(NativeButton.class).withText("Mark handed over").single()).click();
        press("Enter");
        assertThat(field("Received by").getErrorMessage()).isEqualTo("Say who took the records.");
        field("Received by").setValue("Ines Falk");
        press("Enter");
        assertThat(text()).contains("handed over on 9 Mar 2026 to Ines Falk");
        assertThat(shown("worker/M-1"))
                .contains("Went with the sold plant to Larkmoor Glass")
                .contains("29 CFR 1904.34");
    }

    @Test
    void aNurseReadsTheSalesAndSellsNothing() {
        assertThat(shown("sold-plant")).contains("No sale is on record.").doesNotContain("Sell a plant");
    }
}
