package org.thresholdregister.audiograms;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** Why a test counts no more. */
@Entity
@Table(name = "superseded_test")
@Immutable
class StoredSupersession {

    @Id
    @Column(name = "audiogram_id")
    private long testKey;

    @Column(name = "successor_id")
    private @Nullable Long successor;

    private String reason;
    private String supersededBy;
    private Instant supersededAt;
    private LocalDate supersededOn;

    @SuppressWarnings("NullAway.Init")
    protected StoredSupersession() {}

    StoredSupersession(long testKey, @Nullable Long successor, String reason, String by, Instant at, LocalDate on) {
        this.testKey = testKey;
        this.successor = successor;
        this.reason = reason;
        supersededBy = by;
        supersededAt = at;
        supersededOn = on;
    }

    long testKey() {
        return testKey;
    }

    SupersededTest toSupersededTest(RecordedTest test) {
        return new SupersededTest(
                test, Optional.ofNullable(successor), reason, supersededBy, supersededAt, supersededOn);
    }
}
