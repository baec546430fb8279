package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.combobox.ComboBoxBase;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.grid.Grid;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.Location;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.review.BoardRow;
import org.thresholdregister.review.Evidence;
import org.thresholdregister.review.TaskKind;

/** Today is 9 March 2026; M-2 showed a shift on the left on 1 June 2025, Y-1 one on the right on 1 March 2026. */
@RegisterTest
class BoardViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @BeforeEach
    void twoShifts() {
        SignIn.as(Role.NURSE);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                M-2,1990-01-01,F,Rusk,Dara,Mill,2020-01-01
                Y-1,1990-01-01,F,Quill,Cato,Yard,2020-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("M-2", "2024-06-01", "baseline", 10, 10)
                        + TestImports.test("M-2", "2025-06-01", "annual", 40, 10)
                        + TestImports.test("Y-1", "2025-03-01", "baseline", 10, 10)
                        + TestImports.test("Y-1", "2026-03-01", "annual", 10, 40),
                "");
    }

    private void show(String address) {
        var location = new Location(address);
        UI.getCurrent().navigate(location.getPath(), location.getQueryParameters());
    }

    @SuppressWarnings("unchecked")
    private Grid<BoardRow> grid() {
        return (Grid<BoardRow>) $(Grid.class).single();
    }

    private List<TaskKind> kinds() {
        return IntStream.range(0, test(grid()).size())
                .mapToObj(row -> test(grid()).getRow(row))
                .map(row -> ((BoardRow.OfTask) row).kind())
                .toList();
    }

    private Button button(String words) {
        return $(Button.class).withText(words).single();
    }

    private String lead() {
        return $(LeadSentence.class).single().getElement().getTextRecursively();
    }

    private String result() {
        return $(ResultMessage.class).single().getText();
    }

    @Test
    void theAddressSaysWhatIsShownAndInWhichOrder() {
        show("follow-ups");
        assertThat(lead())
                .matches(
                        "\\d+ follow-ups are owed: \\d+ are overdue, \\d+ (is|are) due in the next 7 days and \\d+ are open"
                                + " without a date\\.");
        show("follow-ups?kind=notice");
        assertThat(kinds()).containsExactly(TaskKind.NOTICE, TaskKind.NOTICE);
        show("follow-ups?from=2026-03-20&to=2026-03-31&who=nurse");
        assertThat(kinds()).containsExactly(TaskKind.NOTICE, TaskKind.RETEST);
        assertThat(lead())
                .endsWith(" follow-ups, 2 for the nurse are owed, due on 20 Mar 2026 or later, due on 31 Mar 2026 or"
                        + " before.");
        show("follow-ups?kind=notice&order=due-date-descending");
        assertThat(test(grid()).getRow(0).due()).hasValue(LocalDate.of(2026, 3, 22));
        show("follow-ups?kind=tea");
        assertThat(getCurrentView().getElement().getTextRecursively()).contains("No such page");
    }

    @Test
    @SuppressWarnings("unchecked")
    void manyAreChosenAndMarkedAtOnce() {
        show("follow-ups?who=nurse");
        assertThat(button("Mark as done").isEnabled()).isFalse();
        test(button("Choose all 7")).click();
        assertThat($(Span.class).withClassName("tr-bulk-number").single().getText())
                .isEqualTo("7 rows are chosen.");
        test(button("Mark as done")).click();
        assertThat($(Dialog.class).single().getElement().getTextRecursively()
                        + $(Paragraph.class).all().stream()
                                .map(Paragraph::getText)
                                .toList())
                .contains("Of 7 chosen, 4 can be marked here");
        ((Select<Evidence.Means>) $(Select.class)
                        .withPropertyValue(Select::getLabel, "How")
                        .single())
                .setValue(Evidence.Means.SIGNED_FOR);
        test(button("Enter for 4")).click();

        assertThat(result()).isEqualTo("4 marked.");
        assertThat(kinds()).doesNotContain(TaskKind.NOTICE, TaskKind.REFIT, TaskKind.TRAINING);
        assertThat(button("Mark as done").isEnabled()).isFalse();

        show("worker/M-2");
        assertThat(getCurrentView().getElement().getTextRecursively())
                .contains("Written notice given on 9 Mar 2026, left ear, test of 1 Jun 2025:"
                        + " letter explained in person and signed for.");
    }

    @Test
    void aRetestIsBookedFromItsRowsAndSaysSo() {
        show("follow-ups?who=nurse");
        test(button("Choose all 7")).click();
        test(button("Book retests")).click();
        test(button("Book")).click();
        DatePicker day = $(DatePicker.class)
                .withPropertyValue(DatePicker::getLabel, "Day of the retest")
                .single();
        assertThat(day.getErrorMessage()).isEqualTo("Give a day from today on, such as 9 Mar 2026.");
        day.setValue(LocalDate.of(2026, 3, 16));
        test(button("Book")).click();
        assertThat(result()).startsWith("1 booked for 16 Mar 2026, 6 not: ").contains("settled by a test");
        show("follow-ups?kind=retest");
        assertThat(test(grid()).getRow(0))
                .isInstanceOfSatisfying(
                        BoardRow.OfTask.class, row -> assertThat(row.booked()).isEqualTo("Booked for 16 Mar 2026."));
    }

    @Test
    void puttingOffSaysThatTheLegalDayStands() {
        show("follow-ups?kind=notice");
        test(button("Choose all 2")).click();
        test(button("Put off")).click();
        $(DatePicker.class)
                .withPropertyValue(DatePicker::getLabel, "Until")
                .single()
                .setValue(LocalDate.of(2026, 4, 1));
        assertThat($(Paragraph.class).withClassName("tr-overdue").single().getText())
                .isEqualTo("No due date moves by this; each stays on the board. Of 2, the legal day of 1 has passed"
                        + " already: overdue stays overdue. Of 2, the legal day of 1 comes before that: it stands, and"
                        + " the day after it the follow-up is overdue by the rule.");
        Button save = $(Button.class).withText("Put off").all().getLast();
        test(save).click();
        TextArea reason = $(TextArea.class)
                .withPropertyValue(TextArea::getLabel, "Reason")
                .single();
        assertThat(reason.getErrorMessage()).isEqualTo("It is put off only with a reason.");
        reason.setValue("on leave");
        test(save).click();
        assertThat(result()).isEqualTo("2 put off until 1 Apr 2026.");
        show("follow-ups?postponed=postponed&state=overdue");
        assertThat(kinds()).containsExactly(TaskKind.NOTICE);
    }

    @Test
    void whatIsHalfTypedFiltersByWhatItMeansOrSaysThatItDoesNot() {
        show("follow-ups");
        ComboBox<?> site =
                $(ComboBox.class).withPropertyValue(ComboBox::getLabel, "Site").single();
        ComponentUtil.fireEvent(site, new ComboBoxBase.CustomValueSetEvent<>(site, true, "xyz"));
        assertThat(site.isInvalid()).isTrue();
        assertThat(site.getErrorMessage())
                .isEqualTo("None is called “xyz”. Nothing is filtered by it; choose one from the list.");
    }

    @Test
    void theSheetHoldsWhatIsChosenOrElseAll() {
        show("follow-ups?kind=notice");
        var out = new ByteArrayOutputStream();
        test($(Anchor.class).withText("Download as CSV").single()).download(out);
        String sheet = out.toString(StandardCharsets.UTF_8);
        assertThat(sheet.lines()).hasSize(3);
        assertThat(sheet)
                .contains("M-2,Dara Rusk,Mill,,written notice,2025-06-22,260 days overdue,29 CFR 1910.95(g)(8)(i),"
                        + "2025-06-01,left ear,2025-06-01,,,");
    }
}
