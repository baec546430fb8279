package org.thresholdregister.platform.accounts.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import org.thresholdregister.platform.accounts.Accounts;
import org.thresholdregister.platform.accounts.Accounts.Account;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.LeadSentence;

/** The administrator's page: who may sign in, in which role, for which sites. */
@Route("users")
@PageTitle("Users · Threshold Register")
@Menu(title = "Users", order = 90)
@RolesAllowed(Roles.ADMINISTRATOR)
class UsersView extends Div {

    private final transient Accounts accounts;
    private final transient CurrentUser currentUser;
    private final Div lead = new Div();
    private final Div list = new Div();
    private final AccountForm form = new AccountForm(List.of(Role.values()));

    UsersView(Accounts accounts, CurrentUser currentUser) {
        this.accounts = accounts;
        this.currentUser = currentUser;
        var add = new Button("Add the user", click -> addUser());
        add.addThemeVariants(ButtonVariant.PRIMARY);
        var card = new Div(new H2("Add a user"), form, add);
        card.addClassNames("tr-card", "tr-screen-only");
        add(new H1("Users"), lead, list, card);
        refresh();
    }

    private void addUser() {
        var account = form.value();
        var problems = accounts.add(account);
        form.show(problems);
        if (problems.isEmpty()) {
            Notification.show(account.displayName().strip() + " can sign in now.");
            form.clear();
            refresh();
        }
    }

    private void refresh() {
        List<Account> all = accounts.list();
        long active = all.stream().filter(Account::active).count();
        lead.removeAll();
        lead.add(new LeadSentence(active == 1 ? "1 person can sign in." : active + " people can sign in."));
        list.removeAll();
        list.add(new UserTable(all, currentUser.username(), this::deactivate, this::reactivate, this::askPassword));
    }

    private void deactivate(Account account) {
        accounts.deactivate(account.username());
        Notification.show(account.displayName() + " can no longer sign in.");
        refresh();
    }

    private void reactivate(Account account) {
        accounts.reactivate(account.username());
        Notification.show(account.displayName() + " can sign in again.");
        refresh();
    }

    private void askPassword(Account account) {
        new PasswordDialog(account, password -> {
                    var objection = accounts.setPassword(account.username(), password);
                    if (objection.isEmpty()) {
                        Notification.show("The new password of " + account.displayName() + " is stored.");
                        refresh();
                    }
                    return objection;
                })
                .open();
    }
}
