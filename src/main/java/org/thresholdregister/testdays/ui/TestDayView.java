package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.function.SerializableRunnable;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.DecisionResult;
import org.thresholdregister.testdays.Booking;
import org.thresholdregister.testdays.BookingResult;
import org.thresholdregister.testdays.BookingService;
import org.thresholdregister.testdays.BookingState;
import org.thresholdregister.testdays.Confirmed;
import org.thresholdregister.testdays.RunSheetService;
import org.thresholdregister.testdays.TestDay;
import org.thresholdregister.testdays.TestDayCounts;
import org.thresholdregister.testdays.TestDayService;

/** One test day: who comes when, who did not fit, and what came of it. */
@Route(TestDayPaths.DAY)
@PageTitle("A test day · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class TestDayView extends Div implements HasUrlParameter<Long>, HealthRecordPage {

    private final transient TestDayService days;
    private final transient BookingService bookings;
    private final transient RunSheetService sheets;
    private final boolean mayChange;
    private final LocalDate today;
    private final Message message = new Message();
    private final Div content = new Div();
    private long key;
    private String site = "";

    TestDayView(
            TestDayService days,
            BookingService bookings,
            RunSheetService sheets,
            CurrentUser currentUser,
            Clock clock) {
        this.days = days;
        this.bookings = bookings;
        this.sheets = sheets;
        this.mayChange = currentUser.role() == Role.NURSE;
        this.today = LocalDate.now(clock);
        add(content);
    }

    @Override
    public void setParameter(BeforeEvent event, Long dayKey) {
        key = dayKey;
        message.say("");
        refresh();
    }

    @Override
    public String site() {
        return site;
    }

    private void refresh() {
        content.removeAll();
        Optional<TestDayCounts> found = days.find(key);
        if (found.isEmpty()) {
            site = "";
            content.add(
                    new H1("No test day to show"),
                    new EmptyHint(
                            "No such test day is among those that you may see.",
                            "Look it up in the list.",
                            new Anchor(TestDayPaths.DAYS, "Go to the test days")));
            return;
        }
        show(found.get());
    }

    private void show(TestDayCounts counts) {
        TestDay day = counts.day();
        site = day.site();
        List<Booking> listed = days.bookings(key);
        List<TestDayService.LeftOutPerson> leftOut = days.leftOut(key);
        content.add(new H1(SchedulingWords.day(day.date())), lead(counts), about(day), message);
        boolean open = !day.cancelled() && !day.date().isBefore(today);
        content.add(actions(counts, open));
        if (listed.isEmpty()) {
            content.add(new EmptyHint(
                    "Nobody is on the list.",
                    open
                            ? "Propose fills the free times with those who are due; single people are added from the"
                                    + " list of who is due."
                            : "The day is over or was called off."));
        } else {
            content.add(new BookingTable(
                    columns(), listed, mayChange && !day.cancelled() ? this::buttons : row -> List.of()));
        }
        if (!leftOut.isEmpty()) {
            content.add(
                    new H2("Who did not fit"),
                    new ListTable<>("The most urgent first", leftOutColumns(), leftOut, row -> {}));
        }
        var caution = new Paragraph(
                "An annual test needs no quiet hours by 29 CFR 1910.95(g)(6); a baseline test does by (g)(5)(iii), and a"
                        + " retest by common practice.");
        caution.addClassName("tr-caution");
        content.add(caution);
    }

    private LeadSentence lead(TestDayCounts counts) {
        TestDay day = counts.day();
        if (day.cancelled()) {
            return new LeadSentence("This day was called off.");
        }
        String leftOut = counts.leftOut() == 0 ? "" : "; " + SchedulingWords.leftOut(counts.leftOut());
        String proposed = counts.proposed() == 0
                ? ""
                : "; " + counts.proposed() + " of them " + Counted.isOrAre(counts.proposed()) + " not confirmed yet";
        return new LeadSentence(
                SchedulingWords.people(day.date(), counts.people(), counts.retests()) + proposed + leftOut + ".");
    }

    private static Paragraph about(TestDay day) {
        String pauses = day.hours().breaks().stream()
                .map(pause -> SchedulingWords.time(pause.from()) + " to " + SchedulingWords.time(pause.to()))
                .collect(Collectors.joining(", "));
        return new Paragraph((day.site().isEmpty() ? "" : day.site() + ", ") + day.place() + ". "
                + SchedulingWords.time(day.hours().from()) + " to "
                + SchedulingWords.time(day.hours().to()) + ", "
                + Counted.of(day.hours().perHour(), "person", "people") + " in an hour"
                + (pauses.isEmpty() ? "" : ", break " + pauses)
                + (day.mobileUnit() ? ", in a mobile unit" : "")
                + (day.nurse().isEmpty() ? "" : ", tested by " + day.nurse()) + ".");
    }

    private Div actions(TestDayCounts counts, boolean open) {
        var actions = new Div();
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        if (mayChange && open) {
            var propose = new Button(
                    "Propose who comes",
                    click -> new ProposeDialog(counts.day().date(), dueBy -> propose(dueBy)).open());
            var confirm = new Button("Confirm", click -> confirm());
            confirm.setAriaLabel("Confirm all proposed people");
            confirm.addThemeVariants(ButtonVariant.PRIMARY);
            var clear = new Button("Take proposals off", click -> {
                int number = days.clearProposals(key);
                say(Counted.of(number, "proposed person was", "proposed people were") + " taken off.");
            });
            confirm.setEnabled(counts.proposed() > 0);
            clear.setEnabled(counts.proposed() > 0);
            var off = new Button(
                    "Call the day off",
                    click -> new CallOffDialog(() -> {
                                days.cancel(key);
                                say("The day is called off; who was due stays due.");
                            })
                            .open());
            actions.add(propose, confirm, clear, off);
        }
        if (counts.people() > 0) {
            actions.add(Downloads.link(
                    "Run sheet",
                    "run-sheet-" + Dates.inFile(counts.day().date()) + ".pdf",
                    "application/pdf",
                    out -> out.write(sheets.pdf(key).orElse(new byte[0]))));
        }
        if (mayChange && open) {
            actions.add(new Anchor(TestDayPaths.DUE + "?booked=without-a-time", "Add from who is due"));
        }
        return actions;
    }

    private void propose(LocalDate dueBy) {
        days.propose(key, dueBy)
                .ifPresentOrElse(
                        proposed -> say(Counted.of(proposed.people(), "person is", "people are")
                                + " proposed for this day and the later ones of its visit; "
                                + SchedulingWords.leftOut(proposed.leftOut()) + "."),
                        () -> say(BookingWords.objection(BookingResult.DAY_OVER)));
    }

    private void confirm() {
        days.confirm(key)
                .ifPresentOrElse(
                        confirmed -> say(inWords(confirmed)),
                        () -> say(BookingWords.objection(BookingResult.DAY_OVER)));
    }

    private static String inWords(Confirmed confirmed) {
        String cases = confirmed.retests() == 0
                ? ""
                : " The "
                        + (confirmed.retests() == 1 ? "case behind the retest knows" : "cases behind the retests know")
                        + " of it.";
        String objections = confirmed.objections().stream()
                .map(objection -> " The case of " + objection.workerId() + " stays as it is: "
                        + (objection.why() instanceof DecisionResult.OutOfOrder outOfOrder
                                ? CaseWords.objection(outOfOrder.objection())
                                : "the decision could not be taken."))
                .collect(Collectors.joining());
        return Counted.of(confirmed.people(), "time is", "times are") + " confirmed." + cases + objections;
    }

    private void say(String words) {
        refresh();
        message.say(words);
    }

    private void say(BookingResult result, String done) {
        say(result == BookingResult.DONE ? done : BookingWords.objection(result));
    }

    private static List<ListColumn<Booking, ?>> columns() {
        return List.of(
                ListColumn.unordered("Time", 5, row -> ListCell.figures(SchedulingWords.time(row.starts()))),
                ListColumn.unordered(
                        "Worker",
                        10,
                        row -> ListCell.link(row.name(), Paths.worker(row.workerId()))
                                .withNote(row.workerId())),
                ListColumn.unordered(
                        "Shift and department",
                        9,
                        row -> ListCell.text(row.shift().isEmpty() ? "shift not known" : row.shift())
                                .withNote(row.department())),
                ListColumn.unordered(
                        "What for",
                        11,
                        row -> ListCell.text(SchedulingWords.occasion(row.occasion()))
                                .withNote(SchedulingWords.lastDay(row.lastDay(), row.basis()))),
                ListColumn.unordered(
                        "Before the test",
                        12,
                        row -> ListCell.text(SchedulingWords.quiet(row.quiet(), row.quietHours()))
                                .withNote(BookingWords.arrival(row))),
                ListColumn.unordered("State", 9, TestDayView::state));
    }

    private static ListCell state(Booking row) {
        String note = row.note().isEmpty() ? SchedulingWords.missed(row.missed()) : row.note();
        return ListCell.state(BookingWords.kind(row.state()), BookingWords.state(row.state()))
                .withNote(note);
    }

    private List<Button> buttons(Booking row) {
        List<Button> buttons = new ArrayList<>();
        boolean come = !row.date().isAfter(today);
        boolean expected = row.state().isExpected();
        if (come && expected && row.state() != BookingState.ARRIVED) {
            buttons.add(button(
                    "Arrived",
                    row,
                    () -> new ArrivalDialog(row, bookings, () -> {
                                say(row.name() + " has arrived.");
                            })
                            .open()));
            buttons.add(button(
                    "Did not come",
                    row,
                    () -> say(
                            bookings.noShow(row.key()),
                            row.name() + " did not come; the test stays due, and the next proposal knows.")));
        }
        if (come && row.state() == BookingState.NO_SHOW) {
            buttons.add(button(
                    "Came after all",
                    row,
                    () -> new ArrivalDialog(row, bookings, () -> {
                                say(row.name() + " has arrived.");
                            })
                            .open()));
        }
        if (expected) {
            buttons.add(button("Change", row, () -> change(row)));
        }
        return buttons;
    }

    private static Button button(String words, Booking row, SerializableRunnable action) {
        var button = new Button(words, click -> action.run());
        button.setAriaLabel(words + ", " + row.name());
        button.addThemeVariants(ButtonVariant.SMALL);
        return button;
    }

    private void change(Booking row) {
        new ChangeBookingDialog(row, days.openDays(row.site()), days::freeTimes, bookings, this::say).open();
    }

    private static List<ListColumn<TestDayService.LeftOutPerson, ?>> leftOutColumns() {
        return List.of(
                ListColumn.unordered(
                        "Worker",
                        10,
                        row -> ListCell.link(row.name(), Paths.worker(row.workerId()))
                                .withNote(row.workerId())),
                ListColumn.unordered("Department", 8, row -> ListCell.text(row.department())),
                ListColumn.unordered(
                        "Due",
                        9,
                        row -> ListCell.text(SchedulingWords.occasion(row.occasion()))
                                .withNote("in time until " + Words.day(row.lastDay()))),
                ListColumn.unordered("Why", 14, row -> ListCell.text(SchedulingWords.why(row.why()))));
    }
}
