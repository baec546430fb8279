package org.thresholdregister.instruments.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HasSize;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.calibration.Audiometer;
import org.thresholdregister.core.calibration.DailyCheck;
import org.thresholdregister.core.calibration.Headset;
import org.thresholdregister.core.calibration.MeterReading;
import org.thresholdregister.core.calibration.OctaveBand;
import org.thresholdregister.core.calibration.Tester.Qualification;
import org.thresholdregister.core.wording.EquipmentWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.instruments.Change;
import org.thresholdregister.instruments.Entry;
import org.thresholdregister.instruments.EntryResult;
import org.thresholdregister.instruments.Facts;
import org.thresholdregister.instruments.Holdings;
import org.thresholdregister.instruments.InstrumentService;
import org.thresholdregister.instruments.OutputLimits;

/** Asks for the facts of one entry until they can be put on record; nothing changes before. */
class EntryDialog extends Dialog {

    /** What was typed cannot be read; the message says where and how to mend it. */
    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;

        Unreadable(String message) {
            super(message);
        }
    }

    private final transient InstrumentService instruments;
    private final transient Holdings held;
    private final LocalDate today;
    private final Paragraph message = new Paragraph();

    EntryDialog(EntryForm form, InstrumentService instruments, LocalDate today, SerializableRunnable done) {
        this.instruments = instruments;
        this.held = instruments.holdings();
        this.today = today;
        setHeaderTitle(form.label());
        setWidth("min(32rem, 100%)");
        setCloseOnOutsideClick(false);
        Supplier<Facts> facts = fields(form);
        message.addClassName("tr-message");
        message.getElement().setAttribute("role", "alert");
        message.setVisible(false);
        add(message);
        var save = new Button("Enter", click -> save(facts, done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
    }

    private void save(Supplier<Facts> facts, SerializableRunnable done) {
        try {
            EntryResult result = instruments.enter(facts.get(), Change.NEW);
            if (result instanceof EntryResult.Refused(var objection)) {
                complain(EquipmentFormWords.of(objection));
            } else {
                close();
                done.run();
            }
        } catch (Unreadable e) {
            complain(String.valueOf(e.getMessage()));
        }
    }

    private void complain(String words) {
        message.setText(words);
        message.setVisible(true);
    }

    private Supplier<Facts> fields(EntryForm form) {
        return switch (form) {
            case UNIT -> {
                TextField site = text("Site", "As the roster spells it; empty for a unit that travels between sites");
                TextField identity = text("Name", "As tests name it, such as AUD-01");
                TextField serial = text("Serial number", "");
                Select<Audiometer.Type> type = choice("Type", List.of(Audiometer.Type.values()), Audiometer.Type::word);
                TextField limits = text("Output limit (dB HL)", "One level, or seven from 500 to 8000 Hz");
                DatePicker from = day("In use from");
                yield () -> new Facts.Unit(
                        value(site),
                        value(identity),
                        value(serial),
                        chosen(type),
                        limits(limits),
                        picked(from),
                        Optional.empty());
            }
            case HEADSET -> {
                Select<Entry<Facts.Unit>> unit = unit();
                TextField identity = text("Name", "As tests name it, such as H-01");
                Select<Headset.Type> type = choice("Type", List.of(Headset.Type.values()), Headset.Type::word);
                TextField earphone = text("Earphone type", "");
                yield () -> new Facts.Earphones(
                        chosen(unit).facts().site(), value(identity), chosen(type), value(earphone));
            }
            case CALIBRATED_TO -> {
                Select<Entry<Facts.Earphones>> headset = choice(
                        "Earphones", held.headsets(), entry -> entry.facts().identity());
                Select<Entry<Facts.Unit>> unit = unit();
                DatePicker from = day("From");
                yield () -> new Facts.CalibratedTo(
                        chosen(headset).key(), chosen(unit).key(), picked(from), Optional.empty());
            }
            case CALIBRATION -> {
                Select<Entry<Facts.Unit>> unit = unit();
                Select<Audiometer.CalibrationKind> kind =
                        choice("Kind", List.of(Audiometer.CalibrationKind.values()), EquipmentWords::calibration);
                DatePicker on = day("Day");
                TextField by = text("By", "");
                Select<Audiometer.Tolerance> found =
                        choice("Found", List.of(Audiometer.Tolerance.values()), EquipmentWords::tolerance);
                Select<Audiometer.Tolerance> left =
                        choice("Left", List.of(Audiometer.Tolerance.values()), EquipmentWords::tolerance);
                yield () -> new Facts.Calibration(
                        chosen(unit).key(),
                        chosen(kind),
                        picked(on),
                        value(by),
                        chosen(found),
                        chosen(left),
                        "",
                        new PerEar<>(Map.of(), Map.of()));
            }
            case CHECK -> check();
            case ROOM -> {
                TextField site = text("Site", "As the roster spells it");
                TextField name = text("Name", "As tests name it");
                DatePicker from = day("In use from");
                yield () -> new Facts.Room(value(site), value(name), picked(from), Optional.empty());
            }
            case MEASUREMENT -> {
                Select<Entry<Facts.Room>> room =
                        choice("Room", held.rooms(), entry -> entry.facts().name());
                DatePicker on = day("Day");
                TextField by = text("By", "");
                TextField meter = text("Meter", "");
                TextField levels = text("Levels (dB)", "Seven from 125 to 8000 Hz, - where a band was not measured");
                yield () ->
                        new Facts.Measurement(chosen(room).key(), picked(on), value(by), value(meter), levels(levels));
            }
            case TESTER -> {
                TextField site = text("Site", "As the roster spells it; empty for one who travels between sites");
                TextField name = text("Name", "As tests name the tester");
                Select<Qualification> qualification =
                        choice("Qualification", List.of(Qualification.values()), EquipmentWords::qualification);
                TextField supervisor = text("Responsible to", "The audiologist or physician");
                yield () -> new Facts.Person(value(site), value(name), chosen(qualification), value(supervisor));
            }
            case CERTIFICATE -> {
                Select<Entry<Facts.Person>> tester =
                        choice("Tester", held.testers(), entry -> entry.facts().name());
                TextField number = text("Number", "");
                DatePicker issued = day("Issued");
                DatePicker expires = day("Last day");
                yield () -> new Facts.Certificate(
                        chosen(tester).key(), value(number), picked(issued), Optional.of(picked(expires)));
            }
        };
    }

    /** The reference is that of the unit's last check. */
    private Supplier<Facts> check() {
        Select<Entry<Facts.Unit>> unit = unit();
        DatePicker on = day("Day");
        TextField by = text("By", "");
        TextField person = text("Person with known, stable hearing", "");
        TextField leftReference = text("Known, left ear (dB HL)", "Seven from 500 to 8000 Hz");
        TextField rightReference = text("Known, right ear (dB HL)", "Seven from 500 to 8000 Hz");
        TextField left = text("Read, left ear (dB HL)", "Seven from 500 to 8000 Hz");
        TextField right = text("Read, right ear (dB HL)", "Seven from 500 to 8000 Hz");
        Select<DailyCheck.Listening> listening =
                choice("Listening check", List.of(DailyCheck.Listening.values()), EquipmentWords::listening);
        unit.addValueChangeListener(change -> held.checks().reversed().stream()
                .map(Entry::facts)
                .filter(last -> change.getValue() != null
                        && last.unit() == change.getValue().key())
                .findFirst()
                .ifPresent(last -> {
                    person.setValue(last.person());
                    leftReference.setValue(last.levels(last.reference().left()));
                    rightReference.setValue(last.levels(last.reference().right()));
                }));
        return () -> new Facts.Check(
                chosen(unit).key(),
                Optional.empty(),
                picked(on),
                value(by),
                value(person),
                new PerEar<>(thresholds(leftReference), thresholds(rightReference)),
                new PerEar<>(thresholds(left), thresholds(right)),
                chosen(listening),
                "");
    }

    private Select<Entry<Facts.Unit>> unit() {
        return choice("Audiometer", held.units(), entry -> entry.facts().identity());
    }

    private TextField text(String label, String help) {
        var field = new TextField(label);
        field.setHelperText(help);
        return placed(field);
    }

    private DatePicker day(String label) {
        var field = new DatePicker(label, today);
        field.setLocale(Locale.ENGLISH);
        field.setI18n(new DatePicker.DatePickerI18n().setDateFormats("d MMM yyyy", "yyyy-MM-dd"));
        return placed(field);
    }

    private <T> Select<T> choice(String label, List<T> items, SerializableFunction<T, String> words) {
        var field = new Select<T>();
        field.setLabel(label);
        field.setItems(items);
        field.setItemLabelGenerator(item -> Words.capitalised(words.apply(item)));
        return placed(field);
    }

    private <C extends Component & HasSize> C placed(C field) {
        field.setWidthFull();
        add(field);
        return field;
    }

    private static String value(TextField field) {
        return field.getValue().strip();
    }

    private static <T> T chosen(Select<T> field) {
        return field.getOptionalValue()
                .orElseThrow(() -> new Unreadable("Choose under \u201c" + field.getLabel() + "\u201d."));
    }

    private static LocalDate picked(DatePicker field) {
        return field.getOptionalValue()
                .orElseThrow(
                        () -> new Unreadable("Give the day as 9 Mar 2026 under \u201c" + field.getLabel() + "\u201d."));
    }

    private static OutputLimits limits(TextField field) {
        try {
            return OutputLimits.parse(value(field));
        } catch (IllegalArgumentException e) {
            throw unreadable(field);
        }
    }

    private static Unreadable unreadable(TextField field) {
        return new Unreadable("\u201c" + field.getLabel() + "\u201d: " + field.getHelperText() + ".");
    }

    private static Map<Frequency, Threshold> thresholds(TextField field) {
        return values(field, Frequency.class, word -> Threshold.measured(Integer.parseInt(word)));
    }

    private static Map<OctaveBand, MeterReading> levels(TextField field) {
        return values(field, OctaveBand.class, MeterReading::parse);
    }

    private static <E extends Enum<E>, V> Map<E, V> values(TextField field, Class<E> places, Function<String, V> read) {
        String[] words = value(field).split("[\\s;]+");
        if (words.length != places.getEnumConstants().length) {
            throw unreadable(field);
        }
        Map<E, V> values = new EnumMap<>(places);
        for (E place : places.getEnumConstants()) {
            String word = words[place.ordinal()];
            if (!word.equals("-")) {
                try {
                    values.put(place, read.apply(word));
                } catch (IllegalArgumentException e) {
                    throw unreadable(field);
                }
            }
        }
        return values;
    }
}
