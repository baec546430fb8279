package org.thresholdregister.letters.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.letters.LetterFilter;
import org.thresholdregister.letters.LetterRequest;
import org.thresholdregister.letters.LetterService;
import org.thresholdregister.letters.PrintRun;
import org.thresholdregister.letters.PrintedLetter;
import org.thresholdregister.letters.WaitingLetter;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;

/** Letters that are due, to be printed; and those that were printed, to be marked as given and printed again. */
@Route("letters")
@PageTitle("Letters · Threshold Register")
@Menu(title = "Letters", order = 25)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class LettersView extends Div implements HealthRecordPage {

    private final transient LetterService letters;
    private final boolean mayPrint;
    private final LocalDate today;
    private final Div result = new Div();
    private final Div waiting = new Div();
    private final Div printed = new Div();
    private final LetterFilterFields filter = new LetterFilterFields(this::showPrinted);

    LettersView(LetterService letters, CurrentUser currentUser, Clock clock) {
        this.letters = letters;
        this.mayPrint = currentUser.role() == Role.NURSE;
        this.today = LocalDate.now(clock);
        result.getElement().setAttribute("role", "status");
        add(new H1("Letters"), waiting, result, new H2("Printed letters"), filter, printed);
        if (mayPrint) {
            var texts = new Paragraph(new Anchor("letter-texts", "Letterhead and letter texts"));
            add(texts);
        }
        showWaiting();
        showPrinted();
    }

    private void showWaiting() {
        waiting.removeAll();
        List<WaitingLetter> all = letters.waiting();
        long late = all.stream()
                .filter(letter ->
                        letter.dueDate().filter(day -> day.isBefore(today)).isPresent())
                .count();
        waiting.add(new LeadSentence(
                all.isEmpty()
                        ? "No letter waits to be printed."
                        : all.size() + (all.size() == 1 ? " letter waits" : " letters wait") + " to be printed"
                                + (late == 0 ? "." : ", " + late + " overdue.")));
        if (all.isEmpty()) {
            waiting.add(
                    new EmptyHint(
                            "Every test of the last 60 days has its letter, and no notice or retest is open without one.",
                            "Letters wait here once a test is on record. Any other letter can be written from a worker’s page."));
            return;
        }
        List<WaitingLetter> shown = all.subList(0, Math.min(all.size(), LetterService.MOST));
        var table = new LetterTable<WaitingLetter>(
                shown.size() < all.size()
                        ? "Waiting letters, the first " + shown.size() + " of " + all.size()
                        : "Waiting letters",
                shown,
                letter -> List.of(
                        LetterLabels.name(
                                letter.givenName(),
                                letter.familyName(),
                                letter.occasion().workerId()),
                        letter.occasion().workerId()),
                List.of(
                        new LetterTable.Column<>(
                                "Letter",
                                letter -> LetterLabels.kind(letter.occasion().kind())),
                        new LetterTable.Column<>(
                                "Test",
                                letter -> Dates.onScreen(letter.occasion().testDate())),
                        new LetterTable.Column<>(
                                "Ears", letter -> Words.ears(letter.occasion().ears())),
                        new LetterTable.Column<>("Due", this::due),
                        new LetterTable.Column<>("Language", letter -> LetterLabels.language(letter.language()))),
                mayPrint);
        if (mayPrint) {
            var print = new Button("Print these", click -> print(table.chosen()));
            print.addThemeVariants(ButtonVariant.PRIMARY);
            waiting.add(actions(new Button("Choose all", click -> table.chooseAll(true)), print));
        }
        waiting.add(table);
    }

    private String due(WaitingLetter letter) {
        return letter.dueDate()
                .map(day -> Dates.onScreen(day) + (day.isBefore(today) ? ", overdue" : ""))
                .orElse("");
    }

    private static Div actions(com.vaadin.flow.component.Component... buttons) {
        var bar = new Div(buttons);
        bar.addClassName("tr-page-actions");
        return bar;
    }

    private void print(List<WaitingLetter> chosen) {
        if (chosen.isEmpty()) {
            say("Choose the letters to print first.");
            return;
        }
        PrintRun run = letters.print(chosen.stream()
                .map(letter -> LetterRequest.of(letter.occasion()))
                .toList());
        showWaiting();
        showPrinted();
        say(run.letters() + (run.letters() == 1 ? " letter is" : " letters are") + " kept as printed."
                + (run.leftOut() == 0 ? "" : " " + run.leftOut() + " could not be printed."));
        byte[] pdf = run.pdf();
        result.add(Downloads.link(
                "Open the file to print", "letters-" + today + ".pdf", "application/pdf", out -> out.write(pdf)));
    }

    private void say(String words) {
        result.removeAll();
        result.add(new Paragraph(words));
        result.addClassName("tr-card");
    }

    private void showPrinted() {
        printed.removeAll();
        LetterFilter wanted = filter.filter();
        List<PrintedLetter> found = letters.printed(wanted);
        if (found.isEmpty()) {
            printed.add(new EmptyHint(
                    wanted.equals(LetterFilter.EVERYTHING)
                            ? "No letter was printed yet."
                            : "No printed letter fits this filter.",
                    "What is printed is kept here, with the day and the way it was given."));
            return;
        }
        var table = new LetterTable<PrintedLetter>(
                found.size() < LetterService.MOST
                        ? "Printed letters, the latest first"
                        : "The latest " + LetterService.MOST + " printed letters",
                found,
                letter -> List.of(
                        LetterLabels.name(
                                letter.givenName(),
                                letter.familyName(),
                                letter.occasion().workerId()),
                        letter.occasion().workerId()),
                List.of(
                        new LetterTable.Column<>(
                                "Letter",
                                letter -> LetterLabels.kind(letter.occasion().kind())),
                        new LetterTable.Column<>(
                                "Test",
                                letter -> Dates.onScreen(letter.occasion().testDate())),
                        new LetterTable.Column<>("Printed", letter -> Dates.onScreen(letter.printedOn())),
                        new LetterTable.Column<>("State", LetterLabels::state),
                        new LetterTable.Column<>("Language", letter -> LetterLabels.language(letter.language()))),
                true);
        var buttons = actions(new Button("Print again", click -> reprint(table.chosen())));
        if (mayPrint) {
            buttons.add(new Button("Mark as given", click -> askGiven(table.chosen())));
        }
        printed.add(buttons, table);
    }

    private void reprint(List<PrintedLetter> chosen) {
        if (chosen.isEmpty()) {
            say("Choose the letters to print again first.");
            return;
        }
        byte[] pdf = letters.reprint(chosen.stream().map(PrintedLetter::key).toList());
        say("Each page says that it is a reprint of today.");
        result.add(Downloads.link(
                "Open the reprint", "letters-reprint-" + today + ".pdf", "application/pdf", out -> out.write(pdf)));
    }

    private void askGiven(List<PrintedLetter> chosen) {
        if (chosen.isEmpty()) {
            say("Choose the letters that were given first.");
            return;
        }
        new GivenDialog(chosen.size(), today, (day, method) -> {
                    var given = letters.markGiven(
                            chosen.stream().map(PrintedLetter::key).toList(), day, method);
                    showWaiting();
                    showPrinted();
                    say(given.letters() + (given.letters() == 1 ? " letter is" : " letters are") + " marked as given.");
                    given.notes().forEach(note -> result.add(new Paragraph(note)));
                })
                .open();
    }
}
