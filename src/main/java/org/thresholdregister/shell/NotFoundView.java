package org.thresholdregister.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;
import org.thresholdregister.platform.ui.EmptyHint;

/** Stands where an address leads nowhere. */
@ParentLayout(MainLayout.class)
@PageTitle("No such page · Threshold Register")
@AnonymousAllowed
class NotFoundView extends Div implements HasErrorParameter<NotFoundException> {

    NotFoundView() {
        add(
                new H1("No such page"),
                new EmptyHint(
                        "This address leads to no page of the register.",
                        "It may be mistyped, or the page has moved.",
                        new Anchor("", "Go to the first page")));
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<NotFoundException> parameter) {
        return HttpServletResponse.SC_NOT_FOUND;
    }
}
