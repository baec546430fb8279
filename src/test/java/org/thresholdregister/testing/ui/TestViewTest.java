package org.thresholdregister.testing.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.QueryParameters;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.review.ui.TestPagePart;
import org.thresholdregister.testing.TestEntry;
import org.thresholdregister.testing.TestEntryService;
import org.thresholdregister.testing.TypedTest;
import org.thresholdregister.testing.TypedThresholds;

/** Today is 9 March 2026; M-1 has a baseline of 2 March 2025. */
@RegisterTest
class TestViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestEntryService tests;

    @Autowired
    private TestImports files;

    @BeforeEach
    void oneWorker() {
        SignIn.as(Role.NURSE, "Mill");
        files.store("""
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                M-1,1990-05-01,F,Quill,Ada,Mill,2020-01-01
                M-2,1990-05-01,F,Quarrel,Bo,Mill,2020-01-01
                """, TestImports.AUDIOGRAM_COLUMNS + TestImports.test("M-1", "2025-03-02", "baseline", 10, 10), "");
    }

    private String shown(String path) {
        String[] parts = path.split("\\?", 2);
        UI.getCurrent().navigate(parts[0], QueryParameters.fromString(parts.length > 1 ? parts[1] : ""));
        return text();
    }

    private String text() {
        return getCurrentView().getElement().getTextRecursively();
    }

    private TestEntry entry() {
        return tests.open("M-1", Optional.empty()).orElseThrow();
    }

    private TypedTest kept() {
        return entry().draft().typed();
    }

    private void typeThresholds(String right, String left) {
        TestEntry entry = entry();
        List<String> texts = new ArrayList<>();
        for (String text : List.of(right, left)) {
            texts.addAll(Collections.nCopies(7, text));
            texts.add("");
        }
        tests.type(
                entry.draft().key(),
                entry.draft().typed().withThresholds(new TypedThresholds(texts), TypedTest.USUAL_LIMIT));
    }

    private void press(String button) {
        test($(Button.class).withText(button).single()).click();
    }

    @Test
    void theStartPageFindsSomebodyAndListsWhatIsHalfTyped() {
        assertThat(shown("test")).contains("No half-typed test of yours waits.");
        TextField search = $(TextField.class).single();
        test(search).setValue("qu");
        assertThat(text()).contains("Ada Quill").contains("Bo Quarrel").contains("2 workers fit");
        test(search).setValue("zz");
        assertThat(text()).contains("No worker fits this search.");
        typeThresholds("40", "10");
        assertThat(shown("test"))
                .contains("1 half-typed test of yours waits.")
                .contains("Ada Quill")
                .contains("14 thresholds");
    }

    @Test
    void whatIsTypedIsSaidAsItStandsAndWhatHappensNext() {
        assertThat(shown("test/M-1"))
                .contains("Test of Ada Quill")
                .contains("No threshold is typed yet.")
                .contains("I, Test, sign the annual test of Ada Quill, number M-1, made on 9 Mar 2026 by Test, with 0"
                        + " thresholds of 14");
        typeThresholds("40", "10");
        assertThat(shown("test/M-1"))
                .contains("Right ear: awaiting retest, also for the injury log. Mean shift")
                .contains("Left ear: no shift, not recordable")
                .contains("A retest may take the place of the test of 9 Mar 2026 until 8 Apr 2026.")
                .contains("Written notice, right ear, after the test of 9 Mar 2026, by 30 Mar 2026.")
                .contains("29 CFR 1910.95(g)(8)(i)")
                .contains("with 14 thresholds of 14");
    }

    @Test
    @SuppressWarnings("unchecked")
    void theFieldsKeepWhatTheyAreGivenAndSayWhatIsWrong() {
        shown("test/M-1");
        TextField hours = $(TextField.class)
                .withPropertyValue(TextField::getLabel, "Hours away from noise")
                .single();
        test(hours).setValue("long");
        assertThat(hours.isInvalid()).isTrue();
        assertThat(hours.getErrorMessage()).isEqualTo("Type hours as a number, such as 14 or 14.5.");
        assertThat(kept().hours()).as("kept, though it is wrong").isEqualTo("long");
        test(hours).setValue("14");
        assertThat(hours.isInvalid()).isFalse();
        Select<TestPurpose> purpose =
                $(Select.class).withPropertyValue(Select::getLabel, "Purpose").single();
        assertThat(purpose.getValue()).isEqualTo(TestPurpose.ANNUAL);
        ComboBox<String> tester = $(ComboBox.class)
                .withPropertyValue(ComboBox::getLabel, "Tester")
                .single();
        assertThat(tester.getValue()).isEqualTo("Test");
        test(tester).selectItem(null);

        press("Sign this test");
        assertThat(text())
                .contains("Nothing was signed. What you typed is kept.")
                .contains("No threshold is typed yet.")
                .contains("Name who made the test.");
        assertThat(tester.isInvalid()).isTrue();
        assertThat(kept().hours()).isEqualTo("14");
    }

    @Test
    void aTestThatComesLateSaysWhatItChangesAboutOthers() {
        typeThresholds("40", "10");
        tests.sign(entry().draft().key(), kept());
        TestEntry entry = entry();
        TypedTest typed = entry.draft().typed();
        tests.type(
                entry.draft().key(),
                new TypedTest(
                        typed.thresholds(),
                        typed.limit(),
                        Optional.of(LocalDate.of(2024, 1, 8)),
                        Optional.of(TestPurpose.BASELINE),
                        "",
                        Optional.empty(),
                        "Test",
                        "",
                        "",
                        "",
                        "",
                        ""));
        typeThresholds("40", "10");
        assertThat(shown("test/M-1"))
                .contains("What it changes about other tests")
                .contains("Annual test of 9 Mar 2026, right ear: no shift, not recordable (before: awaiting retest,"
                        + " also for the injury log).");
    }

    @Test
    void signingShowsWhatIsOnRecordAndWhereToGo() {
        typeThresholds("40", "10");
        shown("test/M-1");
        press("Sign this test");
        assertThat(text())
                .contains(
                        "On record now: annual test of 9 Mar 2026, Ada Quill, number M-1, signed by Test on 9 Mar 2026")
                .contains("Right ear: awaiting retest")
                .contains("Next person");
        assertThat(shown("worker/M-1")).contains("signed by Test").contains("Enter a test");
    }

    @Test
    void aDraftIsThrownAwayOnlyWhenAskedTwice() {
        typeThresholds("40", "10");
        shown("test/M-1");
        press("Throw this draft away");
        assertThat(tests.waiting()).hasSize(1);
        press("Throw it away");
        assertThat(tests.waiting()).isEmpty();
        assertThat(text()).contains("Whose test is it?");
    }

    @Test
    void aDraftThatWasSignedInAnotherWindowIsNoneAnyMore() {
        typeThresholds("40", "10");
        shown("test/M-1");
        tests.sign(entry().draft().key(), kept());
        press("Sign this test");
        assertThat(text()).contains("This test is no draft any more");
    }

    @Test
    void anUnknownWorkerOrTestLeadsBackToTheSearch() {
        assertThat(shown("test/Z-9")).contains("No test to enter");
        assertThat(shown("test/M-1?in-place-of=12345678")).contains("No test to enter");
        assertThat(shown("test/M-1?in-place-of=x")).contains("No test to enter");
    }

    @Test
    void anotherFeaturesPartStandsOnThePage() {
        TestEntry entry = entry();
        TestPagePart part = new TestPagePart() {
            @Override
            public int place() {
                return 1;
            }

            @Override
            public Optional<Component> of(String workerId, long draftKey) {
                return Optional.of(new Section(new H2("Part of " + workerId + ", draft " + draftKey)));
            }
        };
        var page = new EntryPart(entry, tests, List.of(part), "Test", signed -> {});
        assertThat(page.getElement().getTextRecursively())
                .contains("Part of M-1, draft " + entry.draft().key());
    }

    @Test
    void aNurseTakesATestOutWithAReasonAndItStaysReadable() {
        assertThat(shown("worker/M-1")).contains("No test of this worker was superseded or entered in error.");
        test($(NativeButton.class).withText("Entered in error").single()).click();
        press("Take it out");
        TextArea reason = $(TextArea.class).single();
        assertThat(reason.getErrorMessage()).isEqualTo("A test is taken out only with a reason.");
        reason.setValue("This was Bo Quarrel's test");
        press("Take it out");
        assertThat(text())
                .contains("Baseline test of 2 Mar 2025")
                .contains("entered in error on 9 Mar 2026 by test-nurse: This was Bo Quarrel's test")
                .contains("This test counts no more. It stands here as it was.")
                .contains("No hearing test of this worker is on record.");
    }

    @Test
    void aSafetyOfficerReadsAndCorrectsNothing() {
        typeThresholds("40", "10");
        tests.sign(entry().draft().key(), kept());
        SignIn.as(Role.SAFETY_OFFICER, "Mill");
        assertThat(shown("worker/M-1"))
                .contains("Annual test of 9 Mar 2026")
                .doesNotContain("Correct a test on record");
        assertThat($(Anchor.class).all().stream().map(Anchor::getText)).doesNotContain("Enter a test");
    }
}
