package org.thresholdregister.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;
import org.thresholdregister.platform.ui.EmptyHint;

/** Stands where a page could not be made; shows a reference and nothing of the cause. */
@ParentLayout(MainLayout.class)
@PageTitle("Something went wrong · Threshold Register")
@AnonymousAllowed
class FailureView extends Div implements HasErrorParameter<Exception> {

    private final transient Incidents incidents;

    FailureView(Incidents incidents) {
        this.incidents = incidents;
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<Exception> parameter) {
        String reference = incidents.log(parameter.getException());
        removeAll();
        add(
                new H1("Something went wrong"),
                new EmptyHint(
                        "This page could not be shown. What was stored before is safe.",
                        "Try it once more. If it happens again, give your administrator the reference " + reference
                                + ".",
                        new Anchor("", "Go to the first page")));
        return HttpServletResponse.SC_INTERNAL_SERVER_ERROR;
    }
}
