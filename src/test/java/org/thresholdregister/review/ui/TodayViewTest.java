package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.select.Select;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.review.BulkService;
import org.thresholdregister.review.Evidence;
import org.thresholdregister.review.TaskKey;
import org.thresholdregister.review.TaskKind;

/** Today is 9 March 2026; M-2 showed a shift on the left on 1 June 2025 that nobody retested. */
@RegisterTest
class TodayViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @Autowired
    private BulkService bulk;

    @BeforeEach
    void aShiftThatNobodyRetested() {
        SignIn.as(Role.NURSE);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                M-2,1990-01-01,F,Rusk,Dara,Mill,2020-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("M-2", "2024-06-01", "baseline", 10, 10)
                        + TestImports.test("M-2", "2025-06-01", "annual", 40, 10),
                "");
    }

    private List<String> leads() {
        return $(LeadSentence.class).all().stream()
                .map(sentence -> sentence.getElement().getTextRecursively())
                .toList();
    }

    @Test
    void theFirstSentenceSaysWhatIsMostUrgentAndWhichParagraphMakesItDue() {
        UI.getCurrent().navigate("today");
        assertThat(leads().getFirst()).matches("Most urgent: .+ for .*Rusk.*, \\d+ days overdue by .+\\.");
        assertThat(leads().get(1))
                .startsWith("1 written notice")
                .contains("1 entry on the injury log")
                .contains(" are overdue. ")
                .endsWith("1 fitting of protectors and 1 training are open without a date.");
    }

    @Test
    void whatIsPutOffIsToldAndStaysCounted() {
        bulk.postpone(
                List.of(new TaskKey("M-2", TaskKind.NOTICE, LocalDate.of(2025, 6, 1), Ears.LEFT)),
                LocalDate.of(2026, 3, 20),
                "on leave");
        UI.getCurrent().navigate("today");
        assertThat(leads().getFirst()).doesNotContain("written notice");
        assertThat(leads())
                .anyMatch(sentence -> sentence.startsWith("1 written notice") && sentence.contains(" are overdue."))
                .contains("1 follow-up is put off; its due date stands.");
    }

    @Test
    void anEntryWithoutAnythingThatShowsItIsRefusedBesideItsField() {
        UI.getCurrent().navigate("today");
        test($(NativeButton.class).withText("Notice given").single()).click();
        test($(Button.class).withText("Enter").single()).click();
        Select<?> how =
                $(Select.class).withPropertyValue(Select::getLabel, "How").single();
        assertThat(how.isInvalid()).isTrue();
        assertThat(how.getErrorMessage()).isEqualTo("Say how it was done.");
    }

    @Test
    @SuppressWarnings("unchecked")
    void theConfirmationOfAnEntryStandsBesideTheListAndTheKeyboardStaysInIt() {
        UI.getCurrent().navigate("today");
        test($(NativeButton.class).withText("Notice given").single()).click();
        UI.getCurrent().getInternals().dumpPendingJavaScriptInvocations();
        ((Select<Evidence.Means>) $(Select.class)
                        .withPropertyValue(Select::getLabel, "How")
                        .single())
                .setValue(Evidence.Means.HANDED_OVER);
        test($(Button.class).withText("Enter").single()).click();

        ResultMessage message = $(ResultMessage.class).single();
        assertThat(message.getText())
                .isEqualTo("\"Written notice given\" for Dara Rusk (M-2), test of 1 Jun 2025, left ear, on 9 Mar 2026"
                        + " is on record now.");
        assertThat(UI.getCurrent().getInternals().dumpPendingJavaScriptInvocations().stream()
                        .filter(invocation -> invocation
                                .getOwner()
                                .equals(message.getElement().getNode()))
                        .map(invocation -> invocation.getInvocation().getExpression()))
                .singleElement()
                .asString()
                .contains("querySelectorAll('tbody tr')", "focus");
        assertThat($(NativeButton.class).withText("Notice given").all()).isEmpty();
    }
}
