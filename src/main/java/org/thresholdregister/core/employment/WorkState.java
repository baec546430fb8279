package org.thresholdregister.core.employment;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What holds of a worker on a day.
 *
 * @param hired first day of the current or last employment, where it is known
 * @param lastDay last day of employment, which may lie ahead
 * @param enrolledSince first day of the current enrolment; empty while not enrolled
 * @param firstEnrolled first day at or above the action level in this employment, from which
 *     29 CFR 1910.95(g)(5)(i) counts
 */
public record WorkState(
        Standing standing,
        Optional<LocalDate> hired,
        Optional<LocalDate> lastDay,
        Placement place,
        Optional<LocalDate> enrolledSince,
        Optional<LocalDate> firstEnrolled,
        Engagement engagement) {}
