package org.thresholdregister.intake;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.judging.WorkerFacts;

/** What is on record already, against which the rows of a file are checked. */
public interface ExistingRecords {

    Optional<WorkerFacts> worker(String workerId);

    boolean hasTestOn(String workerId, LocalDate date);

    /** Nothing is on record: the files stand alone. */
    static ExistingRecords none() {
        return new ExistingRecords() {
            @Override
            public Optional<WorkerFacts> worker(String workerId) {
                return Optional.empty();
            }

            @Override
            public boolean hasTestOn(String workerId, LocalDate date) {
                return false;
            }
        };
    }
}
