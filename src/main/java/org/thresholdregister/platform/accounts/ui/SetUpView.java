package org.thresholdregister.platform.accounts.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.platform.accounts.AccountProblem;
import org.thresholdregister.platform.accounts.AccountProblem.Field;
import org.thresholdregister.platform.accounts.FirstSetUp;
import org.thresholdregister.platform.accounts.NewAccount;
import org.thresholdregister.platform.security.Role;

/** The first start of a register: its administrator, and if wanted the first person who works with it. */
@Route(value = "setup", autoLayout = false)
@PageTitle("Set up · Threshold Register")
@AnonymousAllowed
class SetUpView extends Main implements BeforeEnterObserver {

    private final transient FirstSetUp setUp;
    private final TextField token = new TextField("Set-up token");
    private final AccountForm administrator = new AccountForm(List.of(Role.ADMINISTRATOR));
    private final AccountForm colleague = new AccountForm(List.of(Role.NURSE, Role.SAFETY_OFFICER, Role.PLANT_MANAGER));
    private final Div card = new Div();

    SetUpView(FirstSetUp setUp) {
        this.setUp = setUp;
        addClassName("tr-door");
        card.addClassName("tr-card");
        token.setHelperText("It stands on the console that the register was started from");
        token.setWidthFull();
        var create = new Button("Create the accounts", click -> create());
        create.addThemeVariants(ButtonVariant.PRIMARY);
        card.add(
                new H1("Set up this register"),
                new Paragraph("It has no accounts yet. The administrator keeps accounts and sees no health record;"
                        + " nurses and safety officers work with the records."),
                token,
                new H2("Administrator"),
                administrator,
                new H2("First colleague (may stay empty)"),
                colleague,
                create);
        add(card);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        if (!setUp.isOpen()) {
            event.rerouteToError(NotFoundException.class);
        }
    }

    private void create() {
        var accounts = new ArrayList<NewAccount>();
        accounts.add(administrator.value());
        if (!colleague.isUntouched()) {
            accounts.add(colleague.value());
        }
        List<List<AccountProblem>> problems = setUp.complete(token.getValue(), accounts);
        var wrongToken = problems.getFirst().stream()
                .filter(problem -> problem.field() == Field.SET_UP_TOKEN)
                .findFirst();
        token.setInvalid(wrongToken.isPresent());
        if (wrongToken.isPresent()) {
            token.setErrorMessage(wrongToken.get().message());
            return;
        }
        administrator.show(problems.getFirst());
        colleague.show(accounts.size() > 1 ? problems.get(1) : List.of());
        if (problems.stream().allMatch(List::isEmpty)) {
            done();
        }
    }

    private void done() {
        card.removeAll();
        card.add(
                new H1("The register is set up"),
                new Paragraph("The accounts are stored, and this page is closed for good."),
                new Paragraph(new Anchor("login", "Sign in")));
    }
}
