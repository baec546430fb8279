package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import org.thresholdregister.core.scheduling.WorkShift;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.testdays.BookingResult;
import org.thresholdregister.testdays.BookingService;
import org.thresholdregister.testdays.DuePerson;
import org.thresholdregister.testdays.TestDay;
import org.thresholdregister.testdays.TestDayService;

/** Gives one worker a time on a test day. */
@Route(TestDayPaths.BOOK)
@PageTitle("Book a test · Threshold Register")
@RolesAllowed(Roles.NURSE)
class BookTestView extends Div implements HasUrlParameter<String>, HealthRecordPage {

    private final transient BookingService bookings;
    private final transient TestDayService days;
    private String site = "";

    BookTestView(BookingService bookings, TestDayService days) {
        this.bookings = bookings;
        this.days = days;
    }

    @Override
    public String site() {
        return site;
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String workerId) {
        site = "";
        removeAll();
        add(new H1("Book a test"));
        List<DuePerson> due = bookings.dueOf(workerId);
        if (due.isEmpty()) {
            add(new EmptyHint(
                    "No test is due for a worker of this number whom you may see.",
                    "Check the number, or look up who is due.",
                    new Anchor(TestDayPaths.DUE, "Who is due")));
            return;
        }
        show(due);
    }

    private void show(List<DuePerson> due) {
        DuePerson first = due.getFirst();
        site = first.worker().site();
        String shift = first.due()
                .shift()
                .map(WorkShift::name)
                .map(name -> "works the shift " + name)
                .orElse("works a shift that is not known here");
        add(new LeadSentence()
                .link(first.name(), Paths.worker(first.worker().workerId()))
                .text(" " + shift + " and is due for the "
                        + SchedulingWords.occasion(first.due().occasion()) + ", "
                        + SchedulingWords.lastDay(
                                first.due().lastDay(), first.due().basis()) + "."));
        first.booking()
                .ifPresentOrElse(
                        time -> add(new EmptyHint(
                                "There is a time on " + SchedulingWords.day(time.date()) + " already.",
                                "Move it or take it off on the page of that day.",
                                new Anchor(TestDayPaths.day(time.dayKey()), "Go to that day"))),
                        () -> addForm(due));
    }

    private void addForm(List<DuePerson> due) {
        List<TestDay> open = days.openDays(site);
        if (open.isEmpty()) {
            add(new EmptyHint(
                    "No test day is ahead at this site.",
                    "Plan one first.",
                    new Anchor(TestDayPaths.DAYS, "Go to the test days")));
            return;
        }
        var what = new Select<DuePerson>();
        what.setLabel("For the");
        what.setItems(due);
        what.setItemLabelGenerator(
                person -> SchedulingWords.occasion(person.due().occasion()) + ", in time until "
                        + Words.day(person.due().lastDay()));
        what.setValue(due.getFirst());
        var time = new ChangeBookingDialog.TimeChoice(open, days::freeTimes);
        time.chooseDay(open.getFirst().key());
        var book = new Button("Book", click -> {
            if (time.isComplete()) {
                BookingResult result = bookings.book(
                        time.dayKey(),
                        time.slot().starts(),
                        what.getValue().worker().workerId(),
                        what.getValue().due().occasion());
                if (result == BookingResult.DONE) {
                    getUI().ifPresent(ui -> ui.navigate(TestDayPaths.day(time.dayKey())));
                } else {
                    time.refuse(BookingWords.objection(result));
                }
            }
        });
        book.addThemeVariants(ButtonVariant.PRIMARY);
        var card = new Div(what, time, book);
        card.addClassNames("tr-card", "tr-entry-fields", "tr-screen-only");
        add(card);
    }
}
