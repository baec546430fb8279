package org.thresholdregister.employment.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.core.wording.WorkingLifeWords;
import org.thresholdregister.employment.PlantSale;
import org.thresholdregister.employment.SalePreview;
import org.thresholdregister.employment.SaleResult;
import org.thresholdregister.employment.SoldPlantService;
import org.thresholdregister.employment.WorkingLifeService;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge;

/** The plants sold with their workers; the safety officer has everybody of a site go to the successor. */
@Route("sold-plant")
@PageTitle("Sold plants · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class SoldPlantView extends Div {

    private final transient SoldPlantService plants;
    private final boolean mayTransfer;
    private final LocalDate today;
    private final Div lead = new Div();
    private final Div list = new Div();
    private final Div preview = new Div();
    private final Select<String> site = new Select<>();
    private final DatePicker soldOn = dayField("Last day with this employer");
    private final TextField successor = new TextField("Successor");

    SoldPlantView(SoldPlantService plants, CurrentUser currentUser, Clock clock) {
        this.plants = plants;
        this.mayTransfer = currentUser.role() == Role.SAFETY_OFFICER;
        this.today = LocalDate.now(clock);
        add(new H1("Sold plants"), lead, list);
        if (mayTransfer) {
            add(new H2("Sell a plant with its workers"), form(), preview);
        }
        showSales();
    }

    private static DatePicker dayField(String label) {
        var field = new DatePicker(label);
        field.setLocale(Locale.ENGLISH);
        field.setI18n(new DatePicker.DatePickerI18n()
                .setDateFormats("d MMM yyyy", "yyyy-MM-dd")
                .setFirstDayOfWeek(1));
        return field;
    }

    private Div form() {
        site.setLabel("Site");
        site.setItems(plants.sites());
        soldOn.setValue(today);
        successor.setMaxLength(WorkingLifeService.LONGEST_NAME);
        successor.setHelperText("The new owner, which takes the records over");
        var look = new Button("Look who goes", click -> look());
        look.addThemeVariants(ButtonVariant.PRIMARY);
        var fields = new Div(site, soldOn, successor);
        fields.addClassName("tr-form");
        var form = new Div(fields, look);
        form.addClassNames("tr-card", "tr-screen-only");
        return form;
    }

    private void look() {
        site.setErrorMessage("Choose the site.");
        site.setInvalid(site.getValue() == null);
        soldOn.setErrorMessage("Give the day as 9 Mar 2026.");
        soldOn.setInvalid(soldOn.getValue() == null);
        successor.setErrorMessage("Name the new owner.");
        successor.setInvalid(successor.getValue().isBlank());
        preview.removeAll();
        if (!site.isInvalid() && !soldOn.isInvalid() && !successor.isInvalid()) {
            plants.preview(
                            site.getValue(),
                            soldOn.getValue(),
                            successor.getValue().strip())
                    .ifPresentOrElse(
                            this::show,
                            () -> preview.add(new Paragraph("This site is not among those that you may see.")));
        }
    }

    private void show(SalePreview found) {
        preview.removeAll();
        String who = Counted.of(found.going().size(), "worker", "workers");
        if (found.going().isEmpty() && found.held().isEmpty()) {
            preview.add(new EmptyHint(
                    "Nobody is employed at " + found.site() + " on " + Words.day(found.soldOn()) + ".",
                    "Choose another site or day."));
            return;
        }
        preview.add(new H2("Before anything is changed"));
        if (!found.held().isEmpty()) {
            preview.add(
                    new Paragraph(Counted.of(found.held().size(), "record does", "records do")
                            + " not fit with the sale. Correct what is named here first; until then nobody goes."),
                    new ListTable<>("What stands against it", heldColumns(), found.held(), row -> {}));
            return;
        }
        preview.add(
                new Paragraph(who + " of " + found.site() + " would go to " + found.successor() + "; "
                        + Words.day(found.soldOn())
                        + " is their last day here. Each keeps the whole record here, and the"
                        + " baselines go on with the successor. Whoever stays is moved to another site first."),
                new ListTable<>("Who goes", goingColumns(), found.going(), row -> {}));
        var agree = new Button("Transfer " + who, click -> transfer(found));
        agree.addThemeVariants(ButtonVariant.PRIMARY);
        preview.add(agree);
    }

    private static List<ListColumn<SalePreview.Going, ?>> goingColumns() {
        return List.of(
                ListColumn.unordered("Worker", 10, row -> ListCell.link(row.name(), Paths.worker(row.workerId()))),
                ListColumn.unordered("Number", 6, row -> ListCell.text(row.workerId())),
                ListColumn.unordered("Department", 8, row -> ListCell.text(row.department())),
                ListColumn.unordered("Stands", 12, row -> ListCell.text(WorkingLifeWords.standing(row.state()))));
    }

    private static List<ListColumn<SalePreview.Held, ?>> heldColumns() {
        return List.of(
                ListColumn.unordered("Worker", 10, row -> ListCell.link(row.name(), Paths.worker(row.workerId()))),
                ListColumn.unordered(
                        "Entry of",
                        7,
                        row -> ListCell.text(Words.day(row.found().about().day()))),
                ListColumn.unordered(
                        "Why",
                        16,
                        row -> ListCell.text(
                                WorkingLifeWords.inconsistency(row.found().kind()))));
    }

    private void transfer(SalePreview agreed) {
        switch (plants.transfer(agreed)) {
            case SaleResult.Done(int workers) -> {
                preview.removeAll();
                preview.add(message(Counted.of(workers, "worker goes", "workers go") + " to " + agreed.successor()
                        + ". The records are to be handed over: mark it in the list above when it is done."));
                showSales();
            }
            case SaleResult.PreviewOutdated outdated -> {
                look();
                preview.addComponentAsFirst(
                        message("The register has changed meanwhile. Nothing was changed; look again who goes."));
            }
            case SaleResult.Refused(var why) -> preview.addComponentAsFirst(message(inWords(why)));
        }
    }

    private static Paragraph message(String words) {
        var message = new Paragraph(words);
        message.addClassName("tr-message");
        message.getElement().setAttribute("role", "status");
        return message;
    }

    private static String inWords(SaleResult.Reason why) {
        return switch (why) {
            case SITE_NOT_OPEN -> "This site is not among those that you may see. Nothing was changed.";
            case NOBODY_THERE -> "Nobody is employed there on that day. Nothing was changed.";
            case SUCCESSOR_MISSING -> "Name the new owner.";
            case RECEIVER_MISSING -> "Say who took the records.";
            case TEXT_TOO_LONG -> "A name or the remark is too long. Nothing was changed.";
            case IN_THE_FUTURE -> "This day has not come yet.";
            case SOMEONE_HELD -> "A record does not let its worker go. Nothing was changed.";
            case DONE_ALREADY -> "The records were handed over already. Nothing was changed.";
        };
    }

    private void showSales() {
        List<PlantSale> sales = plants.sales();
        long open = sales.stream().filter(sale -> sale.handOver().isEmpty()).count();
        lead.removeAll();
        lead.add(new LeadSentence(
                sales.isEmpty()
                        ? "No plant was sold with its workers."
                        : Counted.of(sales.size(), "plant was", "plants were")
                                + " sold with the workers; the records of " + (open == 0 ? "none" : Long.toString(open))
                                + " are still to be handed over."));
        list.removeAll();
        if (sales.isEmpty()) {
            list.add(new EmptyHint(
                    "No sale is on record.",
                    mayTransfer
                            ? "When a plant is sold, choose it below: everybody who works there goes to the successor."
                            : "A safety officer enters a sale, and with it everybody who goes to the successor."));
        } else {
            list.add(new ListTable<>("The latest first", saleColumns(), sales, this::handOver));
        }
    }

    private List<ListColumn<PlantSale, ?>> saleColumns() {
        return List.of(
                ListColumn.unordered("Site", 8, sale -> ListCell.text(sale.site())),
                ListColumn.unordered("Last day", 7, sale -> ListCell.figures(Words.day(sale.soldOn()))),
                ListColumn.unordered("Successor", 10, sale -> ListCell.text(sale.successor())),
                ListColumn.unordered("Workers", 5, sale -> ListCell.figures(Integer.toString(sale.workers()))),
                ListColumn.unordered("Records", 12, this::records),
                ListColumn.unordered(
                        "",
                        8,
                        sale -> mayTransfer && sale.handOver().isEmpty()
                                ? ListCell.action(
                                        "Mark handed over", "Mark the records of " + sale.site() + " handed over")
                                : ListCell.EMPTY));
    }

    private ListCell records(PlantSale sale) {
        return sale.handOver()
                .map(done -> ListCell.state(
                                StateBadge.Kind.DONE,
                                "handed over on " + Words.day(done.on()) + " to " + done.receivedBy())
                        .withNote(done.remark()))
                .orElse(ListCell.state(
                                sale.soldOn().isBefore(today) ? StateBadge.Kind.OVERDUE : StateBadge.Kind.OPEN,
                                "to be handed over")
                        .withNote(WorkingLifeWords.TO_SUCCESSOR.place() + "; no time is set"));
    }

    private void handOver(PlantSale sale) {
        var dialog = new Dialog();
        dialog.setHeaderTitle("Records handed over");
        dialog.setWidth("min(30rem, 100%)");
        var day = dayField("Day");
        day.setValue(today);
        var receiver = new TextField("Received by");
        receiver.setMaxLength(WorkingLifeService.LONGEST_NAME);
        receiver.setHelperText("Name, for " + sale.successor());
        var remark = new TextArea("Remark");
        remark.setMaxLength(WorkingLifeService.LONGEST_REASON);
        remark.setHelperText("May be left empty");
        var fields = new Div(day, receiver, remark);
        fields.addClassName("tr-entry-fields");
        dialog.add(fields);
        var save = new Button("Enter", click -> {
            day.setErrorMessage("Give the day as 9 Mar 2026.");
            day.setInvalid(day.getValue() == null);
            if (day.isInvalid()) {
                return;
            }
            var done = new PlantSale.HandOver(
                    day.getValue(),
                    receiver.getValue().strip(),
                    remark.getValue().strip());
            switch (plants.handOver(sale.key(), done)) {
                case SaleResult.Done ok -> {
                    dialog.close();
                    showSales();
                }
                case SaleResult.PreviewOutdated outdated -> dialog.close();
                case SaleResult.Refused(var why) -> {
                    boolean aboutTheDay = why == SaleResult.Reason.IN_THE_FUTURE;
                    day.setErrorMessage(inWords(why));
                    day.setInvalid(aboutTheDay);
                    receiver.setErrorMessage(inWords(why));
                    receiver.setInvalid(!aboutTheDay);
                }
            }
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        dialog.getFooter().add(new Button("Cancel", click -> dialog.close()), save);
        dialog.open();
        receiver.focus();
    }
}
