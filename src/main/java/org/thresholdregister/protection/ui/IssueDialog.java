package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.HasSize;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.protection.NewIssue;
import org.thresholdregister.protection.Product;
import org.thresholdregister.protection.ProtectionProblem;

/** Asks which protector a worker was given, until it can be taken down. */
class IssueDialog extends Dialog {

    /**
     * @param refits days of the tests whose shifts leave a refitting owed, the latest is proposed
     * @param issue takes it down and says what stands against it
     */
    IssueDialog(
            List<Product> products,
            List<LocalDate> refits,
            LocalDate today,
            SerializableFunction<NewIssue, Optional<ProtectionProblem>> issue,
            SerializableRunnable done) {
        setHeaderTitle("Give out a protector");
        setCloseOnOutsideClick(false);
        setWidth("min(32rem, 100%)");
        var product = new ComboBox<Product>("Protector", products);
        product.setItemLabelGenerator(item -> item.details().name() + ", "
                + ProtectionWords.kind(item.details().kind()));
        var size = new TextField("Size");
        size.setMaxLength(NewIssue.LONGEST_SIZE);
        product.addValueChangeListener(change -> size.setHelperText(
                change.getValue() == null ? "" : change.getValue().details().sizes()));
        DatePicker day = Fields.day("Given out on", today);
        var refit = new Select<LocalDate>();
        refit.setLabel("Fitted or refitted because of a shift");
        refit.setItems(refits);
        refit.setEmptySelectionAllowed(true);
        refit.setEmptySelectionCaption("No, for another reason");
        refit.setItemLabelGenerator(test -> test == null ? "No, for another reason" : "Test of " + Words.day(test));
        refit.setHelperText("This enters the refitting in the case of that test");
        refit.setVisible(!refits.isEmpty());
        if (!refits.isEmpty()) {
            refit.setValue(refits.getLast());
        }
        var remark = new TextArea("Remark");
        remark.setMaxLength(NewIssue.LONGEST_REMARK);
        var message = Fields.message();
        List.<HasSize>of(product, size, day, refit, remark).forEach(HasSize::setWidthFull);
        add(product, size, day, refit, remark, message);
        var save = new Button("Give out", click -> {
            Fields.clear(message, product, size, day);
            if (product.getValue() == null) {
                Fields.complain(product, ProblemWords.of(ProtectionProblem.UNKNOWN_PROTECTOR));
            } else if (day.getValue() == null) {
                Fields.complain(day, "Give the day as 9 Mar 2026.");
            } else {
                issue.apply(new NewIssue(
                                product.getValue().key(),
                                size.getValue().strip(),
                                day.getValue(),
                                Optional.ofNullable(refit.getValue()),
                                remark.getValue().strip()))
                        .ifPresentOrElse(
                                problem -> Fields.show(
                                        problem,
                                        Map.of(
                                                ProtectionProblem.UNKNOWN_PROTECTOR, product,
                                                ProtectionProblem.RETIRED, product,
                                                ProtectionProblem.IN_THE_FUTURE, day),
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
