package org.thresholdregister.shell;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.AccessDeniedException;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.ErrorParameter;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.ParentLayout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import jakarta.servlet.http.HttpServletResponse;
import org.thresholdregister.platform.audit.RefusedAccess;
import org.thresholdregister.platform.ui.EmptyHint;

/** Stands where a page is not for the signed-in role, and notes that it was asked for. */
@ParentLayout(MainLayout.class)
@PageTitle("Not for your role · Threshold Register")
@AnonymousAllowed
class RefusedView extends Div implements HasErrorParameter<AccessDeniedException> {

    private final transient RefusedAccess refusedAccess;

    RefusedView(RefusedAccess refusedAccess) {
        this.refusedAccess = refusedAccess;
        add(
                new H1("Not for your role"),
                new EmptyHint(
                        "This page belongs to another role than yours. That you asked for it is on the audit trail.",
                        "If your work calls for it, ask the administrator of this register.",
                        new Anchor("", "Go to your first page")));
    }

    @Override
    public int setErrorParameter(BeforeEnterEvent event, ErrorParameter<AccessDeniedException> parameter) {
        refusedAccess.page("/" + event.getLocation().getPath());
        return HttpServletResponse.SC_FORBIDDEN;
    }
}
