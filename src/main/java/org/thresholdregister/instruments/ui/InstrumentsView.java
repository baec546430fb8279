package org.thresholdregister.instruments.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.thresholdregister.core.calibration.Audiometer;
import org.thresholdregister.core.calibration.Audiometer.CalibrationKind;
import org.thresholdregister.core.calibration.RoomLimit;
import org.thresholdregister.core.wording.EquipmentWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.instruments.Entry;
import org.thresholdregister.instruments.Facts;
import org.thresholdregister.instruments.Holdings;
import org.thresholdregister.instruments.InstrumentService;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;

/** The audiometers, earphones, rooms and testers on record, and whether they are in order today. */
@Route("instruments")
@PageTitle("Instruments · Threshold Register")
@Menu(title = "Instruments", order = 60)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class InstrumentsView extends Div {

    private final transient InstrumentService instruments;
    private final LocalDate today;
    private final boolean mayEnter;
    private final Div content = new Div();

    InstrumentsView(InstrumentService instruments, CurrentUser user, Clock clock) {
        this.instruments = instruments;
        today = LocalDate.now(clock);
        mayEnter = user.role() == Role.NURSE;
        add(new H1("Instruments"), content);
        refresh();
    }

    private void refresh() {
        content.removeAll();
        Holdings held = instruments.holdings();
        content.add(new LeadSentence(EquipmentWords.lead(held.audiometers(), today)));
        if (mayEnter) {
            var actions = new Div();
            actions.addClassNames("tr-page-actions", "tr-screen-only");
            for (EntryForm form : EntryForm.values()) {
                actions.add(new Button(
                        form.label(), click -> new EntryDialog(form, instruments, today, this::refresh).open()));
            }
            content.add(actions);
        }
        addUnits(held);
        addHeadsets(held);
        addRooms(held);
        addTesters(held);
        addHistory(held);
    }

    private <T> void show(String title, List<T> rows, List<ListColumn<T, Audiometer.Type>> columns) {
        content.add(new H2(title));
        if (rows.isEmpty()) {
            content.add(new EmptyHint("Nothing of this is on record.", "A nurse enters it on this page."));
        } else {
            content.add(new ListTable<>(title, columns, rows, row -> {}));
        }
    }

    private static <T> ListColumn<T, Audiometer.Type> column(String header, SerializableFunction<T, String> words) {
        return ListColumn.unordered(header, 8, row -> ListCell.text(words.apply(row)));
    }

    private void addUnits(Holdings held) {
        show(
                "Audiometers",
                held.audiometers(),
                List.of(
                        column("Unit", Audiometer::identity),
                        column("Type", unit -> unit.type().word()),
                        column(
                                "Acoustic calibration",
                                unit -> EquipmentWords.inTime(
                                        unit.inTimeUntil(CalibrationKind.ACOUSTIC, today), today)),
                        column(
                                "Exhaustive calibration",
                                unit -> EquipmentWords.inTime(
                                        unit.inTimeUntil(CalibrationKind.EXHAUSTIVE, today), today)),
                        column(
                                "Check of today",
                                unit -> unit.checkOf(today)
                                        .map(EquipmentWords::verdict)
                                        .orElse("missing"))));
    }

    private void addHeadsets(Holdings held) {
        show(
                "Earphones",
                held.headsets(),
                List.of(
                        column("Earphones", headset -> headset.facts().identity()),
                        column("Type", headset -> headset.facts().type().word()),
                        column(
                                "Calibrated to",
                                headset -> held.headsetUnits().stream()
                                        .map(Entry::facts)
                                        .filter(unit -> unit.headset() == headset.key())
                                        .map(unit -> unitName(held, unit.unit()) + " from " + Words.day(unit.from()))
                                        .reduce((earlier, later) -> earlier + "; " + later)
                                        .orElse("no unit"))));
    }

    private static String unitName(Holdings held, long key) {
        return held.units().stream()
                .filter(unit -> unit.key() == key)
                .map(unit -> unit.facts().identity())
                .findFirst()
                .orElse("a unit of another site");
    }

    private void addRooms(Holdings held) {
        show(
                "Rooms",
                held.rooms(),
                List.of(
                        column("Room", room -> room.facts().name()),
                        column(
                                "Background levels",
                                room -> held.measurements().stream()
                                        .map(Entry::facts)
                                        .filter(measured -> measured.room() == room.key())
                                        .max(Comparator.comparing(Facts.Measurement::day))
                                        .map(measured -> Words.day(measured.day()) + ": "
                                                + EquipmentWords.room(RoomLimit.OSHA.judge(measured.levels())) + " ("
                                                + EquipmentWords.limit(RoomLimit.OSHA) + ")")
                                        .orElse("not measured"))));
    }

    private void addTesters(Holdings held) {
        show(
                "Testers",
                held.testers(),
                List.of(
                        column("Tester", person -> person.facts().name()),
                        column(
                                "Qualification",
                                person -> EquipmentWords.qualification(
                                        person.facts().qualification())),
                        column(
                                "Certificate until",
                                person -> held.certificates().stream()
                                        .map(Entry::facts)
                                        .filter(certificate -> certificate.tester() == person.key())
                                        .max(Comparator.comparing(Facts.Certificate::issued))
                                        .map(certificate -> certificate
                                                .expires()
                                                .map(Words::day)
                                                .orElse("without an end"))
                                        .orElse("none on record"))));
    }

    private void addHistory(Holdings held) {
        show(
                "Functional checks, the latest first",
                held.checks().reversed().stream().limit(20).toList(),
                List.of(
                        column("Day", check -> Words.day(check.facts().day())),
                        column("Unit", check -> unitName(held, check.facts().unit())),
                        column("By", check -> check.facts().by()),
                        column(
                                "Result",
                                check -> EquipmentWords.check(
                                        unitName(held, check.facts().unit()),
                                        check.facts().result()))));
    }
}
