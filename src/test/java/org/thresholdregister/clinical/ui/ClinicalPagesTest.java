package org.thresholdregister.clinical.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.clinical.ClinicalService;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.clinical.CanalFinding;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.clinical.HealthHistory;
import org.thresholdregister.core.clinical.HealthQuestion;
import org.thresholdregister.core.clinical.Reply;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026. */
@RegisterTest
class ClinicalPagesTest extends SpringBrowserlessTest {

    private static final ClinicalFacts SHOOTS = new ClinicalFacts(
            new HealthHistory(
                    Map.of(
                            HealthQuestion.SHOOTING, new Reply(true, "deer each autumn"),
                            HealthQuestion.LOUD_MUSIC, new Reply(false, "")),
                    Optional.of(Ear.RIGHT)),
            ClinicalFacts.NOTHING.ears(),
            false,
            "It rings at night");

    @Autowired
    private TestImports files;

    @Autowired
    private ClinicalService clinical;

    @Autowired
    private ClinicalTestPart beside;

    @BeforeEach
    void oneWorker() {
        SignIn.as(Role.NURSE);
        files.store("""
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                M-1,1990-05-01,F,Núñez,Ada,Mill,2020-01-01
                """, "", "");
    }

    private String shown(String path) {
        UI.getCurrent().navigate(path);
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    private void press(String words) {
        test($(Button.class).withText(words).single()).click();
    }

    @SuppressWarnings("unchecked")
    private <T> CheckboxGroup<T> ticks(String label) {
        return $(CheckboxGroup.class)
                .withPropertyValue(CheckboxGroup::getLabel, label)
                .single();
    }

    @Test
    void aNurseEntersHistoryAndEarsOnTheWorkersPage() {
        assertThat(shown("worker/M-1")).contains("No health history and no look into the ears is on record.");
        press("Enter history and ears");
        press("Enter");
        assertThat(clinical.of("M-1").orElseThrow().entries()).isEmpty();
        this.<HealthQuestion>ticks("Noise besides this job").setValue(Set.of(HealthQuestion.SHOOTING));
        $(TextField.class)
                .withPropertyValue(TextField::getLabel, "Hunting or shooting: what, how long")
                .single()
                .setValue("deer each autumn");
        CheckboxGroup<CanalFinding> left = ticks("Left ear looks");
        left.setValue(Set.of(CanalFinding.CLEAR, CanalFinding.RED));
        press("Enter");
        assertThat(left.getErrorMessage()).isEqualTo("Clear, or what else there is: not both.");
        left.setValue(Set.of(CanalFinding.RED));
        press("Enter");
        assertThat(text())
                .contains("Yes: hunting or shooting (deer each autumn).")
                .contains("Left: red. Right: not looked into.");
    }

    @Test
    void aRefusalShowsOnThePageAndLeavesTheDutyAsItIs() {
        assertThat(shown("worker/M-1")).contains("Baseline test");
        press("Enter a refusal");
        $(TextArea.class)
                .withPropertyValue(TextArea::getLabel, "Reason, in the worker's words")
                .single()
                .setValue("No time today");
        press("Enter");
        assertThat(text())
                .contains("refused, to be offered again")
                .contains("29 CFR 1910.95(g)(1)")
                .contains("Baseline test");
        assertThat(shown("refusal-form/M-1"))
                .contains("I do not want the hearing test")
                .contains("For Ada Núñez, number M-1.")
                .contains("Signature of the worker");
    }

    @Test
    void besideATestTheAnswersOfLastTimeAreTakenOverWithOnePress() {
        clinical.enter("M-1", LocalDate.of(2025, 3, 10), SHOOTS, "");
        Component part = beside.of("M-1", 7).orElseThrow();
        UI.getCurrent().add(part);
        assertThat(clinical.draft("M-1", 7)).as("nothing is answered by itself").isEmpty();
        press("Same as on 10 Mar 2025");
        ClinicalFacts kept = clinical.draft("M-1", 7).orElseThrow();
        assertThat(kept.history().reply(HealthQuestion.SHOOTING)).contains(new Reply(true, "deer each autumn"));
        assertThat(kept.history().shoulder()).contains(Ear.RIGHT);
        assertThat(kept.said()).isEmpty();
    }

    @Test
    void nobodyButANurseSeesATraceOfIt() {
        clinical.enter("M-1", LocalDate.of(2026, 3, 9), SHOOTS, "");
        clinical.refuse("M-1", LocalDate.of(2026, 3, 9), "Afraid of the booth", Optional.empty());
        for (Role role : Role.values()) {
            if (role != Role.NURSE) {
                SignIn.as(role);
                if (role == Role.SAFETY_OFFICER) {
                    assertThat(shown("worker/M-1"))
                            .contains("Ada Núñez")
                            .doesNotContain("Health history")
                            .doesNotContain("efusal")
                            .doesNotContain("efused")
                            .doesNotContain("Afraid")
                            .doesNotContain("deer")
                            .doesNotContain("rings");
                }
                assertThat(beside.of("M-1", 7)).as(role.name()).isEmpty();
            }
        }
    }
}
