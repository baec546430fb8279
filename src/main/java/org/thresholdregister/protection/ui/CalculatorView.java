package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.attenuation.Attenuation;
import org.thresholdregister.core.attenuation.Estimate;
import org.thresholdregister.core.attenuation.LabelValues;
import org.thresholdregister.core.attenuation.MeasuredBy;
import org.thresholdregister.core.attenuation.Noise;
import org.thresholdregister.core.attenuation.NoiseBands;
import org.thresholdregister.core.attenuation.NoiseReductionRating;
import org.thresholdregister.core.attenuation.OctaveAttenuation;
import org.thresholdregister.core.attenuation.OctaveBand;
import org.thresholdregister.core.attenuation.ProtectionTarget;
import org.thresholdregister.core.attenuation.Protector;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.attenuation.Worn;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.LeadSentence;

/** Estimates what a protector leaves of a noise by every method, for values that are nobody's; they stand in the address. */
@Route(CalculatorView.ROUTE)
@PageTitle("Protector calculator · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class CalculatorView extends Div implements BeforeEnterObserver {

    static final String ROUTE = "protector-calculator";

    private static final int HIGHEST_LEVEL = 160;
    private static final int HIGHEST_MEAN = 80;

    private final Select<MeasuredBy> measuredBy = new Select<>();
    private final Select<ProtectorKind> kind = new Select<>();
    private final Checkbox afterShift = new Checkbox("After a shift: the target is 85 dBA");
    private final Map<String, TextField> levels = new LinkedHashMap<>();
    private final Map<String, TextField> label = new LinkedHashMap<>();
    private final Map<String, TextField> bands = new LinkedHashMap<>();
    private final Div bandFields = new Div();
    private final Div result = new Div();

    CalculatorView() {
        measuredBy.setLabel("Measured by");
        measuredBy.setItems(MeasuredBy.values());
        measuredBy.setItemLabelGenerator(item -> Words.capitalised(ProtectionWords.measuredBy(item)));
        kind.setLabel("Kind");
        kind.setItems(ProtectorKind.values());
        kind.setItemLabelGenerator(item -> Words.capitalised(ProtectionWords.kind(item)));
        field(levels, "dba", "Noise (dBA)");
        field(levels, "dbc", "Noise (dBC)");
        field(label, "nrr", "NRR (dB)").setHelperText("Of the plug, where two are worn");
        field(label, "nrr-muff", "NRR of the muff (dB)").setHelperText("Only where two are worn");
        field(label, "snr", "SNR (dB)");
        field(label, "h", "H (dB)");
        field(label, "m", "M (dB)");
        field(label, "l", "L (dB)");
        field(label, "nrs80", "NRS_A, 80 % (dB)");
        field(label, "nrs20", "NRS_A, 20 % (dB)");
        field(label, "par", "Fit test (dB)");
        for (OctaveBand band : OctaveBand.values()) {
            field(bands, "n" + band.hertz(), "Noise at " + band.hertz() + " Hz (dB)");
        }
        for (int hertz : OctaveAttenuation.FREQUENCIES) {
            field(bands, "a" + hertz, "Attenuation at " + hertz + " Hz (dB)");
            field(bands, "s" + hertz, "Deviation at " + hertz + " Hz (dB)");
        }
        var form = new Div(measuredBy);
        form.addClassName("tr-form");
        levels.values().forEach(form::add);
        form.add(kind);
        label.values().forEach(form::add);
        form.add(afterShift);
        bandFields.addClassName("tr-form");
        bands.values().forEach(bandFields::add);
        var octaves = new Details("Octave bands", bandFields);
        var calculate = new Button("Calculate", click -> go());
        calculate.addThemeVariants(ButtonVariant.PRIMARY);
        calculate.addClickShortcut(Key.ENTER);
        var card = new Div(form, octaves, calculate);
        card.addClassNames("tr-card", "tr-screen-only");
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        add(
                new H1("Protector calculator"),
                new LeadSentence("What a hearing protector leaves of a noise, by every published method. Nothing typed"
                        + " here is kept; it stands in the address."),
                card,
                result,
                caution);
    }

    private static TextField field(Map<String, TextField> fields, String name, String text) {
        var field = new TextField(text);
        field.setAllowedCharPattern("[0-9.,]");
        field.setMaxLength(5);
        fields.put(name, field);
        return field;
    }

    private Stream<Map.Entry<String, TextField>> all() {
        return Stream.of(levels, label, bands).flatMap(fields -> fields.entrySet().stream());
    }

    private void go() {
        boolean fits = true;
        for (TextField field : levels.values()) {
            fits &= Fields.isDecibels(field, HIGHEST_LEVEL);
        }
        for (TextField field : label.values()) {
            fits &= Fields.isDecibels(field, LabelValues.HIGHEST);
        }
        for (Map.Entry<String, TextField> band : bands.entrySet()) {
            fits &= Fields.isDecibels(band.getValue(), band.getKey().startsWith("n") ? HIGHEST_LEVEL : HIGHEST_MEAN);
        }
        if (!fits) {
            return;
        }
        FilterParameters address = FilterParameters.NONE
                .withChoice("measured-by", Optional.of(measuredBy.getValue()))
                .withChoice("kind", Optional.of(kind.getValue()))
                .with("after-shift", afterShift.getValue() ? Optional.of("yes") : Optional.empty());
        for (Map.Entry<String, TextField> field : all().toList()) {
            address = address.with(
                    field.getKey(), Fields.decibels(field.getValue().getValue()).map(BigDecimal::toPlainString));
        }
        UI.getCurrent().navigate(ROUTE, address.toQueryParameters());
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        FilterParameters address = FilterParameters.of(event.getLocation());
        measuredBy.setValue(address.choice("measured-by", MeasuredBy.class).orElse(MeasuredBy.DOSIMETER));
        kind.setValue(address.choice("kind", ProtectorKind.class).orElse(ProtectorKind.FORMABLE_PLUG));
        afterShift.setValue(address.text("after-shift").isPresent());
        all().forEach(field -> {
            field.getValue().setValue(address.text(field.getKey()).orElse(""));
            field.getValue().setInvalid(false);
        });
        result.removeAll();
        if (all().allMatch(field -> field.getValue().isEmpty())) {
            result.add(new EmptyHint(
                    "Nothing is calculated yet.",
                    "Give the noise and what the label of the protector says; what a method lacks it names."));
            return;
        }
        if (levels.values().stream().allMatch(field -> Fields.isDecibels(field, HIGHEST_LEVEL))
                && label.values().stream().allMatch(field -> Fields.isDecibels(field, LabelValues.HIGHEST))) {
            calculate();
        }
    }

    private void calculate() {
        Optional<OctaveAttenuation> octaves = octaves();
        Worn worn = worn(octaves);
        Noise noise = new Noise(measuredBy.getValue(), level("dba"), level("dbc"), noiseBands());
        ProtectionTarget target = ProtectionTarget.of(RuleSets.OSHA, afterShift.getValue());
        List<Estimate> estimates = Attenuation.byEveryMethod(worn, noise, value("par"));
        result.add(
                new H2("Estimates"),
                new Paragraph(ProtectionWords.target(target).withBasis()),
                new EstimateTable(
                        "The level under the protector, by each method", estimates, target, Optional.empty()));
        octaves.ifPresent(data -> result.add(new Paragraph("These octave bands give an NRR of "
                + ProtectionWords.rating(NoiseReductionRating.of(data)) + ", to hold the label against. ["
                + NoiseReductionRating.SOURCE.place() + "]")));
    }

    private Worn worn(Optional<OctaveAttenuation> octaves) {
        LabelValues values = new LabelValues(
                value("nrr"),
                value("snr"),
                value("h"),
                value("m"),
                value("l"),
                value("nrs80"),
                value("nrs20"),
                octaves);
        if (kind.getValue() != ProtectorKind.DUAL) {
            return new Worn.One(new Protector("", kind.getValue(), values));
        }
        LabelValues muff = value("nrr-muff").map(LabelValues.NONE::withNrr).orElse(LabelValues.NONE);
        return new Worn.Both(
                new Protector("", ProtectorKind.OTHER_PLUG, values), new Protector("", ProtectorKind.MUFF, muff));
    }

    private Optional<BigDecimal> level(String name) {
        return Fields.decibels(text(levels, name));
    }

    private Optional<BigDecimal> value(String name) {
        return Fields.decibels(text(label, name));
    }

    private static String text(Map<String, TextField> fields, String name) {
        return Optional.ofNullable(fields.get(name)).map(TextField::getValue).orElse("");
    }

    private Optional<NoiseBands> noiseBands() {
        List<BigDecimal> values = numbers(
                "n", Stream.of(OctaveBand.values()).map(OctaveBand::hertz).toList(), HIGHEST_LEVEL);
        return values.size() == OctaveBand.values().length
                ? Optional.of(NoiseBands.of(values.toArray(BigDecimal[]::new)))
                : Optional.empty();
    }

    private Optional<OctaveAttenuation> octaves() {
        List<BigDecimal> means = numbers("a", OctaveAttenuation.FREQUENCIES, HIGHEST_MEAN);
        List<BigDecimal> deviations = numbers("s", OctaveAttenuation.FREQUENCIES, HIGHEST_MEAN);
        return means.size() == OctaveAttenuation.FREQUENCIES.size() && deviations.size() == means.size()
                ? Optional.of(new OctaveAttenuation(means, deviations))
                : Optional.empty();
    }

    private List<BigDecimal> numbers(String prefix, List<Integer> frequencies, int highest) {
        List<BigDecimal> values = new ArrayList<>();
        for (int hertz : frequencies) {
            Fields.decibels(text(bands, prefix + hertz))
                    .filter(value -> value.compareTo(BigDecimal.valueOf(highest)) <= 0)
                    .ifPresent(values::add);
        }
        return values;
    }
}
