package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.LabelValues;
import org.thresholdregister.core.attenuation.NoiseReductionRating;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.protection.MethodChoice;
import org.thresholdregister.protection.Product;
import org.thresholdregister.protection.ProtectionProblem;
import org.thresholdregister.protection.ProtectorService;
import org.thresholdregister.roster.WorkerService;

/** The protectors that the sites give out, with their labels, and the method of estimating that each site picked. */
@Route(CatalogueView.ROUTE)
@PageTitle("Catalogue of protectors · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class CatalogueView extends Div {

    static final String ROUTE = "protector-catalogue";

    private final transient ProtectorService protectors;
    private final List<String> sites;
    private final boolean mayEdit;
    private final Div lead = new Div();
    private final Div shown = new Div();

    CatalogueView(ProtectorService protectors, WorkerService workers, CurrentUser currentUser) {
        this.protectors = protectors;
        this.sites = workers.sites();
        this.mayEdit = currentUser.role() == Role.NURSE;
        var actions = new Div();
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        if (mayEdit) {
            var add = new Button(
                    "Add a protector",
                    click -> new ProductDialog(sites, protectors.catalogue(), protectors::add, this::refresh).open());
            add.addThemeVariants(ButtonVariant.PRIMARY);
            actions.add(add);
        }
        actions.add(
                new Anchor(ProtectorsView.ROUTE, "Who has to wear protectors"),
                new Anchor(CalculatorView.ROUTE, "Protector calculator"));
        add(new H1("Catalogue of protectors"), lead, actions, shown);
        refresh();
    }

    private void refresh() {
        shown.removeAll();
        List<Product> all = protectors.catalogue();
        List<Product> given = all.stream().filter(Product::isGivenOut).toList();
        lead.removeAll();
        lead.add(new LeadSentence(Counted.of(given.size(), "protector is", "protectors are") + " given out at "
                + (sites.size() == 1 ? "your site" : "your sites") + "."));
        if (all.isEmpty()) {
            shown.add(new EmptyHint(
                    "No protector is in the catalogue.",
                    mayEdit
                            ? "Add those that the store gives out, with what their labels say."
                            : "A nurse adds those that the store gives out."));
        } else {
            shown.add(new ListTable<>(
                    "By site and name; label values in dB",
                    columns(),
                    all,
                    product -> new ReasonDialog(
                                    "Retire " + product.details().name(),
                                    "It is given out no more from today on. Whoever has one keeps it, and the record"
                                            + " stays.",
                                    "Retire",
                                    reason -> protectors.retire(product.key(), reason),
                                    this::refresh)
                            .open()));
        }
        shown.add(new H2("The method that each site picked"));
        showMethods();
    }

    private void showMethods() {
        Map<String, MethodChoice> methods = protectors.methods();
        shown.add(new Paragraph(
                "The employer picks a method of Appendix B; every page shows all of them and marks the one"
                        + " that was picked. [29 CFR 1910.95(j)(1)]"));
        if (methods.isEmpty()) {
            shown.add(new EmptyHint(
                    "No method is picked yet.",
                    "Until one is, whether a target is reached is told by a wearer's own fit test alone."));
        } else {
            List<ListColumn<MethodChoice, ?>> columns = List.of(
                    ListColumn.unordered("Site", 10, row -> ListCell.text(Place.name(row.site()))),
                    ListColumn.unordered(
                            "Method",
                            16,
                            row -> ListCell.text(ProtectionWords.method(row.method()))
                                    .withNote(row.method().basis().place())),
                    ListColumn.unordered("Reason", 14, row -> ListCell.text(row.reason())));
            shown.add(new ListTable<>(
                    "By site",
                    columns,
                    sites.stream()
                            .filter(methods::containsKey)
                            .map(methods::get)
                            .toList(),
                    row -> {}));
        }
        if (mayEdit) {
            shown.add(methodForm());
        }
    }

    private Div methodForm() {
        ComboBox<String> site = Fields.site(sites);
        var method = new Select<AttenuationMethod>();
        method.setLabel("Method");
        method.setItems(AttenuationMethod.ALL);
        method.setItemLabelGenerator(ProtectionWords::method);
        method.setValue(AttenuationMethod.ALL.get(1));
        var reason = new TextArea("Reason");
        reason.setMaxLength(MethodChoice.LONGEST_REASON);
        reason.addClassName("tr-wide");
        var message = Fields.message();
        var button = new Button("Pick this method", click -> {
            Fields.clear(message, site, reason);
            Optional<ProtectionProblem> problem = site.getOptionalValue()
                    .map(some -> protectors.choose(new MethodChoice(
                            some, method.getValue(), reason.getValue().strip())))
                    .orElse(Optional.of(ProtectionProblem.SITE_NOT_OPEN));
            problem.ifPresentOrElse(
                    some -> Fields.show(
                            some,
                            Map.of(ProtectionProblem.SITE_NOT_OPEN, site, ProtectionProblem.REASON_MISSING, reason),
                            message),
                    () -> {
                        Notification.show("The method is picked.");
                        refresh();
                    });
        });
        var fields = new Div(site, method, reason);
        fields.addClassName("tr-form");
        var form = new Div(new H3("Pick a method for a site"), fields, message, button);
        form.addClassNames("tr-card", "tr-screen-only");
        return form;
    }

    private List<ListColumn<Product, ?>> columns() {
        List<ListColumn<Product, ?>> columns = new ArrayList<>(List.of(
                ListColumn.unordered(
                        "Protector",
                        12,
                        row -> ListCell.text(row.details().name())
                                .withNote(Words.capitalised(
                                        ProtectionWords.kind(row.details().kind())))),
                ListColumn.unordered(
                        "Site", 9, row -> ListCell.text(Place.name(row.details().site()))),
                ListColumn.unordered(
                        "Sizes", 6, row -> ListCell.text(row.details().sizes())),
                ListColumn.unordered("Label", 14, CatalogueView::label),
                ListColumn.unordered(
                        "State",
                        9,
                        row -> row.retiredOn()
                                .map(day -> ListCell.text("retired " + Words.day(day))
                                        .withNote(row.retiredReason()))
                                .orElseGet(() -> ListCell.state(StateBadge.Kind.DONE, "given out")))));
        if (mayEdit) {
            columns.add(ListColumn.unordered(
                    "",
                    6,
                    row -> row.isGivenOut()
                            ? ListCell.action(
                                    "Retire", "Retire " + row.details().name())
                            : ListCell.EMPTY));
        }
        return columns;
    }

    private static ListCell label(Product product) {
        LabelValues label = product.details().label();
        List<String> values = new ArrayList<>();
        label.nrr().ifPresent(nrr -> values.add("NRR " + ProtectionWords.decibels(nrr)));
        label.snr().ifPresent(snr -> values.add("SNR " + ProtectionWords.decibels(snr)));
        if (label.high().isPresent()
                && label.medium().isPresent()
                && label.low().isPresent()) {
            values.add("H M L "
                    + List.of(label.high(), label.medium(), label.low()).stream()
                            .flatMap(Optional::stream)
                            .map(ProtectionWords::decibels)
                            .collect(Collectors.joining(" ")));
        }
        label.nrsMost().ifPresent(nrs -> values.add("NRS_A 80 % " + ProtectionWords.decibels(nrs)));
        label.nrsFew().ifPresent(nrs -> values.add("NRS_A 20 % " + ProtectionWords.decibels(nrs)));
        ListCell cell =
                ListCell.text(product.details().pair().isPresent() ? "as its two parts" : String.join(", ", values));
        return label.octaves()
                .map(data -> cell.withNote("with octave bands, which give an NRR of "
                        + ProtectionWords.rating(NoiseReductionRating.of(data))))
                .orElse(cell);
    }
}
