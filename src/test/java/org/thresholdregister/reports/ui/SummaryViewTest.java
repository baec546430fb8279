package org.thresholdregister.reports.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H1;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Six workers at the mill, one at the yard. */
@RegisterTest
class SummaryViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    private void plant() {
        StringBuilder roster = new StringBuilder("worker_id,birth_date,sex,family_name,site,department\n");
        StringBuilder tests = new StringBuilder(AUDIOGRAM_COLUMNS);
        for (int i = 0; i < 7; i++) {
            roster.append("W-" + i + ",1980-05-01,F,Testperson,").append(i < 6 ? "Mill,Saws\n" : "Yard,Cranes\n");
            tests.append(TestImports.test("W-" + i, "2025-02-01", "baseline", 10, 10));
        }
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(roster.toString(), tests.toString(), "");
    }

    private String page() {
        return navigate(SummaryView.class).getElement().getTextRecursively();
    }

    @Test
    void anEmptyRegisterSaysWhatToDo() {
        SignIn.as(Role.NURSE);
        assertThat(page()).contains("No test of the sites in view is on record yet");
        assertThat($(Anchor.class).withText("Import files").exists()).isTrue();

        SignIn.as(Role.PLANT_MANAGER);
        assertThat(page()).contains("Once the nurse has imported");
        assertThat($(Anchor.class).withText("Import files").exists()).isFalse();
    }

    @Test
    void totalsSayOfWhichSitesTheyAre() {
        plant();
        SignIn.as(Role.PLANT_MANAGER, "Mill");

        assertThat(page())
                .contains("In 2025, 6 workers were tested at 1 site")
                .contains("The totals are of Mill, the only site in view.")
                .doesNotContain("Yard", "hidden", "W-", "Testperson");
    }

    @Test
    void aManagerOfASmallSiteIsToldThatItIsHidden() {
        plant();
        SignIn.as(Role.PLANT_MANAGER, "Yard");

        assertThat(page())
                .contains("fewer than 5 workers were tested")
                .contains("hidden: fewer than 5 workers")
                .doesNotContain("Mill");
        assertThat($(H1.class).single().getText()).isEqualTo("Summary of 2025");
    }

    @Test
    void thoseWhoSeePeopleSeeEveryGroupAndNoFootnote() {
        plant();
        SignIn.as(Role.NURSE);

        assertThat(page()).contains("Cranes").doesNotContain("hidden", "The totals are of");
    }
}
