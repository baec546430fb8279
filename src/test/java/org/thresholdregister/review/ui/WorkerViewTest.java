package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.review.BulkService;
import org.thresholdregister.review.Evidence;
import org.thresholdregister.review.TaskKey;
import org.thresholdregister.review.TaskKind;

/** Today is 9 March 2026; M-2 showed a shift on the left on 1 June 2025 that nobody retested. */
@RegisterTest
class WorkerViewTest extends SpringBrowserlessTest {

    private static final String COLUMNS = TestImports.AUDIOGRAM_COLUMNS;

    @Autowired
    private TestImports files;

    @Autowired
    private BulkService bulk;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void storeTwoSites() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                M-1,1990-05-01,F,Núñez,Ada,Mill,2020-01-01
                M-2,1990-01-01,F,Rusk,Dara,Mill,2020-01-01
                Y-1,,F,Quill,Cato,Yard,
                """,
                COLUMNS
                        + TestImports.test("M-1", "2025-03-02", "baseline", 10, 10)
                        + TestImports.test("Y-1", "2024-06-01", "baseline", 10, 10)
                        + TestImports.test("M-2", "2024-06-01", "baseline", 10, 10)
                        + TestImports.test("M-2", "2025-06-01", "annual", 40, 10),
                "");
    }

    private String shown(String workerId) {
        UI.getCurrent().navigate("worker/" + workerId);
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    @Test
    void whatARuleNeedsAndTheRecordDoesNotHoldIsSaid() {
        assertThat(shown("Y-1"))
                .contains("Cato Quill")
                .contains("Born" + "not given, so no age allowance can be made")
                .contains("Enrolled from" + "not given, so no date for a first test can be set")
                .doesNotContain("Noise group");
    }

    @Test
    void aRecordOfAnotherSiteLooksLikeOneThatDoesNotExist() {
        SignIn.as(Role.NURSE, "Mill");
        assertThat(shown("M-1")).contains("Ada Núñez");
        String ofAnotherSite = shown("Y-1");
        assertThat(ofAnotherSite).contains("No record to show").doesNotContain("Quill");
        assertThat(shown("Z-9")).isEqualTo(ofAnotherSite);
    }

    @Test
    void openingARecordIsOnTheAuditTrail() {
        shown("M-1");
        assertThat(jdbc.queryForList(
                        "select subject_id from audit_event where action = 'WORKER_RECORD_OPENED'", String.class))
                .isEqualTo(List.of("M-1"));
    }

    @Test
    @SuppressWarnings("unchecked")
    void aDecisionThatIsEnteredShowsWhatItChanged() {
        assertThat(shown("M-2")).contains("29 CFR 1910.95(g)(8)(i)").contains("No decision about this worker");
        test($(Button.class).withText("Enter a decision").single()).click();
        Select<DecisionKind> kind =
                $(Select.class).withPropertyValue(Select::getLabel, "Decision").single();
        Select<LocalDate> test =
                $(Select.class).withPropertyValue(Select::getLabel, "Test").single();
        assertThat(test.getValue()).isEqualTo(LocalDate.of(2025, 6, 1));
        RadioButtonGroup<Ears> ears = $(RadioButtonGroup.class).single();
        assertThat(ears.getValue()).as("the ear with the shift").isEqualTo(Ears.LEFT);
        kind.setValue(DecisionKind.INVALID_TEST);
        assertThat(ears.getValue()).as("a test is set aside whole").isEqualTo(Ears.BOTH);
        kind.setValue(DecisionKind.NOTICE_GIVEN);
        assertThat(ears.getValue()).isEqualTo(Ears.LEFT);
        test($(Button.class).withText("Enter").single()).click();
        Select<Evidence.Means> how =
                $(Select.class).withPropertyValue(Select::getLabel, "How").single();
        assertThat(how.getErrorMessage()).isEqualTo("Say how it was done.");
        assertThat(jdbc.queryForList("select kind from decision", String.class)).isEmpty();
        how.setValue(Evidence.Means.POSTED);
        test($(Button.class).withText("Enter").single()).click();

        assertThat(text())
                .contains("On record now: written notice given, left ear, test of 1 Jun 2025.")
                .contains("No longer owed: written notice by 22 Jun 2025, after the test of 1 Jun 2025.")
                .contains("Written notice given on 9 Mar 2026, left ear, test of 1 Jun 2025: letter sent by post.")
                .doesNotContain("written notice is");
        assertThat(jdbc.queryForList("select kind from decision", String.class)).hasSize(1);
    }

    @Test
    void whatIsPutOffIsToldWithItsReasonAndItsLegalDay() {
        bulk.postpone(
                List.of(new TaskKey("M-2", TaskKind.NOTICE, LocalDate.of(2025, 6, 1), Ears.LEFT)),
                LocalDate.of(2026, 3, 20),
                "on leave");
        assertThat(shown("M-2"))
                .contains("by test-safety_officer until 20 Mar 2026: on leave. By the rule it is due on 22 Jun 2025 all"
                        + " the same.");
    }

    private Button move(String words) {
        return $(Button.class).all().stream()
                .filter(button -> button.getText().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + words));
    }

    @Test
    void aCaseShowsItsStoryWhatIsOwedAndWhatIsNotOpen() {
        String text = shown("M-2");
        assertThat(text)
                .contains("Case of 1 Jun 2025")
                .contains("Left ear: shift confirmed, recordable and not on the log yet")
                .contains("Shift found by the annual test of 1 Jun 2025")
                .contains("Shift confirmed, as no retest settled it in time")
                .contains("Fitting or refitting protectors, left ear; the rule gives no date.")
                .contains("29 CFR 1910.95(g)(8)(ii)(A) and (B)")
                .contains("1 case leaves something owed without a date")
                .contains("Retest booked, left ear: The shift is confirmed, and the time for a retest that could settle"
                        + " it has passed.")
                .contains("Lined out on the injury log, left ear: The case does not stand on the injury log.");
        assertThat(shown("M-1")).contains("No shift was found, so there is no case.");
    }

    @Test
    @SuppressWarnings("unchecked")
    void theButtonOfAMoveOpensTheDialogFilledInAndTheCaseMovesOn() {
        shown("M-2");
        test(move("Protectors fitted or refitted, left ear")).click();
        Select<DecisionKind> kind =
                $(Select.class).withPropertyValue(Select::getLabel, "Decision").single();
        Select<LocalDate> test =
                $(Select.class).withPropertyValue(Select::getLabel, "Test").single();
        assertThat(kind.getValue()).isEqualTo(DecisionKind.PROTECTOR_REFITTED);
        assertThat(test.getValue()).isEqualTo(LocalDate.of(2025, 6, 1));
        assertThat($(RadioButtonGroup.class).single().getValue()).isEqualTo(Ears.LEFT);
        test($(Button.class).withText("Enter").single()).click();

        assertThat(text())
                .contains("On record now: protectors fitted or refitted, left ear, test of 1 Jun 2025.")
                .doesNotContain("Fitting or refitting protectors, left ear; the rule gives no date.")
                .contains("Training in the use of protectors, left ear; the rule gives no date.");
        assertThat(jdbc.queryForList("select kind from decision", String.class)).containsExactly("protector-refitted");
    }

    @Test
    @SuppressWarnings("unchecked")
    void aMoveThatIsNotOpenIsRefusedInTheDialogWithItsReason() {
        shown("M-2");
        test($(Button.class).withText("Enter a decision").single()).click();
        Select<DecisionKind> kind =
                $(Select.class).withPropertyValue(Select::getLabel, "Decision").single();
        kind.setValue(DecisionKind.RETEST_BOOKED);
        test($(Button.class).withText("Enter").single()).click();

        assertThat($(Paragraph.class).all().stream().map(Paragraph::getText))
                .contains("Left ear: The shift is confirmed, and the time for a retest that could settle it has passed."
                        + " Nothing was changed.");
        assertThat(jdbc.queryForList("select kind from decision", String.class)).isEmpty();
    }

    @Test
    void whatIsTheSafetyOfficersToEnterIsSaidToANurse() {
        SignIn.as(Role.NURSE, "Mill");
        assertThat(shown("M-2")).contains("Recorded on the injury log, left ear: this is a safety officer's to enter.");
        assertThat($(Button.class).all().stream().map(Button::getText))
                .contains("Written notice given, left ear", "Trained in the use of protectors, left ear")
                .doesNotContain("Recorded on the injury log, left ear");
    }

    @Test
    void whatWasDeterminedBeforeStandsBesideItsTest() {
        assertThat(shown("M-2")).doesNotContain("As determined before");
        files.store("", "", """
                worker_id,ear,test_date,kind,date,by,reason
                M-2,left,2025-06-01,not-work-related,2025-07-01,Dr. Vale,an infection
                """);

        assertThat(shown("M-2"))
                .contains("As determined before, left ear: 1 former determination")
                .contains("shift confirmed, recordable")
                .contains("baseline of 1 Jun 2024, mean shift ")
                .contains("OSHA: 29 CFR 1910.95 and 1904.10, edition 2026-11, with the age allowance")
                .contains("by an import on 9 Mar 2026, number ");
    }
}
