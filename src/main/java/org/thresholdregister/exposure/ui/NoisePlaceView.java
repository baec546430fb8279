package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.List;
import java.util.stream.Collectors;
import org.thresholdregister.core.noise.ImpulsePeak;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.NoiseWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.exposure.NewMeasurement;
import org.thresholdregister.exposure.NoiseMeasurement;
import org.thresholdregister.exposure.NoisePaths;
import org.thresholdregister.exposure.NoiseService;
import org.thresholdregister.exposure.NoiseSubject;
import org.thresholdregister.exposure.PlaceRecord;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.roster.WorkerPlace;

/** One place: what was measured there, with the working, for whom it speaks, and who is to be told. */
@Route(NoisePlaceView.ROUTE)
@PageTitle("Noise of a place · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class NoisePlaceView extends Div implements BeforeEnterObserver {

    static final String ROUTE = NoisePaths.PLACE;

    private final transient NoiseService noise;
    private transient FilterParameters parameters = FilterParameters.NONE;

    NoisePlaceView(NoiseService noise) {
        this.noise = noise;
    }

    static String path(NoiseSubject subject) {
        return NoisePaths.place(subject);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        refresh();
    }

    private void refresh() {
        removeAll();
        NoisePaths.subject(parameters).flatMap(noise::place).ifPresentOrElse(this::show, this::showNothing);
        add(new Anchor(NoiseView.ROUTE, "Back to noise"));
    }

    private void showNothing() {
        add(
                new H1("Noise of a place"),
                new EmptyHint("No measurement to show.", "Nothing was measured here that is open to you."));
    }

    private void show(PlaceRecord place) {
        NoiseSubject subject = place.subject();
        add(new H1("Noise: " + NoiseLabels.kind(subject.kind()) + " " + subject.name()), lead(place));
        var actions = new Div(new Anchor(MeasurementEntryView.path(subject), "Enter a measurement"));
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        add(actions);
        showUntold(place);
        place.current().ifPresent(this::showWorking);
        showHistory(place.history());
    }

    private static LeadSentence lead(PlaceRecord place) {
        String where = " at " + Place.name(place.subject().site());
        return new LeadSentence(place.current()
                .map(current ->
                        Words.capitalised(NoiseWording.average(current.result().average())) + where + ", "
                                + NoiseWording.standing(current.result()) + ", measured on "
                                + Words.day(current.details().measuredOn())
                                + (place.subject().kind() == NoiseSubject.Kind.AREA
                                        ? "; an area speaks for nobody's day."
                                        : "; it speaks for "
                                                + Counted.of(place.people().size(), "person", "people") + " today."))
                .orElse("Every measurement" + where + " was withdrawn: nothing counts today."));
    }

    private void showUntold(PlaceRecord place) {
        if (place.untold().isEmpty()) {
            return;
        }
        var list = new UnorderedList();
        for (WorkerPlace worker : place.untold()) {
            list.add(new ListItem(new Anchor(
                    Paths.worker(worker.workerId()),
                    worker.familyName() + ", " + worker.givenName() + " (" + worker.workerId() + ")")));
        }
        var tell = new Button(
                "They were told",
                click -> place.current()
                        .ifPresent(current -> new TellDialog(
                                        place.today(), told -> noise.tell(current.key(), told), this::refresh)
                                .open()));
        tell.addClassName("tr-screen-only");
        add(
                new H2("To be told the result"),
                new Paragraph("Everybody at or above the action level is told what was measured. [29 CFR 1910.95(e)]"),
                list,
                tell);
    }

    private void showWorking(NoiseMeasurement current) {
        NewMeasurement details = current.details();
        add(new H2("What counts today"), new Steps(NoiseWording.result(details.result())));
        details.peakDb()
                .map(peak -> NoiseWording.peak(new ImpulsePeak(peak.doubleValue())))
                .ifPresent(sentence -> add(new Paragraph(sentence.withBasis())));
        add(new Paragraph("Over a shift of " + NoiseWording.hours(details.shiftHours()) + " hours, with "
                + details.instrument() + ", " + NoiseLabels.kind(details.kind()) + ", " + calibration(details)
                + (details.process().isEmpty() ? "." : ". What ran: " + details.process())));
        details.cWeightedDbc()
                .ifPresent(level -> add(new Paragraph(
                        "C-weighted level: " + level.stripTrailingZeros().toPlainString() + " dBC.")));
        if (!details.octaveBandsDb().isEmpty()) {
            add(new Paragraph(details.octaveBandsDb().entrySet().stream()
                    .map(band -> band.getKey() + " Hz "
                            + band.getValue().stripTrailingZeros().toPlainString() + " dB")
                    .collect(Collectors.joining(", ", "Octave bands: ", "."))));
        }
    }

    private static String calibration(NewMeasurement details) {
        if (details.calibratedBefore() && details.calibratedAfter()) {
            return "calibrated before and after";
        }
        return details.calibratedBefore()
                ? "calibrated before, not after"
                : details.calibratedAfter() ? "calibrated after, not before" : "not calibrated in the field";
    }

    private void showHistory(List<NoiseMeasurement> history) {
        List<ListColumn<NoiseMeasurement, ?>> columns = List.of(
                ListColumn.unordered(
                        "Measured",
                        8,
                        row -> ListCell.figures(Words.day(row.details().measuredOn()))),
                ListColumn.unordered(
                        "Average",
                        8,
                        row -> ListCell.figures(
                                NoiseWording.average(row.result().average()))),
                ListColumn.unordered(
                        "Standing", 10, row -> ListCell.text(Words.capitalised(NoiseWording.standing(row.result())))),
                ListColumn.unordered(
                        "By",
                        9,
                        row -> ListCell.text(row.details().measuredBy())
                                .withNote(row.details().instrument())),
                ListColumn.unordered(
                        "State",
                        8,
                        row -> row.withdrawal()
                                .map(withdrawal -> ListCell.state(Kind.UNDECIDED, "withdrawn")
                                        .withNote(withdrawal.reason()))
                                .orElse(ListCell.state(Kind.DONE, "counts").withNote("entered by " + row.enteredBy()))),
                ListColumn.unordered(
                        "",
                        6,
                        row -> row.counts()
                                ? ListCell.action(
                                        "Withdraw",
                                        "Withdraw the measurement of "
                                                + Words.day(row.details().measuredOn()))
                                : ListCell.EMPTY));
        add(
                new H2("History"),
                new ListTable<>(
                        "The latest first",
                        columns,
                        history.reversed(),
                        row -> new WithdrawDialog(reason -> noise.withdraw(row.key(), reason), this::refresh).open()));
    }
}
