package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.rules.Step;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.ProposalWording;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.review.BaselineProposalService;
import org.thresholdregister.review.ProposalColumn;
import org.thresholdregister.review.ProposalFilter;
import org.thresholdregister.review.ProposalRow;
import org.thresholdregister.roster.WorkerService;

/** The baseline revisions that wait for a professional; each opens into its working. */
@Route(ProposalAddress.ROUTE)
@PageTitle("Baseline proposals · Threshold Register")
@Menu(title = "Baselines", order = 35)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class ProposalsView extends Div implements HealthRecordPage, BeforeEnterObserver {

    private static final List<BaselineChange.Kind> KINDS =
            List.of(BaselineChange.Kind.PERSISTENT_SHIFT, BaselineChange.Kind.PERSISTENT_IMPROVEMENT);

    private final transient BaselineProposalService proposals;
    private final Div lead = new Div();
    private final FilterBar filters = new FilterBar(ProposalAddress.ROUTE, "Name or number", this::refresh);
    private final ListGrid<ProposalRow, ProposalColumn> list;
    private final Div empty = new Div();
    private transient FilterParameters parameters = FilterParameters.NONE;

    ProposalsView(BaselineProposalService proposals, WorkerService workers) {
        this.proposals = proposals;
        filters.choice(ProposalAddress.KIND, "Proposed for a", KINDS, ProposalWording::kind)
                .names(ProposalAddress.SITE, "Site", workers.sites())
                .names(ProposalAddress.DEPARTMENT, "Department", workers.departments());
        list = new ListGrid<>(
                "Baseline proposals",
                ProposalColumn.class,
                ProposalColumns.all(),
                ProposalColumns.orders(),
                row -> ProposalAddress.of(row.workerId(), row.ear()),
                row -> {});
        var caution = new Paragraph("Found in the record by the two rules of " + Citation.REVISION_GUIDE
                + ", ear by ear. An audiologist, otolaryngologist or physician decides on each, "
                + RuleSets.OSHA.paragraph(Step.REVISED_BASELINE) + "; until then the baseline stays.");
        caution.addClassName("tr-caution");
        list.orderedByAddress(ProposalAddress.ROUTE);
        filters.add(list.order());
        add(new H1("Baseline proposals"), lead, caution, filters, list, empty);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        filters.show(parameters);
        list.show(parameters);
        refresh();
    }

    private void refresh() {
        ProposalFilter filter = ProposalAddress.filter(parameters, filters.searched());
        int all = proposals.count(ProposalFilter.EVERYTHING);
        int shown = filter.equals(ProposalFilter.EVERYTHING) ? all : proposals.count(filter);
        lead.removeAll();
        lead.add(filter.equals(ProposalFilter.EVERYTHING) ? ofAll(all) : ofSome(filter, shown, all));
        list.show(shown, (order, offset, limit) -> proposals.find(filter, order, offset, limit));
        empty.removeAll();
        if (shown == 0) {
            empty.add(emptyHint(all));
        }
    }

    private static LeadSentence ofAll(int all) {
        return new LeadSentence(
                all == 0
                        ? "No baseline proposal waits for a professional."
                        : Counted.of(all, "baseline proposal waits", "baseline proposals wait")
                                + " for a professional.");
    }

    private static LeadSentence ofSome(ProposalFilter filter, int shown, int all) {
        return new LeadSentence("Of ")
                .link(Counted.of(all, "baseline proposal", "baseline proposals"), ProposalAddress.ROUTE)
                .text(", " + shown + Place.phrase(filter.site(), filter.department())
                        + filter.kind()
                                .map(kind -> " for a " + ProposalWording.kind(kind))
                                .orElse("")
                        + (filter.text().isBlank() ? "" : " matching the search") + " "
                        + (shown == 1 ? "waits" : "wait") + ".");
    }

    private static EmptyHint emptyHint(int all) {
        return all == 0
                ? new EmptyHint(
                        "No ear on record that you may see meets either rule, or each proposal has been answered.",
                        "A proposal arises from the second of two tests that show the same change. What was answered"
                                + " stands among the decisions on the worker's page.",
                        new Anchor("workers", "See the workers on record"))
                : new EmptyHint(
                        "No proposal fits this filter.",
                        "Choose less, or see them all.",
                        new Anchor(
                                ProposalAddress.ROUTE,
                                "See all " + Counted.of(all, "baseline proposal", "baseline proposals")));
    }
}
