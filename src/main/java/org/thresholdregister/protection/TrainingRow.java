package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.training.TrainingRule;

/**
 * When one worker's next training is due.
 *
 * @param last the day by which every topic had last been covered; empty where one never was
 */
public record TrainingRow(
        long workerKey,
        String workerId,
        String name,
        String site,
        String department,
        Optional<LocalDate> last,
        LocalDate due,
        TrainingRule rule) {}
