package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.function.SerializableFunction;
import java.util.List;
import org.thresholdregister.core.scheduling.Slot;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.testdays.Booking;
import org.thresholdregister.testdays.BookingResult;
import org.thresholdregister.testdays.BookingService;
import org.thresholdregister.testdays.TestDay;

/** Gives a booking another time, takes it off, or notes a refusal. */
class ChangeBookingDialog extends Dialog {

    /**
     * @param freeTimes the times free on a day, by its key
     * @param done is told in words what changed
     */
    ChangeBookingDialog(
            Booking booking,
            List<TestDay> openDays,
            SerializableFunction<Long, List<Slot>> freeTimes,
            BookingService bookings,
            SerializableConsumer<String> done) {
        setHeaderTitle(booking.name() + ", " + SchedulingWords.time(booking.starts()));
        setWidth("min(34rem, 100%)");
        var time = new TimeChoice(openDays, freeTimes);
        time.chooseDay(booking.dayKey());
        var move = new Button("Move", click -> {
            if (time.isComplete()) {
                BookingResult result =
                        bookings.move(booking.key(), time.dayKey(), time.slot().starts());
                if (result == BookingResult.DONE) {
                    close();
                    done.accept(booking.name() + " comes on "
                            + SchedulingWords.day(time.slot().day()) + " at "
                            + SchedulingWords.time(time.slot().starts()) + " now.");
                } else {
                    time.refuse(BookingWords.objection(result));
                }
            }
        });
        move.addThemeVariants(ButtonVariant.PRIMARY);
        var reason = new TextArea("Reason or note");
        reason.setMaxLength(BookingService.LONGEST_NOTE);
        reason.setWidthFull();
        var remove = new Button(
                "Take off",
                click -> finish(
                        bookings.remove(booking.key(), reason.getValue()),
                        reason,
                        booking.name() + " is off the list, and stays due.",
                        done));
        var refused = new Button(
                "Refused the test",
                click -> finish(
                        bookings.refuse(booking.key(), reason.getValue()),
                        reason,
                        "It is noted that " + booking.name()
                                + " refused. The signed refusal belongs to the clinical part of the record.",
                        done));
        var buttons = new Div(remove, refused);
        buttons.addClassName("tr-page-actions");
        if (openDays.isEmpty()) {
            add(new Paragraph("No day is ahead that this could be moved to."));
        } else {
            add(new H3("Another time"), time, move);
        }
        add(new H3("Not at all"), reason, buttons);
        getFooter().add(new Button("Close", click -> close()));
    }

    private void finish(BookingResult result, TextArea reason, String words, SerializableConsumer<String> done) {
        if (result == BookingResult.DONE) {
            close();
            done.accept(words);
        } else {
            reason.setErrorMessage(BookingWords.objection(result));
            reason.setInvalid(true);
        }
    }

    /** A day and one of its free times. */
    static final class TimeChoice extends Div {

        private final Select<TestDay> day = new Select<>();
        private final Select<Slot> time = new Select<>();
        private final List<TestDay> days;

        TimeChoice(List<TestDay> days, SerializableFunction<Long, List<Slot>> freeTimes) {
            this.days = List.copyOf(days);
            addClassName("tr-entry-fields");
            day.setLabel("Day");
            day.setItems(days);
            day.setItemLabelGenerator(one -> SchedulingWords.day(one.date()) + ", " + one.place());
            time.setLabel("Free time");
            time.setItemLabelGenerator(slot -> SchedulingWords.time(slot.starts()));
            day.addValueChangeListener(change -> {
                List<Slot> free = freeTimes.apply(change.getValue().key());
                time.setItems(free);
                time.setHelperText(free.isEmpty() ? "This day is full" : "");
            });
            add(day, time);
        }

        void chooseDay(long key) {
            days.stream().filter(one -> one.key() == key).findFirst().ifPresent(day::setValue);
        }

        boolean isComplete() {
            day.setErrorMessage("Choose the day.");
            day.setInvalid(day.isEmpty());
            time.setErrorMessage("Choose a time.");
            time.setInvalid(time.isEmpty());
            return !day.isEmpty() && !time.isEmpty();
        }

        void refuse(String words) {
            time.setErrorMessage(words);
            time.setInvalid(true);
        }

        long dayKey() {
            return day.getValue().key();
        }

        Slot slot() {
            return time.getValue();
        }
    }
}
