package org.thresholdregister.protection;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "training_attendance")
class StoredAttendance {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "training_attendance_seq")
    @SequenceGenerator(name = "training_attendance_seq", sequenceName = "training_attendance_seq", allocationSize = 50)
    private @Nullable Long id;

    private long sessionId;
    private long workerId;
    private String enteredBy;
    private Instant enteredAt;
    private String withdrawnReason = "";
    private String withdrawnBy = "";

    @SuppressWarnings("NullAway.Init")
    protected StoredAttendance() {}

    StoredAttendance(long sessionKey, long workerKey, String enteredBy, Instant enteredAt) {
        this.sessionId = sessionKey;
        this.workerId = workerKey;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    long sessionKey() {
        return sessionId;
    }

    boolean counts() {
        return withdrawnReason.isEmpty();
    }

    void withdraw(String reason, String by) {
        withdrawnReason = reason;
        withdrawnBy = by;
    }
}
