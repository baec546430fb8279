package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import java.time.Clock;
import java.util.List;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.ui.Attention;
import org.thresholdregister.review.ui.People;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.testing.SignResult;

/** What stands on record now, what was found, and where to go from here. */
class SignedPart extends Div {

    /** @param actions what can be done for the worker next */
    SignedPart(SignResult.Signed signed, List<Anchor> actions, Clock clock) {
        WorkerDetails worker = signed.record().details();
        String name = People.name(worker.givenName(), worker.familyName(), worker.workerId());
        var certificate =
                new Paragraph("On record now: " + EntryWords.name(signed.story().test()) + ", " + name
                        + ", number " + worker.workerId()
                        + signed.story()
                                .test()
                                .signature()
                                .map(signature -> ", signed by " + signature.name() + " on "
                                        + EntryWords.moment(signature.at(), clock))
                                .orElse("")
                        + ".");
        var message = new Div(certificate);
        message.addClassName("tr-card");
        message.getElement().setAttribute("role", "status");
        var links = new Div(
                new Anchor(Paths.TEST, "Next person"),
                new Anchor(Paths.worker(worker.workerId()), "The worker's page"));
        actions.forEach(links::add);
        links.addClassName("tr-page-actions");
        var found = new FoundPart("What was found");
        found.show(signed.record(), signed.story(), true);
        add(new H1("Signed"), message, links, found);
        Attention.to(message);
    }
}
