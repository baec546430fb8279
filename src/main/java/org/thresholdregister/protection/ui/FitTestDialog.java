package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.HasSize;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableBiFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.documents.ui.DocumentField;
import org.thresholdregister.protection.NewFitTest;
import org.thresholdregister.protection.NewIssue;
import org.thresholdregister.protection.Product;
import org.thresholdregister.protection.ProtectionProblem;

/** Asks for the result of a fit test, until it can be taken down. */
class FitTestDialog extends Dialog {

    private final ComboBox<Product> product;
    private final TextField size = new TextField("Size");
    private final DatePicker day;
    private final TextField par = new TextField("Personal attenuation rating (dB)");
    private final IntegerField percentile = new IntegerField("Percentile it is stated for");
    private final TextField method = new TextField("Method");
    private final TextField tester = new TextField("Tested by");

    FitTestDialog(
            List<Product> products,
            LocalDate today,
            SerializableBiFunction<NewFitTest, Optional<NewDocument>, Optional<ProtectionProblem>> enter,
            SerializableRunnable done) {
        setHeaderTitle("Enter a fit test");
        setCloseOnOutsideClick(false);
        setWidth("min(32rem, 100%)");
        product = new ComboBox<>("Protector", products);
        product.setItemLabelGenerator(item -> item.details().name());
        size.setMaxLength(NewIssue.LONGEST_SIZE);
        size.setHelperText("As it was given out: a result counts for that size alone");
        day = Fields.day("Tested on", today);
        par.setAllowedCharPattern("[0-9.,]");
        par.setHelperText("For both ears as worn; nothing is taken off it");
        percentile.setHelperText("As the report states it, from 1 to 99");
        method.setMaxLength(NewFitTest.LONGEST_METHOD);
        tester.setMaxLength(NewFitTest.LONGEST_TESTER);
        var report = new DocumentField("Report");
        var message = Fields.message();
        List.<HasSize>of(product, size, day, par, percentile, method, tester).forEach(HasSize::setWidthFull);
        add(product, size, day, par, percentile, method, tester, report, message);
        var save = new Button("Enter", click -> {
            Fields.clear(message, product, day, par, percentile);
            Optional<BigDecimal> rating = Fields.decibels(par.getValue());
            if (product.getValue() == null) {
                Fields.complain(product, ProblemWords.of(ProtectionProblem.UNKNOWN_PROTECTOR));
            } else if (day.getValue() == null) {
                Fields.complain(day, "Give the day as 9 Mar 2026.");
            } else if (rating.isEmpty()) {
                Fields.complain(par, "Give the rating in dB, from 0 to " + NewFitTest.HIGHEST_PAR + ".");
            } else if (percentile.getValue() == null) {
                Fields.complain(percentile, "Give the percentile that the report states, from 1 to 99.");
            } else if (report.isUploading()) {
                report.refuse("The file is still on its way. Wait a moment, then enter again.");
            } else {
                enter.apply(
                                new NewFitTest(
                                        product.getValue().key(),
                                        size.getValue().strip(),
                                        day.getValue(),
                                        rating.get(),
                                        percentile.getValue(),
                                        method.getValue().strip(),
                                        tester.getValue().strip()),
                                report.document())
                        .ifPresentOrElse(
                                problem -> Fields.show(
                                        problem,
                                        Map.of(
                                                ProtectionProblem.UNKNOWN_PROTECTOR, product,
                                                ProtectionProblem.IN_THE_FUTURE, day,
                                                ProtectionProblem.FIT_TEST_OUT_OF_RANGE, par),
                                        message),
                                () -> {
                                    close();
                                    done.run();
                                });
            }
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        product.focus();
    }
}
