package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.population.AgeEdition;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026. M-1 has a noise level, M-2 none, M-3 no birth date. */
@RegisterTest
class MeaningSectionTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @BeforeEach
    void storeThreeWorkers() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from,twa_dba
                M-1,1965-05-01,M,Núñez,Otto,Mill,2005-06-01,90
                M-2,1990-01-01,F,Rusk,Dara,Mill,,
                M-3,,F,Quill,Cato,Mill,,90
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("M-1", "2006-06-01", "baseline", 10, 10)
                        + TestImports.test("M-1", "2025-06-01", "annual", 45, 30)
                        + TestImports.test("M-2", "2025-06-01", "baseline", 10, 10)
                        + TestImports.test("M-3", "2025-06-01", "baseline", 10, 10),
                "");
    }

    private MeaningSection section(String workerId) {
        UI.getCurrent().navigate("worker/" + workerId);
        return $(MeaningSection.class).single();
    }

    private String opened(String workerId) {
        NativeDetails details = section(workerId)
                .getChildren()
                .filter(NativeDetails.class::isInstance)
                .map(NativeDetails.class::cast)
                .findFirst()
                .orElseThrow();
        details.setOpen(true);
        ComponentUtil.fireEvent(details, new NativeDetails.ToggleEvent(details, true));
        return text();
    }

    private String text() {
        return $(MeaningSection.class).single().getElement().getTextRecursively();
    }

    @ParameterizedTest
    @EnumSource(names = {"NURSE", "SAFETY_OFFICER"})
    void theSectionIsClosedUntilSomebodyAsks(Role role) {
        SignIn.as(role, "Mill");
        assertThat(section("M-1").getElement().getTextRecursively())
                .contains("What the numbers mean")
                .doesNotContain("AMA Guides");
        assertThat(opened("M-1"))
                .contains("AMA Guides, 6th edition: right ear 7.5 %, left ear 30 %, both ears together 11.25 %")
                .contains("What this is not: no diagnosis; no compensation decision.")
                .contains("not verified against the text");
    }

    @Test
    void everyChapterHasItsSourceAndItsLimits() {
        String text = opened("M-1");
        assertThat(text)
                .contains("Material impairment", "NIOSH 1998")
                .contains("Grades", "WHO, World report on hearing, 2021, table 1.3")
                .contains("Notches", "Wilson and McArdle 2013")
                .contains("Differences between the ears", "AAO-HNS 2014, red flags for referral")
                .contains("Referral criteria", "Met: left ear, test of 1 Jun 2025")
                .contains("Beside people of the same age and sex", "no statement about this person");
        assertThat(text.split("What this is not", -1)).hasSize(1 + 6 + 2);
    }

    @Test
    @SuppressWarnings("unchecked")
    void theEditionOfTheAgeDataIsChosenInSight() {
        assertThat(opened("M-1"))
                .contains("Men of 60 years without noise, by ISO 7029:2017")
                .contains("Men of 60 years after 20.0 years at 90.0 dBA, a TWA of 5 dB exchange taken as LEX,8h, by ISO"
                        + " 1999:2013 with ISO 7029:2017")
                .contains("Years of exposure are counted from the first day of enrolment, 1 Jun 2005, to the test")
                .contains("The level is a time-weighted average of 5 dB exchange");
        RadioButtonGroup<AgeEdition> edition = $(RadioButtonGroup.class).single();
        edition.setValue(AgeEdition.ISO_7029_2000);
        assertThat(text())
                .contains("Men of 60 years without noise, by ISO 7029:2000")
                .doesNotContain("by ISO 7029:2017");
    }

    @Test
    void openingTwiceShowsItOnce() {
        opened("M-1");
        assertThat(opened("M-1").split("AMA Guides, 6th edition", -1)).hasSize(2);
    }

    @Test
    void whatTheRecordDoesNotHoldIsSaid() {
        assertThat(opened("M-2"))
                .contains("No noise level is on record, so that only people without noise are compared.")
                .contains("Women of 35 years without noise");
        assertThat(opened("M-3"))
                .contains("No comparison with a population: the birth date is not on record.")
                .doesNotContain("Age data");
    }
}
