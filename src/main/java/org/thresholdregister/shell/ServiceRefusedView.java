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
import org.springframework.security.access.AccessDeniedException;
import org.thresholdregister.platform.ui.EmptyHint;

/** Stands where a page asked a service for what the role may not have; the refusal itself is noted by the service. */
@ParentLayout(MainLayout.class)
@PageTitle("Not for your role · Threshold Register")
@AnonymousAllowed
class ServiceRefusedView extends Div implements HasErrorParameter<AccessDeniedException> {

    ServiceRefusedView() {
        add(
                new H1("Not for your role"),
                new EmptyHint(
                        "This page shows what your role does not see. That you asked for it is on the audit trail.",
                        "If your work calls for it, ask the administrator of this register.",
                        new Anchor("", "Go to your first page")));
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<AccessDeniedException> parameter) {
        return HttpServletResponse.SC_FORBIDDEN;
    }
}
