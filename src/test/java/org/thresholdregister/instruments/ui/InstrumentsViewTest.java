package org.thresholdregister.instruments.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.calibration.Audiometer;
import org.thresholdregister.instruments.Change;
import org.thresholdregister.instruments.EntryResult;
import org.thresholdregister.instruments.Facts;
import org.thresholdregister.instruments.InstrumentService;
import org.thresholdregister.instruments.OutputLimits;
import org.thresholdregister.platform.security.Role;

/** The page of instruments. Today is 9 March 2026. */
@RegisterTest
class InstrumentsViewTest extends SpringBrowserlessTest {

    @Autowired
    private InstrumentService instruments;

    private String shown() {
        // From another page, so that the page is made anew.
        UI.getCurrent().navigate("workers");
        UI.getCurrent().navigate("instruments");
        return getCurrentView().getElement().getTextRecursively();
    }

    private EntryResult enterUnit() {
        return instruments.enter(
                new Facts.Unit(
                        "Mill",
                        "AUD-02",
                        "",
                        Audiometer.Type.MANUAL,
                        OutputLimits.NOT_KNOWN,
                        LocalDate.of(2025, 3, 1),
                        Optional.empty()),
                Change.NEW);
    }

    @Test
    void aNurseSeesWhenTheCalibrationIsDueAndAnOfficerOnlyReads() {
        SignIn.as(Role.NURSE);
        assertThat(shown()).contains("No audiometer in use is on record.");
        long unit = ((EntryResult.Entered) enterUnit()).key();
        instruments.enter(
                new Facts.Calibration(
                        unit,
                        Audiometer.CalibrationKind.ACOUSTIC,
                        LocalDate.of(2025, 12, 3),
                        "C. Calibrator",
                        Audiometer.Tolerance.WITHIN,
                        Audiometer.Tolerance.WITHIN,
                        "",
                        new PerEar<>(Map.of(), Map.of())),
                Change.NEW);
        assertThat(enterUnit()).isEqualTo(new EntryResult.Refused(EntryResult.Objection.NAME_TAKEN));
        assertThat(shown())
                .contains(
                        "AUD-02 needs its acoustic calibration by 3 Dec 2026; the functional check of today is missing"
                                + " for 1 of 1 unit.");
        SignIn.as(Role.SAFETY_OFFICER);
        assertThat(shown()).contains("AUD-02 needs its acoustic calibration by 3 Dec 2026");
        assertThat($(Button.class).withText("Enter a room").exists()).isFalse();
    }

    @Test
    void aRoomIsEnteredInItsDialogAndARefusalSaysHowToMendIt() {
        SignIn.as(Role.NURSE);
        shown();
        test($(Button.class).withText("Enter a room").single()).click();
        $(TextField.class)
                .withPropertyValue(TextField::getLabel, "Site")
                .single()
                .setValue("Mill");
        test($(Button.class).withText("Enter").single()).click();
        assertThat(instruments.holdings().rooms()).isEmpty();
        $(TextField.class)
                .withPropertyValue(TextField::getLabel, "Name")
                .single()
                .setValue("Room A");
        test($(Button.class).withText("Enter").single()).click();
        assertThat(instruments.holdings().rooms())
                .singleElement()
                .satisfies(room -> assertThat(room.facts().name()).isEqualTo("Room A"));
    }
}
