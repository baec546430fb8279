package org.thresholdregister.letters.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.textfield.TextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026; L-1 showed a shift on 1 March. */
@RegisterTest
class LettersViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void oneShift() {
        SignIn.as(Role.NURSE);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                L-1,1990-05-01,F,Quill,Cato,Mill,2020-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("L-1", "2025-03-02", "baseline", 10, 10)
                        + TestImports.test("L-1", "2026-03-01", "annual", 10, 30),
                "");
    }

    private String shown(String address) {
        UI.getCurrent().navigate(address);
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    private void press(String words) {
        test($(Button.class).withText(words).first()).click();
    }

    @Test
    void whatWaitsIsPrintedAndMarkedAsGiven() {
        assertThat(shown("letters"))
                .contains("3 letters wait to be printed.", "Written notice", "Retest invitation", "22 Mar 2026")
                .contains("No letter was printed yet.");
        press("Print these");
        assertThat(text()).contains("Choose the letters to print first.");

        press("Choose all");
        press("Print these");
        assertThat(text())
                .contains("No letter waits to be printed.", "3 letters are kept as printed.", "Open the file to print")
                .contains("printed, not given yet");

        $(LetterTable.class).last().chooseAll(true);
        press("Mark as given");
        test($(Button.class).withText("Mark as given").last()).click();
        assertThat(text()).contains("3 letters are marked as given.", "handed over on 9 Mar 2026");
        assertThat(jdbc.queryForList("select kind from decision", String.class)).containsExactly("notice-given");
    }

    @Test
    void anOfficerReadsAndPrintsNothing() {
        SignIn.as(Role.SAFETY_OFFICER);
        assertThat(shown("letters")).contains("3 letters wait to be printed.");
        assertThat($(Button.class).withText("Print these").exists()).isFalse();
    }

    @Test
    void aLetterIsWrittenFromTheWorkersPageAndStandsThere() {
        assertThat(shown("worker/L-1")).contains("Write a letter");
        assertThat(shown("write-letter/L-1")).contains("A letter about Cato Quill");
        press("Print");
        assertThat(text()).contains("The letter is kept as printed.");
        assertThat(shown("worker/L-1")).contains("Letters, the latest first", "Result of a test");
        assertThat(shown("write-letter/nobody")).contains("No worker of this number");
    }

    @Test
    void aTextThatDoesNotFitIsRefusedBesideItsField() {
        assertThat(shown("letter-texts")).contains("{worker.name}: the worker's name", "The standard text holds");
        var content = $(TextArea.class).single();
        content.setValue("{no.such.thing}");
        press("Save");
        assertThat(content.isInvalid()).isTrue();
        assertThat(content.getErrorMessage()).contains("There is no placeholder {no.such.thing}.");
        press("Preview");
        assertThat(content.isInvalid()).isTrue();

        content.setValue("The mill");
        press("Save");
        assertThat(text()).contains("Saved. The next letters have this text.", "by test-nurse: The mill");
        press("Preview");
        assertThat(text()).contains("Open the letter to an invented person");
        press("Back to the standard text");
        assertThat(content.getValue()).startsWith("{site}");
    }
}
