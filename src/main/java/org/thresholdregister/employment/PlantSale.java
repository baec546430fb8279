package org.thresholdregister.employment;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A plant sold with its workers.
 *
 * @param soldOn the workers' last day with this employer
 * @param workers how many went, those left out whose transfer was taken back
 * @param handOver empty until the records were handed over
 */
public record PlantSale(
        long key,
        String site,
        LocalDate soldOn,
        String successor,
        int workers,
        String enteredBy,
        Optional<HandOver> handOver) {

    /** @param receivedBy who took the records for the successor */
    public record HandOver(LocalDate on, String receivedBy, String remark) {}
}
