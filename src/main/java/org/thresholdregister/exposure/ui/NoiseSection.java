package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.noise.ActionLevel;
import org.thresholdregister.core.wording.NoiseWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.exposure.NoiseMeasurement;
import org.thresholdregister.exposure.NoisePaths;
import org.thresholdregister.exposure.NoiseService;
import org.thresholdregister.exposure.WorkerExposure;
import org.thresholdregister.exposure.WorkerNoise;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.ui.WorkerSection;

/** A worker's noise on the worker's page. */
@org.springframework.stereotype.Component
class NoiseSection implements WorkerSection {

    private static final int PLACE = 70;

    private final NoiseService noise;

    NoiseSection(NoiseService noise) {
        this.noise = noise;
    }

    @Override
    public int place() {
        return PLACE;
    }

    @Override
    public Optional<Component> of(WorkerRecord record) {
        return noise.ofWorker(record.details().workerId()).flatMap(NoiseSection::section);
    }

    @Override
    public List<Anchor> actions(WorkerRecord record) {
        return List.of();
    }

    private static Optional<Component> section(WorkerNoise worker) {
        return worker.today().map(exposure -> {
            var section = new Section(new H2("Noise"), new Paragraph(words(exposure, worker)));
            worker.measurement()
                    .filter(measurement -> measurement.result().reachesActionLevel())
                    .ifPresent(measurement -> section.add(new Paragraph(worker.told()
                                    .map(told -> "The worker was told on " + Words.day(told.on()) + ", "
                                            + NoiseLabels.how(told.how()) + ".")
                                    .orElse("The worker is still to be told.")
                            + " [29 CFR 1910.95(e)]")));
            worker.proposal()
                    .ifPresent(proposal -> section.add(new Paragraph("By this measurement the worker belongs to the"
                            + " programme since " + Words.day(proposal.on()) + ", and is not in it. ["
                            + ActionLevel.BASIS.place() + "]")));
            worker.measurement()
                    .map(NoiseMeasurement::subject)
                    .ifPresent(subject ->
                            section.add(new Anchor(NoisePaths.place(subject), "The measurement and its working")));
            return section;
        });
    }

    private static String words(WorkerExposure exposure, WorkerNoise worker) {
        String average = Words.capitalised(NoiseWording.average(exposure.twa()));
        return switch (exposure.source()) {
            case WorkerExposure.Source.Measured measured ->
                average + ", "
                        + worker.measurement()
                                .map(found -> NoiseWording.standing(found.result()))
                                .orElse("")
                        + ", measured on " + Words.day(measured.on()) + " for the "
                        + NoiseLabels.kind(measured.subject().kind()) + " "
                        + measured.subject().name() + ".";
            case WorkerExposure.Source.Roster roster ->
                average + ", " + (exposure.atActionLevel() ? "at or above" : "under")
                        + " the action level, by the roster, which does not say when it was measured. ["
                        + ActionLevel.BASIS.place() + "]";
        };
    }
}
