package org.thresholdregister.exposure.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.QueryParameters;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.exposure.Measurements;
import org.thresholdregister.exposure.NoiseService;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** The pages of noise. Today is 9 March 2026. */
@RegisterTest
class NoisePagesTest extends SpringBrowserlessTest {

    private static final String SAWS = "noise-place?site=Mill&kind=group&name=Saws";

    @Autowired
    private TestImports files;

    @Autowired
    private NoiseService noise;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store(Measurements.ROSTER, "", "");
    }

    private String shown(String path) {
        String[] parts = path.split("\\?", 2);
        UI.getCurrent().navigate(parts[0], QueryParameters.fromString(parts.length == 1 ? "" : parts[1]));
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    private void click(String words) {
        test($(Button.class).withText(words).single()).click();
    }

    private TextField field(String label) {
        return $(TextField.class).withPropertyValue(TextField::getLabel, label).single();
    }

    @SuppressWarnings("unchecked")
    private ComboBox<String> choice(String label) {
        return $(ComboBox.class).withPropertyValue(ComboBox::getLabel, label).single();
    }

    @Test
    void aNurseEntersAMeasurementAndSeesForWhomItSpeaks() {
        assertThat(shown("noise")).contains("No noise is measured yet").contains("not measured");
        shown("noise-entry");
        click("Enter the measurement");
        assertThat(choice("Site").getErrorMessage()).isEqualTo("Choose one of your own sites.");
        assertThat(field("Instrument").isInvalid()).isTrue();
        choice("Site").setValue("Mill");
        choice("Name or number").setValue("Saws");
        field("Instrument").setValue("Hollow 7, no. 12");
        field("Measured by").setValue("A. Vale");
        field("Eight-hour average (dBA)").setValue("161");
        click("Enter the measurement");
        assertThat(field("Eight-hour average (dBA)").getErrorMessage())
                .isEqualTo("A number from 0 to 160, with two decimals at most.");
        field("Eight-hour average (dBA)").setValue("91");
        click("Enter the measurement");

        assertThat(text())
                .contains("Noise: noise group Saws")
                .contains("91.0 dBA at Mill, at or above the action level")
                .contains("it speaks for 2 people today.")
                .contains("Orrin, Bela (M-2)")
                .contains("[29 CFR 1910.95(e)]");
        assertThat(shown("noise"))
                .contains("1 place is measured, 1 at or above the action level; 2 people are still to be told the"
                        + " result, and 1 person belongs to the programme without being in it.")
                .contains("Orrin, Bela");
        assertThat(shown("worker/M-2"))
                .contains("91.0 dBA, at or above the action level")
                .contains("The worker is still to be told. [29 CFR 1910.95(e)]")
                .contains("the worker belongs to the programme since 9 Mar 2026");
    }

    @Test
    void peopleAreToldAndAMistakeIsWithdrawn() {
        noise.enter(Measurements.group("Mill", "Saws", LocalDate.of(2026, 3, 1), 91));
        shown(SAWS);
        click("They were told");
        $(DatePicker.class).single().setValue(LocalDate.of(2026, 3, 10));
        click("Take it down");
        assertThat($(DatePicker.class).single().getErrorMessage()).isEqualTo("This day has not come yet.");
        $(DatePicker.class).single().setValue(LocalDate.of(2026, 3, 9));
        click("Take it down");
        assertThat(text()).doesNotContain("To be told the result");

        test($(NativeButton.class).withText("Withdraw").single()).click();
        click("Withdraw");
        assertThat($(TextArea.class).single().getErrorMessage()).isEqualTo("This has to be given.");
        $(TextArea.class).single().setValue("the wrong group");
        click("Withdraw");
        assertThat(text()).contains("nothing counts today").contains("the wrong group");
    }

    @Test
    void theCalculatorShowsItsWorking() {
        assertThat(shown("noise-calculator")).contains("Nothing is calculated yet.");
        field("Level 1 (dBA)").setValue("90");
        click("Calculate");
        assertThat(field("Hours at level 1").isInvalid()).isTrue();
        field("Hours at level 1").setValue("8");
        click("Calculate");
        assertThat(text())
                .contains("Counted from 80 dBA the dose is 100.0 %.")
                .contains("The eight-hour average is 90.0 dBA")
                .contains("Together exactly 1.")
                .contains("it is not exceeded.");
        assertThat(shown("noise-calculator?day=90x20-85x9")).doesNotContain("Counted from");
        assertThat(field("Hours at level 2").getErrorMessage())
                .isEqualTo("All hours together are more than a day of 24.");
    }

    @Test
    void aPlaceOfAnotherSiteLooksLikeOneThatDoesNotExist() {
        noise.enter(Measurements.group("Mill", "Saws", LocalDate.of(2026, 3, 1), 91));
        SignIn.as(Role.SAFETY_OFFICER, "Yard");
        String other = shown(SAWS);
        assertThat(other).contains("No measurement to show.");
        assertThat(shown("noise-place?site=Mill&kind=group&name=Nowhere")).isEqualTo(other);
        assertThat(shown("noise")).doesNotContain("Saws");
    }
}
