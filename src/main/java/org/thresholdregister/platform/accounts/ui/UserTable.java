package org.thresholdregister.platform.accounts.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.function.SerializableConsumer;
import java.util.List;
import org.thresholdregister.platform.accounts.Accounts.Account;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.platform.ui.StateBadge.Kind;

/** The accounts as a table; the own account has no button that would shut its owner out. */
class UserTable extends NativeTable {

    UserTable(
            List<Account> accounts,
            String ownUsername,
            SerializableConsumer<Account> deactivate,
            SerializableConsumer<Account> reactivate,
            SerializableConsumer<Account> setPassword) {
        addClassNames("tr-table", "tr-cards");
        var header = new NativeTableRow();
        for (String title : List.of("Username", "Name", "Role", "Sites", "State")) {
            var cell = new NativeTableHeaderCell(title);
            cell.getElement().setAttribute("scope", "col");
            header.add(cell);
        }
        var actions = new NativeTableHeaderCell("Change");
        actions.addClassName("tr-actions");
        header.add(actions);
        getHead().add(header);
        var body = addBody();
        for (Account account : accounts) {
            var row = new NativeTableRow();
            row.add(
                    cell("Username", new Text(account.username())),
                    cell("Name", new Text(account.displayName())),
                    cell("Role", new Text(account.role().label())),
                    cell("Sites", new Text(inWords(account.scope()))),
                    cell("State", state(account)));
            var buttons = cell("", button("New password", account, setPassword));
            buttons.addClassName("tr-actions");
            if (!account.username().equals(ownUsername)) {
                buttons.add(
                        account.active()
                                ? button("Deactivate", account, deactivate)
                                : button("Reactivate", account, reactivate));
            }
            row.add(buttons);
            body.add(row);
        }
    }

    private static NativeTableCell cell(String label, Component content) {
        var cell = new NativeTableCell(content);
        cell.getElement().setAttribute("data-label", label);
        return cell;
    }

    private static Button button(String words, Account account, SerializableConsumer<Account> action) {
        var button = new Button(words, click -> action.accept(account));
        button.addThemeVariants(ButtonVariant.SMALL);
        button.setAriaLabel(words + ", " + account.username());
        return button;
    }

    private static StateBadge state(Account account) {
        if (!account.active()) {
            return new StateBadge(Kind.DONE, "deactivated");
        }
        return account.paused()
                ? new StateBadge(Kind.OVERDUE, "sign-in rests after wrong passwords")
                : new StateBadge(Kind.OPEN, "may sign in");
    }

    private static String inWords(SiteScope scope) {
        return switch (scope) {
            case SiteScope.AllSites() -> "all";
            case SiteScope.OnlySites(var names) when names.isEmpty() -> "none";
            case SiteScope.OnlySites(var names) ->
                String.join(", ", names.stream().sorted().toList());
        };
    }
}
