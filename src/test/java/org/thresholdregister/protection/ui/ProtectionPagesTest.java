package org.thresholdregister.protection.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.combobox.MultiSelectComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.QueryParameters;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.attenuation.AppendixBCase;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.training.TrainingTopic;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.protection.MethodChoice;
import org.thresholdregister.protection.Plant;
import org.thresholdregister.protection.Product;
import org.thresholdregister.protection.ProtectorService;
import org.thresholdregister.protection.TrainingService;
import org.thresholdregister.protection.TrainingService.Person;
import org.thresholdregister.protection.WorkerProtectionService;

/** The pages of protectors and training. Today is 9 March 2026; M-1 shifted on the left on 1 June 2025. */
@RegisterTest
class ProtectionPagesTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @Autowired
    private ProtectorService protectors;

    @Autowired
    private WorkerProtectionService protection;

    @Autowired
    private TrainingService trainings;

    private long muff;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store(Plant.ROSTER, Plant.AUDIOGRAMS, "");
        protectors.add(Plant.product("Mill", "Hollow muff", ProtectorKind.MUFF, 25));
        muff = protectors.catalogue().getFirst().key();
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

    @Test
    @SuppressWarnings("unchecked")
    void aNurseGivesOutAProtectorAfterAShiftAndTheCaseMovesOn() {
        protectors.choose(new MethodChoice("Mill", new AttenuationMethod.AppendixB(AppendixBCase.II), "as measured"));
        assertThat(shown("worker-protectors/M-1"))
                .contains("Protectors of Ada Núñez")
                .contains("Noise 92.5 dBA, by the roster; no protector on record.")
                .contains("down to 85 dBA or less, after the shift of 1 Jun 2025. [29 CFR 1910.95(j)(3)]")
                .contains("Has to wear protectors: Exposed to 92.5 dBA, over the limit.");
        click("Give out a protector");
        click("Give out");
        ComboBox<Product> product = $(ComboBox.class)
                .withPropertyValue(ComboBox::getLabel, "Protector")
                .single();
        assertThat(product.getErrorMessage()).isEqualTo("Choose a protector from the catalogue of this site.");
        product.setValue(protectors.catalogue().getFirst());
        field("Size").setValue("M");
        click("Give out");

        assertThat(text())
                .contains(
                        "By the label and Appendix B (ii), 74.5 dBA under the muff; the target is 85 dBA after the shift"
                                + " of 1 Jun 2025: reached.")
                .contains("92.5 − (25 − 7) = 74.5 dBA. [29 CFR 1910.95 Appendix B (ii)]")
                .contains("The noise has no C-weighted level on record.")
                .contains("the shift of 1 Jun 2025");
        assertThat(shown("worker/M-1"))
                .contains("Protectors and training")
                .contains("Hollow muff, size M, since 9 Mar 2026. By the label and Appendix B (ii), 74.5 dBA")
                .contains("No training is on record. The next is due by 1 Jan 2020")
                .doesNotContain("Fitting or refitting protectors, left ear; the rule gives no date.");
    }

    @Test
    void anOfficerReadsAndEntersTrainingButGivesOutNothing() {
        protection.issue("M-1", Plant.issue(muff, "M"));
        SignIn.as(Role.SAFETY_OFFICER);
        shown("worker-protectors/M-1");
        assertThat($(Button.class).all()).extracting(Button::getText).doesNotContain("Give out a protector");
        assertThat($(NativeButton.class).all())
                .extracting(NativeButton::getText)
                .doesNotContain("Out of use", "Entered by mistake");
        assertThat(shown("protector-catalogue"))
                .contains("1 protector is given out")
                .contains("NRR 25");
        assertThat($(Button.class).all()).extracting(Button::getText).doesNotContain("Add a protector");
        shown("training-entry");
        assertThat($(Button.class).all()).extracting(Button::getText).contains("Enter the training");
    }

    @Test
    void aRecordOfAnotherSiteLooksLikeOneThatDoesNotExist() {
        SignIn.as(Role.NURSE, "Yard");
        String other = shown("worker-protectors/M-1");
        assertThat(other).contains("No record to show").doesNotContain("Núñez");
        assertThat(shown("worker-protectors/Z-9")).isEqualTo(other);
    }

    @Test
    void whoHasToWearProtectorsIsSaidWithTheReason() {
        assertThat(shown("protectors"))
                .contains(
                        "3 people have to wear protectors; 3 with no protector on record. 2 refittings or trainings are"
                                + " owed after a shift.")
                .contains("Fitting or refitting protectors");
        assertThat(shown("protectors?site=Yard"))
                .contains("1 person has to wear protectors")
                .contains("No case leaves refitting or training owed.");
        assertThat(shown("protectors?department=Nowhere")).contains("Nobody in what you may see has to wear");
    }

    @Test
    @SuppressWarnings("unchecked")
    void aProtectorThatIsAddedSaysBesideItsFieldWhatIsWrong() {
        shown("protector-catalogue");
        click("Add a protector");
        field("NRR (dB)").setValue("99");
        click("Add");
        assertThat(field("NRR (dB)").getErrorMessage()).isEqualTo("A number from 0 to 60, with one decimal at most.");
        field("NRR (dB)").setValue("29");
        field("Name").setValue("Fern foam plug");
        field("Mean at 125 Hz (dB)").setValue("20");
        click("Add");
        assertThat(field("Deviation at 8000 Hz (dB)").getErrorMessage()).contains("All of the bands are needed");
        field("Mean at 125 Hz (dB)").clear();
        $(ComboBox.class).withPropertyValue(ComboBox::getLabel, "Site").all().stream()
                .filter(site -> site.getValue() == null)
                .forEach(site -> ((ComboBox<String>) site).setValue("Mill"));
        click("Add");
        assertThat($(Dialog.class).all()).isEmpty();
        assertThat(text()).contains("2 protectors are given out").contains("Fern foam plug");
    }

    @Test
    void theCalculatorShowsItsWorkingFromTheAddress() {
        assertThat(shown("protector-calculator")).contains("Nothing is calculated yet.");
        assertThat(shown("protector-calculator?kind=formable-plug&dba=97&nrr=25&after-shift=yes"))
                .contains("97 − (25 − 7) = 79 dBA. [29 CFR 1910.95 Appendix B (ii)]")
                .contains("97 − 0.5 × (25 − 7) = 88 dBA.")
                .contains("not reached");
        assertThat(shown("protector-calculator?kind=dual&dba=110&nrr=29&nrr-muff=25"))
                .contains("110 − (0.5 × (29 − 7) + 5) = 94 dBA.")
                .contains("One state's own plan, not federal.");
        field("Noise (dBA)").setValue("999");
        click("Calculate");
        assertThat(field("Noise (dBA)").getErrorMessage())
                .isEqualTo("A number from 0 to 160, with one decimal at most.");
        assertThat(shown("protector-calculator?dba=999")).contains("Protector calculator");
    }

    @Test
    @SuppressWarnings("unchecked")
    void aTrainingIsEnteredWithWhoTookPart() {
        shown("training-entry");
        $(ComboBox.class).withPropertyValue(ComboBox::getLabel, "Site").single().setValue("Mill");
        click("Enter the training");
        CheckboxGroup<TrainingTopic> topics = $(CheckboxGroup.class).single();
        assertThat(topics.getErrorMessage()).isEqualTo("Tick what the training covered.");
        topics.setValue(Set.of(TrainingTopic.values()));
        click("Enter the training");
        assertThat(field("Trainer").getErrorMessage()).isEqualTo("Say who trained.");
        field("Trainer").setValue("A. Vale");
        $(IntegerField.class).single().setValue(0);
        click("Enter the training");
        assertThat($(IntegerField.class).single().getErrorMessage()).isEqualTo("Give the minutes, from 1 to 600.");
        $(IntegerField.class).single().setValue(30);
        MultiSelectComboBox<Person> people = $(MultiSelectComboBox.class).single();
        people.setValue(Set.copyOf(trainings.people("Mill", Optional.of("Saws"))));
        click("Enter the training");

        assertThat(text())
                .contains("Training of 9 Mar 2026")
                .contains("1 person took part; it covered noise, protectors and tests.")
                .contains("Núñez, Ada");
        assertThat(shown("training"))
                .contains(
                        "3 people are overdue for training, 3 are due by 8 Apr 2026, of 4 people to whom training is owed.")
                .contains(
                        "Training is due at enrolment, and again within 12 months of the last. [29 CFR 1910.95(k)(2)]");
        assertThat(shown("training?site=Yard")).contains("1 person is overdue for training");
    }

    @Test
    void whatWasEnteredByMistakeIsWithdrawnWithItsReason() {
        trainings.add(Plant.session(Plant.TODAY), List.of("M-1"));
        shown("training-session/" + trainings.sessions().getFirst().key());
        test($(NativeButton.class).withText("Entered by mistake").single()).click();
        click("Withdraw");
        TextArea reason = $(TextArea.class).single();
        assertThat(reason.getErrorMessage()).isEqualTo("Say why: the reason stays with the entry.");
        reason.setValue("was ill");
        click("Withdraw");
        assertThat(text()).contains("0 people took part").contains("was ill");
        assertThat(shown("training-session/999999")).contains("No training to show");
    }

    @Test
    void aProtectorGoesOutOfUseOnADayThatHasCome() {
        protection.issue("M-1", Plant.issue(muff, "M"));
        shown("worker-protectors/M-1");
        test($(NativeButton.class).withText("Out of use").single()).click();
        DatePicker day = $(DatePicker.class).single();
        day.setValue(Plant.TODAY.plusDays(1));
        click("Take down");
        assertThat(day.getErrorMessage()).isEqualTo("This day has not come yet.");
        day.setValue(Plant.TODAY);
        click("Take down");
        assertThat(text()).contains("replaced 9 Mar 2026").contains("No protector is on record as in use.");
    }
}
