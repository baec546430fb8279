package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.QueryParameters;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.decision.Profession;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026; P-1 has worsened for good on the left. */
@RegisterTest
class ProposalViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void oneProposal() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                P-1,1950-05-01,M,Orrin,Bela,Mill,2020-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("P-1", "2021-03-01", "baseline", 10, 10)
                        + TestImports.test("P-1", "2022-03-01", "annual", 25, 10)
                        + TestImports.test("P-1", "2023-03-01", "annual", 30, 10)
                        + TestImports.test("P-1", "2024-03-01", "annual", 30, 10),
                "");
    }

    private String shown(String address) {
        UI.getCurrent().navigate(address);
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    private <T extends com.vaadin.flow.component.Component> T field(Class<T> type, String label) {
        return $(type).withCondition(field -> label.equals(field.getElement().getProperty("label")))
                .single();
    }

    @Test
    void theListSaysHowManyWait() {
        assertThat(shown("baseline-proposals"))
                .contains("1 baseline proposal waits for a professional.")
                .contains("49 CFR 227 Appendix C");
        UI.getCurrent().navigate("baseline-proposals", QueryParameters.of("kind", "persistent-improvement"));
        assertThat(text())
                .contains("Of 1 baseline proposal, 0 for a lasting improvement wait.")
                .contains("No proposal fits this filter.");
    }

    @Test
    void theWorkersPageLeadsToTheProposalWithItsWorking() {
        assertThat(shown("worker/P-1")).contains("A new baseline is proposed for the left ear");
        assertThat(shown("baseline-proposal/left/P-1"))
                .contains("Bela Orrin, left ear: the test of 1 Mar 2022 is proposed as the baseline")
                .contains("shows 25, 25, 25 dB HL at 2000, 3000 and 4000 Hz: 75 in all, a mean of 25.00 dB HL.")
                .contains("On the new baseline the annual test of 1 Mar 2024 would show a mean shift of 5.00 dB")
                .contains("A professional supervisor decides");
    }

    @Test
    void whatIsNoProposalOrNotToBeSeenLooksTheSame() {
        String none = shown("baseline-proposal/right/P-1");
        assertThat(none).contains("No proposal to show").doesNotContain("Orrin");
        assertThat(shown("baseline-proposal/nose/P-1")).isEqualTo(none);
        assertThat(shown("baseline-proposal/left")).isEqualTo(none);
        SignIn.as(Role.SAFETY_OFFICER, "Yard");
        assertThat(shown("baseline-proposal/left/P-1")).isEqualTo(none);
    }

    @Test
    void aNurseReadsAndAnswersNothing() {
        SignIn.as(Role.NURSE);

        assertThat(shown("baseline-proposal/left/P-1"))
                .contains("A safety officer takes down what the professional decides.")
                .contains("A professional supervisor decides");
        assertThat($(Button.class).withText("Accepted by a professional").exists())
                .isFalse();
    }

    @Test
    @SuppressWarnings("unchecked")
    void acceptingSaysWhatWillChangeAndNeedsANamedProfessional() {
        shown("baseline-proposal/left/P-1");
        test($(Button.class).withText("Accepted by a professional").single()).click();
        var dialog = $(ProposalDialog.class).single();
        assertThat(dialog.getElement().getTextRecursively())
                .contains("No determination on record changes, and nothing that is owed.");
        field(DatePicker.class, "Day of the decision").setValue(LocalDate.of(2023, 6, 1));
        assertThat(dialog.getElement().getTextRecursively())
                .contains("Annual test of 1 Mar 2024, left ear: no shift, not recordable (before: shift confirmed");

        test($(Button.class).withText("Accept").single()).click();
        TextField name = field(TextField.class, "Decided by");
        assertThat(name.isInvalid()).isTrue();
        assertThat(jdbc.queryForList("select * from decision")).isEmpty();

        name.setValue("Dr. Vale");
        ((Select<Profession>) field(Select.class, "Profession")).setValue(Profession.PHYSICIAN);
        test($(Button.class).withText("Accept").single()).click();
        TextArea reason = field(TextArea.class, "Reason");
        assertThat(reason.isInvalid()).isTrue();

        reason.setValue("The same in both years");
        test($(Button.class).withText("Accept").single()).click();

        assertThat(text())
                .contains(
                        "On record now: the test of 1 Mar 2022 is the baseline of the left ear, by the decision of 1 Jun"
                                + " 2023.")
                .contains("Annual test of 1 Mar 2024, left ear: no shift, not recordable (before: shift confirmed");
        assertThat(jdbc.queryForList("select decided_by from decision", String.class))
                .containsExactly("Dr. Vale, physician");
    }

    @Test
    @SuppressWarnings("unchecked")
    void decliningKeepsTheBaseline() {
        shown("baseline-proposal/left/P-1");
        test($(Button.class).withText("Declined by a professional").single()).click();
        field(TextField.class, "Decided by").setValue("Dr. Vale");
        ((Select<Profession>) field(Select.class, "Profession")).setValue(Profession.AUDIOLOGIST);
        field(TextArea.class, "Reason").setValue("A cold on both days");
        test($(Button.class).withText("Decline").single()).click();

        assertThat(text()).contains("is declined as the baseline of the left ear");
        assertThat(jdbc.queryForList("select kind from decision", String.class)).containsExactly("baseline-kept");
    }
}
