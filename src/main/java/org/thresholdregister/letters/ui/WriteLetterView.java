package org.thresholdregister.letters.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.letters.LetterOccasion;
import org.thresholdregister.letters.LetterRequest;
import org.thresholdregister.letters.LetterService;
import org.thresholdregister.letters.PrintRun;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.WorkerRecordService;

/** Writes one letter: which, about which test, in which language. The page's title names nobody. */
@Route(WriteLetterView.ROUTE)
@PageTitle("Write a letter · Threshold Register")
@RolesAllowed(Roles.NURSE)
class WriteLetterView extends Div implements HasUrlParameter<String>, HealthRecordPage {

    static final String ROUTE = "write-letter";

    private final transient WorkerRecordService records;
    private final transient LetterService letters;
    private final Select<LetterKind> kind = new Select<>();
    private final Select<RecordedTest> test = new Select<>();
    private final Select<Ears> ears = new Select<>();
    private final Select<Language> language = new Select<>();
    private final TextField booked = new TextField("Day, time and place of the retest");
    private final Div result = new Div();
    private String site = "";

    WriteLetterView(WorkerRecordService records, LetterService letters) {
        this.records = records;
        this.letters = letters;
        result.getElement().setAttribute("role", "status");
    }

    static String address(String workerId) {
        return Paths.worker(workerId).replaceFirst(Paths.WORKER, ROUTE);
    }

    @Override
    public String site() {
        return site;
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String workerId) {
        removeAll();
        result.removeAll();
        add(new H1("Write a letter"));
        records.open(workerId)
                .filter(record -> !record.tests().isEmpty())
                .ifPresentOrElse(
                        this::show,
                        () -> add(new EmptyHint(
                                "No worker of this number with a test is among those whose records you may see.",
                                "Check the number, or look the worker up in the list.",
                                new Anchor("workers", "Go to the list of workers"))));
    }

    private void show(WorkerRecord record) {
        site = record.details().site();
        String number = record.details().workerId();
        kind.setLabel("Letter");
        kind.setItems(LetterKind.values());
        kind.setItemLabelGenerator(LetterLabels::kind);
        kind.setValue(LetterKind.RESULT);
        List<RecordedTest> tests = record.tests().reversed();
        test.setLabel("Test");
        test.setItems(tests);
        test.setItemLabelGenerator(
                each -> Words.capitalised(Words.purpose(each.audiogram().purpose())) + " of "
                        + Words.day(each.audiogram().date()));
        test.setValue(tests.getFirst());
        ears.setLabel("About");
        ears.setItems(Ears.values());
        ears.setItemLabelGenerator(Words::ears);
        ears.setValue(Ears.BOTH);
        language.setLabel("Language");
        language.setItems(Language.values());
        language.setItemLabelGenerator(LetterLabels::language);
        language.setValue(Language.of(record.details().language()));
        booked.setHelperText("Stays empty where the letter is to have a line to write on");
        booked.setMaxLength(LetterRequest.LONGEST_BOOKED);
        booked.setVisible(false);
        kind.addValueChangeListener(event -> booked.setVisible(event.getValue() == LetterKind.RETEST_INVITATION));
        var print = new Button("Print", click -> print(number));
        print.addThemeVariants(ButtonVariant.PRIMARY);
        var fields = new Div(kind, test, ears, language, booked);
        fields.addClassName("tr-entry-fields");
        add(
                new LeadSentence()
                        .text("A letter about ")
                        .link(
                                LetterLabels.name(
                                        record.details().givenName(),
                                        record.details().familyName(),
                                        number),
                                Paths.worker(number))
                        .text(" is printed and kept as it is."),
                fields,
                print,
                result);
    }

    private void print(String workerId) {
        RecordedTest about = test.getValue();
        PrintRun run = letters.print(List.of(new LetterRequest(
                new LetterOccasion(
                        workerId,
                        kind.getValue(),
                        about.key(),
                        about.audiogram().date(),
                        ears.getValue()),
                Optional.of(language.getValue()),
                kind.getValue() == LetterKind.RETEST_INVITATION ? booked.getValue() : "")));
        result.removeAll();
        byte[] pdf = run.pdf();
        result.add(
                new Paragraph("The letter is kept as printed. Mark it as given on the page of letters."),
                Downloads.link("Open the file to print", "letter.pdf", "application/pdf", out -> out.write(pdf)));
    }
}
