package org.thresholdregister.platform.accounts.ui;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.shared.HasValidationProperties;
import com.vaadin.flow.component.textfield.Autocapitalize;
import com.vaadin.flow.component.textfield.Autocomplete;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.thresholdregister.platform.accounts.AccountProblem;
import org.thresholdregister.platform.accounts.NewAccount;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

/** The fields of a new account, in the order they are filled in; each shows its own problem. */
class AccountForm extends Div {

    private final TextField username = new TextField("Username");
    private final TextField displayName = new TextField("Name shown on screen");
    private final Select<Role> role = new Select<>();
    private final PasswordField password = new PasswordField("Password");
    private final Checkbox allSites = new Checkbox("All sites, and records that name no site");
    private final TextArea sites = new TextArea("Sites");

    AccountForm(List<Role> choices) {
        addClassName("tr-form");
        username.setHelperText("3 to 40 letters a to z, digits, dots, hyphens or underscores");
        username.setAutocapitalize(Autocapitalize.NONE);
        username.setAutocomplete(Autocomplete.OFF);
        role.setLabel("Role");
        role.setItems(choices);
        role.setItemLabelGenerator(Role::label);
        role.setValue(choices.getFirst());
        password.setHelperText("At least 15 characters; a few words in a row do well");
        password.setAutocomplete(Autocomplete.NEW_PASSWORD);
        sites.setHelperText("One site a line, spelled as in the roster");
        sites.setWidthFull();
        add(username, displayName, password, role, allSites, sites);
        role.setVisible(choices.size() > 1);
        role.addValueChangeListener(change -> showSites());
        allSites.addValueChangeListener(change -> showSites());
        allSites.setValue(true);
        showSites();
    }

    /** An administrator sees no record, so is not asked for sites. */
    private void showSites() {
        boolean seesRecords = role.getValue() != Role.ADMINISTRATOR;
        allSites.setVisible(seesRecords);
        sites.setVisible(seesRecords && !allSites.getValue());
    }

    NewAccount value() {
        return new NewAccount(
                username.getValue(), displayName.getValue(), password.getValue(), role.getValue(), scope());
    }

    boolean isUntouched() {
        return username.isEmpty() && displayName.isEmpty() && password.isEmpty();
    }

    void show(List<AccountProblem> problems) {
        for (var field : List.of(username, displayName, password, sites)) {
            field.setInvalid(false);
        }
        for (AccountProblem problem : problems) {
            switch (problem.field()) {
                case USERNAME -> mark(username, problem);
                case DISPLAY_NAME -> mark(displayName, problem);
                case PASSWORD -> mark(password, problem);
                case SITES -> mark(sites, problem);
                case SET_UP_TOKEN -> throw new IllegalArgumentException("an account has no token");
            }
        }
    }

    void clear() {
        username.clear();
        displayName.clear();
        password.clear();
        sites.clear();
        allSites.setValue(true);
    }

    void focus() {
        username.focus();
    }

    private static void mark(HasValidationProperties field, AccountProblem problem) {
        field.setErrorMessage(problem.message());
        field.setInvalid(true);
    }

    private SiteScope scope() {
        if (role.getValue() == Role.ADMINISTRATOR) {
            return SiteScope.only(Set.of());
        }
        return allSites.getValue()
                ? SiteScope.all()
                : SiteScope.only(sites.getValue()
                        .lines()
                        .map(String::strip)
                        .filter(line -> !line.isEmpty())
                        .collect(Collectors.toSet()));
    }
}
