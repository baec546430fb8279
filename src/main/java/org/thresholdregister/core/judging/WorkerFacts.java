package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.aging.Sex;

/**
 * What the rules need to know of a worker.
 *
 * @param enrolledFrom first day at or above the action level, from which 29 CFR 1910.95(g)(5)(i) counts
 * @param endDate last day of employment
 */
public record WorkerFacts(
        String workerId,
        Optional<LocalDate> birthDate,
        Optional<Sex> sex,
        Optional<LocalDate> enrolledFrom,
        Optional<LocalDate> endDate) {}
