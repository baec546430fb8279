package org.thresholdregister.exposure;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;

@Entity
@Table(name = "noise_measurement_withdrawn")
@Immutable
class StoredWithdrawal {

    @Id
    private long measurementId;

    private String reason;
    private String withdrawnBy;
    private Instant withdrawnAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredWithdrawal() {}

    StoredWithdrawal(long measurementId, String reason, String withdrawnBy, Instant withdrawnAt) {
        this.measurementId = measurementId;
        this.reason = reason;
        this.withdrawnBy = withdrawnBy;
        this.withdrawnAt = withdrawnAt;
    }

    long measurementId() {
        return measurementId;
    }

    NoiseMeasurement.Withdrawal toWithdrawal() {
        return new NoiseMeasurement.Withdrawal(reason, withdrawnBy, withdrawnAt);
    }
}
