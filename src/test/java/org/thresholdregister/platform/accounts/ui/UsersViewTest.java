package org.thresholdregister.platform.accounts.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.textfield.PasswordField;
import com.vaadin.flow.component.textfield.TextField;
import org.junit.jupiter.api.Test;
import org.springframework.test.annotation.DirtiesContext;
import org.thresholdregister.platform.RegisterTest;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.WithRegisterUser;

@RegisterTest
@DirtiesContext
@WithRegisterUser(role = Role.ADMINISTRATOR, username = "ada")
class UsersViewTest extends SpringBrowserlessTest {

    private TextField textField(String label) {
        return $(TextField.class).withPropertyValue(TextField::getLabel, label).single();
    }

    private void click(String words) {
        test($(Button.class).withText(words).single()).click();
    }

    @Test
    void anAddedUserStandsInTheListAndTheFormIsEmptyAgain() {
        navigate(UsersView.class);
        test(textField("Username")).setValue("nora");
        test(textField("Name shown on screen")).setValue("Nora Pell");
        test($(PasswordField.class).single()).setValue("a kettle on every stove");
        click("Add the user");

        assertThat($(NativeTableRow.class).all())
                .extracting(row -> row.getElement().getTextRecursively())
                .anyMatch(text -> text.contains("nora") && text.contains("Nora Pell") && text.contains("Nurse"));
        assertThat(textField("Username").getValue()).isEmpty();
        assertThat($(PasswordField.class).single().getValue()).isEmpty();
    }

    @Test
    void aWeakPasswordIsToldBesideItsFieldAndWhatWasTypedStays() {
        navigate(UsersView.class);
        test(textField("Username")).setValue("weak");
        test(textField("Name shown on screen")).setValue("Wea Kling");
        test($(PasswordField.class).single()).setValue("passwordpassword");
        click("Add the user");

        var password = $(PasswordField.class).single();
        assertThat(password.isInvalid()).isTrue();
        assertThat(password.getErrorMessage()).contains("among the first");
        assertThat(textField("Username").getValue()).isEqualTo("weak");
        assertThat($(NativeTableRow.class).all())
                .extracting(row -> row.getElement().getTextRecursively())
                .noneMatch(text -> text.contains("weak"));
    }

    @Test
    void theMenuLeadsAnAdministratorToTheUsers() {
        UI.getCurrent().navigate("");
        assertThat(getCurrentView()).isInstanceOf(UsersView.class);
    }
}
