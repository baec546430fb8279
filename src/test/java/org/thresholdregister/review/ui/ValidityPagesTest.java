package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.core.wording.ValidityWords;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.review.ShiftColumn;
import org.thresholdregister.review.ShiftFilter;
import org.thresholdregister.review.ShiftReviewService;
import org.thresholdregister.review.ShiftRow;

/** Today is 9 March 2026; the baseline came one hour after noise, and the left ear fell by 30 dB in 2025. */
@RegisterTest
class ValidityPagesTest extends SpringBrowserlessTest {

    private static final String COLUMNS =
            TestImports.AUDIOGRAM_COLUMNS.strip() + ",hours_since_noise,protectors_worn,right_1000_repeat\n";

    @Autowired
    private TestImports files;

    @Autowired
    private ShiftReviewService shifts;

    @BeforeEach
    void storeOneWorker() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                "worker_id,birth_date,sex,family_name,given_name,site\nM-1,1990-05-01,F,Núñez,Ada,Mill\n",
                COLUMNS
                        + "M-1,2024-03-04,baseline,10,5,10,15,20,15,10,10,5,10,15,20,15,10,1,no,\n"
                        + "M-1,2025-03-03,annual,10,5,40,45,50,15,10,10,5,10,15,20,15,10,16,no,5\n"
                        + "M-1,2025-03-20,retest,10,5,40,45,50,15,10,10,5,10,15,20,15,10,16,no,15\n",
                "");
    }

    private String page() {
        return getCurrentView().getElement().getTextRecursively();
    }

    @Test
    void theWorkersPageMarksTestsAndSaysWhy() {
        UI.getCurrent().navigate("worker/M-1");

        assertThat(page())
                .contains("4 Mar 2024baseline test1 doubt")
                .contains("3 Mar 2025annual test1 note")
                .contains("20 Mar 2025retest1 doubt")
                .contains("second reading at 1000 Hz, right ear: 15 dB HL")
                .contains("Can this test be trusted?Retest of 20 Mar 2025: 1 doubt.")
                .contains("Doubt, two readings at 1000 Hz apart. Right ear: at 1000 Hz 5 dB HL first, 15 dB HL on the"
                        + " second reading: more than 5 dB apart. Repeat 1000 Hz, and the ear if the readings stay"
                        + " apart.")
                .contains("from memory, not checked against the text")
                .contains(ValidityWords.CAUTION)
                .doesNotContain("The test was made 1 hour");
    }

    @Test
    void theSectionFollowsTheChosenTest() {
        UI.getCurrent().navigate("worker/M-1");
        test($(Button.class).withText("Earlier test").single()).click();
        assertThat(page())
                .contains("Annual test of 3 Mar 2025: 1 note.")
                .contains("Left ear: more than 10 dB worse than on the test of 4 Mar 2024: at 2000 Hz 40 dB HL after"
                        + " 10 dB HL;")
                .contains("Test again within about three months. HSE L108 (2021) (published guidance)");
        test($(Button.class).withText("Earlier test").single()).click();
        assertThat(page())
                .contains("Baseline test of 4 Mar 2024: 1 doubt.")
                .contains("The test was made 1 hour after workplace noise")
                .contains("29 CFR 1910.95(g)(5)(iii)");
    }

    @Test
    void aTestWithoutDoubtsSaysSo() {
        files.store("", COLUMNS + "M-1,2026-03-02,annual,10,5,40,45,50,15,10,10,5,10,15,20,15,10,16,no,\n", "");
        UI.getCurrent().navigate("worker/M-1");
        assertThat(page()).contains("Annual test of 2 Mar 2026: nothing to doubt was found.");
    }

    @Test
    void aRowOfTheShiftsNamesDoubtsAndNotTheNoteThatEveryShiftHas() {
        assertThat(flagsAndNote(0)).containsExactly(new FlagCount(0, 1), "annual test");

        files.store("", COLUMNS + "M-1,2025-03-03,exit,10,5,40,45,60,15,10,10,5,10,15,20,15,10,16,no,\n", "");
        assertThat(flagsAndNote(1)).containsExactly(new FlagCount(1, 0), "exit test, 1 doubt");
    }

    private List<Object> flagsAndNote(int index) {
        ShiftRow row = shifts.find(ShiftFilter.ofYear(2025), Order.ascending(ShiftColumn.TEST_DATE), 0, 10)
                .get(index);
        ListCell cell =
                ShiftColumns.asOf(LocalDate.of(2026, 3, 9)).get(1).cell().apply(row);
        return List.of(row.flags(), cell.note());
    }
}
