package org.thresholdregister.intake.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** What the preview says before anything is stored. */
@RegisterTest
class LateChangeSectionTest extends SpringBrowserlessTest {

    @Autowired
    private ImportService imports;

    @Autowired
    private TestImports files;

    @BeforeEach
    void oneShift() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                "worker_id,birth_date,sex\nL-1,1950-05-01,F\n",
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("L-1", "2024-02-01", "baseline", 10, 10)
                        + TestImports.test("L-1", "2025-02-01", "annual", 30, 10),
                """
                worker_id,ear,test_date,kind,date,by,reason
                L-1,left,2025-02-01,notice-given,2025-02-20,the nurse,
                """);
    }

    private String shown(String audiograms) {
        ImportPreview preview = files.preview("", TestImports.AUDIOGRAM_COLUMNS + audiograms, "");
        var step = new PreviewStep(preview, "", imports, () -> {}, () -> {});
        UI.getCurrent().add(step);
        return step.getElement().getTextRecursively();
    }

    @Test
    void thePreviewListsWhatAnOlderTestChangesBeforeItIsConfirmed() {
        assertThat(shown(TestImports.test("L-1", "2023-02-01", "baseline", 25, 10)))
                .contains("What changes about tests on record")
                .contains(
                        "4 determinations about 1 worker would come out otherwise. On 1 of these a notice was given or a"
                                + " case recorded: that stands as it is, and the change waits for a person once the files are"
                                + " stored.")
                .contains("shift confirmed, recordable; baseline of 1 Feb 2024, mean shift 20.00 dB")
                .contains("no shift, not recordable; baseline of 1 Feb 2023, mean shift 5.00 dB")
                .contains("notice given on 20 Feb 2025")
                .contains("Download these as CSV");
    }

    @Test
    void anImportOfLaterTestsSaysNothingOfIt() {
        assertThat(shown(TestImports.test("L-1", "2026-02-01", "annual", 25, 10)))
                .doesNotContain("What changes about tests on record");
    }
}
