package org.thresholdregister.review;

import java.time.LocalDate;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineChange;

/**
 * One ear's baseline revision that waits for a professional. Texts that are not given are empty.
 *
 * @param from the day of the present baseline
 * @param to the day of the proposed one
 * @param firstTest the day of the first of the two tests that it rests on
 * @param secondTest the day of the second, on which it arose
 * @param daysOpen days from then to today
 */
public record ProposalRow(
        String workerId,
        String familyName,
        String givenName,
        String site,
        String department,
        Ear ear,
        BaselineChange.Kind kind,
        LocalDate from,
        LocalDate to,
        LocalDate firstTest,
        LocalDate secondTest,
        long daysOpen) {}
