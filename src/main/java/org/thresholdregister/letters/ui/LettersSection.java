package org.thresholdregister.letters.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.letters.LetterService;
import org.thresholdregister.letters.PrintedLetter;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.ui.WorkerSection;

/** The letters to a worker, on the worker's page. */
@SpringComponent
class LettersSection implements WorkerSection {

    private static final int PLACE = 40;

    private final LetterService letters;
    private final CurrentUser currentUser;

    LettersSection(LetterService letters, CurrentUser currentUser) {
        this.letters = letters;
        this.currentUser = currentUser;
    }

    @Override
    public int place() {
        return PLACE;
    }

    @Override
    public Optional<Component> of(WorkerRecord record) {
        String number = record.details().workerId();
        List<PrintedLetter> printed = letters.ofWorker(number);
        if (printed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Section(
                new H2("Letters"),
                new LetterTable<>(
                        "Letters, the latest first",
                        printed,
                        letter -> List.of(LetterLabels.name(letter.givenName(), letter.familyName(), number), number),
                        List.of(
                                new LetterTable.Column<>(
                                        "Letter",
                                        letter -> LetterLabels.kind(
                                                letter.occasion().kind())),
                                new LetterTable.Column<>(
                                        "Test",
                                        letter ->
                                                Dates.onScreen(letter.occasion().testDate())),
                                new LetterTable.Column<>("Printed", letter -> Dates.onScreen(letter.printedOn())),
                                new LetterTable.Column<>("State", LetterLabels::state)),
                        false)));
    }

    @Override
    public List<Anchor> actions(WorkerRecord record) {
        return record.tests().isEmpty() || currentUser.role() != Role.NURSE
                ? List.of()
                : List.of(new Anchor(WriteLetterView.address(record.details().workerId()), "Write a letter"));
    }
}
