package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.wording.TrainingWords;
import org.thresholdregister.platform.duty.DutySource;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.platform.ui.FilterParameters;

/**
 * Training that is due, as one duty for each department where it is due to many. What cases leave owed with protectors
 * and training is on the board by itself.
 */
@Component
class ProtectionDuties implements DutySource {

    /** Up to so many people of a department are named one by one. */
    private static final int NAMED_UP_TO = 3;

    private static final String TRAINING = "hearing conservation training";

    private final TrainingBook trainings;

    ProtectionDuties(TrainingBook trainings) {
        this.trainings = trainings;
    }

    private record Group(String site, String department) {}

    @Override
    public List<OpenDuty> open(SiteScope scope, LocalDate today, LocalDate until) {
        Map<Group, List<TrainingRow>> due = trainings.due(scope, today).stream()
                .filter(row -> !row.due().isAfter(until))
                .collect(Collectors.groupingBy(
                        row -> new Group(row.site(), row.department()), LinkedHashMap::new, Collectors.toList()));
        return due.entrySet().stream()
                .flatMap(group -> duties(group.getKey(), group.getValue()))
                .toList();
    }

    private static Stream<OpenDuty> duties(Group group, List<TrainingRow> rows) {
        String address = FilterParameters.NONE
                .with("site", Optional.of(group.site()))
                .with("department", Optional.of(group.department()))
                .pathOf("training");
        if (rows.size() <= NAMED_UP_TO) {
            return rows.stream()
                    .map(row -> new OpenDuty(
                            TRAINING,
                            new OpenDuty.Subject.OfWorker(row.workerId(), row.name()),
                            row.site(),
                            row.due(),
                            row.rule().basis(),
                            address));
        }
        // The earliest stands for all of them; the page shows each.
        TrainingRow first = rows.getFirst();
        Citation basis = first.rule().basis();
        return Stream.of(new OpenDuty(
                TRAINING,
                new OpenDuty.Subject.OfThing(TrainingWords.groupDue(rows.size(), group.department())),
                group.site(),
                first.due(),
                basis,
                address));
    }
}
