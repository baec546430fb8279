package org.thresholdregister.clinical;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.platform.documents.Document;

/**
 * That a worker did not want to be tested.
 *
 * @param signedSheet the form with the worker's signature, where it was kept
 * @param takenBack why it was no refusal after all; empty while it stands
 */
public record Refusal(
        long key,
        LocalDate day,
        String reason,
        Optional<Document> signedSheet,
        Optional<String> takenBack,
        String enteredBy,
        Instant enteredAt) {}
