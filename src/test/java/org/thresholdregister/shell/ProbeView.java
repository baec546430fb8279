package org.thresholdregister.shell;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.nio.charset.StandardCharsets;
import org.springframework.security.authorization.AuthorizationDeniedException;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.HealthRecordPage;

/** A page of the tests, for what the house does around a page: failures, refusals, downloads, print. */
@Route("probe")
@PageTitle("Probe")
@RolesAllowed(Roles.NURSE)
class ProbeView extends Div implements BeforeEnterObserver, HealthRecordPage {

    static final String PERSONAL = "Nora Pell, 4000 Hz: 55";

    ProbeView() {
        add(
                new H1("Probe"),
                new Button("Fail", click -> {
                    throw new IllegalStateException(PERSONAL);
                }),
                new Button("Refuse", click -> {
                    throw new AuthorizationDeniedException("not for this role");
                }),
                Downloads.link(
                        "Download",
                        "probe-2026-03-09.csv",
                        "text/csv;charset=UTF-8",
                        out -> out.write("worker_id\nW-1\n".getBytes(StandardCharsets.UTF_8))));
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        var parameters = event.getLocation().getQueryParameters().getParameters();
        if (parameters.containsKey("fail")) {
            throw new IllegalStateException(PERSONAL);
        }
        if (parameters.containsKey("refuse")) {
            throw new AuthorizationDeniedException("not for this role");
        }
    }
}
