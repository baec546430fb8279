package org.thresholdregister.testdays;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.time.LocalDate;

/** From when on somebody who waits for a mobile unit's baseline wears protectors. */
@Entity
class ProtectorsUntilBaseline {

    @Id
    private long workerId;

    private LocalDate wornFrom;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected ProtectorsUntilBaseline() {}

    ProtectorsUntilBaseline(long workerKey, LocalDate wornFrom, String enteredBy, Instant enteredAt) {
        this.workerId = workerKey;
        this.wornFrom = wornFrom;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    long workerKey() {
        return workerId;
    }

    LocalDate wornFrom() {
        return wornFrom;
    }
}
