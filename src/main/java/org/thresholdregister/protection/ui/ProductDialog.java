package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.HasSize;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.details.Details;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.attenuation.LabelValues;
import org.thresholdregister.core.attenuation.OctaveAttenuation;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.protection.Product;
import org.thresholdregister.protection.ProductDetails;
import org.thresholdregister.protection.ProtectionProblem;

/** Asks for a protector and what its label says, until it can be taken down. */
class ProductDialog extends Dialog {

    private static final int HIGHEST_MEAN = 80;

    private final ComboBox<String> site;
    private final TextField name = new TextField("Name");
    private final Select<ProtectorKind> kind = new Select<>();
    private final TextField sizes = new TextField("Sizes");
    private final TextField nrr = decibels("NRR (dB)");
    private final TextField snr = decibels("SNR (dB)");
    private final TextField high = decibels("H (dB)");
    private final TextField medium = decibels("M (dB)");
    private final TextField low = decibels("L (dB)");
    private final TextField nrsMost = decibels("NRS_A, 80 % (dB)");
    private final TextField nrsFew = decibels("NRS_A, 20 % (dB)");
    private final List<TextField> means = new ArrayList<>();
    private final List<TextField> deviations = new ArrayList<>();
    private final ComboBox<Product> plug = new ComboBox<>("Plug");
    private final ComboBox<Product> muff = new ComboBox<>("Muff");
    private final Div values = new Div(nrr, snr, high, medium, low, nrsMost, nrsFew);
    private final Details octaves;
    private final Paragraph message = Fields.message();

    /**
     * @param catalogue from which a pair is put together
     * @param add takes it down and says what stands against it
     */
    ProductDialog(
            List<String> sites,
            List<Product> catalogue,
            SerializableFunction<ProductDetails, Optional<ProtectionProblem>> add,
            SerializableRunnable done) {
        setHeaderTitle("Add a protector");
        setCloseOnOutsideClick(false);
        setWidth("min(44rem, 100%)");
        site = Fields.site(sites);
        name.setMaxLength(ProductDetails.LONGEST_NAME);
        name.setHelperText("As the store calls it");
        sizes.setMaxLength(ProductDetails.LONGEST_SIZES);
        sizes.setHelperText("Such as: S, M, L");
        kind.setLabel("Kind");
        kind.setItems(ProtectorKind.values());
        kind.setItemLabelGenerator(item -> Words.capitalised(ProtectionWords.kind(item)));
        kind.addValueChangeListener(change -> showFor(change.getValue()));
        plug.setItems(catalogue.stream()
                .filter(Product::isGivenOut)
                .filter(product -> product.details().kind() != ProtectorKind.MUFF
                        && product.details().kind() != ProtectorKind.DUAL)
                .toList());
        muff.setItems(catalogue.stream()
                .filter(Product::isGivenOut)
                .filter(product -> product.details().kind() == ProtectorKind.MUFF)
                .toList());
        plug.setItemLabelGenerator(product -> product.details().name());
        muff.setItemLabelGenerator(product -> product.details().name());
        for (int hertz : OctaveAttenuation.FREQUENCIES) {
            means.add(decibels("Mean at " + hertz + " Hz (dB)"));
            deviations.add(decibels("Deviation at " + hertz + " Hz (dB)"));
        }
        var bands = new Div();
        bands.addClassName("tr-form");
        for (int i = 0; i < means.size(); i++) {
            bands.add(means.get(i), deviations.get(i));
        }
        octaves = new Details("Attenuation by octave bands, all or none", bands);
        values.addClassName("tr-form");
        List.<HasSize>of(site, name, kind, sizes).forEach(HasSize::setWidthFull);
        add(site, name, kind, sizes, plug, muff, values, octaves, message);
        kind.setValue(ProtectorKind.FORMABLE_PLUG);
        var save = new Button("Add", click -> save(add, done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
    }

    private static TextField decibels(String label) {
        var field = new TextField(label);
        field.setAllowedCharPattern("[0-9.,]");
        field.setMaxLength(4);
        return field;
    }

    private void showFor(ProtectorKind chosen) {
        boolean pair = chosen == ProtectorKind.DUAL;
        plug.setVisible(pair);
        muff.setVisible(pair);
        values.setVisible(!pair);
        octaves.setVisible(!pair);
    }

    private void save(
            SerializableFunction<ProductDetails, Optional<ProtectionProblem>> add, SerializableRunnable done) {
        Fields.clear(message, site, name, plug);
        boolean fits = true;
        for (TextField field : List.of(nrr, snr, high, medium, low, nrsMost, nrsFew)) {
            fits &= Fields.isDecibels(field, LabelValues.HIGHEST);
        }
        List<TextField> bands =
                Stream.concat(means.stream(), deviations.stream()).toList();
        for (TextField field : bands) {
            fits &= Fields.isDecibels(field, HIGHEST_MEAN);
        }
        boolean someBands = bands.stream().anyMatch(field -> !field.isEmpty());
        for (TextField field : bands) {
            if (someBands && field.isEmpty()) {
                Fields.complain(field, "All of the bands are needed, or none.");
                octaves.setOpened(true);
                fits = false;
            }
        }
        if (site.getValue() == null) {
            Fields.complain(site, ProblemWords.of(ProtectionProblem.SITE_NOT_OPEN));
            fits = false;
        }
        if (!fits) {
            return;
        }
        add.apply(details(someBands))
                .ifPresentOrElse(
                        problem -> Fields.show(
                                problem,
                                Map.of(
                                        ProtectionProblem.SITE_NOT_OPEN, site,
                                        ProtectionProblem.NAME_MISSING, name,
                                        ProtectionProblem.NAME_TAKEN, name,
                                        ProtectionProblem.NO_PAIR, plug),
                                message),
                        () -> {
                            close();
                            done.run();
                        });
    }

    private ProductDetails details(boolean withBands) {
        boolean pair = kind.getValue() == ProtectorKind.DUAL;
        LabelValues label = pair
                ? LabelValues.NONE
                : new LabelValues(
                        value(nrr),
                        value(snr),
                        value(high),
                        value(medium),
                        value(low),
                        value(nrsMost),
                        value(nrsFew),
                        withBands
                                ? Optional.of(new OctaveAttenuation(numbers(means), numbers(deviations)))
                                : Optional.empty());
        return new ProductDetails(
                site.getValue(),
                name.getValue().strip(),
                kind.getValue(),
                sizes.getValue().strip(),
                label,
                pair && plug.getValue() != null && muff.getValue() != null
                        ? Optional.of(new ProductDetails.Pair(
                                plug.getValue().key(), muff.getValue().key()))
                        : Optional.empty());
    }

    private static Optional<BigDecimal> value(TextField field) {
        return Fields.decibels(field.getValue());
    }

    private static List<BigDecimal> numbers(List<TextField> fields) {
        return fields.stream()
                .flatMap(field -> Fields.decibels(field.getValue()).stream())
                .toList();
    }
}
