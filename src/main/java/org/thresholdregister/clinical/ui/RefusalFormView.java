package org.thresholdregister.clinical.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import jakarta.annotation.security.RolesAllowed;
import java.util.Optional;
import org.thresholdregister.clinical.ClinicalService;
import org.thresholdregister.core.wording.ClinicalWords;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.roster.WorkerDetails;

/** The form on which a worker signs that the test is not wanted: to print, to sign, and to keep with the refusal. */
@Route(RefusalFormView.ROUTE)
@PageTitle("Form to sign · Threshold Register")
@RolesAllowed(Roles.NURSE)
class RefusalFormView extends Div implements HasUrlParameter<String>, HealthRecordPage {

    static final String ROUTE = "refusal-form";

    private final transient ClinicalService clinical;
    private String site = "";

    RefusalFormView(ClinicalService clinical) {
        this.clinical = clinical;
    }

    /** The form for the worker with this number. */
    static String path(String workerId) {
        return ROUTE + Paths.worker(workerId).substring(Paths.WORKER.length());
    }

    @Override
    public String site() {
        return site;
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String workerId) {
        removeAll();
        clinical.worker(workerId).ifPresentOrElse(this::show, this::showNothing);
    }

    private void showNothing() {
        site = "";
        add(
                new H1("No form to show"),
                new EmptyHint(
                        "No worker of this number is among those whose records you may see.",
                        "Check the number, or look the worker up in the list.",
                        new Anchor("workers", "Go to the list of workers")));
    }

    private void show(WorkerDetails worker) {
        site = worker.site();
        String name = (worker.givenName() + " " + worker.familyName()).strip();
        String workerId = worker.workerId();
        var actions = new Div(
                Downloads.link("The form as a PDF", "refusal-form.pdf", "application/pdf", out -> {
                    Optional<byte[]> pdf = clinical.refusalForm(workerId);
                    if (pdf.isPresent()) {
                        out.write(pdf.get());
                    }
                }),
                new Anchor(Paths.worker(workerId), "Back to the worker's page"));
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        add(new H1(ClinicalWords.REFUSAL_HEADING), new LeadSentence(ClinicalWords.refusalFor(name, workerId)), actions);
        ClinicalWords.REFUSAL_SENTENCES.forEach(sentence -> add(new Paragraph(sentence)));
        add(
                line("My reason"),
                line(""),
                line("Date"),
                line("Signature of the worker"),
                line("Name and signature of the person who offered the test"));
    }

    private static Div line(String label) {
        var rule = new Div();
        rule.addClassName("tr-sign-rule");
        var line = new Div(rule, new Span(label));
        line.addClassName("tr-sign-line");
        return line;
    }
}
