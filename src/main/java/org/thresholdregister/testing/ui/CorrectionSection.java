package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.SupersededTest;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.WorkerRecordService;
import org.thresholdregister.review.ui.HowMade;
import org.thresholdregister.review.ui.NumbersTable;
import org.thresholdregister.review.ui.WorkerSection;
import org.thresholdregister.testing.TestEntryService;

/** On a worker's page: enter a test, correct one that is on record, and read those that count no more. */
@org.springframework.stereotype.Component
class CorrectionSection implements WorkerSection {

    private static final int PLACE = 10;

    private final WorkerRecordService records;
    private final TestEntryService tests;
    private final CurrentUser currentUser;

    CorrectionSection(WorkerRecordService records, TestEntryService tests, CurrentUser currentUser) {
        this.records = records;
        this.tests = tests;
        this.currentUser = currentUser;
    }

    @Override
    public int place() {
        return PLACE;
    }

    @Override
    public List<Anchor> actions(WorkerRecord record) {
        return isNurse() ? List.of(new Anchor(Paths.test(record.details().workerId()), "Enter a test")) : List.of();
    }

    @Override
    public Optional<Component> of(WorkerRecord record) {
        List<SupersededTest> former = records.superseded(record.details().workerId());
        boolean mayCorrect = isNurse() && !record.tests().isEmpty();
        if (former.isEmpty() && !mayCorrect) {
            return Optional.empty();
        }
        var section = new Section(new H2("Corrections of tests"));
        section.addClassName("tr-corrections");
        if (former.isEmpty()) {
            section.add(new Paragraph("No test of this worker was superseded or entered in error."));
        }
        former.forEach(test -> section.add(former(test, record)));
        if (mayCorrect) {
            section.add(correct(record));
        }
        return Optional.of(section);
    }

    private boolean isNurse() {
        return currentUser.role() == Role.NURSE;
    }

    private static NativeDetails former(SupersededTest former, WorkerRecord record) {
        var details = new NativeDetails();
        var struck = new Span();
        struck.getElement().appendChild(new Element("del").setText(Words.capitalised(EntryWords.name(former.test()))));
        details.setSummary(
                struck,
                new Span(" " + whatBecame(former, record) + " on " + Words.day(former.on()) + " by " + former.by()
                        + ": " + former.reason()));
        String made = HowMade.inWords(former.test());
        var content = new Div(
                new Paragraph(
                        "This test counts no more. It stands here as it was." + (made.isEmpty() ? "" : " " + made)),
                new NumbersTable(
                        "Thresholds", AudiogramComparison.of(former.test().audiogram())));
        details.setContent(content);
        return details;
    }

    private static String whatBecame(SupersededTest former, WorkerRecord record) {
        return former.successor()
                .map(key -> "superseded"
                        + record.tests().stream()
                                .filter(test -> test.key() == key)
                                .findFirst()
                                .map(test -> " by the " + EntryWords.name(test))
                                .orElse(""))
                .orElse("entered in error");
    }

    private NativeDetails correct(WorkerRecord record) {
        String workerId = record.details().workerId();
        List<ListColumn<RecordedTest, ?>> columns = List.of(
                ListColumn.unordered(
                        "Test",
                        12,
                        test -> ListCell.text(Words.capitalised(EntryWords.name(test)))
                                .withNote(test.signature()
                                        .map(signature -> "signed by " + signature.name())
                                        .orElse("imported"))),
                ListColumn.unordered(
                        "Something in it is wrong",
                        10,
                        test -> ListCell.link(
                                "Correct the " + EntryWords.name(test),
                                TestAddress.of(workerId, Optional.of(test.key())))),
                ListColumn.unordered(
                        "It should not be here",
                        8,
                        test -> ListCell.action("Entered in error", "Entered in error: " + EntryWords.name(test))));
        var table =
                new ListTable<>("The newest first", columns, record.tests().reversed(), test -> ask(workerId, test));
        var details = new NativeDetails();
        details.setSummaryText("Correct a test on record");
        details.setContent(table);
        return details;
    }

    private void ask(String workerId, RecordedTest test) {
        var dialog = new WithdrawDialog(
                test, reason -> tests.withdraw(workerId, test.key(), reason), () -> showAgain(workerId));
        dialog.open();
    }

    private static void showAgain(String workerId) {
        UI.getCurrent().navigate(Paths.worker(workerId));
    }
}
