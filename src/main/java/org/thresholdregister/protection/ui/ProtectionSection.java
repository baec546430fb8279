package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.UnorderedList;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.core.wording.TrainingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.protection.AttendedTraining;
import org.thresholdregister.protection.ProtectorInUse;
import org.thresholdregister.protection.WorkerProtection;
import org.thresholdregister.protection.WorkerProtectionService;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.ui.WorkerSection;

/** Protectors and training on a worker's page. */
@org.springframework.stereotype.Component
class ProtectionSection implements WorkerSection {

    private static final int PLACE = 72;

    private final WorkerProtectionService protection;

    ProtectionSection(WorkerProtectionService protection) {
        this.protection = protection;
    }

    @Override
    public int place() {
        return PLACE;
    }

    @Override
    public Optional<Component> of(WorkerRecord record) {
        return protection.of(record.details().workerId()).map(ProtectionSection::section);
    }

    @Override
    public List<Anchor> actions(WorkerRecord record) {
        return List.of(new Anchor(WorkerProtectorsView.path(record.details().workerId()), "Protectors and fit tests"));
    }

    private static Component section(WorkerProtection worker) {
        var section = new Section(new H2("Protectors and training"));
        worker.mustWear()
                .reasons()
                .forEach(reason -> section.add(new Paragraph("Has to wear protectors: "
                        + ProtectionWords.reason(reason, worker.facts()).withBasis())));
        if (worker.inUse().isEmpty()) {
            section.add(new EmptyHint(
                    "No protector is on record as in use.",
                    "What is given out is taken down on the page of the worker's protectors.",
                    new Anchor(WorkerProtectorsView.path(worker.worker().workerId()), "Protectors and fit tests")));
        } else {
            var list = new UnorderedList();
            worker.inUse().forEach(used -> list.add(new ListItem(inUse(used, worker))));
            section.add(list);
        }
        section.add(new Paragraph(training(worker)));
        return section;
    }

    private static String inUse(ProtectorInUse used, WorkerProtection worker) {
        var details = used.issue().product().details();
        String size = used.issue().details().size();
        String what = details.name() + (size.isEmpty() ? "" : ", size " + size) + ", since "
                + Words.day(used.issue().details().issuedOn()) + ". ";
        return what
                + used.chosen()
                        .map(estimate -> ProtectionWords.standing(details.kind(), estimate, worker.target()))
                        .orElse("No method of estimating is picked for this site.");
    }

    private static String training(WorkerProtection worker) {
        Optional<AttendedTraining> last =
                worker.trainings().stream().filter(AttendedTraining::counts).findFirst();
        String lastly = last.map(training -> "Last trained on "
                        + Words.day(training.training().day()) + ", in "
                        + TrainingWords.topics(training.training().topics()) + ".")
                .orElse("No training is on record.");
        return lastly
                + worker.trainingDue()
                        .map(due -> " The next is due by " + Words.day(due) + ", "
                                + Counted.daysLeft(ChronoUnit.DAYS.between(worker.today(), due)) + "."
                                + worker.trainingRule()
                                        .map(rule -> " [" + rule.basis().place() + "]")
                                        .orElse(""))
                        .orElse("");
    }
}
