package org.thresholdregister.clinical;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.clinical.ClinicalFacts;

/**
 * All of one worker's clinical part.
 *
 * @param entries the newest first, those that others took the place of among them
 * @param refusals the newest first
 */
public record ClinicalRecord(LocalDate asOf, List<ClinicalEntry> entries, List<Refusal> refusals) {

    /** The entry of this day that is in force. */
    public Optional<ClinicalEntry> on(LocalDate day) {
        return entries.stream()
                .filter(entry -> entry.inForce() && entry.day().equals(day))
                .findFirst();
    }

    /** The last answers for confirmation, with their day. */
    public Optional<ClinicalEntry> lastHistory() {
        return entries.stream()
                .filter(entry -> entry.inForce() && !entry.facts().history().isEmpty())
                .findFirst();
    }

    /** What a form of this day begins with: the day's own entry, or the last answers that last. */
    public ClinicalFacts toBeginWith(LocalDate day) {
        return on(day).map(ClinicalEntry::facts)
                .or(() -> lastHistory().map(entry -> entry.facts().forConfirmation()))
                .orElse(ClinicalFacts.NOTHING);
    }
}
