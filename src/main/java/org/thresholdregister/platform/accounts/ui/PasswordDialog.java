package org.thresholdregister.platform.accounts.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.function.SerializableFunction;
import java.util.Optional;
import org.thresholdregister.platform.accounts.Accounts.Account;

/** Asks for a new password until there is no objection to it. */
class PasswordDialog extends Dialog {

    /** @param store stores the password, or returns what stands against it */
    PasswordDialog(Account account, SerializableFunction<String, Optional<String>> store) {
        setHeaderTitle("New password for " + account.displayName());
        var password = new PasswordField("New password");
        password.setHelperText("At least 15 characters; a few words in a row do well");
        password.setAutocomplete(Autocomplete.NEW_PASSWORD);
        password.setWidthFull();
        password.focus();
        add(password);
        var save = new Button("Store", click -> {
            var objection = store.apply(password.getValue());
            password.setErrorMessage(objection.orElse(""));
            password.setInvalid(objection.isPresent());
            if (objection.isEmpty()) {
                close();
            }
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
    }
}
