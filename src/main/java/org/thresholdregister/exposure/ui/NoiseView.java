package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.NoiseWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.exposure.NoiseOverview;
import org.thresholdregister.exposure.NoisePlace;
import org.thresholdregister.exposure.NoiseService;
import org.thresholdregister.exposure.ProgrammeProposal;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.platform.ui.StateBadge.Kind;

/** The places where noise was measured, who is to be told, and who belongs to the programme because of it. */
@Route(NoiseView.ROUTE)
@PageTitle("Noise · Threshold Register")
@Menu(title = "Noise", order = 70)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class NoiseView extends Div implements BeforeEnterObserver {

    static final String ROUTE = "noise";

    private final transient NoiseService noise;

    NoiseView(NoiseService noise) {
        this.noise = noise;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        removeAll();
        NoiseOverview overview = noise.overview();
        var actions = new Div(
                new Anchor(MeasurementEntryView.ROUTE, "Enter a measurement"),
                new Anchor(NoiseCalculatorView.ROUTE, "Noise calculator"));
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        add(new H1("Noise"), lead(overview), actions);
        showPlaces(overview.places());
        showProposals(overview.proposals());
    }

    private static LeadSentence lead(NoiseOverview overview) {
        List<NoisePlace> places = overview.places();
        int measured = (int)
                places.stream().filter(place -> place.current().isPresent()).count();
        int loud = (int) places.stream().filter(NoisePlace::reachesActionLevel).count();
        if (measured == 0) {
            return new LeadSentence(
                    "No noise is measured yet; until it is, the average that the roster gives for a worker counts.");
        }
        int untold = places.stream().mapToInt(NoisePlace::untold).sum();
        int outside = overview.proposals().size();
        return new LeadSentence(Counted.of(measured, "place is", "places are") + " measured, " + loud
                + " at or above the action level; " + Counted.of(untold, "person is", "people are")
                + " still to be told the result, and " + Counted.of(outside, "person belongs", "people belong")
                + " to the programme without being in it.");
    }

    private void showPlaces(List<NoisePlace> places) {
        add(new H2("Places"));
        if (places.isEmpty()) {
            add(new EmptyHint(
                    "No noise is on record, and the roster names no noise groups.",
                    "Enter what was measured for a noise group, a job, a worker or an area.",
                    new Anchor(MeasurementEntryView.ROUTE, "Enter a measurement")));
            return;
        }
        List<ListColumn<NoisePlace, ?>> columns = List.of(
                ListColumn.unordered("Place", 10, NoiseView::place),
                ListColumn.unordered(
                        "Site", 8, row -> ListCell.text(Place.name(row.subject().site()))),
                ListColumn.unordered(
                        "Average",
                        8,
                        row -> row.current()
                                .map(current -> ListCell.figures(NoiseWording.average(
                                                current.result().average()))
                                        .withNote(Words.day(current.details().measuredOn())))
                                .orElse(ListCell.text("not measured"))),
                ListColumn.unordered(
                        "Standing",
                        10,
                        row -> row.current()
                                .map(current ->
                                        ListCell.text(Words.capitalised(NoiseWording.standing(current.result()))))
                                .orElse(ListCell.state(Kind.UNDECIDED, "not known"))),
                ListColumn.unordered(
                        "People", 5, row -> ListCell.figures(NoiseLabels.people(row.workers(), row.subject()))),
                ListColumn.unordered(
                        "Told",
                        8,
                        row -> row.untold() > 0
                                ? ListCell.state(Kind.OPEN, row.untold() + " to be told")
                                : row.reachesActionLevel() && row.workers() > 0
                                        ? ListCell.state(Kind.DONE, "all told")
                                        : ListCell.EMPTY));
        add(new ListTable<>("What speaks for whom today", columns, places, row -> {}));
    }

    private static ListCell place(NoisePlace row) {
        String name = row.subject().name();
        ListCell cell = row.current().isPresent()
                ? ListCell.link(name, NoisePlaceView.path(row.subject()))
                : ListCell.text(name);
        return cell.withNote(NoiseLabels.kind(row.subject().kind()));
    }

    private void showProposals(List<ProgrammeProposal> proposals) {
        add(new H2("Belong to the programme and are not in it"));
        if (proposals.isEmpty()) {
            add(new EmptyHint(
                    "Everybody for whom a measurement at or above the action level speaks is in the programme.",
                    "Whoever comes to be is listed here."));
            return;
        }
        add(new Paragraph("Enter the enrolment among the events of the working life, on the worker's page; the first"
                + " test is due from that day. [29 CFR 1910.95(c)(1)]"));
        List<ListColumn<ProgrammeProposal, ?>> columns = List.of(
                ListColumn.unordered(
                        "Name",
                        10,
                        row -> ListCell.link(
                                        row.worker().familyName() + ", "
                                                + row.worker().givenName(),
                                        Paths.worker(row.worker().workerId()))
                                .withNote(row.worker().workerId())),
                ListColumn.unordered(
                        "Site", 8, row -> ListCell.text(Place.name(row.worker().site()))),
                ListColumn.unordered(
                        "Because of",
                        10,
                        row -> ListCell.link(
                                        row.measurement().subject().name(),
                                        NoisePlaceView.path(row.measurement().subject()))
                                .withNote(NoiseWording.average(
                                        row.measurement().result().average()))),
                ListColumn.unordered("Since", 8, row -> ListCell.figures(Words.day(row.on()))));
        add(new ListTable<>("By name", columns, proposals, row -> {}));
    }
}
