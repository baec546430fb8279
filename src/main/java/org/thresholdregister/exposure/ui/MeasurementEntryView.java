package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.thresholdregister.core.noise.NoiseResult;
import org.thresholdregister.core.noise.TimeWeightedAverage;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.exposure.MeasurementKind;
import org.thresholdregister.exposure.NewMeasurement;
import org.thresholdregister.exposure.NoiseEntryProblem;
import org.thresholdregister.exposure.NoisePaths;
import org.thresholdregister.exposure.NoiseService;
import org.thresholdregister.exposure.NoiseSubject;
import org.thresholdregister.exposure.RosterNames;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.DayField;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Place;

/** Takes down a measurement of noise. */
@Route(MeasurementEntryView.ROUTE)
@PageTitle("Enter a measurement · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class MeasurementEntryView extends Div implements BeforeEnterObserver {

    static final String ROUTE = "noise-entry";

    private static final int HIGHEST_DB = 160;
    private static final int HIGHEST_PEAK_DB = 200;
    private static final int HIGHEST_DOSE = 9999;
    private static final int LONGEST_SHIFT = 24;
    private static final String MISSING = "This has to be given.";

    /** In what form the result was written down. */
    private enum Form {
        AVERAGE,
        DOSE,
        LEVELS
    }

    private final transient NoiseService noise;
    private final transient RosterNames names;
    private final Select<NoiseSubject.Kind> subject = new Select<>();
    private final ComboBox<String> site = new ComboBox<>("Site");
    private final ComboBox<String> name = new ComboBox<>("Name or number");
    private final DatePicker day = DayField.labelled("Measured on");
    private final Select<MeasurementKind> kind = new Select<>();
    private final TextField instrument = new TextField("Instrument");
    private final Checkbox before = new Checkbox("Calibrated before measuring");
    private final Checkbox after = new Checkbox("Calibrated after measuring");
    private final TextField shift = Numbers.field("Length of the shift (hours)");
    private final Select<Form> form = new Select<>();
    private final TextField average = Numbers.field("Eight-hour average (dBA)");
    private final TextField from80 = Numbers.field("Dose from 80 dBA (%)");
    private final TextField from90 = Numbers.field("Dose from 90 dBA (%)");
    private final LevelRows levels = new LevelRows();
    private final TextField dbc = Numbers.field("C-weighted level (dBC)");
    private final TextField peak = Numbers.field("Highest peak (dB)");
    private final Map<Integer, TextField> bands = new LinkedHashMap<>();
    private final TextArea process = new TextArea("What ran meanwhile");
    private final TextField measuredBy = new TextField("Measured by");
    private final Paragraph message = Numbers.message();

    MeasurementEntryView(NoiseService noise, Clock clock) {
        this.noise = noise;
        names = noise.names();
        subject.setLabel("It stands for");
        subject.setItems(
                NoiseSubject.Kind.GROUP, NoiseSubject.Kind.JOB, NoiseSubject.Kind.WORKER, NoiseSubject.Kind.AREA);
        subject.setItemLabelGenerator(item -> Words.capitalised(NoiseLabels.kind(item)));
        subject.setValue(NoiseSubject.Kind.GROUP);
        subject.addValueChangeListener(change -> offerNames());
        site.setItems(names.sites());
        site.setItemLabelGenerator(Place::name);
        if (names.sites().size() == 1) {
            site.setValue(names.sites().getFirst());
        }
        site.addValueChangeListener(change -> offerNames());
        name.setAllowCustomValue(true);
        name.addCustomValueSetListener(typed -> name.setValue(typed.getDetail()));
        name.setHelperText("Of the group, job or area; a worker's number");
        day.setValue(LocalDate.now(clock));
        kind.setLabel("How it was measured");
        kind.setItems(MeasurementKind.values());
        kind.setItemLabelGenerator(item -> Words.capitalised(NoiseLabels.kind(item)));
        kind.setValue(MeasurementKind.PERSONAL_DOSIMETRY);
        instrument.setHelperText("Make, model and number");
        instrument.setMaxLength(NewMeasurement.LONGEST_NAME);
        measuredBy.setMaxLength(NewMeasurement.LONGEST_NAME);
        process.setMaxLength(NewMeasurement.LONGEST_PROCESS);
        shift.setValue("8");
        form.setLabel("The result is");
        form.setItems(Form.values());
        form.setItemLabelGenerator(item -> switch (item) {
            case AVERAGE -> "An eight-hour average";
            case DOSE -> "A dose";
            case LEVELS -> "Levels and hours";
        });
        form.addValueChangeListener(change -> showForm());
        form.setValue(Form.AVERAGE);
        for (int hertz : NewMeasurement.BANDS) {
            bands.put(hertz, Numbers.field(hertz + " Hz (dB)"));
        }
        offerNames();
        lay();
    }

    private void lay() {
        var who = new Div(subject, site, name, day, kind, instrument, measuredBy, shift, before, after);
        who.addClassName("tr-form");
        var result = new Div(form, average, from80, from90);
        result.addClassName("tr-form");
        var bandFields = new Div();
        bandFields.addClassName("tr-form");
        bands.values().forEach(bandFields::add);
        var more = new Div(dbc, peak, process);
        more.addClassName("tr-form");
        var save = new Button("Enter the measurement", click -> save());
        save.addThemeVariants(ButtonVariant.PRIMARY);
        var card = new Div(who, result, levels, more, new Details("Octave bands", bandFields), message, save);
        card.addClassName("tr-card");
        add(
                new H1("Enter a measurement"),
                new LeadSentence(
                        "A-weighted, slow response, 5 dB for each halving of time, without regard to protectors."
                                + " It counts from its day on, in place of what was measured before."),
                card,
                new Anchor(NoiseView.ROUTE, "Back to noise"));
    }

    static String path(NoiseSubject subject) {
        return NoisePaths.with(subject).pathOf(ROUTE);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        NoisePaths.subject(FilterParameters.of(event.getLocation())).ifPresent(given -> {
            subject.setValue(given.kind());
            if (names.sites().contains(given.site())) {
                site.setValue(given.site());
            }
            name.setValue(given.name());
        });
    }

    private void offerNames() {
        String where = site.getOptionalValue().orElse("");
        name.setItems(
                switch (subject.getValue()) {
                    case GROUP -> names.groups().getOrDefault(where, List.of());
                    case JOB -> names.jobs().getOrDefault(where, List.of());
                    case WORKER, AREA -> List.of();
                });
    }

    private void showForm() {
        average.setVisible(form.getValue() == Form.AVERAGE);
        from80.setVisible(form.getValue() == Form.DOSE);
        from90.setVisible(form.getValue() == Form.DOSE);
        levels.setVisible(form.getValue() == Form.LEVELS);
    }

    private void save() {
        message.setVisible(false);
        site.setInvalid(false);
        name.setInvalid(false);
        day.setInvalid(false);
        boolean fits = true;
        if (site.getValue() == null) {
            Numbers.complain(site, NoiseLabels.problem(NoiseEntryProblem.UNKNOWN_SITE));
            fits = false;
        }
        if (name.getValue() == null
                || name.getValue().isBlank()
                || name.getValue().length() > NoiseSubject.LONGEST_NAME) {
            Numbers.complain(name, MISSING);
            fits = false;
        }
        if (day.getValue() == null) {
            Numbers.complain(day, "Give the day as 9 Mar 2026.");
            fits = false;
        }
        fits &= given(instrument) & given(measuredBy) & Numbers.fits(shift, LONGEST_SHIFT, true);
        if (fits && Numbers.of(shift).filter(hours -> hours.signum() > 0).isEmpty()) {
            Numbers.complain(shift, "More than 0 hours.");
            fits = false;
        }
        fits &= Numbers.fits(dbc, HIGHEST_DB, false) & Numbers.fits(peak, HIGHEST_PEAK_DB, false);
        for (TextField band : bands.values()) {
            fits &= Numbers.fits(band, HIGHEST_DB, false);
        }
        Optional<NoiseResult> result = result();
        if (fits && result.isPresent()) {
            enter(result.get());
        }
    }

    private static boolean given(TextField field) {
        field.setInvalid(false);
        if (field.getValue().isBlank()) {
            Numbers.complain(field, MISSING);
        }
        return !field.isInvalid();
    }

    private Optional<NoiseResult> result() {
        return switch (form.getValue()) {
            case AVERAGE ->
                Numbers.fits(average, HIGHEST_DB, true)
                        ? Numbers.of(average)
                                .map(level -> new NoiseResult.Average(TimeWeightedAverage.ofDba(level.doubleValue())))
                        : Optional.empty();
            case DOSE -> dose();
            case LEVELS -> levels.read().map(NoiseResult.Levels::new);
        };
    }

    private Optional<NoiseResult> dose() {
        if (!(Numbers.fits(from80, HIGHEST_DOSE, true) & Numbers.fits(from90, HIGHEST_DOSE, false))) {
            return Optional.empty();
        }
        BigDecimal action = Numbers.of(from80).orElseThrow();
        if (Numbers.of(from90).filter(limit -> limit.compareTo(action) > 0).isPresent()) {
            Numbers.complain(from90, "The dose from 90 dBA is never greater than that from 80 dBA.");
            return Optional.empty();
        }
        return Optional.of(new NoiseResult.Dosimetry(action, Numbers.of(from90)));
    }

    private void enter(NoiseResult result) {
        NavigableMap<Integer, BigDecimal> octaves = new TreeMap<>();
        bands.forEach((hertz, field) -> Numbers.of(field).ifPresent(level -> octaves.put(hertz, level)));
        var measurement = new NewMeasurement(
                new NoiseSubject(
                        subject.getValue(), site.getValue(), name.getValue().strip()),
                day.getValue(),
                kind.getValue(),
                instrument.getValue().strip(),
                before.getValue(),
                after.getValue(),
                Numbers.of(shift).orElseThrow(),
                result,
                Numbers.of(dbc),
                octaves,
                Numbers.of(peak),
                process.getValue().strip(),
                measuredBy.getValue().strip());
        noise.enter(measurement)
                .ifPresentOrElse(
                        this::complain,
                        () -> UI.getCurrent()
                                .navigate(
                                        NoisePlaceView.class,
                                        NoisePaths.with(measurement.subject()).toQueryParameters()));
    }

    private void complain(NoiseEntryProblem problem) {
        String words = NoiseLabels.problem(problem);
        switch (problem) {
            case UNKNOWN_SITE -> Numbers.complain(site, words);
            case NOBODY_OF_THAT_NAME -> Numbers.complain(name, words);
            case IN_THE_FUTURE -> Numbers.complain(day, words);
            case TOO_EARLY, TEXT_MISSING, TEXT_TOO_LONG, NOT_OPEN -> {
                message.setText(words);
                message.setVisible(true);
            }
        }
    }
}
