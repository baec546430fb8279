package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.textfield.TextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026; an older baseline has come for L-1, after a notice of the shift of 1 February 2025. */
@RegisterTest
class AlterationsViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @BeforeEach
    void aChangeAfterANotice() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                "worker_id,birth_date,sex,family_name,given_name,site\nL-1,1950-05-01,F,Núñez,Ada,Mill\n",
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("L-1", "2024-02-01", "baseline", 10, 10)
                        + TestImports.test("L-1", "2025-02-01", "annual", 30, 10),
                """
                worker_id,ear,test_date,kind,date,by,reason
                L-1,left,2025-02-01,notice-given,2025-02-20,the nurse,
                """);
        files.store("", TestImports.AUDIOGRAM_COLUMNS + TestImports.test("L-1", "2023-02-01", "baseline", 25, 10), "");
    }

    private String shown(String address) {
        UI.getCurrent().navigate(address);
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    @Test
    void todayLeadsToWhatWaitsForAPerson() {
        String sentence = "1 determination has changed after a notice was given or a case recorded: a person decides.";

        assertThat(shown("today")).contains(sentence);
        assertThat(shown("changed-after")).contains(sentence).contains("What was sent or recorded stands as it was.");
        SignIn.as(Role.NURSE, "Yard");
        assertThat(shown("today")).doesNotContain("has changed after");
        assertThat(shown("changed-after")).contains("Nothing has changed that a notice was given");
    }

    @Test
    void theWorkersPageShowsItUntilSomeoneAcknowledgesItWithAReason() {
        SignIn.as(Role.NURSE);
        assertThat(shown("worker/L-1"))
                .contains("Changed after a notice or an entry")
                .contains("Shift confirmed, recordable; baseline of 1 Feb 2024, mean shift 20.00 dB")
                .contains("No shift, not recordable; baseline of 1 Feb 2023, mean shift 5.00 dB")
                .contains("Changed on 9 Mar 2026, after notice given on 20 Feb 2025: a person decides");

        test($(NativeButton.class).withText("Acknowledge").single()).click();
        test($(Button.class).withText("Acknowledge").single()).click();
        TextArea reason = $(TextArea.class).single();
        assertThat(reason.isInvalid()).isTrue();
        reason.setValue("Told anew by letter");
        test($(Button.class).withText("Acknowledge").single()).click();

        assertThat(text())
                .contains("acknowledged on 9 Mar 2026 by test-nurse")
                .contains("Told anew by letter")
                .doesNotContain("after notice given on 20 Feb 2025: a person decides");
        assertThat(shown("today")).doesNotContain("has changed after");
    }
}
