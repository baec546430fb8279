package org.thresholdregister.shell;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.menu.MenuConfiguration;
import jakarta.annotation.security.PermitAll;
import org.thresholdregister.platform.ui.EmptyHint;

/** The bare address: leads to the first page that the role may see. */
@Route("")
@PageTitle("Threshold Register")
@PermitAll
class RootView extends Div implements BeforeEnterObserver {

    RootView() {
        add(
                new H1("Nothing here for your role"),
                new EmptyHint(
                        "Your account has a role for which this register has no page.",
                        "Ask the administrator of this register which role you should have."));
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        MenuConfiguration.getMenuEntries().stream().findFirst().ifPresent(entry -> event.forwardTo(entry.menuClass()));
    }
}
