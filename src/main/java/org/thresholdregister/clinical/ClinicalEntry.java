package org.thresholdregister.clinical;

import java.time.Instant;
import java.time.LocalDate;
import org.thresholdregister.core.clinical.ClinicalFacts;

/**
 * The clinical part as of a day.
 *
 * @param inForce false once a later entry of the same day has taken its place
 * @param reason why it took the place of an earlier one; else empty
 */
public record ClinicalEntry(
        LocalDate day, ClinicalFacts facts, boolean inForce, String reason, String enteredBy, Instant enteredAt) {}
