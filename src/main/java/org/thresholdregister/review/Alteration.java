package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.wording.Words;

/**
 * A determination that changed after the worker had been told of it, or a case had been recorded on it.
 *
 * @param key the register's own key
 * @param after empty where the test is judged no more
 * @param acknowledgement who took note of it and why; absent while a person has still to decide
 * @param mayAcknowledge whether the signed-in user may
 */
public record Alteration(
        long key,
        LocalDate testDate,
        Ear ear,
        SentAndRecorded sent,
        EarFinding before,
        Optional<EarFinding> after,
        LocalDate alteredOn,
        Optional<Acknowledgement> acknowledgement,
        boolean mayAcknowledge) {

    /** @param by the account of the person */
    public record Acknowledgement(LocalDate on, String by, String reason) {}

    /** {@code Changed on 9 Mar 2026, after notice given on 2 Mar 2026: a person decides}. */
    public String inWords() {
        return "Changed on " + Words.day(alteredOn) + ", after " + sent.inWords()
                + (acknowledgement.isEmpty() ? ": a person decides" : "");
    }
}
