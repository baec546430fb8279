package org.thresholdregister.review.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import jakarta.annotation.security.RolesAllowed;
import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.wording.ProposalWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.BaselineProposalService;
import org.thresholdregister.review.OpenedProposal;
import org.thresholdregister.review.ProposalAnswer;
import org.thresholdregister.review.ProposalResult;
import org.thresholdregister.roster.WorkerDetails;

/** One ear's baseline proposal with its working; an officer takes down what the professional answers. */
@Route(Paths.BASELINE_PROPOSAL)
@PageTitle("A baseline proposal · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class ProposalView extends Div implements HasUrlParameter<String>, HealthRecordPage {

    private final transient BaselineProposalService proposals;
    private String site = "";

    ProposalView(BaselineProposalService proposals) {
        this.proposals = proposals;
        addClassName("tr-worker");
    }

    /** @param earAndWorkerId {@code left/W-1} */
    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String earAndWorkerId) {
        int slash = earAndWorkerId.indexOf('/');
        String word = slash < 0 ? earAndWorkerId : earAndWorkerId.substring(0, slash);
        Arrays.stream(Ear.values())
                .filter(ear -> ear.word().equals(word))
                .findFirst()
                .flatMap(ear -> proposals.open(earAndWorkerId.substring(slash + 1), ear))
                .ifPresentOrElse(this::show, this::showNothing);
    }

    @Override
    public String site() {
        return site;
    }

    private void showNothing() {
        site = "";
        removeAll();
        add(
                new H1("No proposal to show"),
                new EmptyHint(
                        "No baseline proposal for this ear is open, or you may not see this worker.",
                        "It may have been answered in between, or a later test has changed it.",
                        new Anchor(ProposalAddress.ROUTE, "See the open proposals")));
    }

    private void show(OpenedProposal opened) {
        WorkerDetails worker = opened.record().details();
        site = worker.site();
        removeAll();
        BaselineChange proposal = opened.about().proposal();
        String name = People.name(worker.givenName(), worker.familyName(), worker.workerId());
        add(
                new H1("Baseline proposal"),
                new LeadSentence()
                        .link(name, Paths.worker(worker.workerId()))
                        .text(", " + Words.ear(proposal.ear()) + ": the test of "
                                + Words.day(proposal.to().date()) + " is proposed as the baseline, for a "
                                + ProposalWording.kind(proposal.kind()) + "."));
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        var choice = new TestChoice(opened.record().stories());
        choice.choose(proposal.to());
        add(new H2("Why, and what would change"), new WorkingList(ProposalWording.working(opened.about())), caution);
        add(answering(opened), new AudiogramSection(choice));
    }

    private Div answering(OpenedProposal opened) {
        var buttons = new Div();
        buttons.addClassName("tr-buttons");
        if (!opened.mayAnswer()) {
            buttons.add(new Paragraph("A safety officer takes down what the professional decides."));
            return buttons;
        }
        var accept = new Button("Accepted by a professional", click -> ask(opened, true));
        accept.addThemeVariants(ButtonVariant.PRIMARY);
        buttons.add(accept, new Button("Declined by a professional", click -> ask(opened, false)));
        return buttons;
    }

    private void ask(OpenedProposal opened, boolean accepted) {
        String workerId = opened.record().details().workerId();
        new ProposalDialog(
                        opened,
                        accepted,
                        answer -> proposals.outlook(workerId, answer),
                        answer -> answer(opened, answer))
                .open();
    }

    private ProposalResult answer(OpenedProposal opened, ProposalAnswer answer) {
        String workerId = opened.record().details().workerId();
        List<String> changes = proposals.outlook(workerId, answer);
        ProposalResult result = proposals.answer(workerId, answer);
        if (result instanceof ProposalResult.Answered) {
            showAnswered(opened, answer, changes);
        }
        return result;
    }

    private void showAnswered(OpenedProposal opened, ProposalAnswer answer, List<String> changes) {
        WorkerDetails worker = opened.record().details();
        BaselineChange proposal = opened.about().proposal();
        removeAll();
        var said = new Div(
                new Paragraph("On record now: the test of " + Words.day(answer.to()) + " is "
                        + (answer.accepted() ? "the baseline of the " : "declined as the baseline of the ")
                        + Words.ear(proposal.ear()) + ", by the decision of " + Words.day(answer.decidedOn()) + "."),
                new UnorderedList(changes.stream().map(ListItem::new).toArray(ListItem[]::new)));
        said.addClassName("tr-card");
        said.getElement().setAttribute("role", "status");
        add(
                new H1("Baseline proposal"),
                said,
                new Paragraph(new Anchor(
                        Paths.worker(worker.workerId()),
                        "See the record of "
                                + People.name(worker.givenName(), worker.familyName(), worker.workerId()))),
                new Paragraph(new Anchor(ProposalAddress.ROUTE, "See the open proposals")));
    }
}
